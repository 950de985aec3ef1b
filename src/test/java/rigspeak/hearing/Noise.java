package rigspeak.hearing;

import java.util.Random;
import rigspeak.audio.Sound;

/**
 * Noise of a tree crew's day, made from a seed: the same seed gives the same samples everywhere.
 *
 * <p>Each kind is a small model of how the sound comes about, told at the constant. Rates of
 * turning and firing are those of common machines, from memory; spectra and modulations are a
 * judgement by ear unless a law is named. No recording of a machine was used. All have a mean of
 * squares of 1 and no steady part.
 */
enum Noise {
  /**
   * Equal power in each octave, 15 Hz to 8 kHz: a sum of first-order filtered noises of equal power
   * whose corners lie an octave apart (the textbook way to 1/f).
   */
  PINK {
    @Override
    double[] raw(int length, Random dice) {
      double[] sum = new double[length];
      for (double corner = 15; corner < Sound.RATE / 2.0; corner *= 2) {
        add(sum, lowPassed(white(length, dice), corner), 1);
      }
      return sum;
    }
  },

  /**
   * Wind at an uncovered microphone: turbulence below some 60 Hz, falling by 12 dB an octave above
   * it, with gusts of a second or two that double and halve the level, and a rustle of leaves, 26
   * dB weaker, that goes with the gusts.
   */
  WIND {
    @Override
    double[] raw(int length, Random dice) {
      double[] roar = lowPassed(lowPassed(white(length, dice), 60), 60);
      normalise(roar);
      double[] leaves = highPassed(white(length, dice), 1_500);
      double[] gusts = swell(length, 0.25, 0.7, dice);
      for (int i = 0; i < length; i++) {
        roar[i] = gusts[i] * (roar[i] + 0.05 * leaves[i]);
      }
      return roar;
    }
  },

  /**
   * A two-stroke saw that idles: 2,700 turns a minute, one bang each turn, uneven in time (4 %) and
   * strength (25 %), rung by an exhaust at 220 and 900 Hz, and a rattle of the cover above 2 kHz
   * that follows the bangs.
   */
  SAW_IDLE {
    @Override
    double[] raw(int length, Random dice) {
      double[] bangs = bangs(length, 45, 0.04, 0.25, new double[length], dice);
      double[] sum = engine(bangs, 220, 900);
      add(sum, following(bangs, 0.008, highPassed(white(length, dice), 2_000)), 0.10);
      return sum;
    }
  },

  /**
   * The same saw in the cut: about 9,500 turns a minute, sinking and rising by a tenth as the load
   * changes, an exhaust at 500 and 1,600 Hz, and the chain's hiss from 700 Hz up, half as strong as
   * the engine.
   */
  SAW_CUTTING {
    @Override
    double[] raw(int length, Random dice) {
      double[] load = slow(length, 0.7, dice);
      double[] sum = engine(bangs(length, 158, 0.01, 0.15, scaled(load, 0.1), dice), 500, 1_600);
      normalise(sum);
      double[] chain = lowPassed(highPassed(white(length, dice), 700), 5_000);
      normalise(chain);
      add(sum, chain, 0.5);
      return sum;
    }
  },

  /**
   * A chipper thirty steps away: a four-cylinder diesel at 2,400 turns a minute (80 bangs a second,
   * steady), a drum with two knives that strikes 37 times a second, each blow a burst of 12 ms, and
   * branches fed for about a second at a time, three times as loud as the empty drum.
   */
  CHIPPER {
    @Override
    double[] raw(int length, Random dice) {
      double[] sum = engine(bangs(length, 80, 0.01, 0.1, new double[length], dice), 120, 600);
      normalise(sum);
      double[] blows = bangs(length, 37, 0.02, 0.3, new double[length], dice);
      double[] bursts = following(blows, 0.012, lowPassed(white(length, dice), 3_000));
      double[] fed = slow(length, 0.5, dice);
      for (int i = 0; i < length; i++) {
        bursts[i] *= fed[i] > 0 ? 3 : 1;
      }
      normalise(bursts);
      add(sum, bursts, 1);
      return sum;
    }
  },

  /**
   * Rain on leaves and helmet: 600 drops a second at random times, each a ringing of 2 ms between 2
   * and 7 kHz of very unequal strength, over an even hiss 6 dB below them.
   */
  RAIN {
    @Override
    double[] raw(int length, Random dice) {
      double[] drops = new double[length];
      int at = 0;
      while (at < length) {
        double strength = StrictMath.exp(dice.nextGaussian());
        double turn = 2 * StrictMath.PI * (2_000 + 5_000 * dice.nextDouble()) / Sound.RATE;
        for (int k = 0; k < 160 && at + k < length; k++) {
          drops[at + k] +=
              strength * StrictMath.exp(-k / (0.002 * Sound.RATE)) * StrictMath.sin(turn * k);
        }
        at += 1 + (int) (-StrictMath.log(1 - dice.nextDouble()) * Sound.RATE / 600);
      }
      normalise(drops);
      double[] hiss = highPassed(white(length, dice), 1_000);
      normalise(hiss);
      add(drops, hiss, 0.5);
      return drops;
    }
  };

