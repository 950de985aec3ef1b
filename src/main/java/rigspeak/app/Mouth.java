package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import rigspeak.answer.LineNotice;
import rigspeak.answer.Utterance;
import rigspeak.audio.Sound;
import rigspeak.dialogue.Reply;
import rigspeak.speaking.EarSound;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;
import rigspeak.speaking.Voice;

/** Speaks answers: the ear-sound that goes before them, danger twice. */
final class Mouth {
  private static final double PAUSE_SECONDS = 0.35;

  private final Voice voice;

  Mouth() {
    this.voice = FreeTtsVoice.load();
  }

  /**
   * All answers of an exchange as one sound; silence if there are none. It ends with the last word:
   * whoever listens may speak at once.
   */
  Sound speak(Exchange exchange, rigspeak.dialogue.Pace pace) {
    List<Sound> parts = new ArrayList<>();
    if (exchange.called()) {
      parts.add(EarSound.LISTENING.sound());
    } else if (!exchange.answers().isEmpty()) {
      parts.add(earSound(exchange).sound());
    }
    boolean first = true;
    for (Utterance answer : exchange.answers()) {
      Sound words = voice.speak(answer.text(), speed(pace));
      if (!first) {
        parts.add(Sound.silence(PAUSE_SECONDS));
      }
      first = false;
      parts.add(words);
      if (answer.danger()) {
        parts.add(Sound.silence(PAUSE_SECONDS));
        parts.add(EarSound.DANGER.sound());
        parts.add(words);
      }
    }
    if (exchange.fellAsleep()) {
      parts.add(EarSound.ASLEEP.sound());
    }
    return Sound.joined(parts);
  }

  /** A word about the devices. */
  Sound speak(LineNotice notice, rigspeak.dialogue.Pace pace) {
    return voice.speak(notice.text(), speed(pace));
  }

  private static EarSound earSound(Exchange exchange) {
    if (exchange.answers().stream().anyMatch(Utterance::danger)) {
      return EarSound.DANGER;
    }
    boolean refused =
        !exchange.understood()
            || exchange.replies().stream().anyMatch(Reply.Implausible.class::isInstance);
    return refused ? EarSound.NOT_UNDERSTOOD : EarSound.TAKEN;
  }

  private static Pace speed(rigspeak.dialogue.Pace pace) {
    return switch (pace) {
      case SLOW -> Pace.ORDINARY.slower();
      case NORMAL -> Pace.ORDINARY;
      case FAST -> Pace.ORDINARY.faster();
    };
  }
}
