package rigspeak.verdict;

import java.util.function.ToDoubleFunction;

/**
 * Climbs from a point of the unit box to where a function is largest near it.
 *
 * <p>Pattern search: along one side after the other, up or down by a step and to both ends, taking
 * whatever is higher; where nothing is, the step is halved (Hooke and Jeeves, 1961).
 */
final class Climb {
  private static final double FIRST_STEP = 0.25;
  private static final double LAST_STEP = 1.0 / 128;

  private final ToDoubleFunction<double[]> height;
  private double[] here;
  private double highest;

  private Climb(ToDoubleFunction<double[]> height, double[] start) {
    this.height = height;
    this.here = start.clone();
    this.highest = height.applyAsDouble(here);
  }

  /**
   * The highest point found.
   *
   * @param start from 0 to 1 on every side
   */
  static double[] from(double[] start, ToDoubleFunction<double[]> height) {
    Climb climb = new Climb(height, start);
    double step = FIRST_STEP;
    while (step >= LAST_STEP) {
      if (!climb.onceAround(step)) {
        step /= 2;
      }
    }
    return climb.here;
  }

  private boolean onceAround(double step) {
    boolean higher = false;
    for (int side = 0; side < here.length; side++) {
      double at = here[side];
      higher |= tries(side, Math.min(1, at + step));
      higher |= tries(side, Math.max(0, at - step));
      higher |= tries(side, 1);
      higher |= tries(side, 0);
    }
    return higher;
  }

  private boolean tries(int side, double at) {
    if (here[side] == at) {
      return false;
    }
    double[] there = here.clone();
    there[side] = at;
    double thatHigh = height.applyAsDouble(there);
    if (thatHigh <= highest) {
      return false;
    }
    here = there;
    highest = thatHigh;
    return true;
  }
}
