package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Check;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Verdict;
import rigspeak.verdict.Verdict.Rating;

/** The check that decides: what it is of, how much it takes, and what would give. */
final class CheckWords {
  private final Form form;

  CheckWords(Form form) {
    this.form = form;
  }

  /** The one reason. */
  String reason(Verdict.Judged judged) {
    Check governing = judged.governing();
    boolean refused = judged.rating() == Rating.REFUSE;
    double use = refused ? governing.utilisation().nominal() : governing.utilisation().high();
    String subject = subject(governing.kind(), judged.rig().said());
    String takes = Amounts.shareOf(use, "what I count on");
    String full =
        switch (judged.rating()) {
          case GOOD -> sentence("closest to its limit is " + subject, "at worst " + takes);
          case MARGINAL ->
              sentence("it holds as you said it", "but at worst " + subject + " takes " + takes);
          case REFUSE -> sentence("even as you said it", subject + " takes " + takes);
        };
    return form.or(full, sentence(subject, takes));
  }

  /** Demand, capacity, and the worst of the one over the other where only that decides. */
  String demand(Verdict.Judged judged) {
    Check check = judged.governing();
    double demand = check.demand().nominal();
    double capacity = check.capacity().nominal();
    UnitSystem units = LoadWords.units(judged);
    String taken =
        switch (check.kind().unit()) {
          case NEWTON -> Amounts.force(demand, units, Round.UP);
          case PASCAL -> Amounts.stress(demand, units, Round.UP);
          case RATIO -> Amounts.percent(demand, Round.UP) + " of the limb";
        };
    String counted =
        switch (check.kind().unit()) {
          case NEWTON -> Amounts.force(capacity, units, Round.DOWN);
          case PASCAL -> Amounts.stress(capacity, units, Round.DOWN);
          case RATIO -> Amounts.percent(capacity, Round.DOWN);
        };
    String takes = subject(check.kind(), judged.rig().said()) + " takes " + taken;
    String worst = Amounts.shareOf(check.utilisation().high(), "that");
    return text(
        sentence(takes + form.inFull(" as you said it")),
        sentence("I count on " + counted, Grounds.provenance(check.sources())),
        judged.rating() == Rating.REFUSE
            ? ""
            : form.inFull(sentence("at worst it takes " + worst)));
  }

  /** What gives first, and how. */
  String atItsLimit(Verdict.Judged judged) {
    boolean fork = judged.rig().union().codominant();
    return switch (judged.governing().kind()) {
      case LIMB_AT_UNION ->
          fork
              ? "At its limit the union would split."
              : "At its limit the limb would break at the union.";
      case LIMB_AT_SLING -> "At its limit the limb would break under the sling.";
      case LIMB_BETWEEN -> "At its limit the limb would break between union and sling.";
      case STEM_BETWEEN -> "At its limit the stem would bend and break below the main point.";
      case SHEAR_AT_UNION, SHEAR_AT_SLING -> "At its limit the limb would split along the grain.";
      case COLUMN -> "At its limit the limb would bow out.";
      case SHELL -> "At its limit the shell would cave in.";
      case SLIP -> "At its limit the sling would slide.";
      case SLING -> "At its limit the sling would tear.";
      case CONNECTOR, ROPE ->
          sentence(
              "at its limit "
                  + subject(judged.governing().kind(), judged.rig().said())
                  + " would break");
    };
  }

  /** What is held against its limit. */
  static String subject(CheckKind kind, Rig said) {
    return switch (kind) {
      case LIMB_AT_UNION -> "the limb at the union";
      case LIMB_AT_SLING -> "the limb under the sling";
      case LIMB_BETWEEN -> "the limb between union and sling";
      case STEM_BETWEEN -> "the stem up to the main point";
      case SHEAR_AT_UNION -> "the shear at the union";
      case SHEAR_AT_SLING -> "the shear under the sling";
      case COLUMN -> "the limb end on";
      case SHELL -> "the hollow";
      case SLING -> "the sling";
      case SLIP -> "the grip of the sling";
      case CONNECTOR -> connector(said);
      case ROPE -> "the rope";
    };
  }

  private static String connector(Rig said) {
    return said.value(Slot.RUNNING_OVER, Value.RunningOver.class)
        .map(
            over ->
                switch (over) {
                  case CARABINER -> "the carabiner";
                  case RING -> "the ring";
                  case PULLEY -> "the pulley";
                  case BARK -> "the bark";
                })
        .orElse("the connector");
  }
}
