package rigspeak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigspeak.mechanics.WorkedExamples;
import rigspeak.verdict.WorkedRigs;

/**
 * The table of worked examples in the documents is what the program makes today.
 *
 * <p>With the property {@code rewrite} the file is written instead of compared.
 */
class WorkedExamplesTest {
  private static final Path FILE = Path.of("docs", "worked-examples.md");

  private static final String HEAD =
      """
      # Worked examples

      Every value from outside the program that the tests hold it against, and what the program makes \
      of it. This file is made, not written: `mvn -q test -Dtest=WorkedExamplesTest -Drewrite` makes it \
      anew, and every test run compares it. To add an example, add a row to a table in \
      `src/test/resources/rigspeak/mechanics` and run that line; a new table also needs an entry in \
      `WorkedExamples`.

      *Outside* is the figure as it was printed or worked out. *Ours* has two decimals more. The \
      difference is *none* where ours rounds to the outside figure. The numbers of the sources are those \
      of [sources.md](sources.md); *published*, *computed*, *memory*, *common practice* and *judgement* \
      are explained there. Beside these single values, properties over thousands of sampled cases and \
      second opinions by other libraries stand in the tests.
      """;

  @Test
  void theFileIsUpToDate() throws IOException {
    String made = made();
    if (System.getProperty("rewrite") != null) {
      Files.writeString(FILE, made, StandardCharsets.UTF_8);
    }
    assertEquals(
        made,
        Files.readString(FILE, StandardCharsets.UTF_8),
        () -> FILE + " is out of date; see its head for how to make it anew");
  }

  private static String made() throws IOException {
    List<WorkedValue> values =
        Stream.concat(WorkedExamples.values().stream(), WorkedRigs.values().stream()).toList();
    return HEAD
        + summary(values)
        + WorkedExamples.markdown()
        + "\n## Whole rigs\n\n`worked-rigs.txt`: from what is said to the load and to every check, at"
        + " the values as said. Newtons and degrees; the checks are utilisations.\n"
        + WorkedRigs.markdown();
  }

  private static String summary(List<WorkedValue> values) {
    List<WorkedValue> apart =
        values.stream()
            .filter(value -> !value.roundsToIt())
            .sorted(Comparator.comparingDouble(value -> -Math.abs(value.percent())))
            .toList();
    return "\n## How far apart\n\n"
        + values.size()
        + " values; ours rounds to the outside figure in "
        + (values.size() - apart.size())
        + ". These are the others, the largest share first; the reasons stand under their tables"
        + " and in the remarks of their rows.\n\n"
        + WorkedValue.table(apart);
  }
}
