package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import rigspeak.answer.SoundCheckWords;
import rigspeak.answer.SoundCheckWords.Attempt;
import rigspeak.answer.SoundCheckWords.Place;
import rigspeak.answer.SoundCheckWords.Signal;
import rigspeak.answer.Utterance;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Overheard;
import rigspeak.audio.Sound;
import rigspeak.dialogue.Pace;
import rigspeak.grammar.Expected;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.hearing.SoundCheck;
import rigspeak.speaking.EarSound;

/**
 * A headset tried by voice before anyone climbs: the sounds, how loud the place is, whether words
 * arrive. It ends with one sentence, ready or what to change, and is ready only if the very words
 * that were asked for were heard at a level that is fine.
 */
final class HeadsetTrial {
  /** In the grammar, and with a number, which is what must arrive. */
  static final String PHRASE = "limb eight inches by tape";

  private static final int TRIES = 3;
  private static final double QUIET_SECONDS = 3;

  /** From here on up the ear has to learn the noise before it hears: its own first guess, dB. */
  private static final double LOUD = -55;

  /**
   * A voice with peaks 6 dB below full scale has its loudest frame at -29 dB (median of the demo
   * day's recordings), and must be 11 dB above the noise.
   */
  private static final double TOO_LOUD = -40;

  private final Supplier<Ear> ears;
  private final Mouth mouth;
  private final ClosingPause pause;
  private final PrintWriter out;

  /**
   * @param ears loads the recogniser; asked once, when microphone and loudspeaker are there
   */
  HeadsetTrial(Supplier<Ear> ears, Mouth mouth, ClosingPause pause, PrintWriter out) {
    this.ears = ears;
    this.mouth = mouth;
    this.pause = pause;
    this.out = out;
  }

  /**
   * Tries them.
   *
   * @return whether they are ready
   * @throws NoSuchDevice if there is none; of a microphone the loudspeaker tells it too
   * @throws IOException if one is lost meanwhile
   */
  boolean run(LiveConversation.Lines lines) throws IOException, NoSuchDevice {
    try (Loudspeaker loudspeaker = lines.loudspeaker();
        Microphone microphone = microphone(lines, loudspeaker)) {
      return new Running(microphone, loudspeaker, ears.get()).run();
    }
  }

  private Microphone microphone(LiveConversation.Lines lines, Loudspeaker loudspeaker)
      throws IOException, NoSuchDevice {
    try {
      return lines.microphone();
    } catch (NoSuchDevice none) {
      say(loudspeaker, SoundCheckWords.noMicrophone());
      throw none;
    }
  }

  private long say(Loudspeaker loudspeaker, Utterance utterance) throws IOException {
    out.println(utterance.text());
    out.flush();
    return loudspeaker.play(mouth.speak(utterance, Pace.NORMAL));
  }

  /** With both of them open. */
  private final class Running {
    private final Microphone microphone;
    private final Loudspeaker loudspeaker;
    private final Ear ear;

    Running(Microphone microphone, Loudspeaker loudspeaker, Ear ear) {
      this.microphone = microphone;
      this.loudspeaker = loudspeaker;
      this.ear = ear;
    }

    boolean run() throws IOException {
      microphone.shut();
      out.println("Microphone   " + microphone.name());
      out.println("Loudspeaker  " + loudspeaker.name());
      say(SoundCheckWords.devices(microphone.name(), loudspeaker.name()));
      for (Signal signal : Signal.values()) {
        say(SoundCheckWords.signal(signal));
        loudspeaker.play(List.of(sound(signal), Sound.silence(0.3)));
      }
      Place place = place();
      say(SoundCheckWords.place(place));
      Attempt attempt = attempts();
      boolean ready = attempt == Attempt.FINE;
      say(ready ? SoundCheckWords.ready() : SoundCheckWords.notReady(place, attempt));
      return ready;
    }

    private Place place() throws IOException {
      Utterance asking = SoundCheckWords.sayNothing();
      SoundCheck check = null;
      for (int i = 0; i < TRIES; i++) {
        microphone.shut();
        microphone.reopen(say(asking));
        check = SoundCheck.of(microphone, QUIET_SECONDS);
        if (check.finding() != SoundCheck.Finding.FINE) {
          break;
        }
        asking = SoundCheckWords.somebodySpoke();
      }
      microphone.shut();
      double level = check.backgroundDecibels();
      out.printf(Locale.ROOT, "background %.0f dB%n", level);
      return level < LOUD ? Place.QUIET : level < TOO_LOUD ? Place.LOUD : Place.TOO_LOUD;
    }

    /** The first that is fine, or the last. */
    private Attempt attempts() throws IOException {
      // One stream for all tries, so that the ear knows the noise at the second.
      Overheard overheard = new Overheard(microphone);
      Attempt attempt = Attempt.NOTHING_SAID;
      try (Listening listening = ear.listen(overheard, pause)) {
        for (int i = 0; i < TRIES && attempt != Attempt.FINE; i++) {
          say(SoundCheckWords.ask(PHRASE));
          microphone.shut();
          microphone.reopen(loudspeaker.play(EarSound.LISTENING.sound()));
          Optional<Heard> heard = listening.next(Expected.anything());
          microphone.shut();
          attempt = heard.map(HeadsetTrial::attempt).orElse(Attempt.NOTHING_SAID);
          if (attempt != Attempt.NOTHING_SAID) {
            printLevels(heard.orElseThrow().when(), overheard);
          }
          say(SoundCheckWords.heard(attempt, heard.map(HeadsetTrial::words).orElse("")));
        }
      }
      return attempt;
    }

    private void printLevels(Heard.Stretch when, Overheard overheard) throws IOException {
      Sound sound = overheard.part(when.startSeconds(), when.endSeconds());
      SoundCheck levels = SoundCheck.of(sound.stream(), sound.seconds());
      out.printf(
          Locale.ROOT,
          "voice %.0f dB, background %.0f dB, peak %.0f dB, clipped %.1f %%%n",
          levels.voiceDecibels(),
          levels.backgroundDecibels(),
          levels.peakDecibels(),
          100 * levels.clippedShare());
    }

    private long say(Utterance utterance) throws IOException {
      return HeadsetTrial.this.say(loudspeaker, utterance);
    }
  }

  private static Sound sound(Signal signal) {
    return EarSound.valueOf(signal.name()).sound();
  }

  private static String words(Heard heard) {
    return heard instanceof Heard.Words words ? words.text() : "";
  }

  private static Attempt attempt(Heard heard) {
    if (heard instanceof Heard.Words words) {
      return words.text().equals(PHRASE) ? Attempt.FINE : Attempt.OTHER_WORDS;
    } else if (heard instanceof Heard.Doubtful doubtful) {
      return attempt(doubtful.otherwise());
    } else if (heard instanceof Heard.TooQuiet) {
      return Attempt.TOO_QUIET;
    } else if (heard instanceof Heard.Clipped) {
      return Attempt.CLIPPED;
    } else if (heard instanceof Heard.TooNoisy) {
      return Attempt.TOO_NOISY;
    } else if (heard instanceof Heard.Silence) {
      return Attempt.NOTHING_SAID;
    }
    return Attempt.NOT_UNDERSTOOD;
  }
}
