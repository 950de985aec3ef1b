package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.tiedstate.Pool;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.zip.CRC32;

/**
 * The normal densities of the acoustic model. A state of a sound has one code book in each stream:
 * the cepstrum, its first and its second differences; the code book is shared by all states of the
 * same phone, the weights in it are the state's own.
 */
final class Densities {
  /** The cepstrum, its first and its second differences. */
  static final int STREAMS = 3;

  private static final int SIZE = CepstrumMap.SIZE;

  /** Densities that have less than this of a frame are passed over. */
  private static final double LEAST_SHARE = 1e-3;

  private final int perBook;
  private final int[] bookOfState;
  private final MixtureWeights weights;
  private final Pool<float[]> means;
  private final Pool<float[]> variances;
  private final double[] peaks;
  private final double[] logs;

  Densities(TiedLoader model) {
    bookOfState = model.getSenone2Ci();
    weights = model.weights();
    perBook = weights.perBook();
    means = model.getMeansPool();
    variances = model.getVariancePool();
    logs = new double[perBook];
    peaks = IntStream.range(0, means.size()).mapToDouble(k -> peak(variances.get(k))).toArray();
  }

  /** Takes one density with its share of a frame. */
  interface Taker {
    /**
     * One density.
     *
     * @param stream 0 to 2
     * @param share how much of the frame belongs to it, 0 to 1; all of a stream make 1
     */
    void take(int stream, double share, float[] mean, float[] variance);
  }

  /**
   * Shares a frame out among the densities of its state.
   *
   * @param rows of the map by which it is compared
   */
  void share(Aligned.Frame frame, double[][] rows, Taker taker) {
    for (int stream = 0; stream < STREAMS; stream++) {
      int first = (bookOfState[frame.state()] * STREAMS + stream) * perBook;
      double[] mapped = mapped(frame, stream, rows);
      double most = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < perBook; k++) {
        logs[k] =
            Math.log(weights.of(frame.state(), stream, k))
                + peaks[first + k]
                - fallOff(mapped, means.get(first + k), variances.get(first + k));
        most = Math.max(most, logs[k]);
      }
      double sum = 0;
      for (double log : logs) {
        sum += Math.exp(log - most);
      }
      for (int k = 0; k < perBook; k++) {
        double share = Math.exp(logs[k] - most) / sum;
        if (share > LEAST_SHARE) {
          taker.take(stream, share, means.get(first + k), variances.get(first + k));
        }
      }
    }
  }

  /**
   * What a frame looks like on average over all densities of a stream: the mean product of each two
   * of its numbers; in the last row and column, the means themselves.
   */
  double[][] meanProducts(int stream) {
    double[][] products = new double[SIZE + 1][SIZE + 1];
    overAll(
        stream,
        (mean, variance) -> {
          for (int i = 0; i <= SIZE; i++) {
            for (int k = 0; k <= SIZE; k++) {
              products[i][k] += (i < SIZE ? mean[i] : 1) * (k < SIZE ? mean[k] : 1);
            }
            if (i < SIZE) {
              products[i][i] += variance[i];
            }
          }
        });
    double count = products[SIZE][SIZE];
    for (double[] row : products) {
      for (int k = 0; k <= SIZE; k++) {
        row[k] /= count;
      }
    }
    return products;
  }

  /** The mean variance of each number of a stream, over all its densities. */
  double[] meanVariances(int stream) {
    double[] sums = new double[SIZE + 1];
    overAll(
        stream,
        (mean, variance) -> {
          for (int i = 0; i < SIZE; i++) {
            sums[i] += variance[i];
          }
          sums[SIZE]++;
        });
    return Arrays.stream(sums).limit(SIZE).map(sum -> sum / sums[SIZE]).toArray();
  }

  private void overAll(int stream, BiConsumer<float[], float[]> taker) {
    for (int first = stream * perBook; first < means.size(); first += STREAMS * perBook) {
      for (int k = first; k < first + perBook; k++) {
        taker.accept(means.get(k), variances.get(k));
      }
    }
  }

  /** One number for this model: a map made for one is of no use with another. */
  String fingerprint() {
    CRC32 sum = new CRC32();
    for (int i = 0; i < means.size(); i++) {
      for (float value : means.get(i)) {
        int bits = Float.floatToIntBits(value);
        for (int shift = 0; shift < 32; shift += 8) {
          sum.update(bits >>> shift);
        }
      }
    }
    return String.format(Locale.ROOT, "%08x", sum.getValue());
  }

  private static double[] mapped(Aligned.Frame frame, int stream, double[][] rows) {
    double[] mapped = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      double sum = stream == 0 ? rows[i][SIZE] : 0;
      for (int k = 0; k < SIZE; k++) {
        sum += rows[i][k] * frame.feature(stream, k);
      }
      mapped[i] = sum;
    }
    return mapped;
  }

  /** The logarithm of a density in its middle. */
  private static double peak(float[] variance) {
    double log = 0;
    for (float v : variance) {
      log -= Math.log(2 * Math.PI * v) / 2;
    }
    return log;
  }

  /** How much lower it is at a value. */
  private static double fallOff(double[] value, float[] mean, float[] variance) {
    double sum = 0;
    for (int i = 0; i < SIZE; i++) {
      double away = value[i] - mean[i];
      sum += away * away / variance[i] / 2;
    }
    return sum;
  }
}
