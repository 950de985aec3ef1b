package rigspeak.audio;

import java.util.Arrays;

/**
 * Changes the sampling rate of a sound by a polyphase filter, block by block.
 *
 * <p>Model: a sinc cut off below half of the lower of both rates and windowed by Kaiser's window.
 * What the lower rate cannot carry is held at least {@value #STOP_DECIBELS} dB down; frequencies up
 * to {@value #PASS_SHARE} of half of the lower rate pass within 0.01 dB. The window's shape and the
 * length of the filter are Kaiser's published estimates (J. F. Kaiser, "Nonrecursive digital filter
 * design using the I0-sinh window function", 1974): beta = 0.1102 (A - 8.7), transition width in
 * radians = (A - 7.95) / (2.285 (N - 1)).
 *
 * <p>The first output sample falls on the first input sample; there is no delay.
 */
final class Resampler {
  static final double STOP_DECIBELS = 80;
  static final double PASS_SHARE = 0.85;

  /** Output samples per {@link #down} input samples. */
  private final int up;

  private final int down;

  /** Input samples on either side of an output sample that have a part in it. */
  private final int reach;

  private final double[][] weights;

  private double[] held;
  private int heldLength;

  /** Position of the next output sample, in steps of 1/up input samples from held[reach]. */
  private long next;

  private Resampler(int up, int down, int reach, double[][] weights) {
    this.up = up;
    this.down = down;
    this.reach = reach;
    this.weights = weights;
    this.held = new double[reach];
    this.heldLength = reach;
  }

  /**
   * A resampler for one stream.
   *
   * @param fromRate samples a second that come in
   * @param toRate samples a second that go out
   */
  static Resampler between(int fromRate, int toRate) {
    int common = gcd(fromRate, toRate);
    int up = toRate / common;
    int down = fromRate / common;
    if (up == down) {
      return new Resampler(1, 1, 0, new double[][] {{1}});
    }
    double lower = Math.min(1.0, (double) toRate / fromRate);
    double transition = Math.PI * lower * (1 - PASS_SHARE);
    double length = 1 + (STOP_DECIBELS - 7.95) / (2.285 * transition);
    int reach = (int) Math.ceil(length / 2);
    double cutoff = lower * (1 + PASS_SHARE) / 2;
    double[][] weights = new double[up][];
    for (int phase = 0; phase < up; phase++) {
      weights[phase] = weights(phase / (double) up, reach, cutoff);
    }
    return new Resampler(up, down, reach, weights);
  }

  /** Takes some input and gives the output that it makes possible. */
  double[] push(double[] input, int count) {
    if (heldLength + count > held.length) {
      held = Arrays.copyOf(held, heldLength + count);
    }
    System.arraycopy(input, 0, held, heldLength, count);
    heldLength += count;
    return produce();
  }

  /** Gives the output that was still waiting for later input, as if silence followed. */
  double[] flush() {
    return push(new double[reach], reach);
  }

  /** All output for which enough input is held. */
  private double[] produce() {
    long limit = (long) (heldLength - 2 * reach) * up;
    int count = limit <= next ? 0 : (int) ((limit - next + down - 1) / down);
    double[] output = new double[count];
    for (int i = 0; i < count; i++) {
      int whole = (int) (next / up);
      double[] row = weights[(int) (next % up)];
      int first = whole + 1;
      double sum = 0;
      if (reach == 0) {
        sum = held[whole];
      } else {
        for (int k = 0; k < row.length; k++) {
          sum += row[k] * held[first + k];
        }
      }
      output[i] = sum;
      next += down;
    }
    forget();
    return output;
  }

  private void forget() {
    int done = (int) Math.min(next / up, heldLength - reach);
    if (done > 0) {
      System.arraycopy(held, done, held, 0, heldLength - done);
      heldLength -= done;
      next -= (long) done * up;
    }
  }

  /** Weights of the inputs at -reach+1 ... +reach around an output at this fraction. */
  private static double[] weights(double fraction, int reach, double cutoff) {
    double[] row = new double[2 * reach];
    double beta = 0.1102 * (STOP_DECIBELS - 8.7);
    double sum = 0;
    for (int k = 0; k < row.length; k++) {
      double away = k + 1 - reach - fraction;
      row[k] = cutoff * sinc(cutoff * away) * kaiser(away / reach, beta);
      sum += row[k];
    }
    for (int k = 0; k < row.length; k++) {
      row[k] /= sum;
    }
    return row;
  }

  private static double sinc(double x) {
    return x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
  }

  private static double kaiser(double x, double beta) {
    double inside = 1 - x * x;
    return inside <= 0 ? 0 : besselI0(beta * Math.sqrt(inside)) / besselI0(beta);
  }

  /** The modified Bessel function of the first kind and order 0, by its power series. */
  private static double besselI0(double x) {
    double sum = 1;
    double term = 1;
    for (int k = 1; term > 1e-16 * sum; k++) {
      term *= (x / (2 * k)) * (x / (2 * k));
      sum += term;
    }
    return sum;
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
