package rigspeak.mechanics;

import rigspeak.quantity.Force;

/**
 * A climber swinging on a taut rope, from the energy that does not change.
 *
 * <p>Model: a point mass on a rope without weight or stretch about a fixed point, in one upright
 * plane, {@code v^2/2 + g L (1 - cos t)} constant, tension {@code W cos t + m v^2 / L}; from rest
 * at {@code t0} that is {@code W (3 cos t - 2 cos t0)}. Left out: drag of the air, stretch (a
 * stretched rope swings lower and a little wider), friction and give at the support, the size of
 * the body, pushing off. Source: pendulum, source 22. Units: SI, angles from plumb. Range: rope
 * above 0, start from 0 to pi/2, speed at least 0 and toward plumb.
 *
 * <p>Tested by: the worked problems and the table of source 22, and by {@link TimedMotion}, which
 * knows nothing of energy.
 *
 * @param ropeM length, above 0
 * @param fromPlumbRad where the swing begins, 0 to pi/2
 * @param startSpeedMS along the arc toward plumb, at least 0
 */
public record Pendulum(double ropeM, double fromPlumbRad, double startSpeedMS) {
  private static final double G = Force.STANDARD_GRAVITY;

  /** A swing that ends so near to an obstacle reaches it: rounding, as a share of the rope. */
  private static final double ROUNDING = 1e-9;

  /** From this height over the length up, the rope is still taut at the top: 5/2, source 22. */
  private static final double ROUND = 2.5;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public Pendulum {
    Refuse.unlessPositive("length of rope", ropeM);
    Refuse.unlessWithin("angle from plumb", fromPlumbRad, 0, Math.PI / 2);
    Refuse.unlessNotNegative("speed", startSpeedMS);
  }

  /** Horizontal distance from the start to the plumb line. */
  public double outM() {
    return ropeM * Math.sin(fromPlumbRad);
  }

  /** Height of the start over the lowest point. */
  public double startHeightM() {
    return heightM(fromPlumbRad);
  }

  /** Height of a free fall that ends with the speed at the lowest point. */
  public double lowestEquivalentFallM() {
    return startHeightM() + startSpeedMS * startSpeedMS / (2 * G);
  }

  /** Speed at the lowest point, the largest there is. */
  public double lowestSpeedMS() {
    return speedMS(lowestEquivalentFallM());
  }

  /**
   * The rope's tension, in weights of the climber, at an angle that the swing gets to.
   *
   * @param atRad angle from plumb on either side, -pi to pi
   * @return at least 0
   * @throws IllegalArgumentException outside the range
   */
  public double tensionInWeights(double atRad) {
    Refuse.unlessWithin("angle from plumb", atRad, -Math.PI, Math.PI);
    double fallM = Math.max(0, lowestEquivalentFallM() - heightM(atRad));
    return Math.max(0, Math.cos(atRad) + 2 * fallM / ropeM);
  }

  /** The rope's tension at the lowest point, in weights of the climber: at least 1. */
  public double lowestTensionInWeights() {
    return tensionInWeights(0);
  }

  /** How the swing ends on the far side. */
  public SwingEnd end() {
    double rise = lowestEquivalentFallM() / ropeM;
    if (rise <= 1) {
      // 1 - cos t = 2 sin^2(t/2): nothing cancels in a small swing.
      return new SwingEnd.Turns(2 * Math.asin(Math.sqrt(rise / 2)));
    }
    // W cos t + m v^2 / L = 0 with v^2 = 2 g (rise L - L (1 - cos t)).
    return rise < ROUND
        ? new SwingEnd.GoesSlack(Math.acos((2 - 2 * rise) / 3))
        : new SwingEnd.GoesRound(Math.PI);
  }

  /** How far the swing goes out beyond the plumb line. */
  public double farOutM() {
    return ropeM * Math.sin(Math.min(end().fromPlumbRad(), Math.PI / 2));
  }

  /**
   * What happens at an upright plane square to the swing.
   *
   * @param distanceM horizontal, from the start in the direction of the swing, at least 0
   * @throws IllegalArgumentException outside the range
   */
  public Arrival arrivalAt(double distanceM) {
    Refuse.unlessNotNegative("distance to an obstacle", distanceM);
    double beforePlumbM = outM() - distanceM;
    double spareM = -beforePlumbM - farOutM();
    if (spareM > ROUNDING * ropeM) {
      return new Arrival.Clear(spareM);
    }
    double atRad = Math.asin(Math.max(-1, beforePlumbM / ropeM));
    double fallM = Math.max(0, lowestEquivalentFallM() - heightM(atRad));
    return new Arrival.Reached(atRad, speedMS(fallM), fallM, startHeightM() - heightM(atRad));
  }

  private double heightM(double atRad) {
    double half = Math.sin(atRad / 2);
    return 2 * ropeM * half * half;
  }

  private static double speedMS(double fallM) {
    return Math.sqrt(2 * G * fallM);
  }
}
