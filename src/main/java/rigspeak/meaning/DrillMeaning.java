package rigspeak.meaning;

import java.util.OptionalInt;

/** What somebody meant in a drill. */
public sealed interface DrillMeaning {

  /**
   * A word that answers.
   *
   * @param word as the grammar has it
   * @param surePercent how sure, if that was said in the same breath
   */
  record Word(String word, OptionalInt surePercent) implements DrillMeaning {}

  /**
   * A number that answers, in the unit of what was asked.
   *
   * @param doubtful whether the ear may have taken it for its twin, fifteen for fifty
   */
  record Amount(double number, boolean doubtful, OptionalInt surePercent) implements DrillMeaning {}

  /** How sure, by itself. */
  record Sure(int percent) implements DrillMeaning {}

  /** Something that is no answer. */
  enum Wish implements DrillMeaning {
    AGAIN,
    SLOWER,
    EXPLAIN,
    STOP,
    NO_IDEA
  }

  /** Nothing is taken from these words. */
  record NotUnderstood() implements DrillMeaning {}
}
