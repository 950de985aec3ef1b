package rigspeak.drill;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One answered question, as it is kept.
 *
 * @param atSeconds when, seconds since 1970
 * @param sure how sure the trainee was to be right, 0 to 1; nothing if nothing was answered
 * @param right whether it was
 * @param tookSeconds from the end of the question to the answer
 */
public record Answered(
    long atSeconds,
    Skill skill,
    Level level,
    Asking asking,
    Truth truth,
    Response response,
    OptionalDouble sure,
    Result right,
    double tookSeconds) {

  /** Right or wrong. */
  public enum Result {
    RIGHT,
    WRONG
  }

  /** Who is this sure remembers without effort, if it was quick as well. */
  private static final double SURE = 0.7;

  private static final double VERY_SURE = 0.9;
  private static final double QUICK_SECONDS = 5;

  public Answered {
    if (sure.isPresent() && !(sure.getAsDouble() >= 0 && sure.getAsDouble() <= 1)) {
      throw new IllegalArgumentException("nobody is " + sure.getAsDouble() + " sure");
    }
    if (!(tookSeconds >= 0)) {
      throw new IllegalArgumentException("nobody answers in " + tookSeconds + " seconds");
    }
  }

  static Answered of(
      Question question,
      Response response,
      OptionalDouble sure,
      double tookSeconds,
      long atSeconds) {
    return new Answered(
        atSeconds,
        question.skill(),
        question.level(),
        question.asking(),
        question.truth(),
        response,
        sure,
        question.truth().admits(response) ? Result.RIGHT : Result.WRONG,
        tookSeconds);
  }

  public boolean isRight() {
    return right == Result.RIGHT;
  }

  /** By how much a number was too large, in the unit of what was asked; negative: too small. */
  public OptionalDouble error() {
    if (truth instanceof Truth.Figure figure && response instanceof Response.Amount number) {
      return OptionalDouble.of(number.value() - figure.value());
    }
    return OptionalDouble.empty();
  }

  /** The square of how far the certainty was off: 0 is best, a quarter is what guessing gives. */
  public OptionalDouble brier() {
    return sure.isPresent()
        ? OptionalDouble.of(Math.pow(sure.getAsDouble() - (isRight() ? 1 : 0), 2))
        : OptionalDouble.empty();
  }

  /** What it says to the schedule. */
  Grade grade() {
    if (!isRight()) {
      return Grade.AGAIN;
    }
    double how = sure.orElse(0);
    if (how < SURE) {
      return Grade.HARD;
    }
    return how >= VERY_SURE && tookSeconds <= QUICK_SECONDS ? Grade.EASY : Grade.GOOD;
  }

  /** The word that was right, where it was a word. */
  public Optional<Choice> named() {
    return truth instanceof Truth.Named named ? Optional.of(named.choice()) : Optional.empty();
  }
}
