package rigspeak.mechanics;

/**
 * The slack that a lost support leaves in the rope.
 *
 * <p>Model: the rope ran straight from A to the support P and on to the climber C; without P it
 * runs straight from A to C, and what is over is slack: {@code |AP| + |PC| - |AC|}. Left out:
 * stretch, what the climber still has in hand, and how the fall then goes. Source: triangle, source
 * 1. Units: metres and radians. Range: both legs above 0, inside angle 0 to pi.
 *
 * <p>Tested by: legs of 5 and 5, 8 and 4, 3 and 4 metres at given angles.
 */
public final class LostSupport {
  private LostSupport() {}

  /**
   * Metres of slack, from 0 (the rope ran straight through) to twice the shorter leg.
   *
   * @param anchorLegM from A to the support
   * @param climberLegM from the support to the climber
   * @param insideRad angle between the legs at the support
   * @throws IllegalArgumentException outside the range
   */
  public static double slackM(double anchorLegM, double climberLegM, double insideRad) {
    Refuse.unlessPositive("length of a leg", anchorLegM);
    Refuse.unlessPositive("length of a leg", climberLegM);
    Refuse.unlessWithin("inside angle", insideRad, 0, Math.PI);
    double half = Math.cos(insideRad / 2);
    double sumM = anchorLegM + climberLegM;
    // (|AP| + |PC|)^2 - |AC|^2, divided by their sum: nothing cancels near a straight rope.
    double surplusM2 = 4 * anchorLegM * climberLegM * half * half;
    return surplusM2 / (sumM + Math.sqrt(Math.max(0, sumM * sumM - surplusM2)));
  }
}
