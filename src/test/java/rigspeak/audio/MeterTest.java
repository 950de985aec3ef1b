package rigspeak.audio;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

final class MeterTest {
  @Test
  void aSineOfHalfScaleIsNineDecibelsDown() {
    // 20 log10(0.5) = -6.0206 for the peak, and 20 log10(sqrt(1/2)) = -3.0103 more for its mean.
    Meter.Level level = Meter.of(sine(16_384));

    assertEquals(-6.0206, level.peakDecibels(), 0.001);
    assertEquals(-9.0309, level.meanDecibels(), 0.001);
    assertEquals(0, level.clippedShare());
  }

  @Test
  void aSquareWaveAtFullScaleIsAllClipped() {
    short[] samples = new short[1000];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = i % 40 < 20 ? Short.MAX_VALUE : Short.MIN_VALUE;
    }
    Meter.Level level = Meter.of(Sound.of(samples));

    assertEquals(0, level.peakDecibels(), 1e-9);
    assertEquals(0, level.meanDecibels(), 0.001);
    assertEquals(1, level.clippedShare());
  }

  @Test
  void aSineDrivenToTwiceFullScaleIsClippedForTwoThirdsOfTheTime() {
    // |sin| > 1/2 for two thirds of a turn; the 1 % below full scale adds 2 (30 - asin 0.495) /
    // 180.
    short[] samples = new short[16_000];
    for (int i = 0; i < samples.length; i++) {
      double value = 65_536 * Math.sin(2 * Math.PI * 100.37 * i / 16_000);
      samples[i] = (short) Math.max(-32_768, Math.min(32_767, value));
    }
    double share = 1 - 2 * Math.asin(32_440 / 65_536.0) / Math.PI;

    assertEquals(share, Meter.of(Sound.of(samples)).clippedShare(), 0.001);
  }

  @Test
  void silenceIsHalfAStepLoud() {
    assertEquals(Meter.NO_SOUND, Meter.of(Sound.silence(0.1)).peakDecibels());
    assertEquals(Meter.NO_SOUND, new Meter().level().peakDecibels(), "nothing taken yet");
    // One step is twice that: 6.0206 dB more.
    assertEquals(
        Meter.NO_SOUND + 6.0206,
        Meter.of(Sound.of(new short[] {0, 0, 1, 0})).peakDecibels(),
        0.001);
    // Half a step of 32768: 20 log10(0.5 / 32768).
    assertEquals(-96.33, Meter.NO_SOUND, 0.01);
  }

  @Test
  void blocksAddUpToTheWhole() {
    Sound sound = sine(9_000);
    short[] samples = sound.samples();
    Meter meter = new Meter();
    for (int at = 0; at < samples.length; at += 333) {
      meter.add(samples, at, Math.min(333, samples.length - at));
    }

    assertEquals(Meter.of(sound).meanDecibels(), meter.level().meanDecibels(), 1e-9);
    assertEquals(Meter.of(sound).peakDecibels(), meter.level().peakDecibels());
  }

  private static Sound sine(double height) {
    short[] samples = new short[16_000];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) Math.round(height * Math.sin(2 * Math.PI * 100 * i / 16_000));
    }
    return Sound.of(samples);
  }
}
