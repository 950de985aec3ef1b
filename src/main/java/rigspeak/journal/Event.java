package rigspeak.journal;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Something that is kept of a crew's day. */
public sealed interface Event {

  /**
   * A file begins: the first line of each.
   *
   * @param after what the last line of the crew's file before is known by; {@link Chain#BEGINNING}
   *     if there is none
   */
  record Opened(String crew, LocalDate day, String after) implements Event {}

  /**
   * A conversation begins, of which nothing was said before.
   *
   * @param version of the program that holds it
   */
  record Began(String version) implements Event {}

  /**
   * The conversation before goes on, after the program had ended.
   *
   * @param exchanges how many of it were played again
   */
  record Resumed(String version, int exchanges) implements Event {}

  /**
   * One exchange.
   *
   * @param came how the words came
   * @param words as typed or heard; empty if there were none
   * @param trouble why there were none, where {@code came} is {@link Came#UNHEARD}
   * @param answers what is spoken to it
   * @param meaning what was meant, for a reader; nothing is played again from it
   * @param verdict what was judged, for a reader
   */
  record Said(
      Came came,
      String words,
      Optional<String> trouble,
      List<Answer> answers,
      JsonNode meaning,
      Optional<JsonNode> verdict)
      implements Event {
    public Said {
      answers = List.copyOf(answers);
    }
  }

  /**
   * Something in the machine failed; the conversation stayed where it was.
   *
   * @param what by one word
   * @param detail for whoever mends it
   */
  record Failed(String what, String detail) implements Event {}

  /**
   * The last line was not whole when the file was opened: the program ended while it was written,
   * so before it was answered. It was taken away.
   *
   * @param bytes how long the torn line was
   */
  record Recovered(long bytes) implements Event {}

  /** How words came. */
  enum Came {
    TYPED,
    HEARD,
    /** Heard, and not surely. */
    DOUBTFUL,
    /** A call, by voice or key, that first brings back what waits for an affirm. */
    CALLED,
    /** Something was heard, but no words. */
    UNHEARD
  }

  /** One answer; danger is spoken twice. */
  record Answer(String text, boolean danger) {}
}
