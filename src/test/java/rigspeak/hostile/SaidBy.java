package rigspeak.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Statement;

/**
 * Whether somebody said what was taken: by a list of words that knows nothing of the grammar, and
 * by plain ASCII letters only.
 */
public final class SaidBy {
  private final Map<String, String> words = new HashMap<>();

  public SaidBy() {
    try {
      for (String line :
          Files.readAllLines(Path.of("src/test/resources/rigspeak/hostile/said-by.csv"))) {
        if (!line.startsWith("#")) {
          String[] cells = line.split(",", -1);
          words.put(cells[0] + " " + cells[1], cells[2]);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * @throws AssertionError if something is meant that these words do not say
   */
  public void hold(String line, Meaning meaning) {
    List<String> said = asciiWords(line);
    if (meaning instanceof Meaning.Values values) {
      holdStatements(said, values.statements());
    } else if (meaning instanceof Meaning.Correction correction) {
      require(said.contains("correction"), line, meaning);
      holdStatements(said, correction.statements());
    } else if (meaning instanceof Meaning.Command command) {
      String wanted = words.get("command " + command.name().toLowerCase(Locale.ROOT));
      String all = String.join(" ", said);
      require(
          all.equals(wanted) || all.equals(("copper lantern " + wanted).strip()), line, meaning);
    } else if (meaning instanceof Meaning.GoTo) {
      require(said.contains("go") && said.contains("to"), line, meaning);
    }
  }

  private void holdStatements(List<String> said, List<Statement> statements) {
    require(!statements.isEmpty() || said.contains("correction"), said.toString(), statements);
    for (Statement statement : statements) {
      String wanted =
          statement instanceof Statement.Value value
              ? words.get("slot " + value.slot().key())
              : "rope";
      require(
          List.of(wanted.split("\\|", -1)).stream().anyMatch(said::contains),
          said.toString(),
          statement);
    }
  }

  private static void require(boolean holds, String line, Object meaning) {
    if (!holds) {
      throw new AssertionError("\"" + line + "\" does not say " + meaning);
    }
  }

  private static List<String> asciiWords(String line) {
    List<String> said = new ArrayList<>();
    for (String word : line.split("[ \\t\\n\\x0B\\f\\r,;:!?.]+", -1)) {
      StringBuilder plain = new StringBuilder();
      word.chars().forEach(c -> plain.append((char) (c >= 'A' && c <= 'Z' ? c + 32 : c)));
      if (plain.length() > 0) {
        said.add(plain.toString());
      }
    }
    return said;
  }
}
