package rigspeak.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigspeak.answer.Utterance;
import rigspeak.rig.Slot;

/** Prints exchanges for a person, or as one JSON object a line. */
final class Report implements ExchangeListener {
  private final PrintWriter out;
  private final boolean json;
  private final Keeping keeping;

  Report(PrintWriter out, boolean json) {
    this(out, json, new Keeping());
  }

  /**
   * @param keeping takes every exchange, too
   */
  Report(PrintWriter out, boolean json, Keeping keeping) {
    this.out = out;
    this.json = json;
    this.keeping = keeping;
  }

  @Override
  public void exchange(String verb, Exchange exchange) {
    keeping.take(exchange);
    if (json) {
      line(json(exchange));
      return;
    }
    out.printf("%-9s %s%n", verb, exchange.said().isEmpty() ? "-" : exchange.said());
    if (!exchange.taken().isEmpty()) {
      out.printf(
          "taken     %s%n",
          exchange.taken().stream().map(Slot::key).collect(Collectors.joining(", ")));
    }
    attention(exchange).ifPresent(out::println);
    for (Utterance answer : exchange.answers()) {
      out.printf("answered  %s%s%n", answer.danger() ? "DANGER  " : "", answer.text());
    }
    out.println();
    out.flush();
  }

  /** Prints one JSON object on one line. */
  void line(JsonNode node) {
    out.println(node);
    out.flush();
  }

  private static Optional<String> attention(Exchange exchange) {
    if (exchange.called()) {
      return Optional.of("listening");
    }
    return exchange.fellAsleep() ? Optional.of("asleep") : Optional.empty();
  }

  private static ObjectNode json(Exchange exchange) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("said", exchange.said());
    json.put("understood", exchange.understood());
    json.set("meaning", MeaningJson.of(exchange.meaning()));
    json.set("taken", VerdictJson.slots(exchange.taken()));
    json.set("answers", answers(exchange));
    attention(exchange).ifPresent(state -> json.put("attention", state));
    exchange.mishap().ifPresent(mishap -> json.put("mishap", VerdictJson.lower(mishap)));
    exchange.asked().ifPresent(slot -> json.put("asked", slot.key()));
    exchange.verdict().ifPresent(verdict -> json.set("verdict", VerdictJson.of(verdict)));
    return json;
  }

  /** Lines that were not taken, each with what was answered. */
  static ArrayNode notTaken(List<Exchange> refused) {
    ArrayNode lines = JsonNodeFactory.instance.arrayNode();
    for (Exchange exchange : refused) {
      lines.addObject().put("said", exchange.said()).set("answers", answers(exchange));
    }
    return lines;
  }

  static ArrayNode answers(Exchange exchange) {
    ArrayNode answers = JsonNodeFactory.instance.arrayNode();
    for (Utterance answer : exchange.answers()) {
      answers.addObject().put("text", answer.text()).put("danger", answer.danger());
    }
    return answers;
  }
}
