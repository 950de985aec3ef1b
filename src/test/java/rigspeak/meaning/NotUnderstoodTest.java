package rigspeak.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Sentences;
import rigspeak.meaning.Meaning.NotUnderstood;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.rig.Slot;

/** Nothing is taken from words that are no sentence, and nothing breaks. */
class NotUnderstoodTest {
  private static final Grammar GRAMMAR = Grammar.bundled();
  private static final Understanding UNDERSTANDING = new Understanding(GRAMMAR);
  private static final Pattern ESCAPE = Pattern.compile("\\\\u([0-9a-f]{4})");

  static Stream<String> nonsense() throws IOException {
    try (var in = NotUnderstoodTest.class.getResourceAsStream("not-understood.txt")) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      return lines.stream()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(NotUnderstoodTest::unescaped);
    }
  }

  private static String unescaped(String line) {
    return ESCAPE
        .matcher(line)
        .replaceAll(
            match ->
                Matcher.quoteReplacement(
                    String.valueOf((char) Integer.parseInt(match.group(1), 16))));
  }

  @ParameterizedTest
  @MethodSource("nonsense")
  void nonsenseIsNotUnderstood(String line) {
    assertNoSuchSentence(line, Optional.empty());
  }

  /** A bare number may be an answer; every other line stays nonsense, whatever is asked for. */
  @ParameterizedTest
  @EnumSource(Slot.class)
  void aQuestionMakesNoSenseOfNonsense(Slot asked) throws IOException {
    List<String> taken = new ArrayList<>();
    nonsense()
        .filter(line -> !isAnAnswer(line))
        .filter(line -> isMissed(line, Optional.empty()))
        .forEach(
            line -> {
              if (!isMissed(line, Optional.of(asked))) {
                taken.add(line);
              }
            });
    assertEquals(List.of(), taken);
  }

  private static boolean isMissed(String line, Optional<Slot> asked) {
    return UNDERSTANDING.understand(line, asked) instanceof NotUnderstood;
  }

  /** Lines that are whole values without a name. */
  private static boolean isAnAnswer(String line) {
    return line.equals("eight inches") || line.equals("eight");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\t", "\n", ".", "...", " , . ! ", "?", ";;;"})
  void nothingSaidIsSilence(String line) {
    assertEquals(
        new NotUnderstood(Reason.NOTHING_SAID, ""),
        UNDERSTANDING.understand(line, Optional.empty()));
    assertEquals(
        new NotUnderstood(Reason.NOTHING_SAID, ""),
        UNDERSTANDING.understand(line, Optional.of(Slot.OUT)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "limb eight inches ",
        "one ",
        "two hundred ",
        "by tape ",
        "a",
        ".x",
        "8 ",
        "8",
        "\u0435 "
      })
  void tenThousandWordsAreRefusedQuickly(String word) {
    String line = word.repeat(10_000);
    assertTimeoutPreemptively(
        Duration.ofSeconds(5), () -> assertNoSuchSentence(line, Optional.empty()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1_000, 100_000})
  void aRowOfMarksIsRefusedQuickly(int length) {
    String line = ".".repeat(length) + "x";
    assertTimeoutPreemptively(
        Duration.ofSeconds(5), () -> assertNoSuchSentence(line, Optional.empty()));
  }

  /** More digits than a number of a rig has, or a zero before them, are noise. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "limb nine nine nine nine nine inches",
        "out zero zero feet",
        "out zero eight centimeters",
        "out zero and a half feet",
        "limb rises zero five"
      })
  void rowsOfDigitsThatNobodySays(String line) {
    assertInstanceOf(Meaning.NotUnderstood.class, UNDERSTANDING.understand(line, Optional.empty()));
  }

  /** Decimals of any length in a breath make a finite number. */
  @Test
  void manyDecimalsAreFinite() {
    String decimals = "nine ".repeat(70);
    Meaning meaning =
        UNDERSTANDING.understand("limb one point " + decimals + "inches", Optional.empty());
    assertInstanceOf(Meaning.Values.class, meaning);
  }

  /** The grammar's own words in any order: sentences or nothing, never an exception. */
  @Test
  void wordsInRandomOrderNeverBreakAnything() {
    List<String> words = List.copyOf(new Sentences(GRAMMAR).words());
    SplittableRandom random = new SplittableRandom(3);
    Slot[] slots = Slot.values();
    for (int i = 0; i < 20_000; i++) {
      StringBuilder line = new StringBuilder();
      int length = 1 + random.nextInt(8);
      for (int w = 0; w < length; w++) {
        line.append(words.get(random.nextInt(words.size()))).append(' ');
      }
      Optional<Slot> asked =
          random.nextBoolean()
              ? Optional.of(slots[random.nextInt(slots.length)])
              : Optional.empty();
      UNDERSTANDING.understand(line.toString(), asked);
    }
  }

  /** Any characters at all. */
  @Test
  void randomCharactersAreNotUnderstood() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 5_000; i++) {
      StringBuilder line = new StringBuilder("x");
      int length = random.nextInt(40);
      for (int c = 0; c < length; c++) {
        line.append((char) random.nextInt(Character.MAX_VALUE + 1));
      }
      assertInstanceOf(
          NotUnderstood.class, UNDERSTANDING.understand(line.toString(), Optional.empty()));
    }
  }

  private static void assertNoSuchSentence(String line, Optional<Slot> asked) {
    Meaning meaning = UNDERSTANDING.understand(line, asked);
    NotUnderstood missed = assertInstanceOf(NotUnderstood.class, meaning);
    assertEquals(Reason.NO_SUCH_SENTENCE, missed.reason());
  }
}
