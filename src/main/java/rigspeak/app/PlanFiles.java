package rigspeak.app;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import rigspeak.plan.Plan;

/** Reads and writes plans. */
final class PlanFiles {
  private static final String STANDARD_INPUT = "-";
  private static final int LONGEST = 1_000_000;
  private static final String ENDING = "\\.[^.]+$";

  private PlanFiles() {}

  /**
   * The plan of a file, or of standard input for a single dash.
   *
   * @throws UnreadablePlan if it is no UTF-8 text
   * @throws WholeFile.TooLong if it is longer than any plan
   */
  static Plan read(String file) throws IOException {
    boolean standard = file.equals(STANDARD_INPUT);
    String name = standard ? "standard input" : name(Path.of(file));
    try {
      String text =
          standard
              ? WholeFile.read(name, System.in, LONGEST)
              : WholeFile.read(Path.of(file), LONGEST);
      return Plan.of(name, text.lines().toList());
    } catch (CharacterCodingException e) {
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
