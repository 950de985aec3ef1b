package rigspeak.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A crew's journal, open to be written. One program writes at a time; what it adds is on the disk
 * when {@link #append} returns.
 *
 * <p>A day is the clock's, in its zone. A clock that is set back to an earlier day adds to the
 * latest day's file, so that the order of lines is always the order in which things happened.
 */
public final class Journal implements AutoCloseable {
  private final CrewFolder crew;
  private final Clock clock;
  private final FileChannel lock;
  private Optional<LocalDate> day = Optional.empty();
  private Optional<OpenFile> file = Optional.empty();

  /** How a line was kept. */
  public enum Kept {
    IN_ORDER,
    /** The clock stands before the time of the line before. */
    CLOCK_SET_BACK
  }

  private Journal(CrewFolder crew, Clock clock, FileChannel lock) {
    this.crew = crew;
    this.clock = clock;
    this.lock = lock;
  }

  /**
   * Opens the journal, and takes away a line that was torn when the program ended.
   *
   * @throws NotKept if it cannot be written, or another program writes it, or a line in it has been
   *     changed
   */
  public static Journal open(CrewFolder crew, Clock clock) throws NotKept {
    try {
      Files.createDirectories(crew.folder());
      Journal journal = new Journal(crew, clock, locked(crew.lock()));
      try {
        journal.openLatest();
        return journal;
      } catch (IOException e) {
        journal.close();
        throw e;
      }
    } catch (IOException e) {
      throw NotKept.of(crew.folder(), e);
    }
  }

  private static FileChannel locked(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      if (channel.tryLock() == null) {
        throw new OverlappingFileLockException();
      }
      return channel;
    } catch (OverlappingFileLockException | IOException e) {
      channel.close();
      throw NotKept.of(file, e);
    }
  }

  private void openLatest() throws IOException {
    List<LocalDate> days = crew.days();
    if (!days.isEmpty()) {
      int latest = days.size() - 1;
      turnTo(days.get(latest), crew.lastSum(days.subList(0, latest)));
    }
  }

  private void turnTo(LocalDate to, String before) throws IOException {
    OpenFile next = OpenFile.open(crew.file(to));
    try {
      if (next.isEmpty()) {
        next.append(clock.instant(), new Event.Opened(crew.crew(), to, before));
      }
      if (next.torn() > 0) {
        next.append(clock.instant(), new Event.Recovered(next.torn()));
      }
    } catch (IOException e) {
      next.close();
      throw e;
    }
    if (file.isPresent()) {
      file.get().close();
    }
    file = Optional.of(next);
    day = Optional.of(to);
  }

  /**
   * Adds a line.
   *
   * @throws NotKept if it is not on the disk; then nothing of it is, and what it says must not be
   *     taken
   */
  public Kept append(Event event) throws NotKept {
    try {
      LocalDate today = LocalDate.now(clock);
      if (day.isEmpty() || today.isAfter(day.get())) {
        turnTo(today, file.map(OpenFile::lastSum).orElse(Chain.BEGINNING));
      }
      Instant now = clock.instant();
      Instant before = file.orElseThrow().append(now, event);
      return now.isBefore(before) ? Kept.CLOCK_SET_BACK : Kept.IN_ORDER;
    } catch (IOException e) {
      throw NotKept.of(crew.folder(), e);
    }
  }

  /**
   * The last conversation, from where it began to the last line.
   *
   * @throws NotKept if it cannot be read, or a line in it has been changed
   */
  public List<Entry> lastConversation() throws NotKept {
    try {
      return crew.lastConversation();
    } catch (IOException e) {
      throw NotKept.of(crew.folder(), e);
    }
  }

  @Override
  public void close() throws IOException {
    try {
      if (file.isPresent()) {
        file.get().close();
      }
    } finally {
      lock.close();
    }
  }
}
