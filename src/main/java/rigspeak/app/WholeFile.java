package rigspeak.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A file whole or not at all: one that is there stays until the new one is whole. */
final class WholeFile {
  private WholeFile() {}

  /** A file that is too long to be what it should be. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1L;

    private TooLong(String file, int most) {
      super(file + " is longer than " + most + " bytes.");
    }
  }

  /**
   * All of a text.
   *
   * @param name what a message calls it
   * @param most bytes that are read
   * @throws CharacterCodingException if it is no UTF-8 text
   * @throws TooLong if there is more; nothing of it is kept
   */
  static String read(String name, InputStream in, int most) throws IOException {
    byte[] bytes = in.readNBytes(most + 1);
    if (bytes.length > most) {
      throw new TooLong(name, most);
    }
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  /** The same of a file. */
  static String read(Path file, int most) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return read(file.toString(), in, most);
    }
  }

  static void write(Path file, byte[] content) throws IOException {
    Path whole = file.toAbsolutePath();
    Files.createDirectories(whole.getParent());
    Path beside = Files.createTempFile(whole.getParent(), whole.getFileName().toString(), ".new");
    try {
      try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      }
      Files.move(
          beside, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
