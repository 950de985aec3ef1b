package rigspeak.meaning;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.GrammarFault;
import rigspeak.grammar.Phrase;
import rigspeak.grammar.Sentences;
import rigspeak.grammar.Sentences.Sentence;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.rig.Slot;

/**
 * What a grammar that somebody supplies is held to: its tags are known, whatever it lets be said
 * has one meaning, and whatever the tool's own sentences ask for can be said as they ask for it.
 */
public final class Understandable {
  private static final int LONGEST_BREATH = 80;
  private static final String UTTERANCE = "utterance";
  private static final String VALUE = "_value";
  private static final String DRILL = "drill_";
  private static final Set<String> ENTRIES = Set.of(UTTERANCE, "called", "radio");
  private static final Set<String> ORDERS =
      Stream.concat(
              Arrays.stream(Meaning.Command.values()).map(c -> c.name().toLowerCase(Locale.ROOT)),
              Stream.of("correct", "roger", "over", "go_to", "go_to_main"))
          .collect(Collectors.toSet());

  /** By verb, what its argument may be. */
  private static final Map<String, Pattern> VERBS =
      Map.of(
          "slot", words(Stream.concat(slots(), Stream.of("rope_angle"))),
          "do", words(ORDERS.stream()),
          "add", Pattern.compile("[0-9]{1,3}"),
          "times", Pattern.compile("100?0?"),
          "digit", Pattern.compile("[0-9]"),
          "point", Pattern.compile(""),
          "half", Pattern.compile(""),
          "over", Pattern.compile("[2-9]"),
          "is", Pattern.compile("[a-z_]+([ -][a-z_0-9]+)*"),
          "unit",
              words(
                  Stream.of(
                      "pounds",
                      "kilograms",
                      "inches",
                      "feet",
                      "metres",
                      "centimetres",
                      "millimetres",
                      "degrees",
                      "pounds_force",
                      "kilonewtons")));

  private static final Pattern HOW = Pattern.compile("how (tape|hand_span|eye|pacing|guess)");

  private final Grammar grammar;
  private final Sentences sentences;
  private final Understanding understanding;

  private Understandable(Grammar grammar) {
    this.grammar = grammar;
    this.sentences = new Sentences(grammar);
    this.understanding = new Understanding(grammar);
  }

  /**
   * Reads a grammar that somebody supplies.
   *
   * @param name what a fault calls it
   * @param own the tool's own
   * @throws GrammarFault with one sentence that has file, line and reason
   */
  public static Grammar read(String name, String text, Grammar own) {
    Grammar grammar = Grammar.supplied(name, text, entries(own));
    new Understandable(grammar).refuse(own);
    return grammar;
  }

  /** What may be open by itself. */
  private static Set<String> entries(Grammar own) {
    Set<String> entries = new LinkedHashSet<>(ENTRIES);
    slots().forEach(slot -> entries.add(slot + VALUE));
    own.ruleNames().stream().filter(rule -> rule.startsWith(DRILL)).forEach(entries::add);
    return entries;
  }

  private static Stream<String> slots() {
    return Arrays.stream(Slot.values()).map(Slot::key);
  }

  private static Pattern words(Stream<String> words) {
    return Pattern.compile(words.collect(Collectors.joining("|")));
  }

  private void refuse(Grammar own) {
    Stream.concat(Stream.of(UTTERANCE, "called"), slots().map(slot -> slot + VALUE))
        .filter(rule -> !grammar.has(rule))
        .findFirst()
        .ifPresent(
            rule -> {
              throw grammar.fault("grammar", "has no rule <" + rule + ">");
            });
    talked().forEach(rule -> refuseTags(grammar.phrase(rule)));
    for (Slot slot : Slot.values()) {
      String rule = slot.key() + VALUE;
      for (Sentence sentence : covering(rule)) {
        refuseOther(sentence, rule, Optional.of(slot));
      }
    }
    for (Sentence sentence : covering(UTTERANCE)) {
      refuseOther(sentence, UTTERANCE, Optional.empty());
    }
    refuseUnsaid(own);
  }

