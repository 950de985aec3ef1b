package rigspeak.mechanics;

import rigspeak.quantity.Interval;

/**
 * Rope over a round support with friction.
 *
 * <p>Model: the tension of one leg over that of the other lies anywhere from {@code exp(-mu phi)}
 * to {@code exp(mu phi)} (Euler-Eytelwein); which of the two is right depends on which way the rope
 * last crept. Left out: the stiffness and weight of the rope, the radius, friction that changes
 * with load or speed. Source: belt friction, source 4. Range: coefficient 0 to 2, turn 0 to 20
 * turns.
 *
 * <p>Tested by: the printed capstan table, and pull tests on a carabiner and a pulley (source 5).
 */
public final class Capstan {
  private static final double MAX_FRICTION = 2;
  private static final double MAX_TURN_RAD = 40 * Math.PI;

  private Capstan() {}

  /**
   * The tension of one leg as a multiple of the other's, both ends of what friction allows.
   *
   * @param friction coefficient of friction, 0 to 2
   * @param wrapRad the angle through which the rope turns, in radians, 0 to 40 pi
   * @throws IllegalArgumentException outside the range
   */
  public static Interval tensionRatio(double friction, double wrapRad) {
    double high = largestRatio(friction, wrapRad);
    return Interval.of(1 / high, high);
  }

  /** The tight leg's tension as a multiple of the slack leg's when the rope is about to slip. */
  public static double largestRatio(double friction, double wrapRad) {
    requireFriction(friction);
    Refuse.unlessWithin("turn of a rope", wrapRad, 0, MAX_TURN_RAD);
    return Math.exp(friction * wrapRad);
  }

  /**
   * The coefficient of friction that would lose as much over half a turn as the hardware does.
   *
   * @param efficiency tension out over tension in, over 180 degrees, above 0 up to 1
   * @throws IllegalArgumentException outside the range, or so low that no coefficient up to 2 fits
   */
  public static double equivalentFriction(double efficiency) {
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw Refuse.refusal("efficiency", efficiency);
    }
    // The sum with zero turns the negative zero of a perfect pulley into zero.
    double friction = 0.0 - Math.log(efficiency) / Math.PI;
    requireFriction(friction);
    return friction;
  }

  static void requireFriction(double friction) {
    Refuse.unlessWithin("coefficient of friction", friction, 0, MAX_FRICTION);
  }
}
