package rigspeak.hearing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import rigspeak.audio.Overheard;
import rigspeak.audio.Sound;
import rigspeak.audio.SoundStream;
import rigspeak.grammar.Expected;

/** One person reads the sentences of enrolment; what comes of it is a {@link Profile}. */
public final class Enrolment {
  /** With fewer sentences than this, no profile is made: about 40 s of speech. A judgement. */
  public static final int LEAST_SENTENCES = 20;

  private final Ear ear;
  private final Aligner aligner;
  private final List<List<String>> sentences;
  private final TreeMap<Integer, Utterance> taken = new TreeMap<>();

  /** What came of the reading of a sentence. */
  public enum Reading {
    /** It is kept. */
    TAKEN,
    /** Nobody spoke. */
    NOTHING,
    TOO_QUIET,
    TOO_NOISY,
    CLIPPED,
    /** It sounds more like another of the sentences. */
    OTHER_WORDS,
    /** It had no voice or no end. */
    NOT_SPEECH
  }

  /**
   * What came of the enrolment.
   *
   * @param understoodBefore how many of the sentences the ear understands without the profile
   * @param understoodWith how many with it; never fewer: a map that does harm is left out
   */
  public record Enrolled(Profile profile, int understoodBefore, int understoodWith) {}

  private record Utterance(Sound sound, Aligned aligned, Levels levels) {}

  /**
   * Begins an enrolment.
   *
   * @param ear is used for nothing else meanwhile, and has no profile
   */
  public Enrolment(Ear ear) {
    this.ear = ear;
    this.sentences = sentences().stream().map(s -> List.of(s.split(" ", -1))).toList();
    this.aligner = ear.aligner(sentences);
  }

  /** The sentences in the order in which they are read. */
  public static List<String> sentences() {
    try (InputStream in = Ear.resource("enrolment.txt").openStream()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .toList();
    } catch (IOException e) {
      throw new HearingFault("The sentences of enrolment are missing; build it again.", e);
    }
  }

  /**
   * Waits for the reading of one sentence. A sentence may be read again; the last good one counts.
   *
   * @param sentence which one, from 0
   * @param stream is left open
   */
  public Reading read(int sentence, SoundStream stream) throws IOException {
    Overheard overheard = new Overheard(stream);
    try (Listening listening = ear.listenOnly(overheard)) {
      Optional<Heard> heard = listening.next(Expected.anything());
      return heard.map(h -> reading(sentence, h, overheard)).orElse(Reading.NOTHING);
    }
  }

  private Reading reading(int sentence, Heard heard, Overheard overheard) {
    if (heard instanceof Heard.Silence) {
      return Reading.NOTHING;
    } else if (heard instanceof Heard.TooQuiet) {
      return Reading.TOO_QUIET;
    } else if (heard instanceof Heard.TooNoisy) {
      return Reading.TOO_NOISY;
    } else if (heard instanceof Heard.Clipped) {
      return Reading.CLIPPED;
    } else if (heard instanceof Heard.NotUnderstood missed
        && (missed.reason() == Heard.Reason.NO_VOICE || missed.reason() == Heard.Reason.TOO_LONG)) {
      return Reading.NOT_SPEECH;
    }
    Sound sound = overheard.part(heard.when().startSeconds(), heard.when().endSeconds());
    Optional<Aligned> aligned =
        aligner.align(sound).filter(a -> a.words().equals(sentences.get(sentence)));
    if (aligned.isEmpty()) {
      return Reading.OTHER_WORDS;
    }
    taken.put(sentence, new Utterance(sound, aligned.get(), levels(sound)));
    return Reading.TAKEN;
  }

  /** How many sentences are kept. */
  public int taken() {
    return taken.size();
  }

  /**
   * Makes the profile.
   *
   * @return nothing if fewer than {@value #LEAST_SENTENCES} sentences are kept
   */
  public Optional<Enrolled> finish(String name) {
    if (taken.size() < LEAST_SENTENCES) {
      return Optional.empty();
    }
    List<Aligned.Frame> frames =
        taken.values().stream().flatMap(u -> u.aligned().frames().stream()).toList();
    Levels levels =
        new Levels(
            middle(taken.values().stream().mapToDouble(u -> u.levels().speech())),
            middle(taken.values().stream().mapToDouble(u -> u.levels().background())));
    String model = ear.densities().fingerprint();
    Profile plain = new Profile(name, model, taken.size(), levels, CepstrumMap.none());
    Profile mapped =
        new Profile(
            name, model, taken.size(), levels, Adaptation.estimate(frames, ear.densities()));
    int before = understood(plain);
    int with = understood(mapped);
    ear.use(plain);
    return Optional.of(
        with >= before ? new Enrolled(mapped, before, with) : new Enrolled(plain, before, before));
  }

  private int understood(Profile profile) {
    ear.use(profile);
    int count = 0;
    for (var entry : taken.entrySet()) {
      count += ear.hears(sentences.get(entry.getKey()), entry.getValue().sound()) ? 1 : 0;
    }
    return count;
  }

  private static Levels levels(Sound sound) {
    Endpointer endpointer =
        new Endpointer(Utterances.ends(ClosingPause.ORDINARY), Levels.unknown().firstGuess());
    UtteranceSource.Frames frames = UtteranceSource.framesOf(sound);
    double loudest = Double.NEGATIVE_INFINITY;
    for (short[] frame = frames.next(); frame != null; frame = frames.next()) {
      endpointer.take(frame);
      loudest = Math.max(loudest, endpointer.lastLevel());
    }
    return new Levels(loudest, endpointer.background());
  }

  private static double middle(DoubleStream values) {
    double[] sorted = values.sorted().toArray();
    return sorted[sorted.length / 2];
  }
}
