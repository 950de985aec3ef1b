package rigspeak.drill;

/**
 * What the schedule knows of one skill.
 *
 * @param phase where it is on the way into long-term memory
 * @param step how far in its phase; 0 in {@link Phase#KEPT}
 * @param stability days after which nine in ten would still know it
 * @param difficulty 1 to 10
 * @param lastSeconds when it was last answered, seconds since 1970
 * @param dueSeconds when it is best asked again, seconds since 1970
 */
public record Memory(
    Phase phase, int step, double stability, double difficulty, long lastSeconds, long dueSeconds) {

  /** New, known for days, or forgotten and learned again. */
  public enum Phase {
    LEARNING,
    KEPT,
    RELEARNING
  }

  public Memory {
    if (!(stability > 0) || !(difficulty >= 1 && difficulty <= 10)) {
      throw new IllegalArgumentException(
          "no memory has stability " + stability + " and difficulty " + difficulty);
    }
  }

  public boolean isDue(long nowSeconds) {
    return dueSeconds <= nowSeconds;
  }
}
