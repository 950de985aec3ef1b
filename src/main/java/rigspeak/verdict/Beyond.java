package rigspeak.verdict;

import rigspeak.mechanics.LoadedSupport;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Source;

/**
 * What friction nearer the climber makes of the rope's tension: a multiple of what the climber puts
 * on it. At each support the rope runs over it may grow or shrink; along the path that compounds,
 * and both ends are kept. At its word it is once.
 *
 * @param most the largest multiple, at least 1; its inverse is the least
 */
record Beyond(double most) {
  private static final int STARTS = 16;

  static Beyond atClimber() {
    return new Beyond(1);
  }

  /** On the far side of this support. */
  Beyond through(ResolvedRig rig) {
    return rig.turn() == ResolvedRig.Turn.ONE_LEG ? this : new Beyond(most * mostRatio(rig));
  }

  Estimate estimate(Source source) {
    return new Estimate(1 / most, 1, most, HowGot.ASSUMED, source);
  }

  /** The largest tension of the anchor leg over that of the working leg, whatever may be true. */
  static double mostRatio(ResolvedRig rig) {
    Box box = Box.ofChecks(rig);
    double[] highest = box.nominalShares();
    for (double[] shares : box.evenly(STARTS)) {
      if (ratio(rig, box, shares) > ratio(rig, box, highest)) {
        highest = shares;
      }
    }
    double[] top = Climb.from(highest, shares -> ratio(rig, box, shares));
    return ratio(rig, box, top);
  }

  private static double ratio(ResolvedRig rig, Box box, double[] shares) {
    return LoadedSupport.anchorRatio(rig, box.at(shares)).high();
  }
}
