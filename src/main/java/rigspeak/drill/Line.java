package rigspeak.drill;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the drill has to say, before it is put into words. */
public sealed interface Line {

  /** The cautions and what stays the same in all questions; once, before the first. */
  record Opening(int questions) implements Line {}

  /**
   * A question.
   *
   * @param number from 1
   */
  record Ask(int number, Question question) implements Line {}

  /** How sure? */
  record AskSure() implements Line {}

  /** Each digit, please. */
  record AskDigits() implements Line {}

  /** Right or wrong, the true figure, and why. */
  record Marked(Question question, Answered answered) implements Line {}

  /** More of the last one that was marked, or of what stays the same where there is none. */
  record Explained(Optional<Marked> last) implements Line {}

  /** From now on slower. */
  record Slower() implements Line {}

  /** It was no answer; this would be one. */
  record Again(Question question) implements Line {}

  /** It was not how sure somebody is. */
  record AgainSure() implements Line {}

  /**
   * The end.
   *
   * @param right of so many
   * @param brier of those that were answered with a certainty
   * @param due what is due the next time, the first of it first
   */
  record Closing(int right, int answered, OptionalDouble brier, List<Skill> due) implements Line {
    public Closing {
      due = List.copyOf(due);
    }
  }
}
