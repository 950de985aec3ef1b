package rigspeak.verdict;

import rigspeak.mechanics.Capstan;
import rigspeak.mechanics.Resultant;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
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
    double friction = rig.measures().get(Measure.ROPE_FRICTION).high();
    return Capstan.largestRatio(friction, Resultant.wrapRad(leastInsideRad(rig)));
  }

  private static double leastInsideRad(ResolvedRig rig) {
    return switch (rig.turn()) {
      case LEGS -> NearestLegs.insideRad(rig);
      case ANGLE_AND_SLING -> rig.measures().get(Measure.INSIDE_ANGLE).low();
      case ONE_LEG -> throw new IllegalArgumentException("one leg has no ratio");
    };
  }
}
