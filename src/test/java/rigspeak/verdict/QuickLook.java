package rigspeak.verdict;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Resolution;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/**
 * The judge's own survey with fewer samples, for thousands of rigs, and only when it is asked for.
 * Where two quick ratings differ as they must not, the whole judge has the last word.
 */
final class QuickLook {
  static final int EVERYDAY_RIGS = 2_000;
  static final int LONG_RIGS = 20_000;

  static final Catalogue CATALOGUE = Catalogue.bundled();
  static final Judge JUDGE = new Judge(CATALOGUE);

  /** For what does not hang on how many samples are tried: values as said, remedies, reasons. */
  static final Judge BRIEF = new Judge(CATALOGUE, 500);

  private static final Place ALONE = Place.redirectNumber(1);
  private static final int SAMPLES = 128;
  static final int WHOLE_SAMPLES = 10_000;

  private static List<QuickLook> everyday;

  /** At the first two thousand rigs; looked at once for all tests. */
  static synchronized List<QuickLook> everyday() {
    if (everyday == null) {
      everyday = atAll(SampledRigs.first(EVERYDAY_RIGS));
    }
    return everyday;
  }

  static List<QuickLook> atAll(List<Rig> rigs) {
    return rigs.stream().map(QuickLook::at).toList();
  }

  private final Rig rig;
  private final ResolvedRig resolved;
  private Survey survey;

  private QuickLook(Rig rig) {
    this.rig = rig;
    this.resolved = resolved(rig);
  }

  static QuickLook at(Rig rig) {
    return new QuickLook(rig);
  }

  Rig rig() {
    return rig;
  }

  ResolvedRig resolved() {
    return resolved;
  }

  /** What is refused as said is not looked at any further. */
  Rating rating() {
    if (refused()) {
      return Rating.REFUSE;
    }
    return largest() <= Check.WELL_WITHIN ? Rating.GOOD : Rating.MARGINAL;
  }

  /**
   * Whether the worst is so near the limit that a search which misses a little could tell good from
   * marginal wrongly.
   */
  boolean nearItsLimit() {
    return !refused() && largest() >= 0.8 && largest() <= 1.2;
  }

  double largest() {
    return survey().checks().stream()
        .mapToDouble(check -> check.utilisation().high())
        .max()
        .orElseThrow();
  }

  Load load() {
    return survey().load();
  }

  /** Utilisation at the values as said, by check. */
  Map<CheckKind, Double> nominal() {
    Map<CheckKind, Double> nominal = new EnumMap<>(CheckKind.class);
    survey().checks().forEach(check -> nominal.put(check.kind(), check.utilisation().nominal()));
    return nominal;
  }

  private Survey survey() {
    if (survey == null) {
      survey = Survey.whole(resolved, SAMPLES);
    }
    return survey;
  }

  /** Whether a check is over its limit as said, whichever way the rope's friction acts. */
  boolean refused() {
    for (Creep creep : Creep.values()) {
      for (Trial.Held held : Trial.of(resolved, resolved.nominal(), creep).held()) {
        if (!(held.utilisation() <= 1)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The rating by the whole judge. */
  static Rating wholeRating(Rig rig) {
    return judged(rig).rating();
  }

  /** The same without a look for remedies. */
  static Optional<Rating> wholeRatingAlone(Rig rig) {
    return Optional.of(Judge.rating(Survey.whole(resolved(rig), WHOLE_SAMPLES).checks()));
  }

  /** The verdict on one redirect by itself. */
  static Verdict verdict(Rig rig) {
    return JUDGE.judge(RopePath.alone(rig), ALONE).ofAsked();
  }

  static Judged judged(Rig rig) {
    Verdict verdict = verdict(rig);
    if (verdict instanceof Judged judged) {
      return judged;
    }
    throw new AssertionError("no rating: " + verdict + " of " + rig);
  }

  /** What a brief judge offers; it is as good as a brief judge can tell. */
  static List<Remedy> remedies(Rig rig) {
    Verdict verdict = BRIEF.judge(RopePath.alone(rig), ALONE).ofAsked();
    if (verdict instanceof Judged judged) {
      return judged.remedies();
    }
    throw new AssertionError("no rating: " + verdict + " of " + rig);
  }

  static ResolvedRig resolved(Rig rig) {
    Resolution resolution = CATALOGUE.resolve(RopePath.alone(rig), ALONE);
    if (resolution instanceof Resolution.Known known) {
      return known.rig();
    }
    throw new AssertionError("not known: " + resolution + " of " + rig);
  }
}
