package rigspeak.grammar;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Whether rules can be walked at all: every name defined, no way round without a word. */
final class Soundness {
  private final Map<String, Phrase> rules;
  private final GrammarText text;

  /** The rules that can be said without a word. */
  private final Set<String> empty = new LinkedHashSet<>();

  Soundness(Map<String, Phrase> rules, GrammarText text) {
    this.rules = rules;
    this.text = text;
  }

  void refuse() {
    rules.values().forEach(this::refuseUndefinedNames);
    findEmptyRules();
    rules.keySet().forEach(this::refuseLeftRecursion);
    rules.forEach((name, phrase) -> refuseEmptyRepeats(name, phrase));
  }

  private void refuseUndefinedNames(Phrase phrase) {
    if (phrase instanceof Phrase.Rule rule && !rules.containsKey(rule.name())) {
      String name = "<" + rule.name() + ">";
      throw text.fault(name, "uses the rule " + name + " but does not define it");
    }
    phrase.parts().forEach(this::refuseUndefinedNames);
  }

  /** A part that can be said without a word could be repeated for ever. */
  private void refuseEmptyRepeats(String name, Phrase phrase) {
    if (phrase instanceof Phrase.OnceOrMore again && canBeEmpty(again.part())) {
      throw text.fault("<" + name + ">", "repeats a part that can be empty");
    }
    phrase.parts().forEach(part -> refuseEmptyRepeats(name, part));
  }

  private void refuseLeftRecursion(String rule) {
    Set<String> seen = new LinkedHashSet<>();
    Deque<String> waiting = new ArrayDeque<>(firstRules(rules.get(rule)));
    while (!waiting.isEmpty()) {
      String name = waiting.pop();
      if (name.equals(rule)) {
        String named = "<" + rule + ">";
        throw text.fault(named, "has a rule that begins with itself: " + named);
      }
      if (seen.add(name)) {
        waiting.addAll(firstRules(rules.get(name)));
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
        if (!canBeEmpty(part)) {
          break;
        }
      }
    } else {
      phrase.parts().forEach(part -> first.addAll(firstRules(part)));
    }
    return first;
  }

  /** Round and round until no rule more is found to be empty. */
  private void findEmptyRules() {
    boolean found = true;
    while (found) {
      found = false;
      for (Map.Entry<String, Phrase> rule : rules.entrySet()) {
        found |= canBeEmpty(rule.getValue()) && empty.add(rule.getKey());
      }
    }
  }

  private boolean canBeEmpty(Phrase phrase) {
    if (phrase instanceof Phrase.Nothing || phrase instanceof Phrase.Maybe) {
      return true;
    }
    if (phrase instanceof Phrase.Word) {
      return false;
    }
    if (phrase instanceof Phrase.Rule rule) {
      return empty.contains(rule.name());
    }
    if (phrase instanceof Phrase.Choice choice) {
      return choice.options().stream().anyMatch(this::canBeEmpty);
    }
    return phrase.parts().stream().allMatch(this::canBeEmpty);
  }
}
