package rigspeak.grammar;

import java.net.URL;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words that can be said and the tags they earn, read from the file that the recogniser's
 * network is built from too.
 *
 * <p>Sphinx4 drops the tags when it builds a network from a grammar; here they are kept, and {@link
 * #match} tells every way in which a row of words can be read.
 */
public final class Grammar {
  /** Longer than any breath; beyond it a row of words is refused unread. */
  private static final int LONGEST_BREATH = 80;

  private final Map<String, Phrase> rules;

  private Grammar(Map<String, Phrase> rules) {
    this.rules = new LinkedHashMap<>(rules);
  }

  /** The grammar that comes with the tool. */
  public static Grammar bundled() {
    URL file = Grammar.class.getResource("/rigspeak/grammars/rigspeak.jsgf");
    if (file == null) {
      throw new GrammarFault("The grammar is missing from the program; build it again.", null);
    }
    return read(file);
  }

  /**
   * Reads a JSGF file.
   *
   * @throws GrammarFault if the file cannot be read, names a rule that it does not define, has a
   *     rule that begins with itself, or repeats a part that can be empty
   */
  public static Grammar read(URL file) {
    Grammar grammar = new Grammar(JsgfFile.rules(file));
    for (String rule : grammar.rules.keySet()) {
      grammar.refuseUndefinedNames(grammar.phrase(rule), file);
      grammar.refuseLeftRecursion(rule, file);
    }
    for (String rule : grammar.rules.keySet()) {
      grammar.refuseEmptyRepeats(grammar.phrase(rule), file);
    }
    return grammar;
  }

  /**
   * What the rule of this name allows.
   *
   * @throws IllegalArgumentException if there is no such rule
   */
  public Phrase phrase(String rule) {
    Phrase phrase = rules.get(rule);
    if (phrase == null) {
      throw new IllegalArgumentException("the grammar has no rule named " + rule);
    }
    return phrase;
  }

  /** The names of all rules, in the order of the file. */
  public List<String> ruleNames() {
    return List.copyOf(rules.keySet());
  }

  /**
   * Every different row of tags that these words earn under the open rules; empty if the words fit
   * none, more than one row if the grammar is ambiguous about them.
   *
   * @param words lower-case words without punctuation
   */
  public Set<List<String>> match(List<String> words, Expected expected) {
    Set<List<String>> readings = new LinkedHashSet<>();
    if (words.isEmpty() || words.size() > LONGEST_BREATH) {
      return readings;
    }
    Walk walk = new Walk(List.copyOf(words));
    for (String rule : expected.rules()) {
      for (Reading reading : walk.rule(rule, 0)) {
        if (reading.end() == words.size()) {
          readings.add(reading.tags());
        }
      }
    }
    return readings;
  }

  /** Words read up to (not including) {@code end}, and the tags they earned. */
  private record Reading(int end, List<String> tags) {
    static Reading nothingAt(int start) {
      return new Reading(start, List.of());
    }

    Reading then(Reading next) {
      List<String> all = new ArrayList<>(tags);
      all.addAll(next.tags());
      return new Reading(next.end(), List.copyOf(all));
    }

    Reading tagged(String tag) {
      return then(new Reading(end, List.of(tag)));
    }
  }

  /** One row of words, walked from left to right by every way there is. */
  private final class Walk {
    private final List<String> words;
    private final Map<String, Map<Integer, Set<Reading>>> known = new HashMap<>();

    Walk(List<String> words) {
      this.words = words;
    }

    Set<Reading> rule(String name, int start) {
      Map<Integer, Set<Reading>> ofRule = known.computeIfAbsent(name, n -> new HashMap<>());
      Set<Reading> readings = ofRule.get(start);
      if (readings == null) {
        readings = read(phrase(name), start);
        ofRule.put(start, readings);
      }
      return readings;
    }

    private Set<Reading> read(Phrase phrase, int start) {
      Set<Reading> readings = new LinkedHashSet<>();
      if (phrase instanceof Phrase.Word word) {
        if (start < words.size() && words.get(start).equals(word.text())) {
          readings.add(Reading.nothingAt(start + 1));
        }
      } else if (phrase instanceof Phrase.Nothing) {
        readings.add(Reading.nothingAt(start));
      } else if (phrase instanceof Phrase.Rule rule) {
        readings.addAll(rule(rule.name(), start));
      } else if (phrase instanceof Phrase.Tagged tagged) {
        for (Reading reading : read(tagged.part(), start)) {
          readings.add(reading.tagged(tagged.tag()));
        }
      } else if (phrase instanceof Phrase.Maybe maybe) {
        readings.add(Reading.nothingAt(start));
        readings.addAll(read(maybe.part(), start));
      } else if (phrase instanceof Phrase.Choice choice) {
        for (Phrase option : choice.options()) {
          readings.addAll(read(option, start));
        }
      } else if (phrase instanceof Phrase.Sequence sequence) {
        readings.add(Reading.nothingAt(start));
        for (Phrase part : sequence.parts()) {
          readings = continued(readings, part);
        }
      } else if (phrase instanceof Phrase.OnceOrMore again) {
        Set<Reading> latest = read(again.part(), start);
        while (readings.addAll(latest)) {
          latest = continued(latest, again.part());
        }
      }
      return readings;
    }

    private Set<Reading> continued(Set<Reading> readings, Phrase next) {
      Set<Reading> longer = new LinkedHashSet<>();
      for (Reading reading : readings) {
        for (Reading more : read(next, reading.end())) {
          longer.add(reading.then(more));
        }
      }
      return longer;
    }
  }

  private void refuseUndefinedNames(Phrase phrase, URL file) {
    if (phrase instanceof Phrase.Rule rule && !rules.containsKey(rule.name())) {
      throw new GrammarFault(
          "The grammar " + file + " uses the rule <" + rule.name() + "> but does not define it.",
          null);
    }
    parts(phrase).forEach(part -> refuseUndefinedNames(part, file));
  }

  /** A part that can be said without a word could be repeated for ever. */
  private void refuseEmptyRepeats(Phrase phrase, URL file) {
    if (phrase instanceof Phrase.OnceOrMore again
        && canBeEmpty(again.part(), new LinkedHashSet<>())) {
      throw new GrammarFault("The grammar " + file + " repeats a part that can be empty.", null);
    }
    parts(phrase).forEach(part -> refuseEmptyRepeats(part, file));
  }

  private void refuseLeftRecursion(String rule, URL file) {
    Set<String> seen = new LinkedHashSet<>();
    Deque<String> waiting = new ArrayDeque<>(firstRules(phrase(rule)));
    while (!waiting.isEmpty()) {
      String name = waiting.pop();
      if (name.equals(rule)) {
        throw new GrammarFault(
            "The grammar " + file + " has a rule that begins with itself: <" + rule + ">.", null);
      }
      if (seen.add(name)) {
        waiting.addAll(firstRules(phrase(name)));
      }
    }
  }

  /** The rules that may be entered before any word of the phrase has been said. */
  private Set<String> firstRules(Phrase phrase) {
    Set<String> first = new LinkedHashSet<>();
    if (phrase instanceof Phrase.Rule rule) {
      first.add(rule.name());
    } else if (phrase instanceof Phrase.Sequence sequence) {
      for (Phrase part : sequence.parts()) {
        first.addAll(firstRules(part));
        if (!canBeEmpty(part, new LinkedHashSet<>())) {
          break;
        }
      }
    } else {
      parts(phrase).forEach(part -> first.addAll(firstRules(part)));
    }
    return first;
  }

  private boolean canBeEmpty(Phrase phrase, Set<String> open) {
    if (phrase instanceof Phrase.Nothing || phrase instanceof Phrase.Maybe) {
      return true;
    }
    if (phrase instanceof Phrase.Word) {
      return false;
    }
    if (phrase instanceof Phrase.Rule rule) {
      return open.add(rule.name()) && canBeEmpty(phrase(rule.name()), open);
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options().stream().anyMatch(option -> canBeEmpty(option, open));
    }
    return parts(phrase).stream().allMatch(part -> canBeEmpty(part, open));
  }

  private static List<Phrase> parts(Phrase phrase) {
    if (phrase instanceof Phrase.Sequence sequence) {
      return sequence.parts();
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options();
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return List.of(maybe.part());
    }
    if (phrase instanceof Phrase.OnceOrMore again) {
      return List.of(again.part());
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return List.of(tagged.part());
    }
    return List.of();
  }
}
