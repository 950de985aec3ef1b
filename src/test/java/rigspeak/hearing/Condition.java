package rigspeak.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import rigspeak.audio.Sound;

/**
 * What happens to a clean recording between the mouth and the ear. The same seed, the same sound.
 */
sealed interface Condition {
  /** As it stands in tables, arguments and folder names. */
  String name();

  Sound heard(Sound clean, long seed);

  /** Every condition that is measured, in the order of the tables. */
  static List<Condition> all() {
    List<Condition> all = new ArrayList<>(List.of(new Clean()));
    for (Noise noise : Noise.values()) {
      for (int decibels : new int[] {20, 10, 5}) {
        all.add(new Noisy(noise, decibels));
      }
    }
    all.add(new Radio());
    all.add(new Overdriven(6));
    all.add(new Overdriven(12));
    all.add(new Far());
    all.add(new Echo());
    return List.copyOf(all);
  }

  static Condition named(String name) {
    return all().stream()
        .filter(condition -> condition.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no condition " + name));
  }

  /** The recording as it is. */
  record Clean() implements Condition {
    @Override
    public String name() {
      return "clean";
    }

    @Override
    public Sound heard(Sound clean, long seed) {
      return clean;
    }
  }

  /**
   * Noise that has been there before and stays. The ratio is that of the mean power of the speech
   * over its active frames to the mean power of the noise over its whole length, both over the full
   * band to 8 kHz and unweighted. So wind, which is nearly all below the voice, disturbs less than
   * rain of the same ratio.
   */
  record Noisy(Noise noise, int decibels) implements Condition {
    @Override
    public String name() {
      return noise.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + decibels;
    }

    @Override
    public Sound heard(Sound clean, long seed) {
      double[] speech = Signal.padded(clean, 1.5, 3.0);
      double wanted = Signal.activeLevel(clean) * StrictMath.pow(10, -decibels / 20.0);
      double[] unit = noise.samples(speech.length, seed);
      for (int i = 0; i < speech.length; i++) {
        speech[i] += wanted * unit[i];
      }
      return Signal.withinRange(speech);
    }
  }

  /**
   * A hand-held radio: 300 to 3,400 Hz, 8,000 samples a second in eight bits by the mu-law (ITU-T
   * G.711, mu = 255), hiss 30 dB below the speech while the channel is open, a burst of it at full
   * strength for 40 ms before (the squelch opens) and for 150 ms after (its tail).
   */
  record Radio() implements Condition {
    @Override
    public String name() {
      return "radio";
    }

    @Override
    public Sound heard(Sound clean, long seed) {
      Random dice = new Random(seed);
      double level = Signal.activeLevel(clean);
      double[] speech = Signal.padded(clean, 0, 0);
      double[] hiss = Noise.white(speech.length, dice);
      for (int i = 0; i < speech.length; i++) {
        speech[i] += 0.03 * level * hiss[i];
      }
      double[] open = burst(0.04, level, dice);
      double[] tail = burst(0.15, level, dice);
      double[] whole = new double[Sound.RATE / 2 + open.length + speech.length + tail.length];
      System.arraycopy(open, 0, whole, 0, open.length);
      System.arraycopy(speech, 0, whole, open.length, speech.length);
      System.arraycopy(tail, 0, whole, open.length + speech.length, tail.length);
      double[] narrow = Signal.band(whole, 300, 3_400);
      double[] coded = new double[narrow.length];
      for (int i = 0; i < narrow.length; i += 2) {
        // Every other sample, and nought between: the filter behind it fills the gaps.
        coded[i] = 2 * Signal.muLaw(narrow[i]);
      }
      return Signal.withinRange(Signal.band(coded, 300, 3_400));
    }

    private static double[] burst(double seconds, double level, Random dice) {
      double[] burst = Noise.white((int) (seconds * Sound.RATE), dice);
      for (int i = 0; i < burst.length; i++) {
        burst[i] *= level;
      }
      return burst;
    }
  }

  /** A microphone that is driven too hard: the loudest peak is so much above what it can take. */
  record Overdriven(int decibels) implements Condition {
    @Override
    public String name() {
      return "overdriven-" + decibels;
    }

    @Override
    public Sound heard(Sound clean, long seed) {
      double[] speech = Signal.padded(clean, 0, 0);
      double peak = 1;
      for (double sample : speech) {
        peak = Math.max(peak, Math.abs(sample));
      }
      double gain = Short.MAX_VALUE / peak * StrictMath.pow(10, decibels / 20.0);
      short[] out = new short[speech.length];
      for (int i = 0; i < out.length; i++) {
        out[i] = Signal.clipped(gain * speech[i]);
      }
      return Sound.of(out);
    }
  }

  /**
   * A microphone two steps away in a shed: 24 dB quieter, with the microphone's own hiss, and the
   * room's tail as loud as the direct sound, falling by 60 dB in 0.4 s (noise that dies away, the
   * common model of a diffuse room).
   */
  record Far() implements Condition {
    @Override
    public String name() {
      return "far";
    }

    @Override
    public Sound heard(Sound clean, long seed) {
      // The room is the same for every sentence.
      Random room = new Random(7);
      int length = (int) (0.4 * Sound.RATE);
      double[] tail = new double[length];
      double squares = 0;
      for (int i = 0; i < length; i++) {
        double decay = StrictMath.exp(-StrictMath.log(1_000) * i / length);
        // Nothing comes back within the first five milliseconds.
        tail[i] = i < Sound.RATE / 200 ? 0 : decay * room.nextGaussian();
        squares += tail[i] * tail[i];
      }
      double[] direct = Signal.padded(clean, 0.3, 0.4);
      double[] out = direct.clone();
      double share = 1 / StrictMath.sqrt(squares);
      for (int k = 0; k < length; k++) {
        double strength = share * tail[k];
        for (int i = k; i < out.length; i++) {
          out[i] += strength * direct[i - k];
        }
      }
      Random hiss = new Random(seed);
      double quieter = StrictMath.pow(10, -24 / 20.0);
      for (int i = 0; i < out.length; i++) {
        out[i] = quieter * out[i] + 6 * hiss.nextGaussian();
      }
      return Signal.withinRange(out);
    }
  }

  /**
   * A house wall across the yard: the voice comes back 120 ms later, 8 dB weaker, and once more.
   */
  record Echo() implements Condition {
    @Override
    public String name() {
      return "echo";
    }

    @Override
    public Sound heard(Sound clean, long seed) {
      double[] direct = Signal.padded(clean, 0, 0.3);
      double[] out = direct.clone();
      int later = (int) (0.12 * Sound.RATE);
      for (int back = 1; back <= 2; back++) {
        double strength = StrictMath.pow(10, -8 * back / 20.0);
        for (int i = back * later; i < out.length; i++) {
          out[i] += strength * direct[i - back * later];
        }
      }
      return Signal.withinRange(out);
    }
  }
}
