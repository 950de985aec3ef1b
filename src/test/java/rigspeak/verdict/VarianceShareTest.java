package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * First-order shares of variance, where they are known.
 *
 * <p>Tolerances: the share is the variance of the means of 32 slices. Within a slice of width h the
 * mean flattens a sine of frequency w by {@code (w h)^2 / 12} of its variance: 0.3 percent of the
 * Ishigami function's first share, 1.3 percent of its second (which has the double frequency), so
 * 0.001 and 0.006. A slice holds 10,000/32 of the samples, whose mean by chance alone would add up
 * to 31/10,000 to a share; even samples add less. 0.01 covers both.
 */
class VarianceShareTest {
  private static final int SAMPLES = 10_000;
  private static final double TOLERANCE = 0.01;

  private static double[][] even(int sides) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(sides);
    sobol.nextVector();
    double[][] shares = new double[SAMPLES][];
    for (int i = 0; i < SAMPLES; i++) {
      shares[i] = sobol.nextVector();
    }
    return shares;
  }

  private static double share(double[][] shares, int side, ToDoubleFunction<double[]> function) {
    double[] results = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      results[i] = function.applyAsDouble(shares[i]);
    }
    return VarianceShare.ofSide(shares, side, results);
  }

  /**
   * Ishigami and Homma's function with a = 7, b = 0.1: 0.3139, 0.4424 and 0 (Saltelli and others,
   * Global Sensitivity Analysis, 2008; Sobol' and Levitan 1999; figures from memory, and they
   * follow from V1 = (1 + b pi^4/5)^2/2, V2 = a^2/8, V = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2).
   */
  @ParameterizedTest
  @CsvSource({"0, 0.3139", "1, 0.4424", "2, 0"})
  void theIshigamiFunction(int side, double published) {
    double a = 7;
    double b = 0.1;
    double share =
        share(
            even(3),
            side,
            s -> {
              double x1 = Math.PI * (2 * s[0] - 1);
              double x2 = Math.PI * (2 * s[1] - 1);
              double x3 = Math.PI * (2 * s[2] - 1);
              double sine2 = Math.sin(x2);
              return Math.sin(x1) + a * sine2 * sine2 + b * Math.pow(x3, 4) * Math.sin(x1);
            });
    assertEquals(published, share, TOLERANCE);
  }

  @Test
  void thePublishedFiguresFollowFromTheFormulas() {
    double quarter = 0.1 * Math.pow(Math.PI, 4) / 5;
    double all = 49.0 / 8 + quarter + 0.01 * Math.pow(Math.PI, 8) / 18 + 0.5;
    assertEquals(0.3139, (1 + quarter) * (1 + quarter) / 2 / all, 0.00005);
    assertEquals(0.4424, 49.0 / 8 / all, 0.00005);
  }

  /** A sum of a_i x_i gives each side a_i^2 over the sum of all a_j^2. */
  @ParameterizedTest
  @CsvSource({"0, 0.64", "1, 0.32", "2, 0.04", "3, 0"})
  void aSumSharesBySquares(int side, double known) {
    double share = share(even(4), side, s -> 4 * s[0] - Math.sqrt(8) * s[1] + s[2]);
    assertEquals(known, share, TOLERANCE);
  }

  /** x1 x2 with both from 0 to 1: (1/48) / (7/144) = 3/7 each, the rest belongs to both at once. */
  @Test
  void aProductKeepsSomethingForBothTogether() {
    assertEquals(3.0 / 7, share(even(2), 0, s -> s[0] * s[1]), TOLERANCE);
    assertEquals(3.0 / 7, share(even(2), 1, s -> s[0] * s[1]), TOLERANCE);
  }

  @Test
  void whatDoesNotVaryHasNoShares() {
    assertEquals(0, share(even(2), 0, s -> 3));
  }

  @Test
  void oneSideAloneHasItAll() {
    double share = share(even(2), 1, s -> s[1]);
    assertTrue(share > 0.99 && share <= 1, "share " + share);
  }
}
