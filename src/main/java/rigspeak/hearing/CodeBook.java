package rigspeak.hearing;

import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.util.LogMath;
import java.util.Arrays;

/**
 * The normal densities that all states of one phone share, and the few of them that fit a frame
 * best.
 *
 * <p>The same figures as Sphinx4's MixtureComponentSet gives, to the last bit. It follows one
 * density after the other and stops where one falls behind; here all of them go on together, one
 * number of the frame after the other, which a processor does for eight at once. Most of the time
 * that hearing takes was spent there.
 */
final class CodeBook {
  private final int id;
  private final int top;
  private final Stream[] streams;
  private Data frame;
  private Best best = new Best(new byte[0], new float[0]);

  /**
   * What fits a frame best: stream after stream, in each the worst of the best first.
   *
   * <p>An utterance of 20 s has 2,000 frames, each with one of these for every phone.
   */
  static final class Best {
    private final byte[] numbers;
    private final float[] scores;

    private Best(byte[] numbers, float[] scores) {
      this.numbers = numbers;
      this.scores = scores;
    }
  }

  /**
   * Densities by stream, then by number.
   *
   * @param id which one it is of the model's, counted from 0
   * @param top how many of each stream count in a frame
   */
  CodeBook(int id, float[][][] means, float[][][] variances, float leastVariance, int top) {
    this.id = id;
    this.top = top;
    this.streams = new Stream[means.length];
    for (int i = 0; i < streams.length; i++) {
      streams[i] = new Stream(means[i], variances[i], leastVariance, top);
    }
  }

  int id() {
    return id;
  }

  /** Looks for the densities that fit a frame best, unless it was the last one, too. */
  void hear(Data next) {
    if (next == frame) {
      return;
    }
    best =
        next instanceof HeardFrame heard
            ? heard.best(this)
            : bestFor(FloatData.toFloatData(next).getValues());
    frame = next;
  }

  /** Looks for the densities that fit these numbers best. */
  Best bestFor(float[] values) {
    Best found = new Best(new byte[streams.length * top], new float[streams.length * top]);
    int from = 0;
    for (int i = 0; i < streams.length; i++) {
      streams[i].hear(values, from);
      from += streams[i].means.length;
      for (int place = 0; place < top; place++) {
        found.numbers[i * top + place] = (byte) streams[i].best[place];
        found.scores[i * top + place] = streams[i].scores[place];
      }
    }
    return found;
  }

  int top() {
    return top;
  }

  int streams() {
    return streams.length;
  }

  /** The number of one of the best densities; the worst of them is the first. */
  int number(int stream, int place) {
    return best.numbers[stream * top + place] & 0xff;
  }

  /** Its logarithm, in Sphinx4's. */
  float score(int stream, int place) {
    return best.scores[stream * top + place];
  }

  /** The densities of one stream; means and precisions by the number of the frame, then density. */
  private static final class Stream {
    private final float[][] means;
    private final float[][] precisions;
    private final float[] peaks;
    private final float[] fits;
    private final int[] best;
    private final float[] scores;

    Stream(float[][] means, float[][] variances, float leastVariance, int top) {
      int count = means.length;
      int size = means[0].length;
      this.means = new float[size][count];
      this.precisions = new float[size][count];
      this.peaks = new float[count];
      this.fits = new float[count];
      this.best = new int[top];
      this.scores = new float[top];
      for (int k = 0; k < count; k++) {
        double logs = 0;
        for (int i = 0; i < size; i++) {
          float precision = 1 / (-2 * Math.max(leastVariance, variances[k][i]));
          this.means[i][k] = means[k][i];
          this.precisions[i][k] = precision;
          logs += Math.log(precision * -2);
        }
        peaks[k] = -(float) (Math.log(2 * Math.PI) * size - logs) * 0.5f;
      }
    }

    void hear(float[] values, int from) {
      System.arraycopy(peaks, 0, fits, 0, fits.length);
      for (int i = 0; i < means.length; i++) {
        fallOff(fits, values[from + i], means[i], precisions[i]);
      }
      Arrays.fill(scores, Float.NEGATIVE_INFINITY);
      for (int k = 0; k < fits.length; k++) {
        if (fits[k] > scores[0]) {
          insert(k, fits[k]);
        }
      }
      for (int i = 0; i < scores.length; i++) {
        scores[i] = Math.max(LogMath.LOG_ZERO, LogMath.getLogMath().lnToLog(scores[i]));
      }
    }

    /** By itself, so that it is compiled for several at once. */
    private static void fallOff(float[] fits, float value, float[] means, float[] precisions) {
      for (int k = 0; k < fits.length; k++) {
        float off = value - means[k];
        fits[k] += off * off * precisions[k];
      }
    }

    /** In place of the worst of the best. */
    private void insert(int k, float fit) {
      int i = 0;
      while (i + 1 < best.length && scores[i + 1] < fit) {
        best[i] = best[i + 1];
        scores[i] = scores[i + 1];
        i++;
      }
      best[i] = k;
      scores[i] = fit;
    }
  }
}
