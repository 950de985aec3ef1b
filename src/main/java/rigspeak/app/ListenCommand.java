package rigspeak.app;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;

/** The conversation, live. */
@Command(
    name = "listen",
    mixinStandardHelpOptions = true,
    description = {
      "The conversation, live, with a headset.",
      "It waits for the call, copper lantern, alone or before what is said; Enter does as well.",
      "A short tone says that it listens, three soft ones down that it waits for the call again.",
      "It is deaf while it speaks. Ctrl-C ends it.",
      "A headset that is lost is looked for until it is back; nothing said is forgotten."
    })
final class ListenCommand implements Callable<Integer> {
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

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Option(names = "--always-open", description = "listen at any time, without the call")
  private boolean alwaysOpen;

  @Mixin private Window window;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Mixin private final Keeping keeping = new Keeping();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    ClosingPause pause = pause();
    keeping.begin();
    Attention attention = alwaysOpen ? Attention.alwaysOpen() : window.asleep();
    Grammar grammar = Grammar.bundled();
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    Mouth mouth = new Mouth();
    new LiveConversation(
            new Session(grammar, attention),
            Key.on(System.in),
            () -> {
              Rehearsal.begin(grammar, mouth);
              return hearing.open(grammar, err);
            },
            mouth,
            pause,
            new NamedLines(),
            new Report(spec.commandLine().getOut(), json, keeping),
            err)
        .run();
    return 0;
  }

  private ClosingPause pause() {
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
