package rigspeak.verdict;

/**
 * The first-order share of a result's variance that one side of the box makes by itself.
 *
 * <p>Variance of the means within slices of that side, over the variance of all (Saltelli and
 * others, Global Sensitivity Analysis, 2008, chapter 4). Even samples fill the slices evenly.
 */
final class VarianceShare {
  private static final int SLICES = 32;

  private VarianceShare() {}

  /**
   * @param shares for each sample its place on every side, 0 to 1
   * @param side which side
   * @param results one for each sample
   * @return 0 to 1; 0 where the result does not vary at all
   */
  static double ofSide(double[][] shares, int side, double[] results) {
    double[] sums = new double[SLICES];
    int[] counts = new int[SLICES];
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < results.length; i++) {
      int slice = Math.min(SLICES - 1, (int) (shares[i][side] * SLICES));
      sums[slice] += results[i];
      counts[slice]++;
      sum += results[i];
      squares += results[i] * results[i];
    }
    double mean = sum / results.length;
    double variance = squares / results.length - mean * mean;
    double between = 0;
    for (int slice = 0; slice < SLICES; slice++) {
      if (counts[slice] > 0) {
        double off = sums[slice] / counts[slice] - mean;
        between += counts[slice] * off * off / results.length;
      }
    }
    return variance > 0 ? Math.min(1, between / variance) : 0;
  }
}
