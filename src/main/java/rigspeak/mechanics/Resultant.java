package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.quantity.Interval;

/**
 * The one force that two rope legs put on what they run over.
 *
 * <p>Model: {@code R = T1 u1 + T2 u2}, both legs pulling away from the support. Left out: the
 * weight of the rope and of the hardware. Source: parallelogram of forces, source 2; the factor
 * {@code 2 cos(inside/2)} for equal tensions, source 3. Units: newtons and radians. Range: tensions
 * from 0, inside angles from 0 (legs together) to pi (rope straight through); anything else is
 * refused.
 *
 * <p>Tested by: two cables on one stake, plane forces, and printed angle factors (sources 2 and 3);
 * tensions that differ by friction against the law of cosines.
 */
public final class Resultant {
  private Resultant() {}

  /**
   * The force on the support, in newtons.
   *
   * @param firstN tension of the first leg
   * @param first unit vector along the first leg, away from the support
   * @param secondN tension of the second leg
   * @param second unit vector along the second leg, away from the support
   * @throws IllegalArgumentException if a tension is negative or a direction is not of length one
   */
  public static Vector3D ofLegsN(double firstN, Vector3D first, double secondN, Vector3D second) {
    requireTension(firstN);
    requireTension(secondN);
    Directions.requireUnit("leg", first);
    Directions.requireUnit("leg", second);
    return new Vector3D(firstN, first, secondN, second);
  }

  /**
   * The size of the force on the support, in newtons, from the inside angle alone: {@code sqrt(T1^2
   * + T2^2 + 2 T1 T2 cos(inside))}.
   */
  public static double sizeN(double firstN, double secondN, double insideRad) {
    requireTension(firstN);
    requireTension(secondN);
    requireInside(insideRad);
    // (T1 - T2)^2 + 4 T1 T2 cos^2(inside/2): the same sum, and nothing cancels near a straight
    // rope.
    double half = Math.cos(insideRad / 2);
    double difference = firstN - secondN;
    return Math.sqrt(difference * difference + 4 * firstN * secondN * half * half);
  }

  /**
   * The angle between the first leg and the force on the support, in radians from 0 to the inside
   * angle; half the inside angle when the tensions are equal, less when the first leg is the
   * tighter.
   */
  public static double leanRad(double firstN, double secondN, double insideRad) {
    requireTension(firstN);
    requireTension(secondN);
    requireInside(insideRad);
    return Math.atan2(secondN * Math.sin(insideRad), firstN + secondN * Math.cos(insideRad));
  }

  /**
   * The force on the support as a multiple of the tension, equal in both legs: from 2 down to 0.
   */
  public static double angleFactor(double insideRad) {
    requireInside(insideRad);
    return 2 * Math.cos(insideRad / 2);
  }

  /**
   * The angle between two legs, in radians from 0 to pi.
   *
   * @throws IllegalArgumentException if a direction is not of length one
   */
  public static double insideRad(Vector3D first, Vector3D second) {
    Directions.requireUnit("leg", first);
    Directions.requireUnit("leg", second);
    return Vector3D.angle(first, second);
  }

  /** The angle through which the rope turns on the support: pi less the inside angle. */
  public static double wrapRad(double insideRad) {
    requireInside(insideRad);
    return Math.PI - insideRad;
  }

  /**
   * The tension ratio, second over first, at which the force lies nearest to an axis, either way
   * along it: where a sling on that axis is likeliest to slide.
   *
   * <p>All else that a load does grows toward an end of what friction allows; its share along an
   * axis may be largest in between, {@code k = (B - A c) / (A - B c)} with {@code A = a u1, B = a
   * u2, c = u1 u2}, where the derivative of {@code (A + k B)^2 / (1 + 2 k c + k^2)} vanishes.
   * Derived here.
   *
   * @param axis unit vector, as along a limb
   * @param first unit vector along the first leg
   * @param second unit vector along the second leg
   * @param ratio what friction allows, from 0 up
   * @return a ratio in that interval
   * @throws IllegalArgumentException if a direction is not of length one or a ratio is negative
   */
  public static double ratioNearestAxis(
      Vector3D axis, Vector3D first, Vector3D second, Interval ratio) {
    Directions.requireUnit("axis", axis);
    Directions.requireUnit("leg", first);
    Directions.requireUnit("leg", second);
    Refuse.unlessNotNegative("tension ratio", ratio.low());
    double alongFirst = axis.dotProduct(first);
    double alongSecond = axis.dotProduct(second);
    double between = first.dotProduct(second);
    double turning = (alongSecond - alongFirst * between) / (alongFirst - alongSecond * between);
    double nearest = ratio.low();
    double largest = squaredShare(alongFirst, alongSecond, between, nearest);
    double atHigh = squaredShare(alongFirst, alongSecond, between, ratio.high());
    if (atHigh > largest) {
      nearest = ratio.high();
      largest = atHigh;
    }
    if (ratio.contains(turning)
        && squaredShare(alongFirst, alongSecond, between, turning) > largest) {
      nearest = turning;
    }
    return nearest;
  }

  /** The share of the force along an axis, squared; 0 where there is no force. */
  private static double squaredShare(
      double alongFirst, double alongSecond, double between, double ratio) {
    double along = alongFirst + ratio * alongSecond;
    double square = 1 + 2 * ratio * between + ratio * ratio;
    return square > 0 ? along * along / square : 0;
  }

  private static void requireTension(double tensionN) {
    Refuse.unlessNotNegative("tension of a leg", tensionN);
  }

  private static void requireInside(double insideRad) {
    Refuse.unlessWithin("inside angle", insideRad, 0, Math.PI);
  }
}
