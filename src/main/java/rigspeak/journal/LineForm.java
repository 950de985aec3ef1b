package rigspeak.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigspeak.journal.Event.Answer;
import rigspeak.journal.Event.Came;

/** An entry as a JSON object and back; {@code line.schema.json} has the form. */
final class LineForm {
  private static final String FORM = "rigspeak 1";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private LineForm() {}

  // ---- writing ----

  static String write(Entry entry) {
    ObjectNode line = MAPPER.createObjectNode();
    line.put("n", entry.number());
    line.put("at", entry.at().truncatedTo(ChronoUnit.MILLIS).toString());
    put(entry.event(), line);
    try {
      return MAPPER.writeValueAsString(line);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a JSON tree can always be written", e);
    }
  }

  private static void put(Event event, ObjectNode line) {
    if (event instanceof Event.Opened opened) {
      line.put("event", "opened").put("journal", FORM).put("crew", opened.crew());
      line.put("day", opened.day().toString()).put("after", opened.after());
    } else if (event instanceof Event.Began began) {
      line.put("event", "began").put("version", began.version());
    } else if (event instanceof Event.Resumed resumed) {
      line.put("event", "resumed").put("version", resumed.version());
      line.put("exchanges", resumed.exchanges());
    } else if (event instanceof Event.Said said) {
      line.put("event", "said").put("came", lower(said.came())).put("words", said.words());
      said.trouble().ifPresent(trouble -> line.put("trouble", trouble));
      ArrayNode answers = line.putArray("answers");
      said.answers()
          .forEach(
              answer ->
                  answers.addObject().put("text", answer.text()).put("danger", answer.danger()));
      line.set("meaning", said.meaning());
      said.verdict().ifPresent(verdict -> line.set("verdict", verdict));
    } else if (event instanceof Event.Failed failed) {
      line.put("event", "failed").put("what", failed.what()).put("detail", failed.detail());
    } else if (event instanceof Event.Recovered recovered) {
      line.put("event", "recovered").put("bytes", recovered.bytes());
    }
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  // ---- reading ----

  /**
   * Reads one line.
   *
   * @throws NotALine if it is not of this form
   */
  static Entry read(byte[] line) throws NotALine {
    try {
      JsonNode node = MAPPER.readTree(line);
      return new Entry(number(node, "n"), Instant.parse(text(node, "at")), event(node));
    } catch (IOException | DateTimeException | IllegalArgumentException e) {
      throw new NotALine(e);
    }
  }

  private static Event event(JsonNode node) throws NotALine {
    return switch (text(node, "event")) {
      case "opened" -> opened(node);
      case "began" -> new Event.Began(text(node, "version"));
      case "resumed" ->
          new Event.Resumed(text(node, "version"), Math.toIntExact(number(node, "exchanges")));
      case "said" -> said(node);
      case "failed" -> new Event.Failed(text(node, "what"), text(node, "detail"));
      case "recovered" -> new Event.Recovered(number(node, "bytes"));
      default -> throw new NotALine("an unknown event");
    };
  }

  private static Event opened(JsonNode node) throws NotALine {
    if (!text(node, "journal").equals(FORM)) {
      throw new NotALine("another form of journal");
    }
    return new Event.Opened(
        text(node, "crew"), LocalDate.parse(text(node, "day")), text(node, "after"));
  }

  private static Event said(JsonNode node) throws NotALine {
    List<Answer> answers = new ArrayList<>();
    for (JsonNode answer : member(node, "answers")) {
      answers.add(new Answer(text(answer, "text"), member(answer, "danger").asBoolean()));
    }
    return new Event.Said(
        Came.valueOf(text(node, "came").toUpperCase(Locale.ROOT)),
        text(node, "words"),
        node.has("trouble") ? Optional.of(text(node, "trouble")) : Optional.empty(),
        answers,
        member(node, "meaning"),
        Optional.ofNullable(node.get("verdict")));
  }

  private static JsonNode member(JsonNode node, String name) throws NotALine {
    JsonNode member = node.get(name);
    if (member == null) {
      throw new NotALine("no " + name);
    }
    return member;
  }

  private static String text(JsonNode node, String name) throws NotALine {
    JsonNode member = member(node, name);
    if (!member.isTextual()) {
      throw new NotALine(name + " is no text");
    }
    return member.textValue();
  }

  private static long number(JsonNode node, String name) throws NotALine {
    JsonNode member = member(node, name);
    if (!member.canConvertToLong() || !member.isIntegralNumber()) {
      throw new NotALine(name + " is no whole number");
    }
    return member.longValue();
  }

  /** Not a line of a journal. */
  static final class NotALine extends Exception {
    private static final long serialVersionUID = 1L;

    NotALine(String why) {
      super(why);
    }

    NotALine(Exception cause) {
      super("not a line of this form", cause);
    }
  }
}
