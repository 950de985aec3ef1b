package rigspeak.grammar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Sentences made from the rule tree, each with the tags that its making earned. */
public final class Sentences {
  private static final double ONE_MORE = 0.4;

  private final Grammar grammar;
  private final Map<String, List<Sentence>> coveringByRule = new HashMap<>();

  public Sentences(Grammar grammar) {
    this.grammar = grammar;
  }

  /** A row of words and the tags in the order in which they are earned. */
  public record Sentence(List<String> words, List<String> tags) {
    static final Sentence NOTHING = new Sentence(List.of(), List.of());

    public Sentence {
      words = List.copyOf(words);
      tags = List.copyOf(tags);
    }

    Sentence then(Sentence next) {
      return new Sentence(joined(words, next.words), joined(tags, next.tags));
    }

    Sentence tagged(String tag) {
      return new Sentence(words, joined(tags, List.of(tag)));
    }

    public String text() {
      return String.join(" ", words);
    }

    @Override
    public String toString() {
      return text() + " " + tags;
    }

    private static List<String> joined(List<String> one, List<String> other) {
      return Stream.concat(one.stream(), other.stream()).toList();
    }
  }

  /** How many ways there are through a phrase; infinite where something may be repeated. */
  public double ways(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule) {
      return ways(grammar.phrase(rule.name()));
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return ways(tagged.part());
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return 1 + ways(maybe.part());
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options().stream().mapToDouble(this::ways).sum();
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      return sequence.parts().stream().mapToDouble(this::ways).reduce(1, (a, b) -> a * b);
    }
    return phrase instanceof Phrase.OnceOrMore ? Double.POSITIVE_INFINITY : 1;
  }

  /** Every sentence of a phrase that repeats nothing. */
  public List<Sentence> all(Phrase phrase) {
    if (phrase instanceof Phrase.Word word) {
      return List.of(new Sentence(List.of(word.text()), List.of()));
    }
    if (phrase instanceof Phrase.Nothing) {
      return List.of(Sentence.NOTHING);
    }
    if (phrase instanceof Phrase.Rule rule) {
      return all(grammar.phrase(rule.name()));
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return all(tagged.part()).stream().map(s -> s.tagged(tagged.tag())).toList();
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return Stream.concat(Stream.of(Sentence.NOTHING), all(maybe.part()).stream()).toList();
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options().stream().flatMap(option -> all(option).stream()).toList();
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      List<Sentence> sentences = List.of(Sentence.NOTHING);
      for (Phrase part : sequence.parts()) {
        List<Sentence> ends = all(part);
        sentences = sentences.stream().flatMap(start -> ends.stream().map(start::then)).toList();
      }
      return sentences;
    }
    throw new IllegalArgumentException("endless: " + phrase);
  }

  /**
   * Sentences that between them take every alternative, every option both said and left out, and
   * every repetition both once and twice.
   */
  public List<Sentence> covering(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule) {
      List<Sentence> known = coveringByRule.get(rule.name());
      if (known == null) {
        known = covering(grammar.phrase(rule.name()));
        coveringByRule.put(rule.name(), known);
      }
      return known;
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return covering(tagged.part()).stream().map(s -> s.tagged(tagged.tag())).toList();
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return Stream.concat(Stream.of(Sentence.NOTHING), covering(maybe.part()).stream()).toList();
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options().stream().flatMap(option -> covering(option).stream()).toList();
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      return sideBySide(sequence.parts().stream().map(this::covering).toList());
    }
    if (phrase instanceof Phrase.OnceOrMore again) {
      List<Sentence> once = covering(again.part());
      Sentence twice = once.get(0).then(once.get(once.size() - 1));
      return Stream.concat(once.stream(), Stream.of(twice)).toList();
    }
    return all(phrase);
  }

  /** The shorter lists begin anew until the longest is through. */
  private static List<Sentence> sideBySide(List<List<Sentence>> parts) {
    int most = parts.stream().mapToInt(List::size).max().orElse(0);
    List<Sentence> sentences = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      Sentence sentence = Sentence.NOTHING;
      for (List<Sentence> part : parts) {
        sentence = sentence.then(part.get(i % part.size()));
      }
      sentences.add(sentence);
    }
    return sentences;
  }

  /** One sentence, every alternative as likely as its neighbours. */
  public Sentence any(Phrase phrase, SplittableRandom random) {
    if (phrase instanceof Phrase.Rule rule) {
      return any(grammar.phrase(rule.name()), random);
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return any(tagged.part(), random).tagged(tagged.tag());
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return random.nextBoolean() ? any(maybe.part(), random) : Sentence.NOTHING;
    }
    if (phrase instanceof Phrase.Choice choice) {
      return any(choice.options().get(random.nextInt(choice.options().size())), random);
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      Sentence sentence = Sentence.NOTHING;
      for (Phrase part : sequence.parts()) {
        sentence = sentence.then(any(part, random));
      }
      return sentence;
    }
    if (phrase instanceof Phrase.OnceOrMore again) {
      Sentence sentence = any(again.part(), random);
      while (random.nextDouble() < ONE_MORE) {
        sentence = sentence.then(any(again.part(), random));
      }
      return sentence;
    }
    return all(phrase).get(0);
  }

  /** Every word that any rule has. */
  public Set<String> words() {
    Set<String> words = new LinkedHashSet<>();
    for (String rule : grammar.ruleNames()) {
      gatherWords(grammar.phrase(rule), words);
    }
    return words;
  }

  private static void gatherWords(Phrase phrase, Set<String> words) {
    if (phrase instanceof Phrase.Word word) {
      words.add(word.text());
    }
    parts(phrase).forEach(part -> gatherWords(part, words));
  }

  /** The names of all rules that are entered somewhere below the phrase. */
  public Set<String> rulesBelow(Phrase phrase) {
    Set<String> rules = new LinkedHashSet<>();
    gatherRules(phrase, rules);
    return rules;
  }

  private void gatherRules(Phrase phrase, Set<String> rules) {
    if (phrase instanceof Phrase.Rule rule && rules.add(rule.name())) {
      gatherRules(grammar.phrase(rule.name()), rules);
    }
    parts(phrase).forEach(part -> gatherRules(part, rules));
  }

  static List<Phrase> parts(Phrase phrase) {
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
