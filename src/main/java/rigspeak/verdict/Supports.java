package rigspeak.verdict;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Conflict;
import rigspeak.catalogue.Resolution;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.PullAbove;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Value;

/**
 * The supports of a rope on their way to a verdict.
 *
 * @param known those whose numbers are known, each with what the rest of the rope does to it
 * @param otherwise a verdict on those that no number is needed or enough for
 */
record Supports(SortedMap<Place, ResolvedRig> known, SortedMap<Place, Verdict> otherwise) {

  static Supports of(Catalogue catalogue, RopePath path) {
    Source friction = catalogue.sources().get("friction_beyond");
    SortedMap<Place, ResolvedRig> known = new TreeMap<>();
    SortedMap<Place, Verdict> otherwise = new TreeMap<>();
    List<Place> fromClimber = new ArrayList<>(path.places());
    Collections.reverse(fromClimber);
    Beyond beyond = Beyond.atClimber();
    Optional<Place> unknown = Optional.empty();
    for (Place place : fromClimber) {
      Optional<Verdict> without = withoutNumbers(catalogue, path, place);
      if (without.isPresent()) {
        otherwise.put(place, without.get());
        unknown = unknown.or(() -> Optional.of(place));
      } else if (unknown.isPresent()) {
        otherwise.put(place, new Verdict.WaitsFor(unknown.get()));
      } else {
        ResolvedRig rig = resolved(catalogue, path, place).orElseThrow();
        boolean last = place.equals(path.last());
        known.put(place, last ? rig : rig.with(Measure.BEYOND, beyond.estimate(friction)));
        beyond = beyond.through(rig);
      }
    }
    Supports supports = new Supports(known, otherwise);
    supports.pullOnTheMainPoint(friction);
    return supports;
  }

  /**
   * The redirect next to the main point feels in the stem what else pulls there, and waits for it
   * where it is not known.
   */
  private void pullOnTheMainPoint(Source friction) {
    Optional<Place> below =
        known.entrySet().stream()
            .filter(entry -> entry.getValue().pullAbove() == PullAbove.TWO_LEGS)
            .map(Map.Entry::getKey)
            .findFirst();
    if (below.isEmpty()) {
      return;
    }
    ResolvedRig main = known.get(Place.MAIN_POINT);
    if (main == null) {
      known.remove(below.get());
      otherwise.put(below.get(), new Verdict.WaitsFor(Place.MAIN_POINT));
      return;
    }
    Estimate rise =
        main.measures()
            .getOrDefault(
                Measure.ANCHOR_LEG_ELEVATION,
                new Estimate(-Math.PI / 2, -Math.PI / 2, Math.PI / 2, HowGot.ASSUMED, friction));
    Estimate ratio = new Beyond(Beyond.mostRatio(main)).estimate(friction);
    known.computeIfPresent(
        below.get(),
        (place, rig) ->
            rig.with(Measure.BASE_LEG_ELEVATION, rise).with(Measure.BASE_LEG_RATIO, ratio));
  }

  private static Optional<Verdict> withoutNumbers(Catalogue catalogue, RopePath path, Place place) {
    List<Refusal> refusals = refusals(path.at(place));
    if (!refusals.isEmpty()) {
      return Optional.of(new Verdict.RefusedOutright(refusals));
    }
    if (catalogue.resolve(path, place) instanceof Resolution.Unknown unknown) {
      return Optional.of(new Verdict.CannotSay(unknown.missing(), unknown.conflicts()));
    }
    Optional<Conflict> elsewhere =
        resolved(catalogue, path, place).flatMap(SlingDirection::conflict);
    return elsewhere.map(conflict -> new Verdict.CannotSay(List.of(), List.of(conflict)));
  }

  private static Optional<ResolvedRig> resolved(Catalogue catalogue, RopePath path, Place place) {
    return catalogue.resolve(path, place) instanceof Resolution.Known known
        ? Optional.of(known.rig())
        : Optional.empty();
  }

  private static List<Refusal> refusals(Rig said) {
    List<Refusal> refusals = new ArrayList<>();
    if (said.value(Slot.WOOD, Value.Wood.class).filter(w -> w == Value.Wood.DEAD).isPresent()) {
      refusals.add(Refusal.DEAD_WOOD);
    }
    if (said.value(Slot.UNION, Value.Union.class)
        .filter(union -> union.has(Value.UnionCondition.CRACKED))
        .isPresent()) {
      refusals.add(Refusal.CRACKED_UNION);
    }
    if (said.value(Slot.CONNECTOR_LIES, Value.ConnectorLies.class)
        .filter(lies -> lies == Value.ConnectorLies.OVER_EDGE)
        .isPresent()) {
      refusals.add(Refusal.CONNECTOR_OVER_EDGE);
    }
    return refusals;
  }
}
