package rigspeak.audio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Busy and clear by the level of a line, in frames of 10 ms. */
class SquelchTest {
  /** A square wave of this amplitude is 20 log10(amplitude / 32768) dB: 368 are -39, 92 are -51. */
  private static short[] frame(int amplitude) {
    short[] frame = new short[Squelch.FRAME];
    Arrays.fill(frame, (short) amplitude);
    return frame;
  }

  /** "3x368" are three frames of that amplitude. */
  @ParameterizedTest
  @CsvSource({
    "2x368 100x0, ''",
    "3x368, BECAME_BUSY@3",
    "2x368 1x0 2x368, ''",
    "3x368 24x0, BECAME_BUSY@3",
    "3x368 25x0, BECAME_BUSY@3 BECAME_CLEAR@28",
    "3x368 24x0 1x368 25x0, BECAME_BUSY@3 BECAME_CLEAR@53",
    "100x92, ''",
    // Once open, it takes a fall of 6 dB below the threshold: 150 are -46.8 dB.
    "3x368 100x150, BECAME_BUSY@3",
    "3x368 100x90, BECAME_BUSY@3 BECAME_CLEAR@28",
  })
  void opensSoonAndClosesLate(String frames, String changes) {
    Squelch squelch = new Squelch(-45);
    List<String> seen = new ArrayList<>();
    int number = 0;
    for (String some : frames.split(" ", -1)) {
      String[] parts = some.split("x", 2);
      for (int i = 0; i < Integer.parseInt(parts[0]); i++) {
        number++;
        int at = number;
        short[] frame = frame(Integer.parseInt(parts[1]));
        Optional<Squelch.Change> change = squelch.take(frame);
        change.ifPresent(each -> seen.add(each + "@" + at));
      }
    }
    assertEquals(changes, String.join(" ", seen));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 3, -200, Double.NaN, Double.NEGATIVE_INFINITY})
  void onlyALevelOfAVoiceOpensIt(double decibels) {
    assertThrows(IllegalArgumentException.class, () -> new Squelch(decibels));
  }

  @Test
  void itIsClosedAtFirst() {
    assertEquals(false, new Squelch(-45).isOpen());
  }
}
