package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * Keeps what is understood of a conversation as a plan: the same words, one utterance a line. The
 * file is whole after each, so that nothing is lost however the conversation ends.
 */
final class Keeping {
  private final List<String> utterances = new ArrayList<>();
  private boolean told;

  @Option(
      names = "--save",
      paramLabel = "PLAN",
      description =
          "keep what is understood as a plan there, see plan --help; no file may be there")
  private Path file;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** A file that is there stays as it is. */
  void begin() {
    if (file != null && Files.exists(file)) {
      throw new ParameterException(
          spec.commandLine(), file + " is there already; a plan is saved to a new file.");
    }
  }

  /** Takes one exchange; what was not understood changes nothing and is not kept. */
  void take(Exchange exchange) {
    if (file == null || !exchange.understood() || exchange.said().isBlank()) {
      return;
    }
    utterances.add(exchange.said());
    try {
      PlanFiles.write(file, PlanFiles.name(file), utterances);
      told = false;
    } catch (IOException e) {
      tell(spec.commandLine().getErr(), e);
    }
  }

  /** The conversation goes on without its file, and with it once it can be written again. */
  private void tell(PrintWriter err, IOException fault) {
    if (!told) {
      err.println("The plan could not be saved: " + fault.getMessage());
      told = true;
    }
  }
}
