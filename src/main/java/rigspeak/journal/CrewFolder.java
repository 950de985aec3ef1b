package rigspeak.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The journal of a crew: one file a day, whose first line names the sum of the last one before.
 *
 * @param folder where the files lie
 * @param crew whose they are
 */
public record CrewFolder(Path folder, String crew) {
  private static final String CREW = "[\\p{L}\\p{N}_-]{1,40}";
  private static final String ENDING = ".jsonl";

  public CrewFolder {
    if (!isCrew(crew)) {
      throw new IllegalArgumentException("no name of a crew: " + crew);
    }
  }

  /** Whether it can be the name of a crew: letters, figures, - and _, at most forty. */
  public static boolean isCrew(String name) {
    return name.matches(CREW);
  }

  /** The file of a day, whether it is there or not. */
  public Path file(LocalDate day) {
    return folder.resolve(crew + "-" + day + ENDING);
  }

  /** Held by the one program that writes. */
  Path lock() {
    return folder.resolve(crew + ".lock");
  }

  /** The days that have a file, the first of them first. */
  public List<LocalDate> days() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> day(file.getFileName().toString()))
          .flatMap(Optional::stream)
          .sorted()
          .toList();
    }
  }

  private Optional<LocalDate> day(String name) {
    String before = crew + "-";
    if (!name.startsWith(before) || !name.endsWith(ENDING)) {
      return Optional.empty();
    }
    int end = name.length() - ENDING.length();
    try {
      return end < before.length()
          ? Optional.empty()
          : Optional.of(LocalDate.parse(name.substring(before.length(), end)));
    } catch (DateTimeParseException otherCrew) {
      return Optional.empty();
    }
  }

  /**
   * What was kept on a day, a torn last line left out.
   *
   * @throws BrokenJournal if a line is not as it was written
   */
  public List<Entry> entries(LocalDate day) throws IOException {
    return JournalFile.read(file(day)).entries();
  }

  /**
   * The last conversation, from where it began to the last line, over as many days as it took;
   * empty if none was ever begun.
   */
  public List<Entry> lastConversation() throws IOException {
    List<LocalDate> days = new ArrayList<>(days());
    Collections.reverse(days);
    List<Entry> conversation = new ArrayList<>();
    for (LocalDate day : days) {
      List<Entry> entries = entries(day);
      int began = lastBeginning(entries);
      conversation.addAll(0, entries.subList(Math.max(0, began), entries.size()));
      if (began >= 0) {
        return conversation;
      }
    }
    return List.of();
  }

  private static int lastBeginning(List<Entry> entries) {
    for (int i = entries.size() - 1; i >= 0; i--) {
      if (entries.get(i).event() instanceof Event.Began) {
        return i;
      }
    }
    return -1;
  }

  /** What the last line of these days is known by. */
  String lastSum(List<LocalDate> days) throws IOException {
    for (int i = days.size() - 1; i >= 0; i--) {
      JournalFile content = JournalFile.read(file(days.get(i)));
      if (content.opened().isPresent()) {
        return content.lastSum();
      }
    }
    return Chain.BEGINNING;
  }

  /**
   * Follows the sums through every line of every day.
   *
   * @return for each day the number of its lines and the sum of the last
   * @throws BrokenJournal at the first line that is not as it was written, or does not follow the
   *     day before
   */
  public SortedMap<LocalDate, Verified> verify() throws IOException {
    SortedMap<LocalDate, Verified> verified = new TreeMap<>();
    String before = Chain.BEGINNING;
    for (LocalDate day : days()) {
      JournalFile content = JournalFile.read(file(day));
      if (content.opened().isPresent()) {
        follows(day, content.opened().get(), before);
        before = content.lastSum();
      }
      verified.put(
          day, new Verified(content.entries().size(), content.lastSum(), content.tornBytes()));
    }
    return verified;
  }

  private void follows(LocalDate day, Event.Opened opened, String before) throws BrokenJournal {
    if (!opened.crew().equals(crew) || !opened.day().equals(day)) {
      throw new BrokenJournal(file(day), 1, "the file of another crew or day");
    }
    if (!opened.after().equals(before)) {
      throw new BrokenJournal(
          file(day), 1, "it does not follow the last line of the day before; is a file missing?");
    }
  }

  /**
   * A day whose sums are right.
   *
   * @param lines how many there are
   * @param lastSum what the last of them is known by; whoever notes it can tell later that nothing
   *     before it was changed
   * @param tornBytes what is left of a line that was being written when the program ended
   */
  public record Verified(int lines, String lastSum, long tornBytes) {}
}
