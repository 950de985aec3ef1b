package rigspeak.hearing;

import java.util.Arrays;
import rigspeak.audio.Sound;

/** Levels and filters for the making of noisy recordings. */
final class Signal {
  private static final int FRAME = Sound.RATE / 100;

  /** A frame counts as speech if it is no more than this below the loudest one, dB. */
  private static final double ACTIVE = 25;

  private static final double MU = 255;
  private static final double LOUDEST = 0.9 * Short.MAX_VALUE;

  private Signal() {}

  /**
   * Root mean square over the frames of 10 ms in which somebody speaks: those within 25 dB of the
   * loudest. The pauses of a recording would otherwise decide how loud its speech is.
   */
  static double activeLevel(Sound sound) {
    double[] powers = new double[sound.length() / FRAME];
    double loudest = 0;
    for (int frame = 0; frame < powers.length; frame++) {
      double squares = 0;
      for (int i = 0; i < FRAME; i++) {
        double sample = sound.sample(frame * FRAME + i);
        squares += sample * sample;
      }
      powers[frame] = squares / FRAME;
      loudest = Math.max(loudest, powers[frame]);
    }
    double least = loudest * StrictMath.pow(10, -ACTIVE / 10);
    return StrictMath.sqrt(
        Arrays.stream(powers).filter(power -> power >= least).average().orElse(0));
  }

  /** The samples with silence before and after. */
  static double[] padded(Sound sound, double before, double after) {
    int lead = (int) (before * Sound.RATE);
    double[] out = new double[lead + sound.length() + (int) (after * Sound.RATE)];
    for (int i = 0; i < sound.length(); i++) {
      out[lead + i] = sound.sample(i);
    }
    return out;
  }

  /** As a sound; all of it quieter if the loudest sample would not fit. */
  static Sound withinRange(double[] samples) {
    double peak = Arrays.stream(samples).map(Math::abs).max().orElse(0);
    double gain = peak > LOUDEST ? LOUDEST / peak : 1;
    short[] out = new short[samples.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = clipped(gain * samples[i]);
    }
    return Sound.of(out);
  }

  static short clipped(double sample) {
    return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(sample)));
  }

  /** What eight bits by the mu-law leave of a sample of 16 bits. */
  static double muLaw(double sample) {
    double share = Math.min(1, Math.abs(sample) / Short.MAX_VALUE);
    double code = StrictMath.rint(127 * StrictMath.log1p(MU * share) / StrictMath.log1p(MU));
    double back = StrictMath.expm1(code / 127 * StrictMath.log1p(MU)) / MU;
    return Math.signum(sample) * back * Short.MAX_VALUE;
  }

  /** Fourth-order Butterworth at each end, the upper one twice: 8,000 samples a second need it. */
  static double[] band(double[] in, double lower, double upper) {
    double[] out = in;
    for (double quality : new double[] {0.541196, 1.306563}) {
      out = secondOrder(out, lower, quality, true);
      out = secondOrder(out, upper, quality, false);
      out = secondOrder(out, upper, quality, false);
    }
    return out;
  }

  /** The usual second-order section by the bilinear transform. */
  private static double[] secondOrder(double[] in, double corner, double quality, boolean high) {
    double turn = 2 * StrictMath.PI * corner / Sound.RATE;
    double cosine = StrictMath.cos(turn);
    double alpha = StrictMath.sin(turn) / (2 * quality);
    double ends = high ? (1 + cosine) / 2 : (1 - cosine) / 2;
    double middle = high ? -(1 + cosine) : 1 - cosine;
    double[] out = new double[in.length];
    double x1 = 0;
    double x2 = 0;
    double y1 = 0;
    double y2 = 0;
    for (int i = 0; i < in.length; i++) {
      double y =
          (ends * in[i] + middle * x1 + ends * x2 + 2 * cosine * y1 - (1 - alpha) * y2)
              / (1 + alpha);
      x2 = x1;
      x1 = in[i];
      y2 = y1;
      y1 = y;
      out[i] = y;
    }
    return out;
  }
}
