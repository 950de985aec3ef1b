package rigspeak.quantity;

/**
 * A stress, or the strength that it is held against.
 *
 * <p>Made only by the factories, which name the unit.
 *
 * @param pascals pascals, finite
 */
public record Stress(double pascals) implements Comparable<Stress> {
  /** Exact. */
  private static final double MEGAPASCAL = 1e6;

  /** A pound-force on a square inch, from the exact pound and inch. */
  private static final double POUND_PER_SQUARE_INCH = 6894.757293168361;

  /**
   * @throws IllegalArgumentException if the value is infinite or not a number
   */
  public Stress {
    Finite.require("stress", pascals);
  }

  public static Stress ofPascals(double pascals) {
    return new Stress(pascals);
  }

  public static Stress ofMegapascals(double megapascals) {
    return new Stress(megapascals * MEGAPASCAL);
  }

  public static Stress ofPoundsPerSquareInch(double poundsPerSquareInch) {
    return new Stress(poundsPerSquareInch * POUND_PER_SQUARE_INCH);
  }

  public double megapascals() {
    return pascals / MEGAPASCAL;
  }

  public double poundsPerSquareInch() {
    return pascals / POUND_PER_SQUARE_INCH;
  }

  @Override
  public int compareTo(Stress other) {
    return Double.compare(pascals, other.pascals);
  }
}
