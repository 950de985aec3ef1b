package rigspeak.grammar;

import java.util.ArrayList;
import java.util.List;

/**
 * What may be said now: the names of the grammar rules that are open.
 *
 * @param rules rule names of the grammar file, at least one
 */
public record Expected(List<String> rules) {
  private static final String UTTERANCE = "utterance";
  private static final String VALUE = "_value";

  public Expected {
    rules = List.copyOf(rules);
    if (rules.isEmpty()) {
      throw new IllegalArgumentException("nothing could be said");
    }
  }

  /** Any value with its name, any command. */
  public static Expected anything() {
    return new Expected(List.of(UTTERANCE));
  }

  /** Anything, and also the bare value of a slot that has just been asked for. */
  public static Expected answerFor(String slot) {
    return new Expected(List.of(UTTERANCE, valueRule(slot)));
  }

  /** The bare value of one slot and nothing else. */
  public static Expected only(String slot) {
    return new Expected(List.of(valueRule(slot)));
  }

  /**
   * Any utterance, and the bare value of every slot: more than is ever open at once.
   *
   * @param grammar whose rules for bare values are meant
   */
  public static Expected everything(Grammar grammar) {
    List<String> rules = new ArrayList<>();
    rules.add(UTTERANCE);
    grammar.ruleNames().stream().filter(rule -> rule.endsWith(VALUE)).forEach(rules::add);
    return new Expected(rules);
  }

  /** Whether any utterance may be said, and not only one slot's value. */
  public boolean isOpen() {
    return rules.contains(UTTERANCE);
  }

  private static String valueRule(String slot) {
    return slot + VALUE;
  }
}
