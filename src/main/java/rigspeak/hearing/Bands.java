package rigspeak.hearing;

import java.util.Arrays;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;

/**
 * How loud a sound is in each of four bands of the voice, frame by frame: {@value #LOWEST} to 700,
 * 1,500, 3,000 and 6,000 Hz. A vowel stands out of noise in the lower ones, a consonant in the
 * upper ones, and the rumble of wind in none.
 *
 * <p>Levels are in decibels below full scale (negative), of the last {@value #SPAN} samples (32 ms)
 * under a Hann window, after a first difference.
 */
final class Bands {
  static final int LOWEST = 300;
  private static final int[] EDGES = {LOWEST, 700, 1_500, 3_000, 6_000};

  /** How many there are. */
  static final int COUNT = EDGES.length - 1;

  private static final int SPAN = 512;
  private static final double EMPHASIS = 0.97;

  /** Mean of the squares of the Hann window. */
  private static final double WINDOW_POWER = 3.0 / 8;

  private static final double[] WINDOW = new double[SPAN];

  static {
    Arrays.setAll(WINDOW, i -> Math.pow(Math.sin(Math.PI * (i + 0.5) / SPAN), 2));
  }

  private final double[] recent = new double[SPAN];
  private final double[][] spectrum = new double[2][SPAN];
  private double previousSample;

  /** The level of each band with the next frame. */
  double[] take(short[] frame) {
    System.arraycopy(recent, frame.length, recent, 0, SPAN - frame.length);
    for (int i = 0; i < frame.length; i++) {
      recent[SPAN - frame.length + i] = frame[i] - EMPHASIS * previousSample;
      previousSample = frame[i];
    }
    for (int i = 0; i < SPAN; i++) {
      spectrum[0][i] = WINDOW[i] * recent[i];
      spectrum[1][i] = 0;
    }
    FastFourierTransformer.transformInPlace(
        spectrum, DftNormalization.STANDARD, TransformType.FORWARD);
    double[] levels = new double[COUNT];
    for (int band = 0; band < COUNT; band++) {
      levels[band] = Meter.decibels(Math.sqrt(meanSquare(EDGES[band], EDGES[band + 1])));
    }
    return levels;
  }

  /** The level of all bands together. */
  static double together(double[] levels) {
    double power = 0;
    for (double level : levels) {
      power += Math.pow(10, level / 10);
    }
    return 10 * Math.log10(power);
  }

  /** Of the samples, as far as it lies between two frequencies (Parseval). */
  private double meanSquare(int from, int to) {
    double sum = 0;
    for (int bin = from * SPAN / Sound.RATE; bin < to * SPAN / Sound.RATE; bin++) {
      double real = spectrum[0][bin];
      double imaginary = spectrum[1][bin];
      sum += real * real + imaginary * imaginary;
    }
    // Each frequency stands twice in the spectrum of real samples.
    return 2 * sum / ((double) SPAN * SPAN * WINDOW_POWER);
  }
}
