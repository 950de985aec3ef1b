package rigspeak.app;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Option;
import rigspeak.journal.CrewFolder;

/** Which day of a journal. */
final class JournalDay {
  @Option(names = "--day", paramLabel = "DAY", description = "such as 2026-06-30 (the latest)")
  private LocalDate day;

  /**
   * The day that was named, or the latest that has a file.
   *
   * @throws NoSuchFileException if there is none
   */
  LocalDate of(CrewFolder crew) throws IOException {
    List<LocalDate> days = crew.days();
    LocalDate wanted = day != null || days.isEmpty() ? day : days.get(days.size() - 1);
    if (wanted == null) {
      throw new NoSuchFileException(crew.folder().resolve(crew.crew() + "-DAY.jsonl").toString());
    }
    if (!days.contains(wanted)) {
      throw new NoSuchFileException(crew.file(wanted).toString());
    }
    return wanted;
  }
}
