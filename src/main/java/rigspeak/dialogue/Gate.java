package rigspeak.dialogue;

import java.util.Optional;
import rigspeak.dialogue.Reply.Change;

/**
 * The lanyard gate.
 *
 * @param lanyard the second attachment
 * @param wanted what the climber is about to do and has not been let to do yet
 */
public record Gate(Lanyard lanyard, Optional<Change> wanted) {
  static Gate unknown() {
    return new Gate(Lanyard.UNKNOWN, Optional.empty());
  }

  boolean isOpen() {
    return lanyard == Lanyard.CLIPPED_IN;
  }

  Gate wanting(Change change) {
    return new Gate(lanyard, Optional.of(change));
  }

  Gate nothingWanted() {
    return new Gate(lanyard, Optional.empty());
  }

  Gate clippedIn() {
    return new Gate(Lanyard.CLIPPED_IN, Optional.empty());
  }

  Gate released() {
    return new Gate(Lanyard.RELEASED, Optional.empty());
  }

  /** What was said of the lanyard may no longer be so. */
  Gate inDoubt() {
    return new Gate(Lanyard.UNKNOWN, wanted);
  }
}
