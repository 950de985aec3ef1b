package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rigspeak.journal.BrokenJournal;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.CrewFolder.Verified;

/** Whether a journal is as it was written. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = {
      "Whether every line of every day of the crew's journal is as it was written. Prints each",
      "day with its lines and its last sum: whoever notes the sum can tell later that nothing",
      "before it was changed. Exit code 3 and the place if a line was changed, taken away or put",
      "in, or a day is missing."
    })
final class JournalVerifyCommand implements Callable<Integer> {
  @Mixin private JournalOptions journal;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    CrewFolder crew = journal.crewFolder();
    PrintWriter out = spec.commandLine().getOut();
    SortedMap<LocalDate, Verified> days;
    try {
      days = crew.verify();
    } catch (BrokenJournal e) {
      spec.commandLine().getErr().println(e.getMessage());
      return Fault.BAD_INPUT;
    }
    for (Map.Entry<LocalDate, Verified> day : days.entrySet()) {
      Verified verified = day.getValue();
      out.println(day.getKey() + "  " + verified.lines() + " lines  " + verified.lastSum());
      if (verified.tornBytes() > 0) {
        out.println("            and a torn line, which was never answered");
      }
    }
    out.println(
        days.isEmpty() ? "There is no journal of " + crew.crew() + "." : "As it was written.");
    out.flush();
    return 0;
  }
}
