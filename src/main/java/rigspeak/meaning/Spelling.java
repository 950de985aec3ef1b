package rigspeak.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Brings typed text to the form in which words are heard: lower case, no marks, no figures. */
public final class Spelling {
  private static final int LONGEST_LINE = 2_000;
  private static final Pattern FIGURES = Pattern.compile("(\\d{1,5})(?:\\.(\\d{1,3}))?");

  /** A mark between two figures is not one of them: "0,5" is no number that can be said. */
  private static final Pattern BETWEEN_WORDS =
      Pattern.compile("(?:\\s|(?<![0-9])[,;:!?]|[,;:!?](?![0-9]))+");

  private static final List<String> UNITS =
      List.of(
          "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
              .concat(" fifteen sixteen seventeen eighteen nineteen")
              .split(" ", -1));
  private static final List<String> TENS =
      List.of("zero ten twenty thirty forty fifty sixty seventy eighty ninety".split(" ", -1));

  private Spelling() {}

  /**
   * The words of a typed line. Figures that are too long to say are left as they stand, and so is
   * what makes no sense; of a line that nobody could say in a breath nothing is read.
   */
  public static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    if (text.length() > LONGEST_LINE) {
      return List.of("...");
    }
    String plain = text.toLowerCase(Locale.ROOT).replace('\u2019', '\'');
    for (String piece : BETWEEN_WORDS.split(plain, -1)) {
      String word = withoutFullStops(piece);
      if (word.isEmpty()) {
        continue;
      }
      Matcher figures = FIGURES.matcher(word);
      if (figures.matches()) {
        sayFigures(figures, words);
      } else {
        words.add(word);
      }
    }
    return List.copyOf(words);
  }

  private static String withoutFullStops(String piece) {
    int end = piece.length();
    while (end > 0 && piece.charAt(end - 1) == '.') {
      end--;
    }
    return piece.substring(0, end);
  }

  private static void sayFigures(Matcher figures, List<String> words) {
    sayWhole(Integer.parseInt(figures.group(1)), words);
    String decimals = figures.group(2);
    if (decimals != null) {
      words.add("point");
      decimals.chars().forEach(digit -> words.add(UNITS.get(digit - '0')));
    }
  }

  private static void sayWhole(int number, List<String> words) {
    if (number >= 1000) {
      sayWhole(number / 1000, words);
      words.add("thousand");
      if (number % 1000 > 0) {
        sayWhole(number % 1000, words);
      }
    } else if (number >= 100) {
      words.add(UNITS.get(number / 100));
      words.add("hundred");
      if (number % 100 > 0) {
        sayWhole(number % 100, words);
      }
    } else if (number >= 20) {
      words.add(TENS.get(number / 10));
      if (number % 10 > 0) {
        words.add(UNITS.get(number % 10));
      }
    } else {
      words.add(UNITS.get(number));
    }
  }
}
