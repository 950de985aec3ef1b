package rigspeak.app;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rigspeak.answer.Utterance;
import rigspeak.journal.Event;
import rigspeak.journal.Event.Answer;
import rigspeak.journal.Event.Came;
import rigspeak.meaning.Meaning;
import rigspeak.verdict.PathVerdict;

/** An exchange as a line of the journal, and what came from the climber back from it. */
final class KeptExchange {
  private KeptExchange() {}

  static Event.Said of(Input input, Exchange exchange) {
    return new Event.Said(
        came(input),
        input.words(),
        input instanceof Input.Unheard unheard ? Optional.of(key(unheard.why())) : Optional.empty(),
        answers(exchange),
        MeaningJson.of(exchange.meaning()),
        exchange.verdict().map(KeptExchange::brief));
  }

  static List<Answer> answers(Exchange exchange) {
    return exchange.answers().stream().map(KeptExchange::answer).toList();
  }

  private static Answer answer(Utterance utterance) {
    return new Answer(utterance.text(), utterance.danger());
  }

  private static Came came(Input input) {
    if (input instanceof Input.Typed) {
      return Came.TYPED;
    }
    if (input instanceof Input.Heard) {
      return Came.HEARD;
    }
    if (input instanceof Input.Doubtful) {
      return Came.DOUBTFUL;
    }
    return input instanceof Input.Called ? Came.CALLED : Came.UNHEARD;
  }

  /** What decided, without the numbers; they follow from what was said. */
  private static ObjectNode brief(PathVerdict verdict) {
    ObjectNode whole = VerdictJson.of(verdict);
    return JsonNodeFactory.instance
        .objectNode()
        .setAll(
            whole.retain("verdict", "asked", "governing_support", "governing_check", "reasons"));
  }

  /**
   * What came from the climber.
   *
   * @throws IllegalArgumentException if this version knows no such trouble
   */
  static Input input(Event.Said said) {
    return switch (said.came()) {
      case TYPED -> new Input.Typed(said.words());
      case HEARD -> new Input.Heard(said.words());
      case DOUBTFUL -> new Input.Doubtful(said.words());
      case CALLED -> new Input.Called(said.words());
      case UNHEARD -> new Input.Unheard(why(said.trouble().orElse("")));
    };
  }

  private static String key(Meaning why) {
    return why instanceof Meaning.CannotHear cannot
        ? lower(cannot.trouble())
        : lower(((Meaning.NotUnderstood) why).reason());
  }

  private static Meaning why(String key) {
    Stream<Meaning> noises = Stream.of(Meaning.Trouble.values()).map(Meaning.CannotHear::new);
    Stream<Meaning> misses =
        Stream.of(Meaning.Reason.values()).map(reason -> new Meaning.NotUnderstood(reason, ""));
    return Stream.concat(noises, misses)
        .filter(why -> key(why).equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such trouble: " + key));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
