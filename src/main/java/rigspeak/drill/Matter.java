package rigspeak.drill;

import java.util.List;
import rigspeak.verdict.PathVerdict.Outcome;

/** What a question is about. */
public sealed interface Matter {

  /**
   * A rig: the usual one, changed.
   *
   * @param told what the trainee hears of it
   * @param beside what is changed too, and goes without saying
   */
  record OneRig(List<Change> told, List<Change> beside) implements Matter {
    public OneRig {
      told = List.copyOf(told);
      beside = List.copyOf(beside);
    }
  }

  /**
   * Two rigs, or one before and after a change, or a plan and how it was read back.
   *
   * @param first what the trainee hears of the first
   * @param second what the trainee hears of the second
   * @param beside what is changed in both, and goes without saying
   */
  record TwoRigs(List<Change> first, List<Change> second, List<Change> beside) implements Matter {
    public TwoRigs {
      first = List.copyOf(first);
      second = List.copyOf(second);
      beside = List.copyOf(beside);
    }
  }

  /** Steps in the order in which they are named. */
  record Steps(List<Step> named) implements Matter {
    public Steps {
      named = List.copyOf(named);
    }
  }

  /** Whether the rope was loaded, and what the check said. */
  record Lanyard(Outcome check, Loading rope) implements Matter {}

  /** Whether the rope has been loaded over the new redirect. */
  enum Loading {
    LOADED,
    NOT_YET
  }
}
