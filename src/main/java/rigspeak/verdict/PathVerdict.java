package rigspeak.verdict;

import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/**
 * What can be said of a rope: of every support on it, each in its present pull. The worst governs.
 *
 * @param path the supports as they were said
 * @param asked the support that was asked about
 * @param supports a verdict for each
 * @param losses what happens if one lets go, for each
 * @param swing in the working position, where the leg to the climber was said with its length
 */
public record PathVerdict(
    RopePath path,
    Place asked,
    SortedMap<Place, Verdict> supports,
    SortedMap<Place, Loss> losses,
    Optional<Swing> swing) {

  /** What comes of the whole rope, the worst last. */
  public enum Outcome {
    /** Every support is within every limit, whatever within its bounds is true. */
    GOOD,
    /** As said all is within its limits, but not if the worst is true. */
    MARGINAL,
    /** Something is missing, or cannot be. */
    CANNOT_SAY,
    /** Something is over its limit even as said. */
    REFUSE
  }

  public PathVerdict {
    supports = Collections.unmodifiableSortedMap(new TreeMap<>(supports));
    losses = Collections.unmodifiableSortedMap(new TreeMap<>(losses));
  }

  public Outcome outcome() {
    return outcome(supports.get(governing()));
  }

  public boolean isGood() {
    return outcome() == Outcome.GOOD;
  }

  /** The verdict on the support that was asked about. */
  public Verdict ofAsked() {
    return supports.get(asked);
  }

  public Verdict ofGoverning() {
    return supports.get(governing());
  }

  /** The support that decides: the one asked about unless another is worse. */
  public Place governing() {
    Comparator<Map.Entry<Place, Verdict>> worse =
        Comparator.comparing((Map.Entry<Place, Verdict> entry) -> outcome(entry.getValue()))
            .thenComparing(entry -> !(entry.getValue() instanceof Verdict.WaitsFor))
            .thenComparing(entry -> utilisation(entry.getValue()))
            .thenComparing(entry -> entry.getKey().equals(asked));
    return supports.entrySet().stream().max(worse).orElseThrow().getKey();
  }

  /** What comes of one support by itself. */
  public static Outcome outcome(Verdict verdict) {
    if (verdict instanceof Judged judged) {
      return switch (judged.rating()) {
        case GOOD -> Outcome.GOOD;
        case MARGINAL -> Outcome.MARGINAL;
        case REFUSE -> Outcome.REFUSE;
      };
    }
    return verdict instanceof Verdict.RefusedOutright ? Outcome.REFUSE : Outcome.CANNOT_SAY;
  }

  /** What is refused outright is beyond any number. */
  private static double utilisation(Verdict verdict) {
    if (verdict instanceof Judged judged) {
      Spread use = judged.governing().utilisation();
      return judged.rating() == Rating.REFUSE ? use.nominal() : use.high();
    }
    return verdict instanceof Verdict.RefusedOutright ? Double.MAX_VALUE : 0;
  }
}
