package rigspeak.app;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes the whole file or nothing: one that is there stays until the new one is whole. */
final class WholeFile {
  private WholeFile() {}

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
