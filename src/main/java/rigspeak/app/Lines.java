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
  private final BufferedReader in;

  private Lines(InputStream in) {
    this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
  }

  /** The lines of a file, or of standard input for a single dash. */
  static Lines of(String file) throws IOException {
    return new Lines(file.equals("-") ? System.in : Files.newInputStream(Path.of(file)));
  }

  /** The next utterance; nothing at the end. */
  Optional<String> next() throws IOException {
    String line = in.readLine();
    while (line != null && (line.isBlank() || line.startsWith("#"))) {
      line = in.readLine();
    }
    return Optional.ofNullable(line);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
