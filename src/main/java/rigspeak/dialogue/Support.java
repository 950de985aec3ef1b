package rigspeak.dialogue;

import java.util.Optional;
import rigspeak.rig.Rig;
import rigspeak.verdict.PathVerdict;

/**
 * One support of a conversation.
 *
 * @param said what was said of it, and of the climb
 * @param verdict the last one given; it stands only while the rope is as it was then
 * @param state whether the rope runs over it
 */
public record Support(Rig said, Optional<PathVerdict> verdict, State state) {

  /** Whether a rope runs over a support. */
  public enum State {
    /** Planned, or taken off. */
    OFF,
    /** Let through the lanyard gate to be set. */
    SET,
    /** Its rope was said to be loaded. */
    LOADED
  }

  static Support of(Rig said) {
    return new Support(said, Optional.empty(), State.OFF);
  }

  Support with(Rig changed) {
    return new Support(changed, Optional.empty(), state);
  }

  Support judged(PathVerdict given) {
    return new Support(said, Optional.of(given), state);
  }

  Support in(State changed) {
    return new Support(said, verdict, changed);
  }

  Support unjudged() {
    return new Support(said, Optional.empty(), state);
  }
}
