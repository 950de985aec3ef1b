package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import rigspeak.answer.LineNotice;
import rigspeak.answer.Mishap;
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

  /** Made while all is well. */
  private volatile Sound instead = EarSound.DANGER.sound();

  Mouth() {
    this(FreeTtsVoice.load());
  }

  Mouth(Voice voice) {
    this.voice = voice;
  }

  /** Makes the one sentence beforehand that is needed when no sentence can be made any more. */
  void prepare() {
    instead =
        Sound.joined(
            List.of(
                EarSound.NOT_UNDERSTOOD.sound(),
                voice.speak(Mishap.VOICE_FAILED.text(), Pace.ORDINARY)));
  }

  /** What is played where words cannot be made: a sentence of its own, or else an ear-sound. */
  Sound instead() {
    return instead;
  }

  /**
   * All answers of an exchange, piece by piece, each made when it is asked for; nothing if there
   * are none. It ends with the last word: whoever listens may speak at once.
   */
  Iterable<Sound> speak(Exchange exchange, rigspeak.dialogue.Pace pace) {
    return () -> parts(exchange, pace).stream().map(Supplier::get).iterator();
  }

  private List<Supplier<Sound>> parts(Exchange exchange, rigspeak.dialogue.Pace pace) {
    List<Supplier<Sound>> parts = new ArrayList<>();
    if (exchange.called()) {
      parts.add(EarSound.LISTENING::sound);
    } else if (!exchange.answers().isEmpty()) {
      parts.add(earSound(exchange)::sound);
    }
    boolean first = true;
    for (Utterance answer : exchange.answers()) {
      if (!first) {
        parts.add(Mouth::pause);
      }
      first = false;
      voice.phrases(answer.text(), speed(pace)).forEach(parts::add);
      if (answer.danger()) {
        parts.add(Mouth::pause);
        parts.add(EarSound.DANGER::sound);
        voice.phrases(answer.text(), speed(pace)).forEach(parts::add);
      }
    }
    if (exchange.fellAsleep()) {
      parts.add(EarSound.ASLEEP::sound);
    }
    return parts;
  }

  /** Sentences of a drill, piece by piece, after an ear-sound. */
  Iterable<Sound> speak(EarSound before, List<Utterance> answers, rigspeak.dialogue.Pace pace) {
    List<Supplier<Sound>> parts = new ArrayList<>();
    parts.add(before::sound);
    for (Utterance answer : answers) {
      parts.add(Mouth::pause);
      voice.phrases(answer.text(), speed(pace)).forEach(parts::add);
    }
    return () -> parts.stream().map(Supplier::get).iterator();
  }

  /** The same as one sound. */
  Sound whole(Exchange exchange, rigspeak.dialogue.Pace pace) {
    List<Sound> parts = new ArrayList<>();
    speak(exchange, pace).forEach(parts::add);
    return Sound.joined(parts);
  }

  /** What nobody said anything to, piece by piece. */
  Iterable<Sound> speak(Utterance utterance, rigspeak.dialogue.Pace pace) {
    List<Supplier<Sound>> parts = voice.phrases(utterance.text(), speed(pace)).toList();
    return () -> parts.stream().map(Supplier::get).iterator();
  }

  /** A word about the devices. */
  Sound speak(LineNotice notice, rigspeak.dialogue.Pace pace) {
    return voice.speak(notice.text(), speed(pace));
  }

  /** What goes out on a radio: a tone first, so that the channel is open when the words come. */
  Iterable<Sound> transmission(String text, rigspeak.dialogue.Pace pace) {
    List<Supplier<Sound>> parts = new ArrayList<>();
    parts.add(EarSound.LISTENING::sound);
    parts.add(Mouth::pause);
    voice.phrases(text, speed(pace)).forEach(parts::add);
    return () -> parts.stream().map(Supplier::get).iterator();
  }

  private static Sound pause() {
    return Sound.silence(PAUSE_SECONDS);
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
