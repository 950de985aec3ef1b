package rigspeak.audio;

/**
 * Wind behind a voice: noise whose power falls with the frequency, swelling and dying down in gusts
 * of some seconds. The same every time.
 */
public final class Wind {
  /** A one-pole low pass here leaves what is heard of wind at a microphone. */
  private static final double CORNER_HERTZ = 250;

  private static final double GUST_SECONDS = 3.1;
  private static final double GUSTING = 0.5;
  private static final long MULTIPLIER = 6_364_136_223_846_793_005L;
  private static final long INCREMENT = 1_442_695_040_888_963_407L;

  private final double belowDb;

  private Wind(double belowDb) {
    this.belowDb = belowDb;
  }

  /**
   * So far below the voice.
   *
   * @param decibels of the mean powers, 0 to 40
   * @throws IllegalArgumentException outside the range
   */
  public static Wind below(double decibels) {
    if (!(decibels >= 0 && decibels <= 40)) {
      throw new IllegalArgumentException("no wind is " + decibels + " dB below a voice");
    }
    return new Wind(decibels);
  }

  /** Voice and wind, turned down together where they would clip. */
  public Sound behind(Sound voice) {
    double[] wind = noise(voice.length());
    double gain = gain(voice, wind);
    double[] both = new double[voice.length()];
    double peak = Short.MAX_VALUE;
    for (int i = 0; i < both.length; i++) {
      both[i] = voice.sample(i) + gain * wind[i];
      peak = Math.max(peak, Math.abs(both[i]));
    }
    short[] samples = new short[both.length];
    for (int i = 0; i < both.length; i++) {
      samples[i] = (short) Math.round(both[i] * Short.MAX_VALUE / peak);
    }
    return Sound.of(samples);
  }

  private double gain(Sound voice, double[] wind) {
    double voicePower = 0;
    double windPower = 0;
    for (int i = 0; i < wind.length; i++) {
      voicePower += (double) voice.sample(i) * voice.sample(i);
      windPower += wind[i] * wind[i];
    }
    return windPower == 0 ? 0 : Math.sqrt(voicePower / windPower / Math.pow(10, belowDb / 10));
  }

  /** A linear congruential generator (Knuth's constants for 64 bits) through the low pass. */
  private static double[] noise(int length) {
    double[] noise = new double[length];
    double kept = Math.exp(-2 * Math.PI * CORNER_HERTZ / Sound.RATE);
    long state = 1;
    double low = 0;
    for (int i = 0; i < length; i++) {
      state = state * MULTIPLIER + INCREMENT;
      double white = (state >> 32) / (double) (1L << 31);
      low = kept * low + (1 - kept) * white;
      double gust = 1 + GUSTING * Math.sin(2 * Math.PI * i / (GUST_SECONDS * Sound.RATE));
      noise[i] = low * gust;
    }
    return noise;
  }
}
