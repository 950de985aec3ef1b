package rigspeak.hearing;

import java.nio.IntBuffer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Phrase;

/**
 * Every row of words that the grammar allows, as the smallest graph that has exactly these rows: at
 * each place, each word leads to one next place.
 *
 * <p>The recogniser searches along it. Written out rule by rule, the same words would stand in it
 * dozens of times, and the search would follow each copy.
 *
 * @param next for each place, where each word leads; place 0 is the start
 * @param mayEnd for each place, whether the row may end there
 */
record WordGraph(List<Map<String, Integer>> next, List<Boolean> mayEnd) {
  private static final int DEEPEST_RULE = 60;

  /** Beyond this many places it could not be searched; the tool's own grammar has a tenth. */
  private static final int MOST_PLACES = 20_000;

  WordGraph {
    next = List.copyOf(next);
    mayEnd = List.copyOf(mayEnd);
  }

  /** The rows that are open now. */
  static WordGraph of(Grammar grammar, Expected expected) {
    Phrase open =
        new Phrase.Choice(expected.rules().stream().<Phrase>map(Phrase.Rule::new).toList());
    return new Rules(grammar).graph(open, 0);
  }

  /** The graphs of a grammar's rules; a rule that others use often is drawn once. */
  private static final class Rules {
    private final Grammar grammar;
    private final Map<String, WordGraph> drawn = new HashMap<>();

    Rules(Grammar grammar) {
      this.grammar = grammar;
    }

    WordGraph graph(Phrase phrase, int depth) {
      Sketch sketch = new Sketch(this);
      int start = sketch.place();
      int end = sketch.place();
      sketch.draw(phrase, start, end, depth);
      return sketch.oneWayEach(start, end).smallest();
    }

    WordGraph graph(Phrase.Rule rule, int depth) {
      if (depth > DEEPEST_RULE) {
        throw new HearingFault("The grammar has a rule that contains itself: " + rule + ".");
      }
      WordGraph known = drawn.get(rule.name());
      if (known == null) {
        known = graph(grammar.phrase(rule.name()), depth + 1);
        drawn.put(rule.name(), known);
      }
      return known;
    }
  }

  /** Exactly these rows. */
  static WordGraph ofRows(List<List<String>> rows) {
    List<Map<String, Integer>> next = new ArrayList<>(List.of(new LinkedHashMap<>()));
    List<Boolean> mayEnd = new ArrayList<>(List.of(false));
    for (List<String> row : rows) {
      int place = 0;
      for (String word : row) {
        Map<String, Integer> ways = next.get(place);
        if (!ways.containsKey(word)) {
          ways.put(word, next.size());
          next.add(new LinkedHashMap<>());
          mayEnd.add(false);
        }
        place = ways.get(word);
      }
      mayEnd.set(place, true);
    }
    return new WordGraph(next, mayEnd);
  }

  /** All words in it. */
  Set<String> words() {
    Set<String> words = new LinkedHashSet<>();
    next.forEach(ways -> words.addAll(ways.keySet()));
    return words;
  }

  /** Whether this row of words is allowed. */
  boolean allows(List<String> words) {
    int place = 0;
    for (String word : words) {
      Integer there = next.get(place).get(word);
      if (there == null) {
        return false;
      }
      place = there;
    }
    return mayEnd.get(place);
  }

  /**
   * Merges places from which the same rows can follow (Moore's partition refinement: split classes
   * until the members of each agree on where every word leads).
   */
  private WordGraph smallest() {
    Ways[] ways = ways();
    int[] kind = new int[next.size()];
    for (int place = 0; place < kind.length; place++) {
      kind[place] = mayEnd.get(place) ? 1 : 0;
    }
    int kinds = 0;
    while (true) {
      Map<IntBuffer, Integer> known = new HashMap<>();
      int[] finer = new int[kind.length];
      for (int place = 0; place < kind.length; place++) {
        IntBuffer description = ways[place].described(kind[place], kind);
        Integer number = known.get(description);
        if (number == null) {
          number = known.size();
          known.put(description, number);
        }
        finer[place] = number;
      }
      kind = finer;
      if (known.size() == kinds) {
        return merged(kind, kinds);
      }
      kinds = known.size();
    }
  }

