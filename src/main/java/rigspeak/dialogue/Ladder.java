package rigspeak.dialogue;

import java.util.Optional;
import rigspeak.dialogue.Reply.Rung;

/**
 * How often in a row nothing was understood, or nothing was heard.
 *
 * @param missed the rung of the last reply to words that were not understood
 * @param silent the rung of the last reply to silence
 */
public record Ladder(Optional<Rung> missed, Optional<Rung> silent) {
  static Ladder foot() {
    return new Ladder(Optional.empty(), Optional.empty());
  }

  Rung nextMissed() {
    return missed.map(Rung::next).orElse(Rung.SAY_AGAIN);
  }

  Rung nextSilent() {
    return silent.map(Rung::next).orElse(Rung.SAY_AGAIN);
  }

  Ladder missedAt(Rung rung) {
    return new Ladder(Optional.of(rung), Optional.empty());
  }

  Ladder silentAt(Rung rung) {
    return new Ladder(missed, Optional.of(rung));
  }
}
