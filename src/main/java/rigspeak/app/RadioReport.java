package rigspeak.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import rigspeak.answer.Utterance;
import rigspeak.readback.Difference;
import rigspeak.readback.Differences;
import rigspeak.readback.Readback;

/** Prints a read-back for a person, or as one JSON object a line. */
final class RadioReport {
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final PrintWriter out;
  private final boolean json;
  private final String by;
  private final String to;

  /**
   * Prints there.
   *
   * @param by who reads back
   * @param to who holds it against the plan
   */
  RadioReport(PrintWriter out, boolean json, String by, String to) {
    this.out = out;
    this.json = json;
    this.by = by;
    this.to = to;
  }

  void passage(String verb, RadioTalk.Passage passage) {
    if (json) {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      node.put("said", passage.said());
      node.put("understood", passage.understood());
      node.set("meaning", MeaningJson.of(passage.meaning()));
      ArrayNode texts = node.putArray("transmissions");
      passage.transmissions().forEach(each -> texts.add(each.text()));
      new Report(out, true).line(node);
      return;
    }
    out.printf("%-9s %s%n", verb, passage.said().isEmpty() ? "-" : passage.said());
    for (Utterance transmission : passage.transmissions()) {
      out.printf("spoken    %s%n", transmission.text());
    }
    out.println();
    out.flush();
  }

  /** Something said before the question that it would answer had been heard. */
  void tooEarly(String said) {
    if (!json) {
      out.printf("heard     %s%nnot taken, it answers nothing that was heard%n%n", said);
      out.flush();
    }
  }

  /** Who confirmed what, and when. */
  void end(String plan, RadioTalk talk) {
    Readback readback = talk.readback();
    if (json) {
      new Report(out, true).line(ending(plan, talk));
      return;
    }
    out.println(title(readback.outcome()) + "  " + plan);
    out.println("by        " + by);
    out.println("to        " + to);
    talk.ended().ifPresent(at -> out.println("at        " + at.format(DAY_AND_TIME)));
    out.println("items     " + Differences.size(readback.plan()));
    for (Difference each : readback.differences()) {
      String affirmed = readback.accepted().contains(each) ? " Affirmed." : "";
      out.println("otherwise " + where(each) + talk.answers().difference(each) + affirmed);
    }
    out.flush();
  }

  private static String where(Difference difference) {
    return difference.place().key().replace('_', ' ') + ": ";
  }

  private static String title(Readback.Outcome outcome) {
    return switch (outcome) {
      case CONFIRMED -> "CONFIRMED AS PLANNED";
      case DIFFERS -> "NOT AS PLANNED";
      case OPEN -> "NOT CONFIRMED";
    };
  }

  private ObjectNode ending(String plan, RadioTalk talk) {
    Readback readback = talk.readback();
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("plan", plan);
    node.put("outcome", VerdictJson.lower(readback.outcome()));
    node.put("by", by);
    node.put("to", to);
    talk.ended()
        .ifPresentOrElse(
            at -> node.put("at", at.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME)),
            () -> node.putNull("at"));
    node.put("items", Differences.size(readback.plan()));
    node.set("differences", differences(readback.differences(), readback, talk));
    return node;
  }

  private static ArrayNode differences(List<Difference> all, Readback readback, RadioTalk talk) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    for (Difference each : all) {
      array
          .addObject()
          .put("support", each.place().key())
          .put("slot", each.slot().key())
          .put("difference", VerdictJson.snake(each))
          .put("affirmed", readback.accepted().contains(each))
          .put("text", talk.answers().difference(each));
    }
    return array;
  }
}
