package rigspeak.app;

import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Dialogue;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Understanding;
import rigspeak.plan.Plan;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.Walk;
import rigspeak.verdict.Judge;

/** What turns words into replies and verdicts. */
record Thinking(Understanding understanding, Dialogue dialogue, Judge judge) {
  static Thinking bundled() {
    return of(Grammar.bundled(), Catalogue.bundled());
  }

  static Thinking of(Grammar grammar, Catalogue catalogue) {
    Judge judge = new Judge(catalogue);
    return new Thinking(new Understanding(grammar), new Dialogue(catalogue, judge), judge);
  }

  Walk walk(Plan plan) {
    return Walk.through(plan, understanding, dialogue);
  }

  PlanVerdict verdict(Plan plan) {
    return PlanVerdict.of(plan, walk(plan), judge);
  }
}