  /** The ways out of each place in the order of their words' numbers. */
  private Ways[] ways() {
    Map<String, Integer> numbers = new HashMap<>();
    Ways[] all = new Ways[next.size()];
    for (int place = 0; place < all.length; place++) {
      TreeMap<Integer, Integer> sorted = new TreeMap<>();
      next.get(place)
          .forEach(
              (word, there) -> {
                numbers.putIfAbsent(word, numbers.size());
                sorted.put(numbers.get(word), there);
              });
      all[place] =
          new Ways(
              sorted.keySet().stream().mapToInt(word -> word).toArray(),
              sorted.values().stream().mapToInt(there -> there).toArray());
    }
    return all;
  }

  /** Where the words lead from one place. */
  private static final class Ways {
    private final int[] words;
    private final int[] there;

    Ways(int[] words, int[] there) {
      this.words = words;
      this.there = there;
    }

    /** All that tells a place of one kind from others. */
    IntBuffer described(int ownKind, int[] kinds) {
      int[] all = new int[1 + 2 * words.length];
      all[0] = ownKind;
      for (int i = 0; i < words.length; i++) {
        all[1 + 2 * i] = words[i];
        all[2 + 2 * i] = kinds[there[i]];
      }
      return IntBuffer.wrap(all);
    }
  }

