package rigspeak.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Puts words together. */
final class Sentences {
  /** No message names more things than a listener keeps in mind. */
  static final int MOST_ITEMS = 3;

  private Sentences() {}

  /** One sentence: its parts with pauses between them, empty parts left out. */
  static String sentence(String... parts) {
    String words =
        Arrays.stream(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  /** Sentences one after the other, empty ones left out. */
  static String text(String... sentences) {
    return text(Arrays.asList(sentences));
  }

  /** Sentences one after the other, empty ones left out. */
  static String text(List<String> sentences) {
    return sentences.stream().filter(each -> !each.isEmpty()).collect(Collectors.joining(" "));
  }

  /** "A", "a and b", "a, b and c". */
  static String list(List<String> items) {
    return list(items, "and");
  }

  /** "A", "a or b", "a, b or c". */
  static String list(List<String> items, String word) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    List<String> first = new ArrayList<>(items.subList(0, items.size() - 1));
    return String.join(", ", first) + " " + word + " " + items.get(items.size() - 1);
  }
}
