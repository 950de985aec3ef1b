package rigspeak.quantity;

/**
 * A plane angle.
 *
 * <p>Made only by the factories, which name the unit.
 *
 * @param radians radians, finite
 */
public record Angle(double radians) implements Comparable<Angle> {
  /** Half a turn is 180 degrees. */
  private static final double DEGREE = Math.PI / 180.0;

  /**
   * @throws IllegalArgumentException if the value is infinite or not a number
   */
  public Angle {
    Finite.require("angle", radians);
  }

  public static Angle ofRadians(double radians) {
    return new Angle(radians);
  }

  public static Angle ofDegrees(double degrees) {
    return new Angle(degrees * DEGREE);
  }

  public double degrees() {
    return radians / DEGREE;
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }
}
