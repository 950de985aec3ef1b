package rigspeak.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.rig.HowGot;
import rigspeak.rig.Slot;

/** What was said and what it means, row by row in said-and-meant.txt. */
class SaidAndMeantTest {
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Pattern ROW =
      Pattern.compile("(?:\\(asked (\\w+)\\) )?([^|]*) \\| (.*)", Pattern.DOTALL);

  /**
   * A row of the file.
   *
   * @param asked the slot that has been asked for before
   */
  record Row(Optional<Slot> asked, String said, String meant) {
    static Row of(String line) {
      Matcher row = ROW.matcher(line);
      if (!row.matches()) {
        throw new IllegalArgumentException("no row: " + line);
      }
      return new Row(
          Optional.ofNullable(row.group(1)).map(key -> Slot.of(key).orElseThrow()),
          row.group(2).strip(),
          row.group(3).strip());
    }

    @Override
    public String toString() {
      return asked.map(slot -> "(asked " + slot.key() + ") ").orElse("") + said + " | " + meant;
    }
  }

  static Stream<Row> rows() throws IOException {
    try (var in = SaidAndMeantTest.class.getResourceAsStream("said-and-meant.txt")) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      return lines.stream().filter(l -> !l.isBlank() && !l.startsWith("#")).map(Row::of);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void meansWhatTheRowSays(Row row) {
    assertEquals(
        expected(row.meant()), notation(UNDERSTANDING.understand(row.said(), row.asked())));
  }

  @Test
  void theRowsLeaveNoSlotNoCommandAndNoWayOfMeasuringOut() throws IOException {
    List<Row> rows = rows().toList();
    assertTrue(rows.size() >= 120, () -> rows.size() + " rows");
    String meant = rows.stream().map(Row::meant).collect(Collectors.joining("\n", "\n", "\n"));
    for (Slot slot : Slot.values()) {
      assertTrue(meant.contains(slot.key() + " = "), () -> slot + " is never said");
      assertTrue(
          rows.stream().anyMatch(row -> row.asked().equals(Optional.of(slot))),
          () -> slot + " is never answered");
    }
    for (Meaning.Command command : Meaning.Command.values()) {
      assertTrue(
          meant.contains("\ndo " + Notation.key(command) + "\n"), () -> command + " is never said");
    }
    Set<HowGot> said = EnumSet.complementOf(EnumSet.of(HowGot.ASSUMED));
    for (HowGot how : said) {
      assertTrue(meant.contains(" " + Notation.key(how)), () -> how + " is never said");
    }
  }

  private static String expected(String meant) {
    if (meant.startsWith("do ") || meant.startsWith("go to ") || meant.startsWith("?")) {
      return meant;
    }
    boolean correcting = meant.startsWith("correct");
    String values = correcting ? meant.substring("correct".length()).strip() : meant;
    String all =
        Arrays.stream(values.split(";", -1))
            .map(String::strip)
            .filter(value -> !value.isEmpty())
            .map(value -> value.startsWith("rope angle") ? value : Notation.expected(value))
            .collect(Collectors.joining("; "));
    return (correcting ? "correct " + all : all).strip();
  }

  private static String notation(Meaning meaning) {
    if (meaning instanceof Meaning.Values values) {
      return notation(values.statements());
    }
    if (meaning instanceof Meaning.Correction correction) {
      return ("correct " + notation(correction.statements())).strip();
    }
    if (meaning instanceof Meaning.GoTo goTo) {
      return "go to " + goTo.place().key();
    }
    if (meaning instanceof Meaning.NotUnderstood missed) {
      return "? " + Notation.key(missed.reason());
    }
    return "do " + Notation.key((Meaning.Command) meaning);
  }

  private static String notation(List<Statement> statements) {
    return statements.stream().map(SaidAndMeantTest::notation).collect(Collectors.joining("; "));
  }

  private static String notation(Statement statement) {
    if (statement instanceof Statement.RopeAngle unclear) {
      return "rope angle " + Notation.number(unclear.angle().degrees()) + " deg";
    }
    Statement.Value value = (Statement.Value) statement;
    return Notation.of(value.slot(), value.said());
  }
}
