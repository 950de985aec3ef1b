package rigspeak.verdict;

import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;

/**
 * How near to each other the two legs of a support may lie: there the rope turns most.
 *
 * <p>The cosine of the angle between two directions is {@code sin a sin w + c cos a cos w}, with
 * the elevations a and w and the cosine c of the difference of their bearings. No elevation passes
 * plumb, so the largest c is best for all of them. The rest has no top inside a range of both
 * elevations ({@code (1 + c)/2 cos(a - w) - (1 - c)/2 cos(a + w)} is level only at a saddle or at
 * plumb), and along an edge of it, where one is at an end, it is a single wave. So the largest is
 * known exactly and needs no search: what is missed here would be missed by every support toward
 * the anchor.
 */
final class NearestLegs {
  private static final double FULL_TURN = 2 * Math.PI;

  private final Estimate anchor;
  private final Estimate working;
  private final double level;

  private NearestLegs(ResolvedRig rig) {
    anchor = rig.measures().get(Measure.ANCHOR_LEG_ELEVATION);
    working = rig.measures().get(Measure.WORKING_LEG_ELEVATION);
    Estimate here = rig.measures().get(Measure.ANCHOR_LEG_BEARING);
    Estimate there = rig.measures().get(Measure.WORKING_LEG_BEARING);
    level = largestCosine(here.low() - there.high(), here.high() - there.low());
  }

  /** The least angle between the legs, radians; both legs must be known. */
  static double insideRad(ResolvedRig rig) {
    NearestLegs legs = new NearestLegs(rig);
    double cosine =
        Math.max(
            Math.max(
                legs.onEdge(legs.anchor.low(), legs.working),
                legs.onEdge(legs.anchor.high(), legs.working)),
            Math.max(
                legs.onEdge(legs.working.low(), legs.anchor),
                legs.onEdge(legs.working.high(), legs.anchor)));
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  private static double largestCosine(double lowRad, double highRad) {
    double turn = FULL_TURN * Math.ceil(lowRad / FULL_TURN);
    return turn <= highRad ? 1 : Math.max(Math.cos(lowRad), Math.cos(highRad));
  }

  /** The largest cosine with one leg at this elevation and the other anywhere in its range. */
  private double onEdge(double fixedRad, Estimate other) {
    double top = Math.atan2(Math.sin(fixedRad), level * Math.cos(fixedRad));
    double ends = Math.max(cosine(fixedRad, other.low()), cosine(fixedRad, other.high()));
    return other.low() <= top && top <= other.high() ? Math.max(ends, cosine(fixedRad, top)) : ends;
  }

  private double cosine(double oneRad, double otherRad) {
    return Math.sin(oneRad) * Math.sin(otherRad) + level * Math.cos(oneRad) * Math.cos(otherRad);
  }
}
