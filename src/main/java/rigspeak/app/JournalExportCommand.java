package rigspeak.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigspeak.journal.CrewFolder;

/** A day of a journal, to be taken along. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "A day of the journal as a table (.csv), or as a report (.md) with a picture of each rig",
      "that was judged, beside it as FILE-1.svg and so on. A talk that was held with the crew's own",
      "tables or grammar needs them here, too."
    })
final class JournalExportCommand implements Callable<Integer> {
  @Mixin private JournalOptions journal;

  @Mixin private JournalDay day;

  @Mixin private final Supplied supplied = new Supplied();

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "where it goes; its ending, .csv or .md, says as what")
  private Path out;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    String name = String.valueOf(out.getFileName());
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (!ending.equals("csv") && !ending.equals("md")) {
      throw new ParameterException(
          spec.commandLine(), "A journal is written as .csv or .md, not as " + out + ".");
    }
    CrewFolder crew = journal.crewFolder();
    JournalReport report = JournalReport.of(crew, day.of(crew), supplied.load());
    if (ending.equals("csv")) {
      write(out, report.csv());
      return 0;
    }
    String bare = name.substring(0, name.length() - ending.length() - 1);
    JournalReport.Page page = report.markdown(bare);
    for (Map.Entry<String, String> picture : page.pictures().entrySet()) {
      write(out.resolveSibling(picture.getKey()), picture.getValue());
    }
    write(out, page.text());
    return 0;
  }

  private void write(Path file, String text) throws IOException {
    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    spec.commandLine().getOut().println(file);
  }
}
