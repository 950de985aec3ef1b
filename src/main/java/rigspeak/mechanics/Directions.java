package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Directions as a climber says them, by elevation and bearing, and as unit vectors.
 *
 * <p>Model: {@code u = (cos e cos b, cos e sin b, sin e)} in the frame of this package. Source:
 * spherical coordinates, source 1. Units: radians; elevation is positive upward, bearing is 0
 * toward the tip and positive to the left. Range: an elevation may pass the vertical (up to half a
 * turn), so that the uncertainty of a nearly plumb leg runs over the top and down the other side
 * instead of being cut off; a bearing may be up to two turns. Anything else is refused.
 *
 * <p>Tested by the plane forces of source 2 and against another library's spherical coordinates.
 */
public final class Directions {
  private static final double MAX_ELEVATION_RAD = Math.PI;
  private static final double MAX_BEARING_RAD = 4 * Math.PI;

  /** How far the squared length of a unit vector may be from one: the rounding of a few steps. */
  private static final double UNIT_TOLERANCE = 1e-9;

  /** Below this share of its length a direction has no plan bearing that means anything. */
  private static final double PLUMB = 1e-12;

  private Directions() {}

  /**
   * The unit vector of an elevation and a bearing.
   *
   * @param elevationRad radians above the horizontal, from -pi to pi
   * @param bearingRad radians to the left of the limb's heading, from -4 pi to 4 pi
   * @throws IllegalArgumentException outside the range
   */
  public static Vector3D unit(double elevationRad, double bearingRad) {
    Refuse.unlessWithin("elevation", elevationRad, -MAX_ELEVATION_RAD, MAX_ELEVATION_RAD);
    Refuse.unlessWithin("bearing", bearingRad, -MAX_BEARING_RAD, MAX_BEARING_RAD);
    double flat = Math.cos(elevationRad);
    return new Vector3D(
        flat * Math.cos(bearingRad), flat * Math.sin(bearingRad), Math.sin(elevationRad));
  }

  /**
   * Radians above the horizontal, from -pi/2 to pi/2, of a vector of any length.
   *
   * @throws IllegalArgumentException if the vector is zero, infinite or not a number
   */
  public static double elevationRad(Vector3D vector) {
    requireLength(vector);
    return Math.atan2(vector.getZ(), acrossOf(vector));
  }

  /**
   * Radians to the left of the limb's heading, above -pi up to pi, of a vector of any length. A
   * plumb vector has no bearing; it is given 0.
   *
   * @throws IllegalArgumentException if the vector is zero, infinite or not a number
   */
  public static double bearingRad(Vector3D vector) {
    double length = requireLength(vector);
    if (acrossOf(vector) <= PLUMB * length) {
      return 0;
    }
    double bearingRad = Math.atan2(vector.getY(), vector.getX());
    return bearingRad == -Math.PI ? Math.PI : bearingRad;
  }

  /** Refuses a vector that is not of length one. */
  static void requireUnit(String what, Vector3D vector) {
    if (!(Math.abs(vector.getNormSq() - 1) <= UNIT_TOLERANCE)) {
      throw new IllegalArgumentException("no " + what + " can be " + vector);
    }
  }

  private static double acrossOf(Vector3D vector) {
    return Math.hypot(vector.getX(), vector.getY());
  }

  private static double requireLength(Vector3D vector) {
    return Refuse.unlessPositive(
        "length of a direction", Math.hypot(acrossOf(vector), vector.getZ()));
  }
}
