package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The swing of a climber who works off plumb and loses footing.
 *
 * <p>Model: {@link Pendulum} from rest about the support itself, rope taut. Left out: what that
 * leaves out, and rope that the climber holds slack. Source: pendulum, source 22. Units: metres and
 * radians. Range: off plumb from 0 to level with the support; above it the rope is slack and the
 * climber falls first, so it is refused.
 *
 * <p>Tested by: worked problems of source 22, rope of 10 m from 45, 60 and 90 degrees.
 */
public final class WorkingSwing {
  private WorkingSwing() {}

  /**
   * By how far the climber is out from the plumb line of the support.
   *
   * @param ropeM from the support to the climber, above 0
   * @param offsetM horizontal, 0 to the length of the rope
   * @throws IllegalArgumentException outside the range
   */
  public static Pendulum ofOffset(double ropeM, double offsetM) {
    Refuse.unlessPositive("length of rope", ropeM);
    Refuse.unlessWithin("distance from the plumb line", offsetM, 0, ropeM);
    return new Pendulum(ropeM, Math.asin(offsetM / ropeM), 0);
  }

  /**
   * By the direction of the working leg.
   *
   * @param ropeM from the support to the climber, above 0
   * @param toClimber unit vector from the support toward the climber, level or pointing down
   * @throws IllegalArgumentException outside the range
   */
  public static Pendulum ofLeg(double ropeM, Vector3D toClimber) {
    Directions.requireUnit("leg", toClimber);
    double outM = Math.hypot(toClimber.getX(), toClimber.getY());
    return new Pendulum(ropeM, Math.atan2(outM, -toClimber.getZ()), 0);
  }
}
