package rigspeak.answer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Numbers as words.
 *
 * <p>Spoken naturally, but digit by digit where a teen and a ten could be taken for one another:
 * "one five" and "five zero", never "fifteen" and "fifty"; and eleven as "one one", which seven is
 * not.
 */
final class Numbers {
  /** Zero to nineteen. */
  static final List<String> SMALL =
      List.of(
          "zero",
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");

  /** By how many tens; what is below twenty is in the other list. */
  static final List<String> TENS =
      List.of(
          "zero", "ten", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty",
          "ninety");

  /** More decimals than anyone says of a length, an angle or a weight. */
  private static final int MOST_DECIMALS = 6;

  /** What is left of a decimal fraction after it went through metres or radians and back. */
  private static final double CONVERSION = 1e-7;

  private static final int THOUSAND = 1000;
  private static final int MILLION = 1_000_000;
  private static final String BEYOND = "more than a million";

  private Numbers() {}

  /**
   * A whole number.
   *
   * @param number 0 to a million
   */
  static String whole(long number) {
    return competes(number) ? digits(number) : natural(number);
  }

  /**
   * A number as a label has it, to the nearest whole one: in thousands the grammar takes no digits.
   *
   * @param number at least 0; beyond a million it is only called so
   */
  static String label(double number) {
    return number > MILLION ? BEYOND : natural(Math.round(number));
  }

  /** Without regard to what it could be taken for. */
  private static String natural(long number) {
    if (number < 0 || number > MILLION) {
      throw new IllegalArgumentException("no words for " + number);
    }
    if (number >= MILLION) {
      return "one million";
    }
    if (number >= THOUSAND) {
      return group(number, THOUSAND, "thousand");
    }
    if (number >= 100) {
      return group(number, 100, "hundred");
    }
    if (number < SMALL.size()) {
      return SMALL.get((int) number);
    }
    String tens = TENS.get((int) number / 10);
    return number % 10 == 0 ? tens : tens + " " + SMALL.get((int) number % 10);
  }

  private static String group(long number, int size, String name) {
    String groups = natural(number / size) + " " + name;
    return number % size == 0 ? groups : groups + " " + natural(number % size);
  }

  /** A number below a thousand that is, or ends in, a teen or a ten from twenty on. */
  private static boolean competes(long number) {
    long end = number % 100;
    boolean teen = end > 12 && end < 20;
    boolean eleven = end == 11;
    boolean ten = end >= 20 && end % 10 == 0;
    return number < THOUSAND && (eleven || teen || ten);
  }

  private static String digits(long number) {
    return words(Long.toString(number));
  }

  private static String words(String figures) {
    return figures
        .chars()
        .mapToObj(figure -> SMALL.get(figure - '0'))
        .collect(Collectors.joining(" "));
  }

  /**
   * A number with as few decimals as say it exactly: "eight and a half", "four point two five".
   *
   * @param number at least 0; beyond a million it is only called so
   */
  static String exact(double number) {
    if (number > MILLION) {
      return BEYOND;
    }
    BigDecimal rounded = rounded(number, decimals(number));
    long whole = rounded.longValue();
    String fraction = rounded.subtract(BigDecimal.valueOf(whole)).toPlainString();
    if (rounded.scale() == 0) {
      return whole(whole);
    }
    String after = fraction.substring(fraction.indexOf('.') + 1);
    if (after.equals("5") && whole > 0) {
      return whole(whole) + " and a half";
    }
    return whole(whole) + " point " + words(after);
  }

  /** How many decimals it takes to say a number exactly. */
  static int decimals(double number) {
    for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
      if (Math.abs(rounded(number, decimals).doubleValue() - number) < CONVERSION) {
        return decimals;
      }
    }
    return MOST_DECIMALS;
  }

  private static BigDecimal rounded(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
  }
}