  /** The rules of a conversation, without those of a drill. */
  private Set<String> talked() {
    Set<String> rules = new LinkedHashSet<>();
    Stream.concat(ENTRIES.stream(), slots().map(slot -> slot + VALUE))
        .filter(grammar::has)
        .forEach(rule -> rules.addAll(sentences.rulesBelow(new Phrase.Rule(rule))));
    return rules;
  }

  private void refuseTags(Phrase phrase) {
    if (phrase instanceof Phrase.Tagged tagged && !isKnown(tagged.tag())) {
      throw grammar.fault(tagged.tag(), "has the tag {" + tagged.tag() + "}, which is not known");
    }
    phrase.parts().forEach(this::refuseTags);
  }

  private static boolean isKnown(String tag) {
    int space = tag.indexOf(' ');
    Pattern argument = VERBS.get(space < 0 ? tag : tag.substring(0, space));
    return HOW.matcher(tag).matches()
        || (argument != null
            && argument.matcher(space < 0 ? "" : tag.substring(space + 1).strip()).matches());
  }

  private List<Sentence> covering(String rule) {
    return sentences.coveringAnew(new Phrase.Rule(rule));
  }

  private void refuseOther(Sentence sentence, String rule, Optional<Slot> asked) {
    if (sentence.words().isEmpty() || sentence.words().size() > LONGEST_BREATH) {
      throw in(rule, sentence, "is no breath of 1 to " + LONGEST_BREATH + " words");
    }
    Meaning meaning = meaning(sentence, rule, asked);
    if (meaning instanceof Meaning.NotUnderstood missed && missed.reason() != Reason.BEYOND_PLUMB) {
      boolean two = missed.reason() == Reason.TWO_MEANINGS;
      throw in(rule, sentence, two ? "could mean two things" : "has too many readings to look at");
    }
    if (meaning instanceof Meaning.Values values) {
      refuseOther(values.statements(), rule, sentence, asked);
    }
  }

  private void refuseOther(
      List<Statement> statements, String rule, Sentence sentence, Optional<Slot> asked) {
    if (statements.isEmpty() || (asked.isPresent() && statements.size() > 1)) {
      throw in(rule, sentence, "says " + statements.size() + " things");
    }
    for (Statement statement : statements) {
      if (statement instanceof Statement.Value value
          && !(value.slot().valueType().isInstance(value.said().value())
              && asked.stream().allMatch(value.slot()::equals))) {
        throw in(rule, sentence, "says no value of its slot");
      }
    }
  }

  private Meaning meaning(Sentence sentence, String rule, Optional<Slot> asked) {
    try {
      return understanding.understand(sentence.text(), asked);
    } catch (RuntimeException e) {
      throw in(rule, sentence, "has tags that make no value");
    }
  }

  private GrammarFault in(String rule, Sentence sentence, String trouble) {
    List<String> words = sentence.words();
    String said = String.join(" ", words.subList(0, Math.min(12, words.size())));
    return grammar.fault(
        "<" + rule + ">", "lets be said in <" + rule + "> \"" + said + "\", which " + trouble);
  }

  /** The tool's answers name commands; those, and the call, mean what they always do. */
  private void refuseUnsaid(Grammar own) {
    Understanding usual = new Understanding(own);
    Sentences usually = new Sentences(own);
    for (String rule : List.of("command", "call")) {
      for (Sentence sentence : usually.all(new Phrase.Rule(rule))) {
        if (!understanding
            .understand(sentence.text(), Optional.empty())
            .equals(usual.understand(sentence.text(), Optional.empty()))) {
          throw grammar.fault(
              "<" + UTTERANCE + ">",
              "does not take \""
                  + sentence.text()
                  + "\" as the tool's own does, which asks for it");
        }
      }
    }
    String call = usually.all(new Phrase.Rule("call")).get(0).text();
    if (!understanding.isCall(call)) {
      throw grammar.fault("<called>", "does not begin <called> with \"" + call + "\"");
    }
  }
}
