package rigspeak.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Utterances, one a line; blank lines and lines that begin with # are passed over. */
final class Lines implements AutoCloseable {
  /** More than is ever understood, so that nothing is taken of a line that was cut. */
  private static final int LONGEST_LINE = 10_000;

  private final BufferedReader in;

  private Lines(InputStream in) {
    this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
  }

  /** The lines of a file, or of standard input for a single dash. */
  static Lines of(String file) throws IOException {
    return new Lines(file.equals("-") ? System.in : Files.newInputStream(Path.of(file)));
  }

  /** The next utterance; nothing at the end. Of a line that no breath holds only the beginning. */
  Optional<String> next() throws IOException {
    Optional<String> line = line();
    while (line.isPresent() && (line.get().isBlank() || line.get().startsWith("#"))) {
      line = line();
    }
    return line;
  }

  private Optional<String> line() throws IOException {
    StringBuilder line = new StringBuilder();
    int c = in.read();
    if (c < 0) {
      return Optional.empty();
    }
    while (c >= 0 && c != '\n') {
      if (line.length() < LONGEST_LINE) {
        line.append((char) c);
      }
      c = in.read();
    }
    int end = line.length() - 1;
    if (end >= 0 && line.charAt(end) == '\r') {
      line.setLength(end);
    }
    return Optional.of(line.toString());
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
