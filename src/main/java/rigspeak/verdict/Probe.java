package rigspeak.verdict;

import java.util.List;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Resolution;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;

/**
 * Tries one support with something changed, and the rest of the rope as it is. What the rest does
 * to it stays too: a change at one support alters the friction beyond it by nothing.
 */
final class Probe {
  /** What a support does not have of itself. */
  private static final List<Measure> FROM_THE_ROPE =
      List.of(Measure.BEYOND, Measure.BASE_LEG_ELEVATION, Measure.BASE_LEG_RATIO);

  private static final int FEW_SAMPLES = 1_000;

  private final Catalogue catalogue;
  private final RopePath path;
  private final ResolvedRig now;
  private final int samples;

  /**
   * @param samples by which the judge judges; whatever is offered must be good by them
   */
  Probe(Catalogue catalogue, RopePath path, ResolvedRig now, int samples) {
    this.samples = samples;
    this.catalogue = catalogue;
    this.path = path;
    this.now = now;
  }

  Rig said() {
    return now.said();
  }

  ResolvedRig now() {
    return now;
  }

  /** Whether the rope goes on to another support. */
  boolean goesOn() {
    return path.after(now.place()).isPresent();
  }

  /** The same with a redirect more between this support and the climber, not described yet. */
  Probe goingOn() {
    Place next = Place.redirectNumber(now.place().redirect() + 1);
    return new Probe(catalogue, path.with(next, now.said().climbOnly()), now, samples);
  }

  /** The same with other tensions beyond. */
  Probe with(Measure measure, Estimate estimate) {
    return new Probe(catalogue, path, now.with(measure, estimate), samples);
  }

  Optional<ResolvedRig> resolved(Rig changed) {
    RopePath there = path.with(now.place(), changed);
    if (!(catalogue.resolve(there, now.place()) instanceof Resolution.Known known)) {
      return Optional.empty();
    }
    ResolvedRig rig = known.rig();
    for (Measure measure : FROM_THE_ROPE) {
      if (now.has(measure)) {
        rig = rig.with(measure, now.measures().get(measure));
      }
    }
    return Optional.of(rig);
  }

  /**
   * Whether the judge would find it good. Most that is not is found out by few samples; the rest
   * may lie in a corner that few reach, a sling that slides where a branch is thin, steep and wet.
   */
  boolean isGood(Rig changed) {
    return resolved(changed)
        .filter(rig -> Survey.staysWithin(rig, FEW_SAMPLES))
        .filter(rig -> samples <= FEW_SAMPLES || Survey.staysWithin(rig, samples))
        .isPresent();
  }

  /** The largest utilisation of any check, or nothing if it cannot be known. */
  Optional<Double> worst(Rig changed, int samples) {
    return resolved(changed).map(rig -> Survey.worst(rig, samples));
  }

  /** The largest utilisation of one check, or nothing if it cannot be known. */
  Optional<Double> worst(Rig changed, CheckKind kind, int samples) {
    return resolved(changed).map(rig -> Survey.worst(rig, kind, samples));
  }

  /** The largest utilisation with every value at its word, or nothing if it cannot be known. */
  Optional<Double> asSaid(Rig changed) {
    return resolved(changed).map(Survey::asSaid);
  }
}
