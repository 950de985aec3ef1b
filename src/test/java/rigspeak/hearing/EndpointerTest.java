package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Frames are 10 ms: frame 100 is one second in. */
final class EndpointerTest {
  private static final Endpointer.Settings SETTINGS =
      new Endpointer.Settings(8, 8, 15, 50, 20 * 100);

  private final Random dice = new Random(3);

  private record Event(Endpointer.Turn turn, int frame) {}

  /** A hiss whose level changes: pairs of frames and standard deviation in sample steps. */
  private List<Event> events(int... framesAndLevels) {
    Endpointer endpointer = new Endpointer(SETTINGS);
    List<Event> events = new ArrayList<>();
    int frame = 0;
    for (int i = 0; i < framesAndLevels.length; i += 2) {
      for (int k = 0; k < framesAndLevels[i]; k++) {
        short[] samples = new short[Endpointer.FRAME];
        for (int s = 0; s < samples.length; s++) {
          samples[s] = (short) (dice.nextGaussian() * framesAndLevels[i + 1]);
        }
        Endpointer.Turn turn = endpointer.take(samples);
        if (turn != Endpointer.Turn.QUIET && turn != Endpointer.Turn.GOES_ON) {
          events.add(new Event(turn, frame));
        }
        frame++;
      }
    }
    return events;
  }

  @ParameterizedTest(name = "over a hiss of {0}")
  @ValueSource(ints = {0, 5, 50, 200})
  void speechOpensAndAPauseCloses(int hiss) {
    List<Event> events = events(100, hiss, 80, 3_000, 100, hiss);

    assertEquals(2, events.size(), events::toString);
    assertEquals(Endpointer.Turn.BEGINS, events.get(0).turn());
    // Eight speech-like frames open it; smoothing may cost one more.
    assertEquals(108, events.get(0).frame(), 2);
    assertEquals(Endpointer.Turn.ENDS, events.get(1).turn());
    // Fifty quiet frames close it; the smoothed level takes some frames to fall.
    assertEquals(230, events.get(1).frame(), 8);
  }

  @Test
  void aShortPauseDoesNotClose() {
    List<Event> events = events(100, 5, 40, 3_000, 40, 5, 40, 3_000, 100, 5);

    assertEquals(2, events.size(), events::toString);
  }

  @Test
  void aClickDoesNotOpen() {
    assertEquals(List.of(), events(100, 5, 3, 8_000, 200, 5));
  }

  @Test
  void noiseThatSetsInAndNeverEndsIsClosedAndThenBackground() {
    List<Event> events = events(300, 5, 3_000, 1_000);

    assertEquals(2, events.size(), events::toString);
    assertEquals(Endpointer.Turn.ENDS, events.get(1).turn());
    // The background is that of the last six seconds; after them the noise is the background.
    assertTrue(events.get(1).frame() < 300 + 600 + 60, events::toString);
  }

  @Test
  void speechOverNoiseThatHasLongBeenThereOpensAndCloses() {
    List<Event> events = events(1_500, 500, 100, 6_000, 200, 500);

    List<Event> last = events.subList(events.size() - 2, events.size());
    assertEquals(1_508, last.get(0).frame(), 2);
    assertEquals(Endpointer.Turn.ENDS, last.get(1).turn());
    assertTrue(last.get(1).frame() < 1_660, events::toString);
  }

  /** A saw that idles: a stroke, then a moment of nothing. Not all of it may count as speech. */
  @Test
  void speechBesideAMachineThatPulsesCloses() {
    int[] pulses = new int[4 * 400];
    for (int i = 0; i < pulses.length; i += 4) {
      System.arraycopy(new int[] {2, 800, 1, 5}, 0, pulses, i, 4);
    }
    int[] speech = {100, 12_000};
    int[] all = new int[2 * pulses.length + speech.length];
    System.arraycopy(pulses, 0, all, 0, pulses.length);
    System.arraycopy(speech, 0, all, pulses.length, speech.length);
    System.arraycopy(pulses, 0, all, pulses.length + speech.length, pulses.length);
    List<Event> events = events(all);

    List<Event> last = events.subList(events.size() - 2, events.size());
    // Four hundred pulses of three frames.
    assertEquals(1_208, last.get(0).frame(), 2);
    assertEquals(Endpointer.Turn.ENDS, last.get(1).turn());
    assertTrue(last.get(1).frame() < 1_300 + 65, events::toString);
  }

  @Test
  void aStreamThatBeginsInNoiseKnowsItAfterASecond() {
    List<Event> events = events(300, 2_000, 100, 20_000, 200, 2_000);

    assertEquals(4, events.size(), events::toString);
    assertEquals(Endpointer.Turn.ENDS, events.get(1).turn());
    assertTrue(events.get(1).frame() < 100 + 60, events::toString);
    assertEquals(308, events.get(2).frame(), 2);
  }

  @Test
  void whoeverNeverPausesIsCutOff() {
    // For four seconds, in which the background is still the quiet that was before.
    Endpointer endpointer = new Endpointer(new Endpointer.Settings(8, 8, 15, 50, 200));
    List<Endpointer.Turn> turns = new ArrayList<>();
    for (int frame = 0; frame < 500; frame++) {
      short[] samples = new short[Endpointer.FRAME];
      for (int s = 0; s < samples.length; s++) {
        samples[s] = (short) (dice.nextGaussian() * (frame < 100 ? 5 : 3_000));
      }
      turns.add(endpointer.take(samples));
    }

    assertTrue(turns.contains(Endpointer.Turn.TOO_LONG), turns::toString);
  }
}
