package rigspeak.grammar;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** What a grammar that somebody supplies is held to beyond {@link Soundness}. */
final class Inspection {
  /** Words of all rules written out in one another; the tool's own grammar has a quarter of it. */
  private static final double MOST_WORDS = 400_000;

  /** Words in a row, what may be repeated said twice; in the tool's own grammar 65. */
  private static final double LONGEST_ROW = 200;

  private static final int DEEPEST_RULE = 40;
  private static final Pattern AS_HEARD = Pattern.compile("[a-z]+('[a-z]+)?");

  private final Grammar grammar;
  private final GrammarText text;
  private final Set<String> open = new LinkedHashSet<>();
  private final Map<String, Extent> extents = new HashMap<>();

  /**
   * How much there is below a phrase.
   *
   * @param words written in it, with those of its rules
   * @param row the most words in a row, what may be repeated said twice
   * @param depth of rules in one another
   */
  private record Extent(double words, double row, int depth) {}

  Inspection(Grammar grammar, GrammarText text) {
    this.grammar = grammar;
    this.text = text;
  }

  /**
   * @param entries rules that may be open by themselves
   */
  void refuse(Set<String> entries) {
    text.refuseTwins();
    grammar.ruleNames().forEach(this::ofRule);
    refuseUnused(entries);
    for (String word : new Sentences(grammar).words()) {
      if (!AS_HEARD.matcher(word).matches()) {
        throw text.fault(
            word, "has \"" + word + "\", which is not written in small letters as it is heard");
      }
    }
  }

  private void refuseUnused(Set<String> entries) {
    Sentences sentences = new Sentences(grammar);
    Set<String> used = new LinkedHashSet<>();
    for (String entry : entries) {
      if (grammar.has(entry)) {
        used.addAll(sentences.rulesBelow(new Phrase.Rule(entry)));
      }
    }
    for (String rule : grammar.ruleNames()) {
      if (!used.contains(rule)) {
        throw text.fault(named(rule), "defines " + named(rule) + ", which nothing leads to");
      }
    }
  }

  private Extent extent(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule) {
      return ofRule(rule.name());
    }
    double words = 0;
    double row = 0;
    double longest = 0;
    int depth = 0;
    for (Phrase part : phrase.parts()) {
      Extent extent = extent(part);
      words += extent.words();
      row += extent.row();
      longest = Math.max(longest, extent.row());
      depth = Math.max(depth, extent.depth());
    }
    if (phrase instanceof Phrase.Choice) {
      row = longest;
    } else if (phrase instanceof Phrase.OnceOrMore) {
      row *= 2;
    } else if (phrase instanceof Phrase.Word) {
      row = 1;
    }
    return new Extent(Math.max(1, words), row, depth);
  }

  private Extent ofRule(String name) {
    Extent known = extents.get(name);
    if (known != null) {
      return known;
    }
    if (!open.add(name)) {
      throw text.fault(named(name), "has a rule that leads back to itself: " + named(name));
    }
    Extent inside = extent(grammar.phrase(name));
    if (inside.words() > MOST_WORDS
        || inside.row() > LONGEST_ROW
        || inside.depth() >= DEEPEST_RULE) {
      throw text.fault(named(name), "has more below " + named(name) + " than can be searched");
    }
    Extent extent = new Extent(inside.words(), inside.row(), inside.depth() + 1);
    extents.put(name, extent);
    return extent;
  }

  private static String named(String rule) {
    return "<" + rule + ">";
  }
}
