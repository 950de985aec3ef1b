package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.List;
import java.util.Locale;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Gate;
import rigspeak.dialogue.Lanyard;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Rope;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.Load;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.PathVerdict.Outcome;

/** What stands on the ground worker's page: it is read, so numbers are figures. */
public final class PageWords {
  private static final SaidBack SAID_BACK = new SaidBack(Detail.FULL);
  private static final VerdictWords VERDICTS = new VerdictWords(new Form(Detail.FULL), SAID_BACK);

  private PageWords() {}

  /* ---- the verdict ---- */

  /** The one word, which no colour replaces. */
  public static String word(Outcome outcome) {
    return switch (outcome) {
      case GOOD -> "Good to load";
      case MARGINAL -> "Marginal";
      case CANNOT_SAY -> "Cannot say";
      case REFUSE -> "Do not load";
    };
  }

  public static String notCheckedWord() {
    return "Not checked";
  }

  public static String notChecked() {
    return "No verdict stands for the rig as it is now. Do not load it yet.";
  }

  public static String head(PathVerdict verdict) {
    return VERDICTS.head(verdict).text();
  }

  /** Load, reason and the change worth making, as they are spoken but in figures. */
  public static String reason(PathVerdict verdict) {
    List<Utterance> all = VERDICTS.judged(new Reply.Judged(verdict, List.of()));
    String rest =
        all.size() > 1
            ? all.get(1).text()
            : all.get(0).text().substring(head(verdict).length()).strip();
    return Digits.asFigures(rest);
  }

  /* ---- the load ---- */

  public static String load(Load load, UnitSystem units) {
    String size = "Load " + Figures.force(load.resultantN().nominal(), units);
    String where =
        String.join(
            " ", Figures.direction(load.elevationDeg().nominal(), load.bearingDeg().nominal()));
    return text(sentence(size, where), PictureWords.loadClass(load));
  }

  public static String loadNotKnown() {
    return "The load is not known yet.";
  }

  public static String notInThePlan() {
    return "The plan does not have this support.";
  }

  /* ---- the lanyard ---- */

  public static String lanyard(Lanyard lanyard) {
    return switch (lanyard) {
      case UNKNOWN -> "Not known";
      case CLIPPED_IN -> "Clipped in";
      case RELEASED -> "Released";
    };
  }

  /** What waits for it, and what the rope is loaded on. */
  public static String gate(Gate gate, Rope rope) {
    String wanted =
        gate.wanted()
            .map(change -> sentence("lanyard first, then " + Answers.change(change)))
            .orElse("");
    List<String> loaded = rope.loaded().stream().map(Places::name).toList();
    String on =
        loaded.isEmpty()
            ? "No redirect is loaded."
            : sentence("the rope is loaded on " + list(loaded));
    return text(wanted, on);
  }

  /* ---- item by item ---- */

  public static String name(Slot slot) {
    String name = SlotWords.name(slot).replaceFirst("^(the|your) ", "");
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** As exactly as it was said. */
  public static String value(Slot slot, Said said) {
    return Digits.asFigures(SAID_BACK.phrase(slot, said));
  }

  public static String nothing() {
    return "\u2013";
  }

  public static String asPlanned() {
    return "\u2713 as planned";
  }

  public static String differs() {
    return "\u2260 differs";
  }

  public static String notPlanned() {
    return "+ not in the plan";
  }

  public static String notSaid() {
    return "\u2026 not said yet";
  }

  public static String tally(int items, int different, int unsaid) {
    String as =
        different == 0
            ? "nothing said differs from the plan"
            : different + " of " + items + " differ";
    return sentence(as, unsaid == 0 ? "all is said" : unsaid + " not said yet");
  }
}
