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
import rigspeak.verdict.WorkedPaths;
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
      `src/test/resources/rigspeak/mechanics` or a block to a file of `verdict` beside it and run that \
      line; a new table also needs an entry in `WorkedExamples`.

      *Outside* is the figure as it was printed or worked out. *Ours* has two decimals more. The \
      difference is *none* where ours rounds to the outside figure. *Bound, 1.43 times* says that ours \
      is meant to be on the weak side of the outside figure, and is so many times as large. The numbers \
      of the sources are those of [sources.md](sources.md); *published*, *computed*, *memory*, *common \
      practice* and *judgement* are explained there. Beside these single values, properties over \
      thousands of sampled cases and second opinions by other libraries stand in the tests.
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
        Stream.of(WorkedExamples.values(), WorkedRigs.values(), WorkedPaths.values())
            .flatMap(List::stream)
            .toList();
    return HEAD
        + summary(values)
        + WorkedExamples.markdown()
        + "\n## Whole rigs\n\n`worked-rigs.txt`: from what is said to the load and to every check, at"
        + " the values as said. Newtons and degrees; the checks are utilisations. Between union and"
        + " sling of a tapered limb the outside calculation takes finer steps than ours; one sling"
        + " was rounded before it was divided by what the bend leaves of it.\n"
        + WorkedRigs.markdown()
        + WorkedPaths.markdown();
  }

  private static String summary(List<WorkedValue> values) {
    List<WorkedValue> apart =
        values.stream()
            .filter(value -> !value.isBound() && !value.roundsToIt())
            .sorted(Comparator.comparingDouble(value -> -Math.abs(value.percent())))
            .toList();
    long bounds = values.stream().filter(WorkedValue::isBound).count();
    return "\n## How far apart\n\n"
        + values.size()
        + " values. In "
        + bounds
        + " ours is a bound, meant to be on the weak side. Of the others ours rounds to the outside"
        + " figure in "
        + (values.size() - bounds - apart.size())
        + ". These are those where it does not, the largest share first; the reasons stand under"
        + " their tables and in the remarks of their rows.\n\n"
        + WorkedValue.table(apart);
  }
}
