package rigspeak.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import rigspeak.catalogue.Catalogue;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** Holds a rope and its supports against their limits. */
public final class Judge {
  private static final int SAMPLES = 10_000;

  private final Catalogue catalogue;
  private final int samples;

  public Judge(Catalogue catalogue) {
    this(catalogue, SAMPLES);
  }

  /**
   * @param samples points of every box that are tried before the search for its worst; fewer than
   *     the usual ten thousand find less
   */
  public Judge(Catalogue catalogue, int samples) {
    this.catalogue = catalogue;
    this.samples = samples;
  }

  /**
   * The verdict on a rope as said; the same rope always gets the same verdict.
   *
   * @param asked which of its supports the question is about
   */
  public PathVerdict judge(RopePath path, Place asked) {
    Supports supports = Supports.of(catalogue, path);
    SortedMap<Place, Verdict> verdicts = new TreeMap<>(supports.otherwise());
    verdicts.putAll(each(supports.known(), (place, rig) -> judged(path, rig)));
    IfLost ifLost = new IfLost(path, supports.known(), samples);
    SortedMap<Place, Loss> losses =
        new TreeMap<>(each(supports.known(), (place, rig) -> ifLost.at(place)));
    if (path.has(Place.MAIN_POINT)) {
      losses.put(Place.MAIN_POINT, ifLost.at(Place.MAIN_POINT));
    }
    Optional<Swing> swing =
        Optional.ofNullable(supports.known().get(path.last()))
            .flatMap(rig -> WorkingPosition.swing(rig, catalogue.swingPromptDegrees().value()));
    return new PathVerdict(path, asked, verdicts, losses, swing);
  }

  /** Supports are independent of one another by now; there is more than one core. */
  private static <T> Map<Place, T> each(
      SortedMap<Place, ResolvedRig> known, BiFunction<Place, ResolvedRig, T> make) {
    return known.entrySet().parallelStream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey, entry -> make.apply(entry.getKey(), entry.getValue())));
  }

  private Judged judged(RopePath path, ResolvedRig rig) {
    Survey survey = Survey.whole(rig, samples);
    List<Check> checks = survey.checks();
    Rating rating = rating(checks);
    Check governing = governing(checks, rating);
    Optional<Measure> measureAgain =
        rating == Rating.MARGINAL
            ? survey.mostDoubtful(governing.kind(), Measurable::canBeMeasured)
            : Optional.empty();
    List<Remedy> remedies =
        rating == Rating.GOOD
            ? List.of()
            : new Remedies(new Probe(catalogue, path, rig, samples)).cheapestFirst();
    return new Judged(rating, survey.load(), checks, governing, measureAgain, remedies, rig);
  }

  static Rating rating(List<Check> checks) {
    if (checks.stream().anyMatch(check -> !(check.utilisation().nominal() <= 1))) {
      return Rating.REFUSE;
    }
    return checks.stream().allMatch(Check::staysWithin) ? Rating.GOOD : Rating.MARGINAL;
  }

  private static Check governing(List<Check> checks, Rating rating) {
    return checks.stream()
        .max(
            Comparator.comparingDouble(
                check ->
                    rating == Rating.REFUSE
                        ? check.utilisation().nominal()
                        : check.utilisation().high()))
        .orElseThrow();
  }
}
