package rigspeak.verdict;

import java.util.List;
import java.util.Optional;
import rigspeak.catalogue.Conflict;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;

/**
 * What can be said of one support. Never more than "good to load" by the numbers that were said.
 */
public sealed interface Verdict {

  /**
   * Too little is known, or what is known cannot be.
   *
   * @param missing in the order in which they are best asked
   */
  record CannotSay(List<Slot> missing, List<Conflict> conflicts) implements Verdict {
    public CannotSay {
      missing = List.copyOf(missing);
      conflicts = List.copyOf(conflicts);
    }
  }

  /**
   * Its load is not known before that of a support nearer the climber is.
   *
   * @param place that support
   */
  record WaitsFor(Place place) implements Verdict {}

  /** Refused for what it is, before any number. */
  record RefusedOutright(List<Refusal> refusals) implements Verdict {
    public RefusedOutright {
      refusals = List.copyOf(refusals);
    }
  }

  /**
   * Held against every limit over everything that may be true.
   *
   * @param rating what comes of it
   * @param checks in the order of their kinds
   * @param governing the check that decides
   * @param measureAgain where the rating is marginal, the measure whose bounds matter most
   * @param remedies the cheapest first; none for a good rig
   * @param rig the numbers that were used
   */
  record Judged(
      Rating rating,
      Load load,
      List<Check> checks,
      Check governing,
      Optional<Measure> measureAgain,
      List<Remedy> remedies,
      ResolvedRig rig)
      implements Verdict {
    public Judged {
      checks = List.copyOf(checks);
      remedies = List.copyOf(remedies);
    }
  }

  /** The outcome of the numbers. */
  enum Rating {
    /** Within every limit, whatever within its bounds is true. */
    GOOD,
    /** Within every limit as said, but not if the worst is true. */
    MARGINAL,
    /** Over a limit even as said. */
    REFUSE
  }
}
