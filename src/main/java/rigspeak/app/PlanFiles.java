package rigspeak.app;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import rigspeak.plan.Plan;

/** Reads and writes plans. */
final class PlanFiles {
  private static final String STANDARD_INPUT = "-";
  private static final String ENDING = "\\.[^.]+$";

  private PlanFiles() {}

  /**
   * The plan of a file, or of standard input for a single dash.
   *
   * @throws UnreadablePlan if it is no UTF-8 text
   */
  static Plan read(String file) throws IOException {
    if (file.equals(STANDARD_INPUT)) {
      String text = new String(System.in.readAllBytes(), StandardCharsets.UTF_8);
      return Plan.of("standard input", text.lines().toList());
    }
    Path path = Path.of(file);
    try {
      return Plan.of(name(path), Files.readString(path).lines().toList());
    } catch (MalformedInputException e) {
      throw new UnreadablePlan(file + " is no UTF-8 text.");
    }
  }

  /** A plan's name where it does not say its own: its file's, without the ending. */
  static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? "" : last.toString().replaceFirst(ENDING, "");
  }

  /** Writes all of it or nothing. */
  static void write(Path file, String name, List<String> utterances) throws IOException {
    String text = String.join("\n", Plan.file(name, utterances)) + "\n";
    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
  }
}
