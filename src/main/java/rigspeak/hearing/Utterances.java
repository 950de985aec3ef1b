package rigspeak.hearing;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;
import rigspeak.audio.Meter;
import rigspeak.audio.SoundStream;
import rigspeak.grammar.Expected;

/** Cuts a stream into utterances and has each recognised while it is being said. */
final class Utterances implements Listening {
  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

  private static final int ONSET_WINDOW = 15;

  /** Frames before the onset that belong to the utterance: soft consonants come first. */
  private static final int LEADER = 25;

  /** Frames without speech after which it may be over: the search has then the rest to catch up. */
  private static final int PAUSE = 20;

  private final Ear ear;
  private final Consumer<Ear.Recognised.Row> taken;
  private final SoundStream stream;
  private final Endpointer endpointer;
  private final Deque<short[]> leader = new ArrayDeque<>();
  private long framesRead;
  private boolean streamEnded;
  private boolean anythingSaid;
  private long lastArrival;

  /**
   * Begins to hear a stream.
   *
   * @param taken is told each row that was taken
   */
  Utterances(Ear ear, SoundStream stream, ClosingPause pause, Consumer<Ear.Recognised.Row> taken) {
    this.ear = ear;
    this.taken = taken;
    this.stream = stream;
    this.endpointer = new Endpointer(ends(pause), ear.levels().firstGuess());
  }

  static Endpointer.Settings ends(ClosingPause pause) {
    return new Endpointer.Settings(6, 10, ONSET_WINDOW, pause.frames(), 20 * 100);
  }

  @Override
  public void expectSoon(Expected expected) {
    ear.expectSoon(expected);
  }

  @Override
  public Optional<Heard> next(Expected expected, double patienceSeconds) throws IOException {
    ear.expect(expected);
    long from = framesRead;
    while (!streamEnded) {
      short[] frame = frame();
      if (frame == null) {
        break;
      }
      leader.add(frame);
      if (leader.size() > LEADER + ONSET_WINDOW) {
        leader.remove();
      }
      if (endpointer.take(frame) == Endpointer.Turn.BEGINS) {
        try {
          Optional<Heard> heard = utterance();
          if (heard.isPresent()) {
            anythingSaid = true;
            return heard;
          }
        } finally {
          ear.letGo();
        }
      }
      if (framesRead - from >= patienceSeconds * 100) {
        anythingSaid = true;
        return Optional.of(new Heard.Silence(stretch(from, 0)));
      }
    }
    if (anythingSaid) {
      return Optional.empty();
    }
    anythingSaid = true;
    return Optional.of(new Heard.Silence(stretch(from, 0)));
  }

  @Override
  public void close() {
    stream.close();
  }

  /** What was said; nothing if it was the noise that the stream begins with. */
  private Optional<Heard> utterance() throws IOException {
    long from = framesRead - leader.size();
    Spoken spoken = new Spoken();
    long begun = CPU.getCurrentThreadCpuTime();
    Ear.Recognised recognised = ear.recognise(spoken);
    while (spoken.next() != null) {
      // The search gave up early; the rest of the utterance still has to go by.
    }
    if (spoken.broken.isPresent()) {
      throw spoken.broken.get();
    }
    Heard.Stretch when = stretch(from, CPU.getCurrentThreadCpuTime() - begun);
    return spoken.wasNoise ? Optional.empty() : Optional.of(judged(spoken, recognised, when));
  }

  private Heard judged(Spoken spoken, Ear.Recognised recognised, Heard.Stretch when) {
    SoundCheck.Finding finding =
        SoundCheck.finding(
            spoken.meter.level().clippedShare(),
            spoken.loudest,
            endpointer.background(),
            spoken.voice,
            ear.levels().leastLevel());
    return switch (finding) {
      case CLIPPED -> new Heard.Clipped(when);
      case TOO_QUIET -> new Heard.TooQuiet(when);
      case NO_VOICE -> new Heard.NotUnderstood(Heard.Reason.NO_VOICE, when);
      case TOO_NOISY -> inNoise(weighed(spoken, recognised, when));
      case FINE -> weighed(spoken, recognised, when);
    };
  }

