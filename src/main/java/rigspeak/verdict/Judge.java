package rigspeak.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Conflict;
import rigspeak.catalogue.Resolution;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** Holds a rig against its limits. */
public final class Judge {
  private static final int SAMPLES = 10_000;

  private final Catalogue catalogue;

  public Judge(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The verdict on a rig as said; the same rig always gets the same verdict. */
  public Verdict judge(Rig said) {
    List<Refusal> refusals = refusals(said);
    if (!refusals.isEmpty()) {
      return new Verdict.RefusedOutright(refusals);
    }
    Resolution resolution = catalogue.resolve(said);
    if (resolution instanceof Resolution.Unknown unknown) {
      return new Verdict.CannotSay(unknown.missing(), unknown.conflicts());
    }
    ResolvedRig rig = ((Resolution.Known) resolution).rig();
    Optional<Conflict> elsewhere = SlingDirection.conflict(rig);
    if (elsewhere.isPresent()) {
      return new Verdict.CannotSay(List.of(), List.of(elsewhere.get()));
    }
    return judged(rig);
  }

  /**
   * The rating alone, from as many samples as are asked for; the search for the worst is the same.
   */
  Optional<Rating> rating(Rig said, int samples) {
    return catalogue.resolve(said) instanceof Resolution.Known known
        ? Optional.of(rating(Survey.whole(known.rig(), samples).checks()))
        : Optional.empty();
  }

  /** The largest utilisation of this rig, or nothing if it cannot be known. */
  Optional<Double> worst(Rig said, int samples) {
    return catalogue.resolve(said) instanceof Resolution.Known known
        ? Optional.of(Survey.worst(known.rig(), samples))
        : Optional.empty();
  }

  private Judged judged(ResolvedRig rig) {
    Survey survey = Survey.whole(rig, SAMPLES);
    List<Check> checks = survey.checks();
    Rating rating = rating(checks);
    Check governing = governing(checks, rating);
    Optional<Measure> measureAgain =
        rating == Rating.MARGINAL
            ? survey.mostDoubtful(governing.kind(), Measurable::canBeMeasured)
            : Optional.empty();
    List<Remedy> remedies =
        rating == Rating.GOOD ? List.of() : new Remedies(this, rig.said()).cheapestFirst();
    return new Judged(rating, survey.load(), checks, governing, measureAgain, remedies, rig);
  }

  private static Rating rating(List<Check> checks) {
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
    return refusals;
  }
}
