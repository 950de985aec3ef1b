package rigspeak.audio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class LinesTest {
  private static final Sound ONE = Sound.of(new short[] {1, 2, 3});
  private static final Sound TWO = Sound.of(new short[] {4, 5});

  @Test
  void whatIsSaidIntoAVirtualLineIsHeardFromIt() throws Exception {
    try (VirtualLine line = new VirtualLine("headset")) {
      line.say(ONE);
      line.say(TWO);
      line.end();

      assertEquals(Sound.joined(List.of(ONE, TWO)), Sound.readAll(line));
    }
  }

  @Test
  void whatIsSaidIntoAShutMicrophoneIsLost() throws Exception {
    try (VirtualLine line = new VirtualLine("headset")) {
      line.say(ONE);
      line.shut();
      line.say(ONE);
      line.reopen(0);
      line.say(TWO);
      line.end();

      assertEquals(TWO, Sound.readAll(line));
    }
  }

  @Test
  void whatIsPlayedIsKept() throws LostDevice {
    try (VirtualLine line = new VirtualLine("headset")) {
      line.play(ONE);
      line.play(TWO);

      assertEquals(List.of(ONE, TWO), line.played());
    }
  }

  @Test
  void aDeviceThatIsNotThereIsRefusedInOneSentence() {
    String wish = "no such headset 7351";
    NoSuchDevice in =
        assertThrows(NoSuchDevice.class, () -> Devices.microphone(List.of(wish)).close());
    NoSuchDevice out =
        assertThrows(NoSuchDevice.class, () -> Devices.loudspeaker(List.of(wish)).close());

    assertEquals(expected("microphone", wish, Devices.microphones()), in.getMessage());
    assertEquals(expected("loudspeaker", wish, Devices.loudspeakers()), out.getMessage());
  }

  private static String expected(String kind, String wish, List<String> there) {
    return there.isEmpty()
        ? "This machine has no " + kind + "."
        : "No " + kind + " is called " + wish + "; there is " + String.join(", ", there) + ".";
  }

  @Test
  void soundsArePutTogetherAndCut() {
    assertEquals(16_000, Sound.silence(1).length());
    assertEquals(Sound.of(new short[] {2, 3, 4}), Sound.joined(List.of(ONE, TWO)).part(1, 4));
    assertEquals(3 / 16_000.0, ONE.seconds());
    assertThrows(IllegalArgumentException.class, () -> Sound.silence(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Sound.silence(-1));
    assertTrue(ONE.toString().endsWith(" s"));
  }
}