  /** In noise, too, words may be made out; if they are not, it is the noise. */
  private static Heard inNoise(Heard heard) {
    Heard noise = new Heard.TooNoisy(heard.when());
    if (heard instanceof Heard.Doubtful doubtful) {
      return new Heard.Doubtful(doubtful.words(), noise, doubtful.when());
    }
    return heard instanceof Heard.NotUnderstood ? noise : heard;
  }

  private Heard weighed(Spoken spoken, Ear.Recognised recognised, Heard.Stretch when) {
    if (spoken.tooLong) {
      return new Heard.NotUnderstood(Heard.Reason.TOO_LONG, when);
    }
    if (!spoken.closed && endpointer.quietFrames() < PAUSE) {
      // The stream broke off in the midst of it.
      return new Heard.NotUnderstood(Heard.Reason.UNFINISHED, when);
    }
    if (recognised instanceof Ear.Recognised.Not not) {
      return new Heard.NotUnderstood(not.reason(), when);
    }
    Ear.Recognised.Row row = (Ear.Recognised.Row) recognised;
    Acceptance.Evidence evidence =
        row.evidence().aboveNoise(spoken.loudest - endpointer.background());
    Optional<Heard.Reason> against = ear.against(row.words(), evidence);
    if (against.isEmpty()) {
      taken.accept(row);
      return new Heard.Words(row.words(), when);
    }
    if (ear.mayBe(evidence)) {
      return new Heard.Doubtful(row.words(), new Heard.NotUnderstood(against.get(), when), when);
    }
    return ear.callAlone(evidence)
        .<Heard>map(call -> new Heard.Words(call, when))
        .orElseGet(() -> new Heard.NotUnderstood(against.get(), when));
  }

  private Heard.Stretch stretch(long fromFrame, long busyNanos) {
    double lag = lastArrival == 0 ? 0 : (System.nanoTime() - lastArrival) / 1e9;
    return new Heard.Stretch(fromFrame / 100.0, framesRead / 100.0, busyNanos / 1e9, lag);
  }

  /** The next 10 ms, filled up with silence at the end; null when there is no more. */
  private short[] frame() throws IOException {
    short[] frame = new short[Endpointer.FRAME];
    int length = 0;
    while (length < frame.length) {
      int read = stream.read(frame, length, frame.length - length);
      if (read == SoundStream.END) {
        streamEnded = true;
        break;
      }
      length += read;
    }
    lastArrival = System.nanoTime();
    if (length == 0) {
      return null;
    }
    Arrays.fill(frame, length, frame.length, (short) 0);
    framesRead++;
    return frame;
  }

  /** The frames of one utterance, from its leader to its closing pause. */
  private final class Spoken implements UtteranceSource.Frames {
    private final Meter meter = new Meter();
    private final VoiceDetector voice = new VoiceDetector();
    private double loudest = Double.NEGATIVE_INFINITY;
    private boolean over;
    private boolean closed;
    private boolean tooLong;
    private boolean wasNoise;
    private Optional<IOException> broken = Optional.empty();

    @Override
    public short[] next() {
      if (!leader.isEmpty()) {
        return metered(leader.remove());
      }
      short[] frame = over || streamEnded ? null : nextOfStream();
      if (frame == null) {
        over = true;
        return null;
      }
      Endpointer.Turn turn = endpointer.take(frame);
      loudest = Math.max(loudest, endpointer.lastLevel());
      tooLong = turn == Endpointer.Turn.TOO_LONG;
      closed = turn == Endpointer.Turn.ENDS;
      wasNoise = turn == Endpointer.Turn.WAS_NOISE;
      over = tooLong || closed || wasNoise;
      return metered(frame);
    }

    @Override
    public boolean isPausing() {
      return leader.isEmpty() && endpointer.quietFrames() >= PAUSE;
    }

    /** Nothing, too, if the line broke: the search has to be brought to its end first. */
    private short[] nextOfStream() {
      try {
        return frame();
      } catch (IOException e) {
        broken = Optional.of(e);
        return null;
      }
    }

    private short[] metered(short[] frame) {
      meter.add(frame, 0, frame.length);
      voice.take(frame);
      return frame;
    }
  }
}
