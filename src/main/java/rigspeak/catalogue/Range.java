package rigspeak.catalogue;

/**
 * What a value of this kind can plausibly be.
 *
 * @param low in the unit
 * @param high in the unit
 */
public record Range(double low, double high, Unit unit) {

  /** The unit of the range's ends. */
  public enum Unit {
    KILOGRAM,
    METRE,
    DEGREE,
    NEWTON
  }

  boolean contains(double value) {
    return value >= low - SLIP * Math.abs(low) && value <= high + SLIP * Math.abs(high);
  }

  /** Feet and inches do not meet metres exactly; this far below what anyone can measure. */
  private static final double SLIP = 1e-9;
}
