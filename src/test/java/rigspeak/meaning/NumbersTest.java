package rigspeak.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.rig.Value;

/** A number means the same however it is said or typed. */
class NumbersTest {
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final String[] ONES =
      ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
              + " fifteen sixteen seventeen eighteen nineteen")
          .split(" ", -1);
  private static final String[] TENS =
      "zero ten twenty thirty forty fifty sixty seventy eighty ninety".split(" ", -1);

  /** A double has about sixteen digits; a few are lost where decimals are added up. */
  private static final double ROUNDING = 1e-12;

  static Stream<Integer> numbers() {
    return IntStream.rangeClosed(0, 999).boxed();
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void everyWholeNumberIsOneNumberHoweverItIsSaid(int number) {
    List<String> ways = new ArrayList<>();
    ways.add(natural(number, " "));
    ways.add(natural(number, " and "));
    ways.add(digits(number));
    ways.add(digits(number).replace("five", "fife").replace("nine", "niner"));
    ways.add(natural(number, " ").replaceAll("\\bfive\\b", "fife"));
    ways.add(Integer.toString(number));
    if (number >= 100 && number < 200) {
      ways.add(natural(number, " ").replaceFirst("one", "a"));
    }
    for (String way : ways) {
      assertEquals((double) number, degrees(way), way);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {7, 15, 50, 115, 150, 999})
  void aHalfIsAHalfMore(int number) {
    assertEquals(number + 0.5, degrees(natural(number, " ") + " and a half"));
    assertEquals(number + 0.5, degrees(digits(number) + " and a half"));
    assertEquals(number + 0.5, degrees(natural(number, " ") + " point five"));
  }

  @Test
  void halfAUnitIsAHalf() {
    assertEquals(0.5, degrees("half a"));
  }

  /** Decimals drawn evenly: the number is what its figures say. */
  @Test
  void decimalsMeanWhatTheirFiguresSay() {
    SobolSequenceGenerator evenly = new SobolSequenceGenerator(2);
    for (int i = 0; i < 2_000; i++) {
      double[] point = evenly.nextVector();
      int whole = (int) (point[0] * 1000);
      String decimals = "%03d".formatted((int) (point[1] * 1000)).substring(0, 1 + i % 3);
      double expected = new BigDecimal(whole + "." + decimals).doubleValue();
      String said = decimals.chars().mapToObj(c -> ONES[c - '0']).collect(Collectors.joining(" "));
      double allowed = ROUNDING * Math.max(1, expected);
      assertEquals(expected, degrees(natural(whole, " ") + " point " + said), allowed);
      assertEquals(expected, degrees(digits(whole) + " point " + said), allowed);
      assertEquals(expected, degrees(whole + "." + decimals), allowed);
    }
  }

  /** Labels of slings: a thousand at least, in hundreds. */
  @Test
  void thousandsMeanWhatTheySay() {
    for (int hundreds = 10; hundreds < 100; hundreds++) {
      int pounds = hundreds * 100;
      String words =
          ONES[pounds / 1000]
              + " thousand"
              + (pounds % 1000 == 0 ? "" : " " + ONES[pounds % 1000 / 100] + " hundred");
      assertEquals(pounds, poundsForce(words), ROUNDING * pounds);
      assertEquals(pounds, poundsForce(Integer.toString(pounds)), ROUNDING * pounds);
    }
    for (int thousands = 10; thousands < 20; thousands++) {
      double pounds = thousands * 1000.0;
      assertEquals(pounds, poundsForce(ONES[thousands] + " thousand"), ROUNDING * pounds);
    }
  }

  /** Teens and tens are never each other. */
  @ParameterizedTest
  @CsvSource({
    "thirteen, 13", "thirty, 30", "fourteen, 14", "forty, 40", "fifteen, 15", "fifty, 50",
    "sixteen, 16", "sixty, 60", "seventeen, 17", "seventy, 70", "eighteen, 18", "eighty, 80",
    "nineteen, 19", "ninety, 90", "one five, 15", "five zero, 50", "fifty one, 51", "five one, 51"
  })
  void teensAndTensAreThemselves(String words, double number) {
    assertEquals(number, degrees(words));
  }

  /** An inside angle takes any number and leaves it as it is, in degrees. */
  private static double degrees(String number) {
    Value.Turned turned = (Value.Turned) only("inside angle " + number);
    double degrees = turned.angle().degrees();
    double nearest = Math.rint(degrees * 1e9) / 1e9;
    return Math.abs(degrees - nearest) < 1e-10 ? nearest : degrees;
  }

  private static double poundsForce(String number) {
    Value.Rating rating = (Value.Rating) only("sling rated " + number + " pounds");
    // Exact: the pound in kilograms under standard gravity.
    return rating.force().newtons() / (0.45359237 * 9.80665);
  }

  private static Value only(String text) {
    Meaning meaning = UNDERSTANDING.understand(text, Optional.empty());
    Meaning.Values values = assertInstanceOf(Meaning.Values.class, meaning, text);
    assertEquals(1, values.statements().size(), text);
    return ((Statement.Value) values.statements().get(0)).said().value();
  }

  private static String natural(int number, String and) {
    if (number < 20) {
      return ONES[number];
    }
    if (number < 100) {
      return TENS[number / 10] + (number % 10 == 0 ? "" : " " + ONES[number % 10]);
    }
    return ONES[number / 100]
        + " hundred"
        + (number % 100 == 0 ? "" : and + natural(number % 100, and));
  }

  private static String digits(int number) {
    return Integer.toString(number)
        .chars()
        .mapToObj(digit -> ONES[digit - '0'])
        .collect(Collectors.joining(" "));
  }
}
