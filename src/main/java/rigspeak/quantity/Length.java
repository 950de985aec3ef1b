package rigspeak.quantity;

/**
 * A distance or a diameter, never negative.
 *
 * <p>Made only by the factories, which name the unit.
 *
 * @param metres metres, finite, at least zero
 */
public record Length(double metres) implements Comparable<Length> {
  /** Exact by definition of the international foot. */
  private static final double FOOT = 0.3048;

  /** Exact by definition of the international inch. */
  private static final double INCH = 0.0254;

  /** Exact. */
  private static final double CENTIMETRE = 0.01;

  /**
   * @throws IllegalArgumentException if the value is negative, infinite or not a number
   */
  public Length {
    Finite.requireNotNegative("length", metres);
  }

  public static Length ofMetres(double metres) {
    return new Length(metres);
  }

  public static Length ofFeet(double feet) {
    return new Length(feet * FOOT);
  }

  public static Length ofInches(double inches) {
    return new Length(inches * INCH);
  }

  public static Length ofCentimetres(double centimetres) {
    return new Length(centimetres * CENTIMETRE);
  }

  public double feet() {
    return metres / FOOT;
  }

  public double inches() {
    return metres / INCH;
  }

  public double centimetres() {
    return metres / CENTIMETRE;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }
}
