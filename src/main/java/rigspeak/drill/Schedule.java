package rigspeak.drill;

import java.util.List;
import java.util.Optional;
import rigspeak.drill.Memory.Phase;

/**
 * When a skill is best asked again: the Free Spaced Repetition Scheduler, version 6, with its
 * published default weights, steps of one and ten minutes at first and ten minutes after a lapse,
 * for nine in ten remembered, without the scatter that its programs add.
 *
 * <p>Model: stability S is the days in which the chance to remember falls to 0.9, difficulty D from
 * 1 to 10; the chance after t days is {@code (1 + F t / S)^-w20} with {@code F = 0.9^(-1/w20) - 1}.
 * What each answer makes of S and D is said at the methods. Days are whole, as in the reference
 * implementation. Left out: fitting the weights to a person. Source: the algorithm's public
 * description and the reference implementation py-fsrs 6 (docs/sources.md, 26); see decision 0022.
 *
 * <p>Tested by the reference implementation's own intervals and memory state.
 */
public final class Schedule {
  private static final double[] W = {
    0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835,
    0.0614, 0.2629, 1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542
  };

  private static final double WANTED = 0.9;
  private static final double DECAY = -W[20];
  private static final double FACTOR = Math.pow(0.9, 1 / DECAY) - 1;

  private static final double LEAST_STABILITY = 0.001;
  private static final long MOST_DAYS = 36_500;

  private static final long MINUTE = 60;

  /** Seconds of a day. */
  public static final long DAY = 86_400;

  private static final List<Long> LEARNING = List.of(MINUTE, 10 * MINUTE);
  private static final List<Long> RELEARNING = List.of(10 * MINUTE);

  private Schedule() {}

  /**
   * The chance that it is remembered.
   *
   * @param days since it was last answered, at least 0
   * @param stability days, above 0
   */
  public static double remembered(double days, double stability) {
    return Math.pow(1 + FACTOR * days / stability, DECAY);
  }

  /** The same, at this moment. */
  public static double remembered(Memory memory, long nowSeconds) {
    return remembered((double) days(memory, nowSeconds), memory.stability());
  }

  /**
   * What the memory is after an answer.
   *
   * @param before nothing if it was never asked
   */
  public static Memory answered(Optional<Memory> before, Grade grade, long nowSeconds) {
    if (before.isEmpty()) {
      double difficulty = within(firstDifficulty(grade));
      return placed(Phase.LEARNING, 0, W[grade.number() - 1], difficulty, grade, nowSeconds);
    }
    Memory memory = before.get();
    double stability =
        days(memory, nowSeconds) < 1
            ? sameDay(memory.stability(), grade)
            : later(memory, grade, remembered(memory, nowSeconds));
    return placed(
        memory.phase(),
        memory.step(),
        Math.max(stability, LEAST_STABILITY),
        nextDifficulty(memory.difficulty(), grade),
        grade,
        nowSeconds);
  }

  private static long days(Memory memory, long nowSeconds) {
    return Math.max(0, nowSeconds - memory.lastSeconds()) / DAY;
  }

  // ---- difficulty ----

  private static double firstDifficulty(Grade grade) {
    return W[4] - Math.exp(W[5] * (grade.number() - 1)) + 1;
  }

  /** Less far the harder it is already, and drawn a little to what is easy. */
  private static double nextDifficulty(double difficulty, Grade grade) {
    double change = -W[6] * (grade.number() - 3);
    double damped = difficulty + change * (10 - difficulty) / 9;
    return within(W[7] * firstDifficulty(Grade.EASY) + (1 - W[7]) * damped);
  }

  private static double within(double difficulty) {
    return Math.max(1, Math.min(10, difficulty));
  }

  // ---- stability ----

  private static double sameDay(double stability, Grade grade) {
    double growth = Math.exp(W[17] * (grade.number() - 3 + W[18])) * Math.pow(stability, -W[19]);
    boolean known = grade == Grade.GOOD || grade == Grade.EASY;
    return stability * (known ? Math.max(1, growth) : growth);
  }

  private static double later(Memory memory, Grade grade, double remembered) {
    double s = memory.stability();
    double d = memory.difficulty();
    if (grade == Grade.AGAIN) {
      double forgotten =
          W[11]
              * Math.pow(d, -W[12])
              * (Math.pow(s + 1, W[13]) - 1)
              * Math.exp(W[14] * (1 - remembered));
      return Math.min(forgotten, s / Math.exp(W[17] * W[18]));
    }
    double growth =
        Math.exp(W[8])
            * (11 - d)
            * Math.pow(s, -W[9])
            * (Math.exp(W[10] * (1 - remembered)) - 1)
            * (grade == Grade.HARD ? W[15] : 1)
            * (grade == Grade.EASY ? W[16] : 1);
    return s * (1 + growth);
  }

  // ---- when ----

  /** Minutes while it is learned, whole days once it is kept. */
  private static Memory placed(
      Phase phase, int step, double stability, double difficulty, Grade grade, long now) {
    if (phase == Phase.KEPT) {
      return grade == Grade.AGAIN
          ? new Memory(Phase.RELEARNING, 0, stability, difficulty, now, now + RELEARNING.get(0))
          : kept(stability, difficulty, now);
    }
    List<Long> steps = phase == Phase.LEARNING ? LEARNING : RELEARNING;
    int next = grade == Grade.GOOD ? step + 1 : grade == Grade.AGAIN ? 0 : step;
    if (grade == Grade.EASY || next == steps.size()) {
      return kept(stability, difficulty, now);
    }
    long wait = grade == Grade.HARD ? hardWait(steps, step) : steps.get(next);
    return new Memory(phase, next, stability, difficulty, now, now + wait);
  }

  /** At the first step half way to the second; where there is no second, half as long again. */
  private static long hardWait(List<Long> steps, int step) {
    if (step > 0) {
      return steps.get(step);
    }
    return steps.size() == 1 ? steps.get(0) * 3 / 2 : (steps.get(0) + steps.get(1)) / 2;
  }

  private static Memory kept(double stability, double difficulty, long now) {
    double exact = stability / FACTOR * (Math.pow(WANTED, 1 / DECAY) - 1);
    long days = Math.max(1, Math.min(MOST_DAYS, Math.round(exact)));
    return new Memory(Phase.KEPT, 0, stability, difficulty, now, now + days * DAY);
  }
}
