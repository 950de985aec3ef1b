package rigspeak.grammar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import rigspeak.grammar.Sentences.Sentence;

/**
 * Phrases that may stand in one place of a sentence and mean different things, with the distance of
 * their sounds.
 *
 * <p>The distance is the least number of phones put in, left out or exchanged (Levenshtein) over
 * every way of saying both phrases, stress left aside. Words that both phrases share in the same
 * order tell nothing apart and are left out first: "at one o'clock" is as far from "at nine
 * o'clock" as "one" from "nine".
 */
final class CompetingPairs {
  /** A rule with more ways than this is compared by its parts. */
  private static final int SMALL = 140;

  private static final Set<String> NUMBER_TAGS = Set.of("add", "times", "digit", "point", "half");

  private final Grammar grammar;
  private final Sentences sentences;
  private final Pronunciations pronunciations;
  private final Map<String, String> twins = new LinkedHashMap<>();

  CompetingPairs(Grammar grammar) {
    this.grammar = grammar;
    this.sentences = new Sentences(grammar);
    this.pronunciations = Pronunciations.all();
    grammar.ruleNames().forEach(rule -> gatherTwins(grammar.phrase(rule)));
  }

  /**
   * Two phrases and how far apart they sound.
   *
   * @param place the rules in which they compete
   * @param phones how many phones differ
   * @param share of the longer one's phones that differ, 0 to 1
   */
  record Pair(Set<String> place, String one, String other, int phones, double share) {
    String key() {
      return CompetingPairs.key(one, other);
    }

    @Override
    public String toString() {
      return "%-28s %-28s %2d %.2f %s".formatted(one, other, phones, share, place);
    }
  }

  /** Every pair, once; the words that both phrases share are left out of it. */
  List<Pair> all() {
    Map<String, Pair> pairs = new LinkedHashMap<>();
    places()
        .forEach(
            (place, phrases) -> {
              for (int i = 0; i < phrases.size(); i++) {
                for (Sentence other : phrases.subList(i + 1, phrases.size())) {
                  compare(place, phrases.get(i), other, pairs);
                }
              }
            });
    return List.copyOf(pairs.values());
  }

  private void compare(String place, Sentence one, Sentence other, Map<String, Pair> pairs) {
    if (meansTheSame(one.tags(), other.tags())) {
      return;
    }
    List<String> left = withoutShared(one.words(), other.words());
    List<String> right = withoutShared(other.words(), one.words());
    if (left.isEmpty() && right.isEmpty()) {
      return;
    }
    String first = String.join(" ", left);
    String second = String.join(" ", right);
    boolean ordered = first.compareTo(second) <= 0;
    String lesser = ordered ? first : second;
    String greater = ordered ? second : first;
    pairs.computeIfAbsent(key(lesser, greater), key -> between(lesser, greater)).place().add(place);
  }

  /** The same number or word; of a union also the same words twice or in another order. */
  private static boolean meansTheSame(List<String> one, List<String> other) {
    if (one.stream().distinct().toList().equals(other.stream().distinct().toList())) {
      return true;
    }
    return one.stream().allMatch(tag -> tag.startsWith("is ") || tag.startsWith("slot "))
        && Set.copyOf(one).equals(Set.copyOf(other));
  }

  static String key(String one, String other) {
    return one + " / " + other;
  }

  /** How far apart two phrases sound, without the words that they share. */
  Pair between(String one, String other) {
    List<String> left = withoutShared(words(one), words(other));
    List<String> right = withoutShared(words(other), words(one));
    int fewest = Integer.MAX_VALUE;
    double least = 1;
    for (List<String> first : pronunciations.of(left)) {
      for (List<String> second : pronunciations.of(right)) {
        int phones = distance(first, second);
        fewest = Math.min(fewest, phones);
        least = Math.min(least, phones / (double) Math.max(first.size(), second.size()));
      }
    }
    return new Pair(
        new LinkedHashSet<>(), String.join(" ", left), String.join(" ", right), fewest, least);
  }

  private static List<String> words(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
  }

