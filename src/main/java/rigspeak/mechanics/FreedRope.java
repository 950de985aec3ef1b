package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * How the rope and the climber lie at the moment when a support lets go.
 *
 * <p>Model: the rope ran straight from the previous support A to the lost support P and on to the
 * climber C. Without P the two legs are one rope of their joint length, and all that follows
 * happens in the upright plane through A and C. Left out: stretch before the loss, rope still in
 * hand, the rope beyond A, branches in the way of the rope. Source: triangle, source 1. Units:
 * metres and radians in the frame of P, whose axes are also taken at A. Range: rope above 0; the
 * climber within the rope's reach of A, above it, level with it or below it.
 *
 * <p>Tested by: slack against {@link LostSupport} and the listed legs of source 1, points in space,
 * mirrored and turned rigs.
 *
 * @param ropeM both legs together, above 0
 * @param outM horizontal distance of the climber from the plumb line of A, at least 0
 * @param belowM height of A over the climber; negative when the climber is the higher one
 * @param bearingRad bearing from the climber to the plumb line of A, which is the way of the swing,
 *     above -pi up to pi; 0 when the climber is on that line
 */
public record FreedRope(double ropeM, double outM, double belowM, double bearingRad) {
  /** How far beyond the rope's reach a climber may be by rounding, as a share of the rope. */
  private static final double ROUNDING = 1e-9;

  /**
   * @throws IllegalArgumentException outside the range, or with the climber beyond the rope's reach
   */
  public FreedRope {
    Refuse.unlessPositive("length of rope", ropeM);
    Refuse.unlessNotNegative("distance from the plumb line", outM);
    Refuse.unlessFinite("height of the previous support", belowM);
    Refuse.unlessWithin("bearing", bearingRad, -Math.PI, Math.PI);
    double reachM = Math.hypot(outM, belowM);
    if (!(reachM <= ropeM * (1 + ROUNDING))) {
      throw Refuse.refusal("distance on a rope of " + ropeM, reachM);
    }
    if (outM > ropeM) {
      outM = ropeM;
    }
  }

  /**
   * The rope that two legs leave.
   *
   * @param toPrevious unit vector from the lost support toward the previous one
   * @param previousLegM length of that leg, above 0
   * @param toClimber unit vector from the lost support toward the climber
   * @param climberLegM length of that leg, above 0
   * @throws IllegalArgumentException if a direction is not of length one or a leg has no length
   */
  public static FreedRope ofLegs(
      Vector3D toPrevious, double previousLegM, Vector3D toClimber, double climberLegM) {
    Directions.requireUnit("leg", toPrevious);
    Directions.requireUnit("leg", toClimber);
    Refuse.unlessPositive("length of a leg", previousLegM);
    Refuse.unlessPositive("length of a leg", climberLegM);
    Vector3D fromClimber = new Vector3D(previousLegM, toPrevious, -climberLegM, toClimber);
    double ropeM = previousLegM + climberLegM;
    double outM = Math.hypot(fromClimber.getX(), fromClimber.getY());
    // A climber on the plumb line has no bearing to it; rounding must not give one.
    boolean plumb = outM <= ROUNDING * ropeM;
    return new FreedRope(
        ropeM,
        plumb ? 0 : outM,
        fromClimber.getZ(),
        plumb ? 0 : Directions.bearingRad(fromClimber));
  }

  /** Rope that is over once it runs straight to the climber, from 0 up. */
  public double slackM() {
    return Math.max(0, ropeM - Math.hypot(outM, belowM));
  }

  /**
   * How far the climber falls, straight down, until the rope is taut about A; 0 when it is so at
   * once. A climber above A falls past it.
   */
  public double freeFallM() {
    return Math.max(0, ropeM * Math.cos(tautFromPlumbRad()) - belowM);
  }

  /** The angle of the rope from plumb at which it comes taut, from 0 to pi/2. */
  public double tautFromPlumbRad() {
    return Math.asin(outM / ropeM);
  }

  /** From the climber down to the lowest point of the swing, without the rope's stretch. */
  public double dropM() {
    return Math.max(0, ropeM - belowM);
  }

  /**
   * Unit vector from A along the taut rope toward the climber.
   *
   * @param fromPlumbRad angle of the rope from plumb, positive on the side where the climber was,
   *     from -pi to pi
   * @throws IllegalArgumentException outside the range
   */
  public Vector3D leg(double fromPlumbRad) {
    Refuse.unlessWithin("angle from plumb", fromPlumbRad, -Math.PI, Math.PI);
    double out = Math.sin(fromPlumbRad);
    return new Vector3D(
        -out * Math.cos(bearingRad), -out * Math.sin(bearingRad), -Math.cos(fromPlumbRad));
  }
}