  private WordGraph merged(int[] kind, int kinds) {
    List<Map<String, Integer>> ways = new ArrayList<>();
    List<Boolean> ends = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      ways.add(new LinkedHashMap<>());
      ends.add(false);
    }
    for (int place = 0; place < kind.length; place++) {
      Map<String, Integer> of = ways.get(kind[place]);
      next.get(place).forEach((word, there) -> of.put(word, kind[there]));
      ends.set(kind[place], mayEnd.get(place));
    }
    return new WordGraph(ways, ends);
  }

  /** The grammar drawn rule by rule, with ways that need no word. */
  private static final class Sketch {
    private final Rules rules;
    private final List<Map<String, List<Integer>>> ways = new ArrayList<>();
    private final List<List<Integer>> silentWays = new ArrayList<>();
    private final Map<Integer, int[]> silentReach = new HashMap<>();

    Sketch(Rules rules) {
      this.rules = rules;
    }

    int place() {
      ways.add(new LinkedHashMap<>());
      silentWays.add(new ArrayList<>(1));
      return ways.size() - 1;
    }

    void draw(Phrase phrase, int from, int to, int depth) {
      if (phrase instanceof Phrase.Word word) {
        ways.get(from).computeIfAbsent(word.text(), w -> new ArrayList<>(1)).add(to);
      } else if (phrase instanceof Phrase.Nothing) {
        silentWays.get(from).add(to);
      } else if (phrase instanceof Phrase.Rule rule) {
        copy(rules.graph(rule, depth), from, to);
      } else if (phrase instanceof Phrase.Tagged tagged) {
        draw(tagged.part(), from, to, depth);
      } else if (phrase instanceof Phrase.Maybe maybe) {
        silentWays.get(from).add(to);
        draw(maybe.part(), from, to, depth);
      } else if (phrase instanceof Phrase.Choice choice) {
        choice.options().forEach(option -> draw(option, from, to, depth));
      } else if (phrase instanceof Phrase.Sequence sequence) {
        int at = from;
        for (Phrase part : sequence.parts()) {
          int after = place();
          draw(part, at, after, depth);
          at = after;
        }
        silentWays.get(at).add(to);
      } else if (phrase instanceof Phrase.OnceOrMore again) {
        int before = place();
        int after = place();
        silentWays.get(from).add(before);
        draw(again.part(), before, after, depth);
        silentWays.get(after).add(before);
        silentWays.get(after).add(to);
      }
    }

    private void copy(WordGraph graph, int from, int to) {
      int first = ways.size();
      graph.next().forEach(way -> place());
      silentWays.get(from).add(first);
      for (int i = 0; i < graph.next().size(); i++) {
        int here = first + i;
        graph
            .next()
            .get(i)
            .forEach(
                (word, there) -> ways.get(here).put(word, new ArrayList<>(List.of(first + there))));
        if (graph.mayEnd().get(i)) {
          silentWays.get(here).add(to);
        }
      }
    }

    /** The same rows with one way for each word and none without a word (subset construction). */
    WordGraph oneWayEach(int start, int end) {
      int[] matter = thatMatter(end);
      List<Map<String, int[]>> silently =
          Arrays.stream(matter).mapToObj(place -> withSilentWays(place, matter)).toList();
      int last = Arrays.binarySearch(matter, end);
      Map<BitSet, Integer> known = new HashMap<>();
      List<Map<String, Integer>> next = new ArrayList<>();
      List<Boolean> mayEnd = new ArrayList<>();
      Deque<BitSet> waiting = new ArrayDeque<>();
      BitSet first = new BitSet();
      set(first, silentReach(start, matter));
      reached(first, known, waiting);
      while (!waiting.isEmpty()) {
        BitSet here = waiting.remove();
        Map<String, BitSet> there = new LinkedHashMap<>();
        for (int place = here.nextSetBit(0); place >= 0; place = here.nextSetBit(place + 1)) {
          silently
              .get(place)
              .forEach(
                  (word, places) -> set(there.computeIfAbsent(word, w -> new BitSet()), places));
        }
        Map<String, Integer> numbered = new LinkedHashMap<>();
        there.forEach((word, places) -> numbered.put(word, reached(places, known, waiting)));
        next.add(numbered);
        mayEnd.add(here.get(last));
      }
      return new WordGraph(next, mayEnd);
    }

    /** The places that a word leads from, and the end: no others need be told apart. */
    private int[] thatMatter(int end) {
      return IntStream.range(0, ways.size())
          .filter(place -> place == end || !ways.get(place).isEmpty())
          .toArray();
    }

    private static void set(BitSet set, int[] places) {
      for (int place : places) {
        set.set(place);
      }
    }

    private static int reached(BitSet places, Map<BitSet, Integer> known, Deque<BitSet> waiting) {
      Integer number = known.get(places);
      if (number == null) {
        number = known.size();
        if (number == MOST_PLACES) {
          throw new HearingFault("The grammar lets more be said than can be searched.");
        }
        known.put(places, number);
        waiting.add(places);
      }
      return number;
    }

    /** The ways of a place, each with all that can be reached by it and then without a word. */
    private Map<String, int[]> withSilentWays(int place, int[] matter) {
      Map<String, int[]> all = new LinkedHashMap<>();
      ways.get(place)
          .forEach(
              (word, places) ->
                  all.put(
                      word,
                      places.stream()
                          .flatMapToInt(to -> Arrays.stream(silentReach(to, matter)))
                          .distinct()
                          .toArray()));
      return all;
    }

    /**
     * Of the place itself and all that can be reached from it without a word, those that matter, by
     * their numbers among these.
     */
    private int[] silentReach(int place, int[] matter) {
      int[] known = silentReach.get(place);
      if (known == null) {
        Set<Integer> all = new LinkedHashSet<>();
        Deque<Integer> waiting = new ArrayDeque<>(List.of(place));
        while (!waiting.isEmpty()) {
          int here = waiting.remove();
          if (all.add(here)) {
            waiting.addAll(silentWays.get(here));
          }
        }
        known =
            all.stream()
                .mapToInt(here -> Arrays.binarySearch(matter, here))
                .filter(number -> number >= 0)
                .toArray();
        silentReach.put(place, known);
      }
      return known;
    }
  }
}