  /** The least number of phones put in, left out or exchanged. */
  static int distance(List<String> one, List<String> other) {
    int[] above = new int[other.size() + 1];
    for (int j = 0; j < above.length; j++) {
      above[j] = j;
    }
    for (int i = 1; i <= one.size(); i++) {
      int[] row = new int[above.length];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int exchanged = above[j - 1] + (one.get(i - 1).equals(other.get(j - 1)) ? 0 : 1);
        row[j] = Math.min(exchanged, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[other.size()];
  }

  /**
   * What is left of the first row of words without its longest common part with the other. Twins
   * count as the same word.
   */
  List<String> withoutShared(List<String> words, List<String> other) {
    List<String> one = plain(words);
    List<String> two = plain(other);
    int[][] longest = new int[one.size() + 1][two.size() + 1];
    for (int i = one.size() - 1; i >= 0; i--) {
      for (int j = two.size() - 1; j >= 0; j--) {
        longest[i][j] =
            one.get(i).equals(two.get(j))
                ? longest[i + 1][j + 1] + 1
                : Math.max(longest[i + 1][j], longest[i][j + 1]);
      }
    }
    List<String> rest = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < one.size()) {
      if (j < two.size() && one.get(i).equals(two.get(j))) {
        i++;
        j++;
      } else if (j < two.size() && longest[i][j + 1] >= longest[i + 1][j]) {
        j++;
      } else {
        rest.add(words.get(i++));
      }
    }
    return rest;
  }

  // ---- where phrases compete ----

  /** Phrases by the place in which they compete. */
  Map<String, List<Sentence>> places() {
    Map<String, List<Sentence>> places = new LinkedHashMap<>();
    places.put("opening", openings());
    for (String rule : grammar.ruleNames()) {
      Phrase frame = frame(grammar.phrase(rule));
      if (sentences.ways(frame) <= SMALL) {
        places.put(rule, said(sentences.all(frame)));
      }
    }
    return places;
  }

  /** Whatever a sentence can begin with: commands, the words before each value, the call. */
  private List<Sentence> openings() {
    List<Sentence> openings = new ArrayList<>(sentences.all(new Phrase.Rule("command")));
    openings.addAll(sentences.all(new Phrase.Rule("call")));
    openings.add(new Sentence(List.of("correction"), List.of("do correct")));
    Phrase.Choice statement = (Phrase.Choice) grammar.phrase("statement");
    for (Phrase option : statement.options()) {
      Phrase rule = grammar.phrase(((Phrase.Rule) option).name());
      List<Sentence> named = said(sentences.all(withoutValue(rule)));
      openings.addAll(named.isEmpty() ? said(sentences.all(rule)) : named);
    }
    return openings;
  }

  private static List<Sentence> said(List<Sentence> sentences) {
    return sentences.stream().filter(sentence -> !sentence.words().isEmpty()).toList();
  }

  private static Phrase withoutValue(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule && rule.name().endsWith("_value")) {
      return new Phrase.Nothing();
    }
    return rebuilt(phrase, CompetingPairs::withoutValue);
  }

  /** The words around the numbers, which are compared among themselves. */
  private Phrase frame(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule && sentences.ways(rule) > SMALL) {
      Phrase inside = grammar.phrase(rule.name());
      return isNumber(inside) ? new Phrase.Nothing() : frame(inside);
    }
    if (phrase instanceof Phrase.OnceOrMore again) {
      return frame(again.part());
    }
    return rebuilt(phrase, this::frame);
  }

  private boolean isNumber(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule) {
      return isNumber(grammar.phrase(rule.name()));
    }
    boolean plain =
        !(phrase instanceof Phrase.Tagged tagged)
            || NUMBER_TAGS.contains(tagged.tag().split(" ", 2)[0]);
    return plain && phrase.parts().stream().allMatch(this::isNumber);
  }

  /** Words that stand for one another without any difference: inch and inches, five and fife. */
  private void gatherTwins(Phrase phrase) {
    if (phrase instanceof Phrase.Choice choice) {
      String first = null;
      for (Phrase option : choice.options()) {
        if (option instanceof Phrase.Word word) {
          first = first == null ? word.text() : first;
          twins.putIfAbsent(word.text(), first);
        }
      }
    }
    phrase.parts().forEach(this::gatherTwins);
  }

  private List<String> plain(List<String> words) {
    return words.stream().map(word -> twins.getOrDefault(word, word)).toList();
  }

  private static Phrase rebuilt(Phrase phrase, UnaryOperator<Phrase> change) {
    if (phrase instanceof Phrase.Sequence sequence) {
      return new Phrase.Sequence(sequence.parts().stream().map(change).toList());
    }
    if (phrase instanceof Phrase.Choice choice) {
      return new Phrase.Choice(choice.options().stream().map(change).toList());
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return new Phrase.Maybe(change.apply(maybe.part()));
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return new Phrase.Tagged(change.apply(tagged.part()), tagged.tag());
    }
    return phrase;
  }
}
