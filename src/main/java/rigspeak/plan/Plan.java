package rigspeak.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What will be said of a climb and on it, in that order.
 *
 * @param name what it is called
 * @param lines the utterances
 */
public record Plan(String name, List<Line> lines) {
  private static final String COMMENT = "#";
  private static final String NAME = "plan:";

  /**
   * One utterance.
   *
   * @param number of its line in the file, from 1
   */
  public record Line(int number, String said) {}

  public Plan {
    lines = List.copyOf(lines);
  }

  /**
   * The plan of a file's lines: blank ones and those that begin with a number sign are passed over;
   * of these the first that goes on with {@code plan:} names it.
   *
   * @param otherwise the name of one that does not say its own
   */
  public static Plan of(String otherwise, List<String> text) {
    Optional<String> name = Optional.empty();
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < text.size(); i++) {
      String line = text.get(i).strip();
      if (line.startsWith(COMMENT)) {
        name = name.or(() -> name(line));
      } else if (!line.isEmpty()) {
        lines.add(new Line(i + 1, line));
      }
    }
    return new Plan(name.orElse(otherwise), lines);
  }

  private static Optional<String> name(String comment) {
    String words = comment.substring(COMMENT.length()).strip();
    return words.startsWith(NAME)
        ? Optional.of(words.substring(NAME.length()).strip()).filter(name -> !name.isEmpty())
        : Optional.empty();
  }

  /** The lines of a plan's file. */
  public static List<String> file(String name, List<String> utterances) {
    List<String> text = new ArrayList<>();
    text.add(COMMENT + " " + NAME + " " + name.replaceAll("\\R", " "));
    text.addAll(utterances);
    return text;
  }
}
