package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;

/** Tones and noise whose levels are known by formula. */
final class BandsTest {
  private static final double AMPLITUDE = 8_000;

  private static double[] levels(java.util.function.IntToDoubleFunction sample) {
    Bands bands = new Bands();
    double[] levels = {};
    for (int frame = 0; frame < 20; frame++) {
      short[] samples = new short[Endpointer.FRAME];
      for (int i = 0; i < samples.length; i++) {
        samples[i] = (short) Math.round(sample.applyAsDouble(frame * samples.length + i));
      }
      levels = bands.take(samples);
    }
    return levels;
  }

  private static double[] tone(double frequency) {
    return levels(i -> AMPLITUDE * Math.sin(2 * Math.PI * frequency * i / Sound.RATE));
  }

  /**
   * The first difference x(n) - 0.97 x(n - 1) of a sine of frequency f has the gain |1 - 0.97
   * exp(-i 2 pi f / rate)|.
   */
  @ParameterizedTest(name = "{0} Hz lies in band {1}")
  @CsvSource({"500, 0", "1000, 1", "2000, 2", "4500, 3"})
  void aToneIsInItsBandAtItsLevel(double frequency, int band) {
    double turn = 2 * Math.PI * frequency / Sound.RATE;
    double gain = Math.hypot(1 - 0.97 * Math.cos(turn), 0.97 * Math.sin(turn));
    double[] levels = tone(frequency);

    assertEquals(Meter.decibels(gain * AMPLITUDE / Math.sqrt(2)), levels[band], 0.1);
    for (int other = 0; other < Bands.COUNT; other++) {
      assertTrue(other == band || levels[other] < levels[band] - 40, () -> frequency + " Hz");
    }
  }

  @ParameterizedTest(name = "{0} Hz is in no band")
  @CsvSource({"60", "150", "7000"})
  void whatIsBelowAndAboveTheVoiceIsInNoBand(double frequency) {
    double[] levels = tone(frequency);

    assertTrue(Bands.together(levels) < Meter.decibels(AMPLITUDE) - 40);
  }

  @Test
  void twoEqualBandsTogetherAreThreeDecibelsMore() {
    assertEquals(-27, Bands.together(new double[] {-30, -30, -90, -90}), 0.02);
  }

  @Test
  void silenceIsTheLevelOfSilence() {
    assertEquals(Meter.NO_SOUND, levels(i -> 0)[2]);
  }
}
