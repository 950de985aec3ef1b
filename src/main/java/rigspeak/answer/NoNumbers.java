package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.List;
import rigspeak.catalogue.Conflict;
import rigspeak.dialogue.Detail;
import rigspeak.rig.Slot;
import rigspeak.verdict.Refusal;
import rigspeak.verdict.Verdict;

/** Supports that no number is needed for, or enough for. */
final class NoNumbers {
  private final Form form;

  NoNumbers(Form form) {
    this.form = form;
  }

  /* ---- refused for what it is ---- */

  String refused(Verdict.RefusedOutright refused) {
    List<String> reasons = refused.refusals().stream().map(this::refusal).toList();
    return text(text(reasons), wayOut(refused));
  }

  /** Why, in full. */
  static String reason(Refusal refusal) {
    return new NoNumbers(new Form(Detail.FULL)).refusal(refusal);
  }

  private String refusal(Refusal refusal) {
    return switch (refusal) {
      case DEAD_WOOD ->
          form.or(
              "Dead wood is not loaded, nobody knows what it holds.", "Dead wood is not loaded.");
      case CRACKED_UNION ->
          form.or(
              "A cracked union is not loaded, nobody knows what it holds.",
              "A cracked union is not loaded.");
      case CONNECTOR_OVER_EDGE ->
          form.or(
              "A connector over an edge is not loaded, none is rated for that.",
              "A connector over an edge is not loaded.");
    };
  }

  /** A connector can be turned; wood stays as it is. */
  static String wayOut(Verdict.RefusedOutright refused) {
    return refused.refusals().equals(List.of(Refusal.CONNECTOR_OVER_EDGE))
        ? "Hang the connector in line, then check again."
        : "Choose another limb or union.";
  }

  /* ---- not known ---- */

  String unknown(Verdict.CannotSay cannotSay) {
    List<Conflict> conflicts = cannotSay.conflicts();
    int most = form.isFull() ? Sentences.MOST_ITEMS : Sentences.MOST_ITEMS - 1;
    int told = Math.min(most, conflicts.size());
    List<String> sentences = new ArrayList<>();
    conflicts.subList(0, told).forEach(conflict -> sentences.add(ConflictWords.of(conflict)));
    if (conflicts.size() > told) {
      sentences.add(more(conflicts.size() - told, "thing does", "things do") + " not fit.");
    }
    sentences.add(missing(cannotSay.missing(), most - told));
    return text(sentences);
  }

  private static String more(int count, String one, String many) {
    String number = sentence(Numbers.whole(count));
    return number.substring(0, number.length() - 1) + " more " + (count == 1 ? one : many);
  }

  /** What has not been said yet, three at a time. */
  static String missing(List<Slot> slots) {
    return missing(slots, Sentences.MOST_ITEMS);
  }

  private static String missing(List<Slot> slots, int most) {
    if (slots.isEmpty()) {
      return "";
    }
    int named = Math.min(most, slots.size());
    int more = slots.size() - named;
    if (named == 0) {
      return sentence("I still need " + Numbers.whole(more) + (more == 1 ? " value" : " values"));
    }
    String names = list(slots.subList(0, named).stream().map(SlotWords::name).toList());
    return sentence(
        "I still need " + names, more == 0 ? "" : "and " + Numbers.whole(more) + " more");
  }

  static String waits(Verdict.WaitsFor waits) {
    return sentence("its load is not known before " + Places.name(waits.place()) + " is");
  }
}
