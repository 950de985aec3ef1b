package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.audio.Sound;

/** The noise by which the ear is judged is what its description says. */
class ConditionTest {
  private static final int LENGTH = 1 << 17;

  @ParameterizedTest
  @EnumSource(Noise.class)
  void aSeedAlwaysGivesTheSameNoiseOfTheSameLevel(Noise noise) {
    double[] samples = noise.samples(LENGTH, 5);

    assertArrayEquals(samples, noise.samples(LENGTH, 5));
    assertFalse(Arrays.equals(samples, noise.samples(LENGTH, 6)));
    assertEquals(1, Arrays.stream(samples).map(s -> s * s).sum() / LENGTH, 1e-9);
    assertEquals(0, Arrays.stream(samples).sum() / LENGTH, 1e-9);
  }

  /** The definition of pink: as much in each octave as in the next. */
  @Test
  void pinkNoiseHasTheSamePowerInEachOctave() {
    double[] samples = Noise.PINK.samples(LENGTH, 1);
    double first = power(samples, 125, 250);
    for (double from = 250; from < 4_000; from *= 2) {
      assertEquals(0, 10 * Math.log10(power(samples, from, 2 * from) / first), 1.0, "" + from);
    }
  }

  /** Two filters of first order at 60 Hz: the density falls as 1 / (1 + (f/60)^2)^2. */
  @Test
  void windFallsByTwelveDecibelsAnOctave() {
    double[] samples = Noise.WIND.samples(LENGTH, 1);
    double fall = 10 * Math.log10(power(samples, 240, 480) / power(samples, 120, 240));
    // The integrals of that law over the two octaves.
    double expected = 10 * Math.log10(integral(4, 8) / integral(2, 4));
    assertEquals(expected, fall, 1.5);
  }

  private static double integral(double from, double to) {
    double sum = 0;
    int steps = 1_000;
    for (int i = 0; i < steps; i++) {
      double x = from + (to - from) * (i + 0.5) / steps;
      sum += (to - from) / steps / Math.pow(1 + x * x, 2);
    }
    return sum;
  }

  @Test
  void theRatioIsThatOfTheSpeechWithoutItsPauses() {
    short[] samples = new short[2 * Sound.RATE];
    for (int i = 0; i < Sound.RATE; i++) {
      samples[i] = (short) Math.round(1_000 * Math.sqrt(2) * Math.sin(2 * Math.PI * 0.05 * i));
    }
    Sound speech = Sound.of(samples);
    assertEquals(1_000, Signal.activeLevel(speech), 1, "the silent second does not count");

    Sound noisy = new Condition.Noisy(Noise.RAIN, 10).heard(speech, 3);

    double squares = 0;
    int lead = noisy.length() - speech.length() - 3 * Sound.RATE;
    for (int i = 0; i < noisy.length(); i++) {
      int at = i - lead;
      double clean = at >= 0 && at < speech.length() ? speech.sample(at) : 0;
      squares += Math.pow(noisy.sample(i) - clean, 2);
    }
    assertEquals(1_000 / Math.sqrt(10), Math.sqrt(squares / noisy.length()), 1);
  }

  /**
   * 255 steps of equal ratio, ln(256) / 127 = 0.0437 each: half of that, and a little at the foot.
   */
  @Test
  void muLawKeepsTheRatio() {
    for (int sample = 2_000; sample < Short.MAX_VALUE; sample += 111) {
      assertEquals(1, Signal.muLaw(sample) / sample, 0.024, "" + sample);
      assertEquals(-Signal.muLaw(sample), Signal.muLaw(-sample), 1e-9);
    }
  }

  @Test
  void aRadioLetsOnlyItsBandThrough() {
    double inside = throughRadio(1_000);
    assertTrue(throughRadio(120) < 0.05 * inside, "rumble");
    assertTrue(throughRadio(5_500) < 0.05 * inside, "hiss");
  }

  private static double throughRadio(double frequency) {
    double[] tone = new double[Sound.RATE];
    for (int i = 0; i < tone.length; i++) {
      tone[i] = Math.sin(2 * Math.PI * frequency * i / Sound.RATE);
    }
    double[] out = Signal.band(tone, 300, 3_400);
    return Math.sqrt(Arrays.stream(out).skip(4_000).map(s -> s * s).average().orElseThrow());
  }

  @Test
  void everyConditionHasANameOfItsOwn() {
    assertEquals(
        Condition.all().size(), Condition.all().stream().map(Condition::name).distinct().count());
    assertEquals(new Condition.Noisy(Noise.SAW_IDLE, 20), Condition.named("saw-idle-20"));
  }

  private static double power(double[] samples, double from, double to) {
    Complex[] spectrum =
        new FastFourierTransformer(DftNormalization.STANDARD)
            .transform(samples, TransformType.FORWARD);
    double sum = 0;
    for (int i = 1; i < spectrum.length / 2; i++) {
      double frequency = i * (double) Sound.RATE / spectrum.length;
      if (frequency >= from && frequency < to) {
        sum += spectrum[i].abs() * spectrum[i].abs();
      }
    }
    return sum;
  }
}
