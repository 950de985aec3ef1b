package rigspeak.verdict;

import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.math3.random.RandomGenerator;
import rigspeak.mechanics.LimbLoad;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.verdict.Trial.Held;

/**
 * A place in any rig's box: how far each measure lies from its low (0) to its high end (1), and how
 * much of the rope's friction acts, from -1 (all, toward the climber) to 1 (all, toward the
 * anchor). The same place in two rigs' boxes compares them without any search.
 */
record Place(Map<Measure, Double> shares, double friction) {

  static Place anywhere(RandomGenerator random) {
    Map<Measure, Double> shares = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      shares.put(measure, random.nextDouble());
    }
    return new Place(shares, 2 * random.nextDouble() - 1);
  }

  /** Where this place lies in the box of the mirrored rig. */
  Place mirrored() {
    Map<Measure, Double> other = new EnumMap<>(shares);
    for (Measure measure : Measure.values()) {
      if (measure.key().endsWith("_bearing")) {
        other.put(measure, 1 - shares.get(measure));
      }
    }
    return new Place(other, friction);
  }

  Map<CheckKind, Double> utilisations(ResolvedRig rig) {
    Map<CheckKind, Double> utilisations = new EnumMap<>(CheckKind.class);
    for (Held held : trial(rig).held()) {
      utilisations.put(held.kind(), held.utilisation());
    }
    return utilisations;
  }

  LimbLoad load(ResolvedRig rig) {
    return trial(rig).support().onLimb();
  }

  private Trial trial(ResolvedRig rig) {
    double[] own = rig.measures().keySet().stream().mapToDouble(shares::get).toArray();
    Point point = Point.at(rig.measures(), own);
    double acting = Math.abs(friction) * point.get(Measure.ROPE_FRICTION);
    return Trial.of(
        rig,
        point.with(Measure.ROPE_FRICTION, acting),
        friction < 0 ? Creep.TOWARD_CLIMBER : Creep.TOWARD_ANCHOR);
  }
}
