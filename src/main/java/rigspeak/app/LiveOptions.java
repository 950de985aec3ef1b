package rigspeak.app;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Queue;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;

/** Which microphone and loudspeaker, and how long a silence ends what is said on them. */
final class LiveOptions {
  private static final long FIRST_WAIT_MILLIS = 500;
  private static final long LONGEST_WAIT_MILLIS = 8_000;

  @Option(
      names = "--mic",
      paramLabel = "NAME",
      description = "part of the microphone's name; say it again for a second choice")
  private List<String> microphones = List.of();

  @Option(
      names = "--speaker",
      paramLabel = "NAME",
      description = "part of the loudspeaker's name; say it again for a second choice")
  private List<String> loudspeakers = List.of();

  @Option(
      names = "--pause",
      paramLabel = "SECONDS",
      defaultValue = "0.5",
      description = "the silence that ends what you say, 0.3 to 2.0 (0.5)")
  private double pauseSeconds;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  ClosingPause pause() {
    if (pauseSeconds >= ClosingPause.SHORTEST && pauseSeconds <= ClosingPause.LONGEST) {
      return new ClosingPause(pauseSeconds);
    }
    throw new ParameterException(
        spec.commandLine(),
        "The pause that ends what you say is "
            + ClosingPause.SHORTEST
            + " to "
            + ClosingPause.LONGEST
            + " seconds, not "
            + pauseSeconds
            + ".");
  }

  /** The devices of the wished names, looked for ever more seldom once they are lost. */
  LiveConversation.Lines lines() {
    return new NamedLines();
  }

  /**
   * A conversation over them. The ear is loaded beside the voice, and a rehearsal is held once it
   * is there.
   *
   * @param typed what somebody else types for the climber
   * @param report is told each exchange before it is spoken
   */
  LiveConversation conversation(
      Grammar grammar,
      Session session,
      EarOptions hearing,
      Queue<String> typed,
      ExchangeListener report)
      throws IOException {
    ClosingPause pause = pause();
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    Supplier<Ear> ears = new Ahead<>(() -> hearing.open(grammar, err));
    Mouth mouth = new Mouth();
    return new LiveConversation(
        session,
        Key.on(System.in),
        typed,
        () -> {
          Ear ear = ears.get();
          Rehearsal.begin(grammar, mouth);
          return ear;
        },
        mouth,
        pause,
        lines(),
        report,
        err);
  }

  private final class NamedLines implements LiveConversation.Lines {
    @Override
    public Microphone microphone() throws NoSuchDevice {
      return Devices.microphone(microphones);
    }

    @Override
    public Loudspeaker loudspeaker() throws NoSuchDevice {
      return Devices.loudspeaker(loudspeakers);
    }

    @Override
    public void beforeNext(int attempt) throws IOException {
      try {
        Thread.sleep(Math.min(LONGEST_WAIT_MILLIS, FIRST_WAIT_MILLIS << Math.min(attempt, 10)));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new InterruptedIOException("The search for the device was given up.");
      }
    }
  }
}
