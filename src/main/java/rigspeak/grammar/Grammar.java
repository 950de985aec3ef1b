package rigspeak.grammar;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
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

  /**
   * More steps than this through the rules are not taken for one row of words; the tool's own
   * grammar takes less than a tenth of it for any breath.
   */
  private static final int MOST_STEPS = 1_000_000;

  private final GrammarText text;
  private final Map<String, Phrase> rules;

  private Grammar(GrammarText text) {
    this.text = text;
    this.rules = text.rules();
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
    try (InputStream in = file.openStream()) {
      return read(file.toString(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new GrammarFault("The grammar " + file + " cannot be opened.", e);
    }
  }

  /**
   * The same from text.
   *
   * @param name what a fault calls it
   */
  public static Grammar read(String name, String text) {
    GrammarText read = new GrammarText(name, text);
    Grammar grammar = new Grammar(read);
    new Soundness(grammar.rules, read).refuse();
    return grammar;
  }

  /**
   * A grammar that somebody supplies, held to more: of a size that can be searched, no rule defined
   * twice, unused or leading back to itself, no word that is written otherwise than it is heard.
   *
   * @param entries rules that may be open by themselves
   * @throws GrammarFault with one sentence that has the line and the reason
   */
  public static Grammar supplied(String name, String text, Set<String> entries) {
    Grammar grammar = read(name, text);
    new Inspection(grammar, grammar.text).refuse(entries);
    return grammar;
  }

  /**
   * Why this grammar cannot be used.
   *
   * @param near a piece of its file, to find the line: a rule as {@code <name>}, a word, a tag
   * @param reason as it goes on after "The grammar FILE, line N,"
   */
  public GrammarFault fault(String near, String reason) {
    return text.fault(near, reason);
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

  /** Whether there is a rule of this name. */
  public boolean has(String rule) {
    return rules.containsKey(rule);
  }

  /** The names of all rules, in the order of the file. */
  public List<String> ruleNames() {
    return List.copyOf(rules.keySet());
  }

  /**
   * Every different row of tags that these words earn under the open rules; empty if the words fit
   * none or can be read in too many ways to look at, more than one row if the grammar is ambiguous
   * about them.
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
    return walk.steps > MOST_STEPS ? Set.of() : readings;
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
    private int steps;

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
      if (++steps > MOST_STEPS) {
        return readings;
      }
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
}
