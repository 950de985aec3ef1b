package rigspeak.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What one file of a journal holds.
 *
 * @param entries of its whole lines, the first of which says whose day it is
 * @param lastSum what its last whole line is known by
 * @param wholeBytes how long its whole lines are
 * @param tornBytes how much is left of a line that was being written when the program ended
 */
record JournalFile(List<Entry> entries, String lastSum, long wholeBytes, long tornBytes) {
  JournalFile {
    entries = List.copyOf(entries);
  }

  /** A day's journal is far smaller; what is larger is not one. */
  private static final long MOST_BYTES = 64L << 20;

  /**
   * Reads a file, line after line.
   *
   * @throws BrokenJournal if a whole line is not as it was written, with its number and what is
   *     wrong
   */
  static JournalFile read(Path file) throws IOException {
    long size = Files.size(file);
    if (size > MOST_BYTES) {
      throw new BrokenJournal(file, 1, "too large for a journal");
    }
    // No more than it was, whatever it is: a device may never end.
    try (InputStream in = Files.newInputStream(file)) {
      return of(file, in.readNBytes(Math.toIntExact(size)));
    }
  }

  static JournalFile of(Path file, byte[] bytes) throws BrokenJournal {
    List<Entry> entries = new ArrayList<>();
    String sum = Chain.BEGINNING;
    int from = 0;
    for (int end = endOfLine(bytes, from); end >= 0; end = endOfLine(bytes, from)) {
      byte[] line = Arrays.copyOfRange(bytes, from, end);
      long number = entries.size() + 1L;
      sum = sumOf(file, number, line, sum);
      entries.add(entry(file, number, line));
      from = end + 1;
    }
    return new JournalFile(entries, sum, from, bytes.length - from);
  }

  private static int endOfLine(byte[] bytes, int from) {
    for (int i = from; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  private static String sumOf(Path file, long number, byte[] line, String before)
      throws BrokenJournal {
    Optional<String> sum = Chain.sum(line, before);
    if (sum.isEmpty()) {
      String which = number == 1 ? "it" : "it or a line before it";
      throw new BrokenJournal(
          file, number, which + " has been changed, taken away or put in since it was written");
    }
    return sum.get();
  }

  private static Entry entry(Path file, long number, byte[] line) throws BrokenJournal {
    Entry entry;
    try {
      entry = LineForm.read(line);
    } catch (LineForm.NotALine e) {
      throw new BrokenJournal(file, number, "no line of a journal");
    }
    if (entry.number() != number || (entry.event() instanceof Event.Opened) != (number == 1)) {
      throw new BrokenJournal(file, number, "not the line that belongs here");
    }
    return entry;
  }

  /** What its first line says; nothing of a file that was never begun. */
  Optional<Event.Opened> opened() {
    return entries.isEmpty()
        ? Optional.empty()
        : Optional.of((Event.Opened) entries.get(0).event());
  }
}
