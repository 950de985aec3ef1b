package rigspeak.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/** One file of a journal, to which lines are added. Each is on the disk before it is answered. */
final class OpenFile implements AutoCloseable {
  private final Path file;
  private final FileChannel channel;
  private final Object key;
  private final long torn;
  private long lines;
  private long length;
  private String lastSum;
  private Instant lastAt;

  private OpenFile(Path file, FileChannel channel, JournalFile content) throws IOException {
    this.file = file;
    this.channel = channel;
    this.key = key(file);
    this.torn = content.tornBytes();
    this.length = content.wholeBytes();
    this.lines = content.entries().size();
    this.lastSum = content.lastSum();
    this.lastAt = last(content.entries());
  }

  private static Instant last(List<Entry> entries) {
    return entries.isEmpty() ? Instant.MIN : entries.get(entries.size() - 1).at();
  }

  /** Opens a file, which is made if it is not there, and takes a torn line away. */
  static OpenFile open(Path file) throws IOException {
    boolean isNew = !Files.exists(file);
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      OpenFile opened = new OpenFile(file, channel, JournalFile.read(file));
      opened.takeBack();
      if (isNew) {
        keepName(file);
      }
      return opened;
    } catch (IOException e) {
      channel.close();
      throw e;
    }
  }

  /** A new file outlives a dead battery only once its folder is on the disk, too. */
  private static void keepName(Path file) throws IOException {
    try (FileChannel folder =
        FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    }
  }

  private static Object key(Path file) throws IOException {
    BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
    return Objects.requireNonNullElse(attributes.fileKey(), attributes.creationTime());
  }

  /**
   * Adds a line and waits until it is on the disk. If it cannot be, what was written of it is taken
   * away again, now or before the next.
   *
   * @return when the line before was written; {@link Instant#MIN} if there is none
   */
  Instant append(Instant at, Event event) throws IOException {
    if (!isInItsPlace()) {
      throw new NotKept(NotKept.Why.GONE, file);
    }
    takeBack();
    String line = Chain.sealed(LineForm.write(new Entry(lines + 1, at, event)), lastSum);
    byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
    try {
      write(bytes);
      channel.force(true);
    } catch (IOException e) {
      takeBackAfter(e);
      throw e;
    }
    Instant before = lastAt;
    lines++;
    length += bytes.length;
    lastAt = at;
    lastSum = Chain.sum(line.getBytes(StandardCharsets.UTF_8), lastSum).orElseThrow();
    return before;
  }

  /** A file that was taken away or put in place of this one would be written for nobody. */
  private boolean isInItsPlace() throws IOException {
    try {
      return key(file).equals(key);
    } catch (NoSuchFileException gone) {
      return false;
    }
  }

  private void write(byte[] bytes) throws IOException {
    channel.position(length);
    ByteBuffer left = ByteBuffer.wrap(bytes);
    while (left.hasRemaining()) {
      channel.write(left);
    }
  }

  private void takeBack() throws IOException {
    if (channel.size() > length) {
      channel.truncate(length);
      channel.force(true);
    }
  }

  private void takeBackAfter(IOException fault) {
    try {
      takeBack();
    } catch (IOException e) {
      fault.addSuppressed(e);
    }
  }

  boolean isEmpty() {
    return lines == 0;
  }

  /** How long the line was that was torn when it was opened; 0 if none was. */
  long torn() {
    return torn;
  }

  String lastSum() {
    return lastSum;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
