package rigspeak.mechanics;

import java.util.function.Consumer;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/** Evenly spread points of a box: the same ones in every run. */
final class Samples {
  private static final int EVERYDAY = 8192;

  private final double[][] ranges;

  private Samples(double[][] ranges) {
    this.ranges = ranges;
  }

  /** A box by pairs of low and high. */
  static Samples over(double... lowHigh) {
    double[][] ranges = new double[lowHigh.length / 2][];
    for (int i = 0; i < ranges.length; i++) {
      ranges[i] = new double[] {lowHigh[2 * i], lowHigh[2 * i + 1]};
    }
    return new Samples(ranges);
  }

  /** Hands over each point; a failure names the point. */
  void each(Consumer<double[]> check) {
    first(EVERYDAY, check);
  }

  /** The same for so many points only, where a check takes its time. */
  void first(int count, Consumer<double[]> check) {
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(ranges.length);
    for (int n = 0; n < count; n++) {
      double[] point = sequence.nextVector();
      for (int i = 0; i < point.length; i++) {
        point[i] = ranges[i][0] + point[i] * (ranges[i][1] - ranges[i][0]);
      }
      try {
        check.accept(point);
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("at sample " + n + " " + java.util.Arrays.toString(point), e);
      }
    }
  }
}
