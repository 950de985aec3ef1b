package rigspeak.answer;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Numbers as a radio wants them: every digit by itself, "one four" and never "fourteen". Fractions
 * of a limb and half an inch stay as they are.
 */
final class Digits {
  /** Twenty to ninety: what Numbers has beyond its small ones. */
  private static final List<String> TENS = Numbers.TENS.subList(2, Numbers.TENS.size());

  private static final Map<String, Integer> NUMBERS = new HashMap<>();

  static {
    for (int i = 0; i < Numbers.SMALL.size(); i++) {
      NUMBERS.put(Numbers.SMALL.get(i), i);
    }
    for (int i = 0; i < TENS.size(); i++) {
      NUMBERS.put(TENS.get(i), 20 + 10 * i);
    }
  }

  private static final String WORD =
      "(?:" + String.join("|", Numbers.SMALL) + "|" + String.join("|", TENS) + "|hundred|thousand)";
  private static final Pattern NUMBER =
      Pattern.compile(
          "\\b(" + WORD + "(?: " + WORD + ")*)( and a half)?\\b", Pattern.CASE_INSENSITIVE);

  /** A fraction of a limb is no number of anything. */
  private static final Pattern WITH_DECIMALS =
      Pattern.compile(
          "\\b("
              + WORD
              + "(?: "
              + WORD
              + ")*)(?: point ("
              + WORD
              + "(?: "
              + WORD
              + ")*)|( and a half))?\\b(?! (?:quarter|third|half|thirds|quarters)\\b)",
          Pattern.CASE_INSENSITIVE);

  private Digits() {}

  /** Whether there is a number in a text. */
  static boolean areIn(String text) {
    return NUMBER.matcher(text).find();
  }

  /** The same text with every number of it digit by digit. */
  static String singly(String text) {
    StringBuilder spoken = new StringBuilder();
    Matcher numbers = NUMBER.matcher(text);
    while (numbers.find()) {
      String digits = digits(numbers.group(1)) + (numbers.group(2) == null ? "" : " point five");
      numbers.appendReplacement(spoken, asCapital(digits, numbers.group(1)));
    }
    return numbers.appendTail(spoken).toString();
  }

  /** The same text with every number of it in figures, for whoever reads it. */
  static String asFigures(String text) {
    StringBuilder read = new StringBuilder();
    Matcher numbers = WITH_DECIMALS.matcher(text);
    while (numbers.find()) {
      numbers.appendReplacement(read, figuresOf(numbers));
    }
    return numbers.appendTail(read).toString();
  }

  private static String figuresOf(Matcher number) {
    String figures = inFigures(number.group(1));
    if (number.group(2) != null) {
      return figures + "." + inFigures(number.group(2));
    }
    return number.group(3) == null ? figures : figures + ".5";
  }

  /** Digits said one by one keep their zeros. */
  private static String inFigures(String number) {
    List<String> words = List.of(number.toLowerCase(Locale.ROOT).split(" ", -1));
    return isDigits(words)
        ? words.stream().map(word -> NUMBERS.get(word).toString()).collect(Collectors.joining())
        : Long.toString(value(words));
  }

  private static boolean isDigits(List<String> words) {
    return words.stream().allMatch(word -> NUMBERS.getOrDefault(word, 10) < 10);
  }

  private static String asCapital(String digits, String before) {
    return Character.isUpperCase(before.charAt(0))
        ? Character.toUpperCase(digits.charAt(0)) + digits.substring(1)
        : digits;
  }

  private static String digits(String number) {
    List<String> words = List.of(number.toLowerCase(Locale.ROOT).split(" ", -1));
    if (isDigits(words)) {
      return String.join(" ", words);
    }
    return figures(Long.toString(value(words)));
  }

  /** Figures one by one. */
  static String figures(String figures) {
    return figures
        .chars()
        .mapToObj(figure -> Numbers.SMALL.get(figure - '0'))
        .collect(Collectors.joining(" "));
  }

  private static long value(List<String> words) {
    long thousands = 0;
    long current = 0;
    for (String word : words) {
      if (word.equals("thousand")) {
        thousands = 1000 * current;
        current = 0;
      } else if (word.equals("hundred")) {
        current *= 100;
      } else {
        current += NUMBERS.get(word);
      }
    }
    return thousands + current;
  }
}
