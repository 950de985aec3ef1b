package rigspeak.page;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/** The same rig and the same verdict as if all of it had been said in one system of units. */
final class InUnits {
  private InUnits() {}

  static RopePath of(UnitSystem units, RopePath path) {
    SortedMap<Place, Rig> supports = new TreeMap<>();
    path.supports().forEach((place, rig) -> supports.put(place, of(units, rig)));
    return new RopePath(supports);
  }

  private static Rig of(UnitSystem units, Rig rig) {
    Rig changed = rig;
    for (Map.Entry<Slot, Said> each : rig.said().entrySet()) {
      Said said = each.getValue();
      changed = changed.with(each.getKey(), new Said(of(units, said.value()), said.how()));
    }
    return changed;
  }

  private static Value of(UnitSystem units, Value value) {
    if (value instanceof Value.Weight weight) {
      return new Value.Weight(weight.mass(), units);
    }
    if (value instanceof Value.Distance distance) {
      return new Value.Distance(distance.length(), units);
    }
    if (value instanceof Value.Rating rating) {
      return new Value.Rating(rating.force(), units);
    }
    if (value instanceof Value.Leg leg) {
      Optional<Value.Distance> length =
          leg.length().map(distance -> new Value.Distance(distance.length(), units));
      return new Value.Leg(leg.direction(), length);
    }
    return value;
  }

  static PathVerdict of(UnitSystem units, PathVerdict verdict) {
    SortedMap<Place, Verdict> supports = new TreeMap<>();
    verdict
        .supports()
        .forEach(
            (place, each) ->
                supports.put(
                    place, each instanceof Verdict.Judged judged ? of(units, judged) : each));
    return new PathVerdict(
        of(units, verdict.path()), verdict.asked(), supports, verdict.losses(), verdict.swing());
  }

  private static Verdict of(UnitSystem units, Verdict.Judged judged) {
    return new Verdict.Judged(
        judged.rating(),
        judged.load(),
        judged.checks(),
        judged.governing(),
        judged.measureAgain(),
        judged.remedies(),
        judged.rig().saidAs(of(units, judged.rig().said())));
  }
}
