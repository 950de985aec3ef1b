package rigspeak.app;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.dialogue.Attention;

/** The conversation from the keyboard or a file. */
@Command(
    name = "type",
    mixinStandardHelpOptions = true,
    description = {
      "The conversation from the keyboard or a file, a line each.",
      "Lines that begin with # are passed over. Figures may be typed: limb 8.5 inches by tape."
    })
final class TypeCommand implements Callable<Integer> {
  @Parameters(
      arity = "0..1",
      defaultValue = "-",
      paramLabel = "FILE",
      description = "the utterances; - (the default) is standard input")
  private String file;

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Mixin private final Keeping keeping = new Keeping();

  @Mixin private JournalOptions journal;

  @Mixin private final Supplied supplied = new Supplied();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Supplied.Loaded loaded = supplied.load();
    keeping.begin();
    Report report = new Report(spec.commandLine().getOut(), json, keeping);
    try (Scribe scribe = journal.scribeIfNamed();
        Lines lines = Lines.of(file)) {
      Session session = new Session(loaded, Attention.alwaysOpen(), scribe);
      session.begin().ifPresent(exchange -> report.exchange("said", exchange));
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        report.exchange("said", session.said(line.get()));
      }
    }
    return 0;
  }
}
