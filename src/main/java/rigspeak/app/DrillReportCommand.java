package rigspeak.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.drill.Progress;

/** How drills went. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    description = {
      "How the drills of one or more trainees went: right answers, errors and bias, certainty",
      "against hits, forgetting, and what is due. Trainees stand beside each other in the order",
      "in which you name them; nobody is ranked."
    })
final class DrillReportCommand implements Callable<Integer> {
  private static final String SUFFIX = ".trainee";

  @Parameters(
      arity = "1..*",
      paramLabel = "TRAINEE",
      description = "names, or files that end in .trainee")
  private List<String> trainees;

  @Option(names = "--csv", paramLabel = "FILE", description = "write the numbers there")
  private Path csv;

  @Option(names = "--html", paramLabel = "FILE", description = "write a page with pictures there")
  private Path html;

  @Option(names = "--svg", paramLabel = "FILE", description = "write the picture of one trainee")
  private Path svg;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    if (svg != null && trainees.size() > 1) {
      throw new ParameterException(
          spec.commandLine(), "--svg is for one trainee; --html shows several.");
    }
    Map<String, Progress> all = new LinkedHashMap<>();
    for (String trainee : trainees) {
      Path file = trainee.endsWith(SUFFIX) ? Path.of(trainee) : TraineeFiles.usual(trainee);
      if (!Files.exists(file)) {
        throw new NoSuchFileException(file.toString());
      }
      all.put(name(file), Progress.of(TraineeFiles.read(file)));
    }
    long now = Clock.systemUTC().instant().getEpochSecond();
    DrillReport report = new DrillReport(all, now);
    report.text().forEach(line -> spec.commandLine().getOut().println(line));
    if (csv != null) {
      Files.write(csv, report.csv());
    }
    if (html != null) {
      Files.writeString(html, report.html());
    }
    if (svg != null) {
      Map.Entry<String, Progress> one = all.entrySet().iterator().next();
      Files.writeString(svg, DrillChart.of(one.getKey(), one.getValue(), now).svg());
    }
    return 0;
  }

  private static String name(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(SUFFIX) ? name.substring(0, name.length() - SUFFIX.length()) : name;
  }
}
