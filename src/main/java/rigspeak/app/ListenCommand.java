package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigspeak.audio.NoSuchDevice;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;

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
  @Mixin private LiveOptions live;

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
    ClosingPause pause = live.pause();
    keeping.begin();
    Attention attention = alwaysOpen ? Attention.alwaysOpen() : window.asleep();
    Grammar grammar = Grammar.bundled();
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    Supplier<Ear> ear = new Ahead<>(() -> hearing.open(grammar, err));
    Mouth mouth = new Mouth();
    new LiveConversation(
            new Session(grammar, attention),
            Key.on(System.in),
            new ArrayDeque<>(),
            () -> {
              Rehearsal.begin(grammar, mouth);
              return ear.get();
            },
            mouth,
            pause,
            live.lines(),
            new Report(spec.commandLine().getOut(), json, keeping),
            err)
        .run();
    return 0;
  }
}
