package rigspeak.hearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The rows of words that sound most like a given one: those it may have been taken for.
 *
 * <p>Model: a rival differs in one stretch of the row, where up to {@value #MOST_WORDS} other words
 * stand in place of some, or of none. How far two stretches sound apart is the least cost of the
 * phones exchanged, put in or left out (Levenshtein); phones of one kind count half. Stress is left
 * aside.
 */
final class Rivals {
  private static final int MOST_WORDS = 3;

  /** Beyond this nobody takes one for the other. In phones. */
  private static final double FARTHEST = 3;

  private static final double ONE_PHONE = 1;
  private static final double SAME_KIND = 0.5;

  /** Phones that are made alike: textbook classes of vowels and consonants. */
  private static final List<Set<String>> KINDS =
      List.of(
          Set.of("IY", "IH", "EH", "EY", "AE", "Y"),
          Set.of("AA", "AO", "AH", "OW", "AW"),
          Set.of("UW", "UH", "OW"),
          Set.of("AH", "IH", "EH", "ER", "AE"),
          Set.of("AY", "AA", "EY", "OY", "AE"),
          Set.of("P", "T", "K"),
          Set.of("B", "D", "G"),
          Set.of("P", "B"),
          Set.of("T", "D"),
          Set.of("K", "G"),
          Set.of("F", "TH", "S", "SH"),
          Set.of("V", "DH", "Z", "ZH"),
          Set.of("S", "Z"),
          Set.of("F", "V"),
          Set.of("TH", "DH"),
          Set.of("CH", "JH", "SH", "T"),
          Set.of("M", "N", "NG"),
          Set.of("L", "R", "W"));

  /** With which phones each is made alike. */
  private static final Map<String, Set<String>> ALIKE = alike();

  private final WordGraph graph;
  private final Function<String, List<List<String>>> phones;
  private final Map<String, List<List<String>>> known = new HashMap<>();

  /**
   * @param graph the rows that may be said
   * @param phones the ways to say a word, each a row of phones
   */
  Rivals(WordGraph graph, Function<String, List<List<String>>> phones) {
    this.graph = graph;
    this.phones = phones;
  }

  private static Map<String, Set<String>> alike() {
    Map<String, Set<String>> alike = new HashMap<>();
    for (Set<String> kind : KINDS) {
      for (String phone : kind) {
        alike.computeIfAbsent(phone, p -> new HashSet<>()).addAll(kind);
      }
    }
    return alike;
  }

  /** Another row and how far from the given one it sounds, in phones. */
  record Rival(List<String> words, double distance) {
    Rival {
      words = List.copyOf(words);
    }
  }

  /** The nearest first. */
  List<Rival> of(List<String> row, int most) {
    Map<List<String>, Double> found = new HashMap<>();
    int place = 0;
    for (int from = 0; from <= row.size(); from++) {
      new Stretch(row, from, found).search(place);
      place = from < row.size() ? graph.next().get(place).get(row.get(from)) : place;
    }
    found.remove(row);
    return found.entrySet().stream()
        .map(entry -> new Rival(entry.getKey(), entry.getValue()))
        .sorted(
            Comparator.comparingDouble(Rival::distance)
                .thenComparing(rival -> String.join(" ", rival.words())))
        .limit(most)
        .toList();
  }

  private List<List<String>> phones(String word) {
    return known.computeIfAbsent(word, phones);
  }

  /** Other words from one place of the row on. */
  private final class Stretch {
    private final List<String> row;
    private final int from;
    private final Map<List<String>, Double> found;

    /** The row's phones from here on, and how many of them each end of a word takes. */
    private final List<String> said = new ArrayList<>();

    private final List<Integer> ends = new ArrayList<>();

    Stretch(List<String> row, int from, Map<List<String>, Double> found) {
      this.row = row;
      this.from = from;
      this.found = found;
      ends.add(0);
      for (int i = from; i < Math.min(row.size(), from + MOST_WORDS); i++) {
        said.addAll(phones(row.get(i)).get(0));
        ends.add(said.size());
      }
    }

    void search(int place) {
      double[] nothing = new double[said.size() + 1];
      for (int i = 0; i < nothing.length; i++) {
        nothing[i] = i * ONE_PHONE;
      }
      search(place, nothing, List.of());
    }

    private void search(int place, double[] costs, List<String> words) {
      for (int i = 0; i < ends.size(); i++) {
        double cost = costs[ends.get(i)];
        if (cost <= FARTHEST && goesOn(place, from + i)) {
          found.merge(with(words, i), cost, Math::min);
        }
      }
      if (words.size() == MOST_WORDS) {
        return;
      }
      graph
          .next()
          .get(place)
          .forEach(
              (word, there) -> {
                for (List<String> way : phones(word)) {
                  double[] after = costs;
                  for (int i = 0; i < way.size() && least(after) <= FARTHEST; i++) {
                    after = after(after, way.get(i));
                  }
                  if (least(after) <= FARTHEST) {
                    List<String> longer = new ArrayList<>(words);
                    longer.add(word);
                    search(there, after, longer);
                  }
                }
              });
    }

    private static double least(double[] costs) {
      double least = costs[0];
      for (double cost : costs) {
        least = Math.min(least, cost);
      }
      return least;
    }

    private double[] after(double[] costs, String phone) {
      Set<String> alike = ALIKE.getOrDefault(phone, Set.of());
      double[] after = new double[costs.length];
      after[0] = costs[0] + ONE_PHONE;
      for (int i = 1; i < after.length; i++) {
        String other = said.get(i - 1);
        double apart = phone.equals(other) ? 0 : alike.contains(other) ? SAME_KIND : ONE_PHONE;
        after[i] = Math.min(costs[i - 1] + apart, Math.min(costs[i], after[i - 1]) + ONE_PHONE);
      }
      return after;
    }

    /** Whether the rest of the row may follow. */
    private boolean goesOn(int place, int next) {
      int at = place;
      for (String word : row.subList(next, row.size())) {
        Integer there = graph.next().get(at).get(word);
        if (there == null) {
          return false;
        }
        at = there;
      }
      return graph.mayEnd().get(at);
    }

    private List<String> with(List<String> words, int left) {
      List<String> whole = new ArrayList<>(row.subList(0, from));
      whole.addAll(words);
      whole.addAll(row.subList(from + left, row.size()));
      return whole;
    }
  }
}
