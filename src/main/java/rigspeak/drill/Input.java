package rigspeak.drill;

import java.util.OptionalDouble;

/** What the trainee does. */
public sealed interface Input {

  /**
   * An answer, perhaps with how sure it is.
   *
   * @param tookSeconds from the end of the question
   */
  record Answer(Response response, OptionalDouble sure, double tookSeconds) implements Input {}

  /** How sure the answer is, 0 to 1. */
  record Sure(double share) implements Input {}

  /** A number that may have been taken for its twin, fifteen for fifty. */
  record Doubtful() implements Input {}

  /** Something that is no answer to this question. */
  record NotUnderstood() implements Input {}

  /** Something that asks for no answer. */
  enum Wish implements Input {
    AGAIN,
    SLOWER,
    EXPLAIN,
    STOP
  }
}
