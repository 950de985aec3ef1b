package rigspeak.app;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigspeak.audio.NoSuchDevice;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;

/** How a live conversation is held, whether it begins or goes on. */
final class LiveTalk {
  @Mixin private LiveOptions live;

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Option(names = "--always-open", description = "listen at any time, without the call")
  private boolean alwaysOpen;

  @Mixin private Window window;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Mixin private final Keeping keeping = new Keeping();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  Attention attention() {
    return alwaysOpen ? Attention.alwaysOpen() : window.asleep();
  }

  Report report() {
    return new Report(spec.commandLine().getOut(), json, keeping);
  }

  /**
   * Holds it until nothing more comes.
   *
   * @param beginning begins the session, once everything is there that it needs; what it says first
   */
  void hold(Grammar grammar, Session session, Supplier<List<Exchange>> beginning)
      throws IOException, NoSuchDevice {
    keeping.begin();
    live.conversation(grammar, session, hearing, new ArrayDeque<>(), report()).run(beginning);
  }
}
