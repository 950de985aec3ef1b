package rigspeak.quantity;

/**
 * A mass, never negative.
 *
 * <p>Made only by the factories, which name the unit.
 *
 * @param kilograms kilograms, finite, at least zero
 */
public record Mass(double kilograms) implements Comparable<Mass> {
  /** Exact by definition of the international avoirdupois pound. */
  private static final double POUND = 0.45359237;

  /**
   * @throws IllegalArgumentException if the value is negative, infinite or not a number
   */
  public Mass {
    Finite.requireNotNegative("mass", kilograms);
  }

  public static Mass ofKilograms(double kilograms) {
    return new Mass(kilograms);
  }

  public static Mass ofPounds(double pounds) {
    return new Mass(pounds * POUND);
  }

  public double pounds() {
    return kilograms / POUND;
  }

  /** The force that holds this mass still under standard gravity. */
  public Force weight() {
    return Force.ofNewtons(kilograms * Force.STANDARD_GRAVITY);
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kilograms, other.kilograms);
  }
}
