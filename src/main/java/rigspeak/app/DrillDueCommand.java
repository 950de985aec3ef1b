package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.answer.DrillWords;
import rigspeak.drill.Memory;
import rigspeak.drill.Progress;
import rigspeak.drill.Schedule;
import rigspeak.drill.Skill;

/** What is due. */
@Command(
    name = "due",
    mixinStandardHelpOptions = true,
    description = "What a trainee should be asked, and when.")
final class DrillDueCommand implements Callable<Integer> {
  @Parameters(arity = "1", paramLabel = "TRAINEE", description = "whose")
  private String trainee;

  @Option(names = "--file", paramLabel = "FILE", description = "where the answers are kept")
  private Path file;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Path kept = file == null ? TraineeFiles.usual(trainee) : file;
    Progress progress = Progress.of(TraineeFiles.read(kept));
    long now = Clock.systemUTC().instant().getEpochSecond();
    PrintWriter out = spec.commandLine().getOut();
    for (Skill skill : Skill.values()) {
      out.printf(
          "%-28s %s%n",
          DrillWords.name(skill),
          progress.memory(skill).map(memory -> when(memory, now)).orElse("not asked yet"));
    }
    return 0;
  }

  private static String when(Memory memory, long now) {
    String known =
        String.format(Locale.ROOT, ", known %.0f %%", 100 * Schedule.remembered(memory, now));
    return "due " + DrillReport.due(memory, now) + known;
  }
}
