package rigspeak.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The schedule against what the reference implementation of its algorithm publishes. */
class ScheduleTest {
  /** 29 November 2022, 12:30 UTC, when the published rows begin. */
  private static final long START = 1_669_725_000;

  private record Row(Grade grade, int days) {}

  private static List<Row> rows(String name) throws IOException {
    try (var in = ScheduleTest.class.getResourceAsStream(name)) {
      List<Row> rows = new ArrayList<>();
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", -1))
          .forEach(
              cells ->
                  rows.add(
                      new Row(
                          Grade.valueOf(cells[0].toUpperCase(Locale.ROOT)),
                          Integer.parseInt(cells[1]))));
      return rows;
    }
  }

  @Test
  void intervalsAreThePublishedOnes() throws IOException {
    Optional<Memory> memory = Optional.empty();
    long now = START;
    List<Row> rows = rows("published-intervals.csv");
    assertEquals(13, rows.size());
    for (Row row : rows) {
      Memory next = Schedule.answered(memory, row.grade(), now);
      assertEquals(row.days(), (next.dueSeconds() - now) / Schedule.DAY, row::toString);
      now = next.dueSeconds();
      memory = Optional.of(next);
    }
  }

  @Test
  void theMemoryIsThePublishedOne() throws IOException {
    Optional<Memory> memory = Optional.empty();
    long now = START;
    for (Row row : rows("published-memory.csv")) {
      now += row.days() * Schedule.DAY;
      memory = Optional.of(Schedule.answered(memory, row.grade(), now));
    }
    assertEquals(53.62691, memory.orElseThrow().stability(), 1e-4);
    assertEquals(6.3574867, memory.orElseThrow().difficulty(), 1e-4);
  }

  /** The same source, test_repeated_correct_reviews: ten easy answers in one second. */
  @Test
  void nothingIsEasierThanEasy() {
    Optional<Memory> memory = Optional.empty();
    for (int i = 0; i < 10; i++) {
      memory = Optional.of(Schedule.answered(memory, Grade.EASY, START));
    }
    assertEquals(1.0, memory.orElseThrow().difficulty());
  }

  /** By its definition, stability is the days after which nine in ten are remembered. */
  @ParameterizedTest
  @CsvSource({"0.5", "1", "7", "100"})
  void stabilityIsWhenNineInTenAreRemembered(double stability) {
    assertEquals(0.9, Schedule.remembered(stability, stability), 1e-12);
    assertEquals(1, Schedule.remembered(0, stability), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(Grade.class)
  void aBetterAnswerIsNeverAskedAgainSooner(Grade grade) {
    Memory known = known();
    long due = Schedule.answered(Optional.of(known), grade, known.dueSeconds()).dueSeconds();
    for (Grade other : Grade.values()) {
      long otherDue = Schedule.answered(Optional.of(known), other, known.dueSeconds()).dueSeconds();
      assertEquals(
          grade.number() > other.number(), due > otherDue, () -> grade + " after " + other);
    }
  }

  private static Memory known() {
    Memory memory = Schedule.answered(Optional.empty(), Grade.GOOD, START);
    return Schedule.answered(Optional.of(memory), Grade.GOOD, memory.dueSeconds());
  }

  @Test
  void whatIsForgottenComesBackInMinutes() {
    Memory known = known();
    Memory lapsed = Schedule.answered(Optional.of(known), Grade.AGAIN, known.dueSeconds());
    assertEquals(Memory.Phase.RELEARNING, lapsed.phase());
    assertEquals(600, lapsed.dueSeconds() - lapsed.lastSeconds());
    assertTrue(lapsed.isDue(lapsed.dueSeconds()));
    assertFalse(lapsed.isDue(lapsed.dueSeconds() - 1));
  }

  @Test
  void aMemoryThatCannotBeIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Memory(Memory.Phase.KEPT, 0, Double.NaN, 5, 0, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Memory(Memory.Phase.KEPT, 0, 1, Double.NaN, 0, 0));
  }

  /** The drawn values are those of the published generator, which the JDK has as well. */
  @ParameterizedTest
  @CsvSource({"0", "1", "1234567", "-99"})
  void lotsAreSplitMix64(long seed) {
    SplittableRandom same = new SplittableRandom(seed);
    Lots lots = new Lots(seed);
    for (int i = 0; i < 1000; i++) {
      assertEquals((same.nextLong() >>> 11) * 0x1.0p-53, lots.share());
    }
  }
}
