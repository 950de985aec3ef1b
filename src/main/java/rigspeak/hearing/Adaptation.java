package rigspeak.hearing;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Estimates a person's {@link CepstrumMap}: from what was read aloud, or row by row from what was
 * heard.
 *
 * <p>Model: constrained maximum likelihood linear regression, row by row (M. J. F. Gales, "Maximum
 * likelihood linear transformations for HMM-based speech recognition", Computer Speech and Language
 * 12 (1998) 75-98, section 2.2.1 and appendix; after C. J. Leggetter and P. C. Woodland, same
 * journal 9 (1995) 171-185). The map that makes the frames likeliest under the densities of the
 * sounds that they belong to, the price for squeezing all frames together, log |det A|, included.
 * One map for all sounds and for the three streams. Equations from memory; the test recovers a
 * known map.
 *
 * <p>With little speech the likeliest map is a bad one, so some seconds of speech are thought to
 * have been heard that ask for no change.
 */
final class Adaptation {
  private static final int SIZE = CepstrumMap.SIZE;
  private static final int WIDTH = SIZE + 1;

  /** The frames are shared out among the densities anew so many times. */
  private static final int ROUNDS = 4;

  /** Each row follows from the others; so many times through all of them. */
  private static final int SWEEPS = 20;

  /** Frames that are thought to ask for no change: 3 s. A judgement. */
  private static final double UNCHANGED_FRAMES = 300;

  private final Densities densities;
  private final double[][][] typical;
  private final double[][][] squares = new double[SIZE][WIDTH][WIDTH];
  private final double[][] pulls = new double[SIZE][WIDTH];
  private double count;

  /** Nothing has been heard yet. */
  Adaptation(Densities densities) {
    this(densities, typical(densities));
  }

  private Adaptation(Densities densities, double[][][] typical) {
    this.densities = densities;
    this.typical = typical;
  }

  /** The map that suits these frames. */
  static CepstrumMap estimate(List<Aligned.Frame> frames, Densities densities) {
    CepstrumMap map = CepstrumMap.none();
    double[][][] typical = typical(densities);
    for (int round = 0; round < ROUNDS && !frames.isEmpty(); round++) {
      Adaptation heard = new Adaptation(densities, typical);
      heard.add(frames, map);
      map = heard.likeliest();
    }
    return map;
  }

  /**
   * Hears more.
   *
   * @param frames as they came, not mapped
   * @param map by which they are shared out among the densities
   */
  void add(List<Aligned.Frame> frames, CepstrumMap map) {
    double[][] rows = map.toArray();
    for (Aligned.Frame frame : frames) {
      densities.share(
          frame,
          rows,
          (stream, share, mean, variance) -> take(frame, stream, share, mean, variance));
    }
  }

  /** What was heard so far counts for less from now on: for so much of itself. */
  void fade(double share) {
    for (int i = 0; i < SIZE; i++) {
      for (int k = 0; k < WIDTH; k++) {
        pulls[i][k] *= share;
        for (int l = 0; l < WIDTH; l++) {
          squares[i][k][l] *= share;
        }
      }
    }
    count *= share;
  }

  private void take(Aligned.Frame frame, int stream, double share, float[] mean, float[] variance) {
    double[] extended = new double[WIDTH];
    for (int k = 0; k < SIZE; k++) {
      extended[k] = frame.feature(stream, k);
    }
    // The shift is the same in every frame: in the differences over time it is gone.
    extended[SIZE] = stream == 0 ? 1 : 0;
    count += share;
    for (int i = 0; i < SIZE; i++) {
      double weight = share / variance[i];
      for (int k = 0; k < WIDTH; k++) {
        double part = weight * extended[k];
        pulls[i][k] += part * mean[i];
        for (int l = 0; l < WIDTH; l++) {
          squares[i][k][l] += part * extended[l];
        }
      }
    }
  }

  /** The squares of one average frame, row by row. */
  private static double[][][] typical(Densities densities) {
    double[][][] typical = new double[SIZE][WIDTH][WIDTH];
    for (int stream = 0; stream < Densities.STREAMS; stream++) {
      double[][] products = densities.meanProducts(stream);
      double[] variances = densities.meanVariances(stream);
      // The shift is in the first stream alone.
      int width = stream == 0 ? WIDTH : SIZE;
      for (int i = 0; i < SIZE; i++) {
        for (int k = 0; k < width; k++) {
          for (int l = 0; l < width; l++) {
            typical[i][k][l] += products[k][l] / variances[i];
          }
        }
      }
    }
    return typical;
  }

  /** The map that makes all that was heard likeliest. */
  CepstrumMap likeliest() {
    return new Likeliest(this).map();
  }

  /**
   * The solution, for what was heard and average frames for which no change would be best: there
   * the slope of count log |det A| - w G w / 2 + w k is zero, which gives their k.
   */
  private static final class Likeliest {
    private final RealMatrix[] inverses = new RealMatrix[SIZE];
    private final double[][] pulls = new double[SIZE][WIDTH];
    private final double count;

    Likeliest(Adaptation heard) {
      count = heard.count + UNCHANGED_FRAMES * Densities.STREAMS;
      for (int i = 0; i < SIZE; i++) {
        double[][] squares = new double[WIDTH][WIDTH];
        for (int k = 0; k < WIDTH; k++) {
          pulls[i][k] = heard.pulls[i][k] + UNCHANGED_FRAMES * heard.typical[i][k][i];
          for (int l = 0; l < WIDTH; l++) {
            squares[k][l] = heard.squares[i][k][l] + UNCHANGED_FRAMES * heard.typical[i][k][l];
          }
        }
        pulls[i][i] -= UNCHANGED_FRAMES * Densities.STREAMS;
        inverses[i] = inverse(new Array2DRowRealMatrix(squares, false));
      }
    }

    CepstrumMap map() {
      double[][] rows = CepstrumMap.none().toArray();
      for (int sweep = 0; sweep < SWEEPS; sweep++) {
        for (int i = 0; i < SIZE; i++) {
          rows[i] = row(i, rows);
        }
      }
      return CepstrumMap.of(rows);
    }

    /** The likeliest row, the others being what they are: (t p + k) G^-1, p its cofactors. */
    private double[] row(int i, double[][] rows) {
      RealMatrix a = new Array2DRowRealMatrix(rows).getSubMatrix(0, SIZE - 1, 0, SIZE - 1);
      // Cofactors over the determinant, which only changes the scale of t.
      double[] cofactors = new double[WIDTH];
      System.arraycopy(inverse(a).getColumn(i), 0, cofactors, 0, SIZE);
      double[] byCofactors = inverses[i].preMultiply(cofactors);
      double[] byPulls = inverses[i].preMultiply(pulls[i]);
      double square = product(cofactors, byCofactors);
      double mixed = product(cofactors, byPulls);
      // t t square + t mixed = count; of both roots the likelier.
      double root = Math.sqrt(mixed * mixed + 4 * square * count);
      double high = (-mixed + root) / (2 * square);
      double low = (-mixed - root) / (2 * square);
      double t = gain(high, square, mixed) >= gain(low, square, mixed) ? high : low;
      double[] row = new double[WIDTH];
      for (int k = 0; k < WIDTH; k++) {
        row[k] = t * byCofactors[k] + byPulls[k];
      }
      return row;
    }

    private double gain(double t, double square, double mixed) {
      return count * Math.log(Math.abs(t * square + mixed)) - t * t * square / 2;
    }
  }

  private static double product(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static RealMatrix inverse(RealMatrix matrix) {
    return new LUDecomposition(matrix).getSolver().getInverse();
  }
}
