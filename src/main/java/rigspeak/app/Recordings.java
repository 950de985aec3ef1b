package rigspeak.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The recordings that a command line names: files, or folders of them in the order of names. */
final class Recordings {
  private Recordings() {}

  static List<Path> named(List<Path> paths) throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path path : paths) {
      if (Files.isDirectory(path)) {
        try (Stream<Path> files = Files.list(path)) {
          files.filter(Recordings::isWav).sorted().forEach(all::add);
        }
      } else {
        all.add(path);
      }
    }
    if (all.isEmpty()) {
      throw new NoSuchFileException(paths.get(0) + " (no .wav is in this folder)");
    }
    return all;
  }

  private static boolean isWav(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".wav");
  }
}
