package rigspeak.dialogue;

import java.util.Optional;
import rigspeak.rig.Rig;
import rigspeak.verdict.Verdict;

/**
 * One redirect of a conversation.
 *
 * @param said what was said of it, and of the climb
 * @param verdict the verdict that stands; none once anything has changed
 * @param loaded its rope was said to be loaded
 */
public record Support(Rig said, Optional<Verdict> verdict, boolean loaded) {
  static Support of(Rig said) {
    return new Support(said, Optional.empty(), false);
  }

  Support with(Rig changed) {
    return new Support(changed, Optional.empty(), loaded);
  }

  Support judged(Verdict given) {
    return new Support(said, Optional.of(given), loaded);
  }

  Support withLoad(boolean isLoaded) {
    return new Support(said, verdict, isLoaded);
  }

  /** Good, and nothing has changed since. */
  boolean isGood() {
    return verdict
        .filter(v -> v instanceof Verdict.Judged judged && judged.rating() == Verdict.Rating.GOOD)
        .isPresent();
  }
}
