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

  private final Ear ear;
  private final Grammar grammar;
  private final Mouth mouth;

  Soak(Grammar grammar, Ear ear, Mouth mouth) {
    this.grammar = grammar;
    this.ear = ear;
    this.mouth = mouth;
  }

  /**
   * Talks until the time is over.
   *
   * @param seconds of simulated time
   * @param looks how often it is looked at in this time
   * @param watcher is shown each look at once
   */
  List<Footprint> run(
      List<Sound> recordings, double seconds, int looks, Consumer<Footprint> watcher)
      throws IOException, NoSuchDevice {
    Key key = new Key();
    SoakLine line = new SoakLine(recordings, key, seconds);
    List<Footprint> seen = new ArrayList<>();
    Microphone watched =
        new Watched(
            line,
            () -> {
              if (line.seconds() >= (seen.size() + 1) * seconds / looks) {
                seen.add(look(line));
                watcher.accept(seen.get(seen.size() - 1));
              }
            });
    new LiveConversation(
            new Session(grammar, Attention.asleep(WINDOW_SECONDS), Scribe.none()),
            key,
            new ArrayDeque<>(),
            () -> ear,
            mouth,
            ClosingPause.ORDINARY,
            new Plugged(watched, line),
            new Report(new PrintWriter(Writer.nullWriter()), true),
            new PrintWriter(Writer.nullWriter()))
        .run(List::of);
    return seen;
  }

  private static Footprint look(SoakLine line) {
    try {
      return Footprint.now(line.seconds());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
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

  /**
   * A microphone at each opening of which somebody looks up: between two utterances, since the
   * search holds much that it needs while it is on one.
   */
  private record Watched(Microphone line, Runnable look) implements Microphone {
    @Override
    public String name() {
      return line.name();
    }

    @Override
    public int read(short[] into, int from, int most) throws IOException {
      return line.read(into, from, most);
    }

    @Override
    public void shut() {
      line.shut();
    }

    @Override
    public void reopen(long playedNanos) {
      line.reopen(playedNanos);
      look.run();
    }

    @Override
    public void close() {
      line.close();
    }
  }
}