  /** So many samples of it; mean of squares 1. */
  final double[] samples(int length, long seed) {
    double[] samples = raw(length, new Random(seed));
    normalise(samples);
    return samples;
  }

  abstract double[] raw(int length, Random dice);

  static double[] white(int length, Random dice) {
    double[] noise = new double[length];
    for (int i = 0; i < length; i++) {
      noise[i] = dice.nextGaussian();
    }
    return noise;
  }

  /** First order, the power of white noise kept. */
  private static double[] lowPassed(double[] in, double corner) {
    double keep = StrictMath.exp(-2 * StrictMath.PI * corner / Sound.RATE);
    double gain = StrictMath.sqrt(1 - keep * keep);
    double[] out = new double[in.length];
    double last = 0;
    for (int i = 0; i < in.length; i++) {
      last = keep * last + gain * in[i];
      out[i] = last;
    }
    return out;
  }

  /** First order. */
  private static double[] highPassed(double[] in, double corner) {
    double keep = StrictMath.exp(-2 * StrictMath.PI * corner / Sound.RATE);
    double[] out = new double[in.length];
    double last = 0;
    for (int i = 0; i < in.length; i++) {
      last = keep * last + (1 - keep) * in[i];
      out[i] = in[i] - last;
    }
    return out;
  }

  /** A wandering value of mean 0 and variance 1 that changes about so many times a second. */
  private static double[] slow(int length, double perSecond, Random dice) {
    double[] wander = lowPassed(white(length, dice), perSecond);
    // It starts where it may be at any time, not at nought.
    double start = dice.nextGaussian();
    double keep = StrictMath.exp(-2 * StrictMath.PI * perSecond / Sound.RATE);
    for (int i = 0; i < length; i++) {
      wander[i] += start;
      start *= keep;
    }
    return wander;
  }

  /** A level that goes up and down by the given natural logarithm. */
  private static double[] swell(int length, double perSecond, double logarithm, Random dice) {
    double[] level = slow(length, perSecond, dice);
    for (int i = 0; i < length; i++) {
      level[i] = StrictMath.exp(logarithm * level[i]);
    }
    return level;
  }

  /** Single samples so many times a second, uneven in time and strength. */
  private static double[] bangs(
      int length, double perSecond, double uneven, double unequal, double[] faster, Random dice) {
    double[] bangs = new double[length];
    double at = dice.nextDouble() * Sound.RATE / perSecond;
    while (at < length) {
      int here = (int) at;
      bangs[here] = 1 + unequal * dice.nextGaussian();
      double period = Sound.RATE / (perSecond * (1 + faster[here]));
      at += Math.max(2, period * (1 + uneven * dice.nextGaussian()));
    }
    return bangs;
  }

  private static double[] engine(double[] bangs, double lower, double upper) {
    double[] sum = rung(bangs, lower, 0.5 * lower);
    normalise(sum);
    double[] bright = rung(bangs, upper, 0.5 * upper);
    normalise(bright);
    add(sum, bright, 0.5);
    return sum;
  }

  /** A resonance: second order, with the width in Hz. */
  private static double[] rung(double[] in, double frequency, double width) {
    double radius = StrictMath.exp(-StrictMath.PI * width / Sound.RATE);
    double first = 2 * radius * StrictMath.cos(2 * StrictMath.PI * frequency / Sound.RATE);
    double second = -radius * radius;
    double[] out = new double[in.length];
    for (int i = 0; i < in.length; i++) {
      out[i] = in[i] + (i > 0 ? first * out[i - 1] : 0) + (i > 1 ? second * out[i - 2] : 0);
    }
    return out;
  }

  /** Noise that bursts with each bang and dies away. */
  private static double[] following(double[] bangs, double seconds, double[] noise) {
    double keep = StrictMath.exp(-1 / (seconds * Sound.RATE));
    double level = 0;
    double[] out = new double[noise.length];
    for (int i = 0; i < noise.length; i++) {
      level = Math.max(keep * level, Math.abs(bangs[i]));
      out[i] = level * noise[i];
    }
    return out;
  }

  private static double[] scaled(double[] in, double times) {
    double[] out = new double[in.length];
    add(out, in, times);
    return out;
  }

  private static void add(double[] to, double[] more, double times) {
    for (int i = 0; i < to.length; i++) {
      to[i] += times * more[i];
    }
  }

  private static void normalise(double[] samples) {
    double mean = 0;
    for (double sample : samples) {
      mean += sample / samples.length;
    }
    double squares = 0;
    for (double sample : samples) {
      squares += (sample - mean) * (sample - mean);
    }
    double level = StrictMath.sqrt(squares / samples.length);
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (samples[i] - mean) / level;
    }
  }
}
