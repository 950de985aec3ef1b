package rigspeak.grammar;

import java.util.List;

/**
 * What may be said now: the names of the grammar rules that are open.
 *
 * @param rules rule names of the grammar file, at least one
 */
public record Expected(List<String> rules) {
  private static final String UTTERANCE = "utterance";
  private static final String CALLED = "called";
  private static final String RADIO = "radio";
  private static final String VALUE = "_value";
  private static final String DRILL = "drill_";

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

  /** Only the call, alone or followed in the same breath by anything. */
  public static Expected call() {
    return new Expected(List.of(CALLED));
  }

  /** Anything, with the words of the radio around it. */
  public static Expected overTheRadio() {
    return new Expected(List.of(RADIO));
  }

  /** Anything, and also the bare value of a slot that has just been asked for. */
  public static Expected answerFor(String slot) {
    return new Expected(List.of(UTTERANCE, valueRule(slot)));
  }

  /** The bare value of one slot and nothing else. */
  public static Expected only(String slot) {
    return new Expected(List.of(valueRule(slot)));
  }

  /** In a drill: what answers a question of this kind, and nothing else. */
  public static Expected inDrill(String kind) {
    return new Expected(List.of(DRILL + kind));
  }

  /**
   * The same in parts that are searched one by one: any utterance, and the bare value of the slot
   * that was asked for. What is not open to more than one is a part by itself.
   */
  public List<Expected> parts() {
    return rules.stream().map(rule -> new Expected(List.of(rule))).toList();
  }

  /** Whether nothing else than the bare value of a slot may be said. */
  public boolean isBareValue() {
    return rules.stream().allMatch(rule -> rule.endsWith(VALUE));
  }

  private static String valueRule(String slot) {
    return slot + VALUE;
  }
}
