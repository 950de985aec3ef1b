package rigspeak.audio;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ResamplerTest {
  /** Seconds of tone; long enough that the ends can be left out. */
  private static final double SECONDS = 0.5;

  @ParameterizedTest(name = "{2} Hz from {0} to {1}")
  @CsvSource({
    "8000, 16000, 300", "8000, 16000, 3300", "11025, 16000, 1000", "11025, 16000, 4600",
    "22050, 16000, 1000", "22050, 16000, 6700", "44100, 16000, 300", "44100, 16000, 6700",
    "48000, 16000, 1000", "48000, 16000, 6700", "16000, 44100, 1000", "16000, 48000, 6700"
  })
  void aToneInTheBandKeepsItsHeightAndPlace(int from, int to, double hertz) {
    double[] output = resampled(from, to, tone(from, hertz));

    assertEquals(SECONDS * to, output.length, 2);
    double worst = 0;
    for (int i = to / 20; i < output.length - to / 20; i++) {
      worst = Math.max(worst, Math.abs(output[i] - Math.sin(2 * Math.PI * hertz * i / to)));
    }
    // 0.01 dB is 0.115 %; images add another 0.01 %.
    assertTrue(worst < 0.0013, "largest error " + worst);
  }

  @ParameterizedTest(name = "{1} Hz from {0}")
  @CsvSource({
    "22050, 8100",
    "22050, 9500",
    "44100, 8100",
    "44100, 12000",
    "44100, 15700",
    "44100, 21000",
    "48000, 8100",
    "48000, 15000",
    "48000, 17000",
    "48000, 23500"
  })
  void aToneAboveTheBandIsHeldDownAndDoesNotComeBackAsAnother(int from, double hertz) {
    double[] output = resampled(from, 16_000, tone(from, hertz));

    double squares = 0;
    int count = 0;
    for (int i = 800; i < output.length - 800; i++) {
      squares += output[i] * output[i];
      count++;
    }
    double decibels = 10 * Math.log10(squares / count / 0.5);
    assertTrue(decibels < -Resampler.STOP_DECIBELS + 3, "left over: " + decibels + " dB");
  }

  @ParameterizedTest(name = "from {0}")
  @CsvSource({"8000", "11025", "16000", "22050", "44100", "48000"})
  void aSteadyLevelStaysWhatItIs(int from) {
    double[] input = new double[from / 4];
    Arrays.fill(input, 1234);

    double[] output = resampled(from, 16_000, input);

    for (int i = 400; i < output.length - 400; i++) {
      assertEquals(1234, output[i], 1e-6);
    }
  }

  @ParameterizedTest(name = "from {0} in blocks of {1}")
  @CsvSource({"8000, 1", "11025, 13", "22050, 500", "44100, 441", "48000, 7"})
  void blocksMakeNoDifference(int from, int block) {
    double[] input = tone(from, 777);
    double[] whole = resampled(from, 16_000, input);

    Resampler resampler = Resampler.between(from, 16_000);
    double[] pieces = new double[0];
    for (int at = 0; at < input.length; at += block) {
      int end = Math.min(input.length, at + block);
      pieces = joined(pieces, resampler.push(Arrays.copyOfRange(input, at, end), end - at));
    }
    pieces = joined(pieces, resampler.flush());

    assertArrayEquals(whole, pieces, 1e-12);
  }

  private static double[] tone(int rate, double hertz) {
    double[] tone = new double[(int) (SECONDS * rate)];
    for (int i = 0; i < tone.length; i++) {
      tone[i] = Math.sin(2 * Math.PI * hertz * i / rate);
    }
    return tone;
  }

  private static double[] resampled(int from, int to, double[] input) {
    Resampler resampler = Resampler.between(from, to);
    double[] first = resampler.push(input, input.length);
    return joined(first, resampler.flush());
  }

  private static double[] joined(double[] first, double[] second) {
    double[] all = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }
}
