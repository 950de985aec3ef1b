package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;

/** The live conversation for hours of simulated time, and what the program holds meanwhile. */
final class Soak {
  private static final double WINDOW_SECONDS = 8;

  /** So far into a noise the search follows as many paths as it ever will, or nearly. */
  private static final double INTO_NOISE_SECONDS = 10;

  /** What is held between two utterances hangs on how long the last one was. */
  private static final int UTTERANCES_TO_A_LOOK = 3;

  private final Ear ear;
  private final Grammar grammar;
  private final Mouth mouth;
  private final Scribe scribe;

  Soak(Grammar grammar, Ear ear, Mouth mouth, Scribe scribe) {
    this.grammar = grammar;
    this.ear = ear;
    this.mouth = mouth;
    this.scribe = scribe;
  }

  /**
   * Talks until the time is over.
   *
   * @param seconds of simulated time
   * @param restSeconds for so long, on average, nobody talks to it after some recordings
   * @param looks how often it is looked at in this time
   * @param watcher is shown each look at once
   */
  Day run(
      List<Sound> recordings,
      double seconds,
      double restSeconds,
      int looks,
      Consumer<Footprint> watcher)
      throws IOException, NoSuchDevice {
    Key key = new Key();
    SoakLine line = new SoakLine(recordings, key, seconds, restSeconds);
    Looks seen = new Looks(line, seconds / looks, watcher);
    Microphone watched = new Watched(line, seen);
    Session session = new Session(grammar, Attention.asleep(WINDOW_SECONDS), scribe);
    new LiveConversation(
            session,
            key,
            new ArrayDeque<>(),
            () -> ear,
            mouth,
            ClosingPause.ORDINARY,
            new Plugged(watched, line),
            new Report(new PrintWriter(Writer.nullWriter()), true),
            new PrintWriter(Writer.nullWriter()))
        .run(() -> session.begin().stream().toList());
    return new Day(seen.all, line.said());
  }

  /**
   * What came of it.
   *
   * @param said how many recordings
   */
  record Day(List<Footprint> looks, int said) {
    Day {
      looks = List.copyOf(looks);
    }
  }

  /** Somebody who looks up every so often: between two utterances, and in the midst of noise. */
  private static final class Looks {
    private final SoakLine line;
    private final double everySeconds;
    private final Consumer<Footprint> watcher;
    private final List<Footprint> all = new ArrayList<>();
    private double inNoise = Double.NaN;
    private double least = Double.POSITIVE_INFINITY;
    private int utterances;

    Looks(SoakLine line, double everySeconds, Consumer<Footprint> watcher) {
      this.line = line;
      this.everySeconds = everySeconds;
      this.watcher = watcher;
    }

    /** Nothing is being said. */
    void between() throws IOException {
      if (line.seconds() < (all.size() + 1) * everySeconds) {
        return;
      }
      least = Math.min(least, Footprint.heldMegabytes());
      utterances++;
      if (utterances == UTTERANCES_TO_A_LOOK) {
        all.add(Footprint.now(line.seconds(), least, inNoise));
        watcher.accept(all.get(all.size() - 1));
        inNoise = Double.NaN;
        least = Double.POSITIVE_INFINITY;
        utterances = 0;
      }
    }

    /** The search is on what is being said. */
    void meanwhile() {
      if (Double.isNaN(inNoise) && line.sawSeconds() > INTO_NOISE_SECONDS) {
        inNoise = Footprint.heldMegabytes();
      }
    }
  }

  /** The one headset, which is there again as soon as it is looked for. */
  private record Plugged(Microphone microphone, Loudspeaker loudspeaker)
      implements LiveConversation.Lines {
    @Override
    public void beforeNext(int attempt) {
      // It takes no time.
    }
  }

  /** A microphone that is looked at when it is opened, and while it is read. */
  private record Watched(Microphone line, Looks looks) implements Microphone {
    @Override
    public String name() {
      return line.name();
    }

    @Override
    public int read(short[] into, int from, int most) throws IOException {
      looks.meanwhile();
      return line.read(into, from, most);
    }

    @Override
    public void shut() {
      line.shut();
    }

    @Override
    public void reopen(long playedNanos) {
      line.reopen(playedNanos);
      try {
        looks.between();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void close() {
      line.close();
    }
  }
}
