package rigspeak.mechanics;

/** Ropes that a lost support leaves, spread over all that can be. */
final class Falls {
  /** Length; sine of the angle at the catch; where on the upright line within reach. */
  static final double[] ANYWHERE = {0.5, 60, 0, 1, 0, 1};

  private Falls() {}

  /**
   * The climber anywhere within reach of A: a share of 0 is at the catch, of 1 as high as can be.
   */
  static FreedRope anywhere(double ropeM, double out, double share) {
    double downM = ropeM * Math.sqrt(1 - out * out);
    return new FreedRope(ropeM, ropeM * out, downM * (1 - 2 * share), 0.5);
  }

  /** The climber somewhere below A, or level with it. */
  static FreedRope below(double ropeM, double out, double share) {
    return anywhere(ropeM, out, share / 2);
  }

  /** At rest on a taut rope. */
  static FreedRope taut(double ropeM, double fromPlumbRad) {
    return new FreedRope(ropeM, ropeM * Math.sin(fromPlumbRad), ropeM * Math.cos(fromPlumbRad), 0);
  }
}
