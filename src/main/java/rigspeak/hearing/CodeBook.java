package rigspeak.hearing;

import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.FloatData;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The normal densities that all states of one phone share, and the few of them that fit a frame
 * best.
 *
 * <p>The same ones as Sphinx4's MixtureComponentSet finds. It follows one density after the other
 * and stops where one falls behind; here all of them go on together, one number of the frame after
 * the other, which a processor does for eight at once. Most of the time that hearing takes was
 * spent there.
 */
final class CodeBook {
  /** So far behind the best, in natural logarithms, a density adds nothing to a 32-bit number. */
  private static final float NOTHING = -50;

  private final int id;
  private final int top;
  private final Stream[] streams;

  /**
   * What fits a frame best: stream after stream, in each the worst of the best first.
   *
   * <p>An utterance of 20 s has 2,000 frames, each with one of these for every phone.
   */
  static final class Best {
    private final int top;
    private final byte[] numbers;
    private final float[] shares;
    private float peak;

    private Best(int streams, int top) {
      this.top = top;
      numbers = new byte[streams * top];
      shares = new float[streams * top];
    }

    /** The number in its stream of one of the best; the worst of them has the place 0. */
    int number(int stream, int place) {
      return numbers[stream * top + place] & 0xff;
    }

    /** How likely it makes the frame in relation to the best of its stream: 0 to 1. */
    float share(int stream, int place) {
      return shares[stream * top + place];
    }

    /** The natural logarithm of the best of all streams together. */
    float peak() {
      return peak;
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

  /** The densities that fit a frame best. */
  Best best(Data frame) {
    return frame instanceof HeardFrame heard
        ? heard.best(this)
        : bestFor(FloatData.toFloatData(frame).getValues());
  }

  /** The densities that fit these numbers best. */
  Best bestFor(float[] values) {
    Best found = new Best(streams.length, top);
    int from = 0;
    for (int i = 0; i < streams.length; i++) {
      streams[i].hear(values, from);
      from += streams[i].means.length;
      float peak = streams[i].scores[top - 1];
      found.peak += peak;
      for (int place = 0; place < top; place++) {
        found.numbers[i * top + place] = (byte) streams[i].best[place];
        float behind = streams[i].scores[place] - peak;
        found.shares[i * top + place] = behind < NOTHING ? 0 : (float) Math.exp(behind);
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

  /** The densities of one stream; means and precisions by the number of the frame, then density. */
  private static final class Stream {
    private final float[][] means;
    private final float[][] precisions;
    private final float[] peaks;
    private final float[] fits;
    private final int[] candidates;
    private final int[] best;
    private final float[] scores;

    Stream(float[][] means, float[][] variances, float leastVariance, int top) {
      int count = means.length;
      int size = means[0].length;
      this.means = new float[size][count];
      this.precisions = new float[size][count];
      this.peaks = new float[count];
      this.fits = new float[count];
      this.candidates = new int[count];
      this.best = IntStream.range(0, top).toArray();
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
      int count = candidates(worstOfTheLast());
      Arrays.fill(scores, Float.NEGATIVE_INFINITY);
      for (int i = 0; i < count; i++) {
        float fit = fits[candidates[i]];
        if (fit > scores[0]) {
          insert(candidates[i], fit);
        }
      }
    }

    /** How well the worst now fits of the best of the frame before, which are still good ones. */
    private float worstOfTheLast() {
      float worst = Float.POSITIVE_INFINITY;
      for (int number : best) {
        worst = Math.min(worst, fits[number]);
      }
      return worst;
    }

    /**
     * Notes which fit no worse than this. Which ones do cannot be foreseen, so the sign of the
     * difference is counted: a branch would be guessed wrong, which takes longer than all else.
     */
    private int candidates(float least) {
      int count = 0;
      for (int k = 0; k < fits.length; k++) {
        candidates[count] = k;
        count += 1 - (Float.floatToRawIntBits(fits[k] - least) >>> 31);
      }
      return count;
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
