package rigspeak.grammar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Sentences made from the rule tree, each with the tags that its making earned. */
public final class Sentences {
  /** Of five that are begun, two are followed by one more. */
  private static final int BEGUN = 5;

  private static final int FOLLOWED = 2;

  private static final int A_FEW = 8;

  private final Grammar grammar;
  private final Map<String, List<Sentence>> coveringByRule = new HashMap<>();
  private final Map<String, List<Sentence>> fewByRule = new HashMap<>();

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
    return covering(phrase, this::ofRule);
  }

  /**
   * The same, but of a rule that was covered before, in this call or in one before it, only a few:
   * altogether about as many sentences as the file has alternatives.
   */
  public List<Sentence> coveringAnew(Phrase phrase) {
    return covering(phrase, this::anewOfRule);
  }

  private List<Sentence> ofRule(String rule) {
    List<Sentence> known = coveringByRule.get(rule);
    if (known == null) {
      known = covering(grammar.phrase(rule), this::ofRule);
      coveringByRule.put(rule, known);
    }
    return known;
  }

  private List<Sentence> anewOfRule(String rule) {
    List<Sentence> few = fewByRule.get(rule);
    if (few != null) {
      return few;
    }
    List<Sentence> all = covering(grammar.phrase(rule), this::anewOfRule);
    int step = Math.max(1, all.size() / A_FEW);
    fewByRule.put(
        rule,
        IntStream.range(0, all.size()).filter(i -> i % step == 0).mapToObj(all::get).toList());
    return all;
  }

  private List<Sentence> covering(Phrase phrase, Function<String, List<Sentence>> ofRule) {
    if (phrase instanceof Phrase.Rule rule) {
      return ofRule.apply(rule.name());
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return covering(tagged.part(), ofRule).stream().map(s -> s.tagged(tagged.tag())).toList();
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return Stream.concat(Stream.of(Sentence.NOTHING), covering(maybe.part(), ofRule).stream())
          .toList();
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options().stream()
          .flatMap(option -> covering(option, ofRule).stream())
          .toList();
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      return sideBySide(sequence.parts().stream().map(part -> covering(part, ofRule)).toList());
    }
    if (phrase instanceof Phrase.OnceOrMore again) {
      List<Sentence> once = covering(again.part(), ofRule);
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

  /**
   * One sentence, drawn part by part.
   *
   * @param draw a number from 0 to less than what it is given
   */
  public Sentence any(Phrase phrase, IntUnaryOperator draw) {
    if (phrase instanceof Phrase.Rule rule) {
      return any(grammar.phrase(rule.name()), draw);
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return any(tagged.part(), draw).tagged(tagged.tag());
    }
    if (phrase instanceof Phrase.Maybe maybe) {
      return draw.applyAsInt(2) == 1 ? any(maybe.part(), draw) : Sentence.NOTHING;
    }
    if (phrase instanceof Phrase.Choice choice) {
      return any(choice.options().get(draw.applyAsInt(choice.options().size())), draw);
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      Sentence sentence = Sentence.NOTHING;
      for (Phrase part : sequence.parts()) {
        sentence = sentence.then(any(part, draw));
      }
      return sentence;
    }
    if (phrase instanceof Phrase.OnceOrMore again) {
      Sentence sentence = any(again.part(), draw);
      while (draw.applyAsInt(BEGUN) < FOLLOWED) {
        sentence = sentence.then(any(again.part(), draw));
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
    phrase.parts().forEach(part -> gatherWords(part, words));
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
    phrase.parts().forEach(part -> gatherRules(part, rules));
  }
}
