package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.audio.Sound;

/** Frames are 10 ms: frame 100 is one second in. */
final class EndpointerTest {
  private static final Endpointer.Settings SETTINGS = Utterances.ends(ClosingPause.ORDINARY);

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
    // A loud hiss opens one first, and is known for noise before anybody speaks.
    List<Event> before = events.subList(0, events.size() - 2);
    assertTrue(
        before.isEmpty() || before.get(before.size() - 1).turn() == Endpointer.Turn.WAS_NOISE,
        events::toString);
    Event begins = events.get(events.size() - 2);
    Event ends = events.get(events.size() - 1);

    assertEquals(Endpointer.Turn.BEGINS, begins.turn());
    // Ten speech-like frames open it; the first sound may lie in the end of a window.
    assertEquals(109, begins.frame(), 2);
    assertEquals(Endpointer.Turn.ENDS, ends.turn());
    // Forty-five quiet ones of fifty close it; the smoothed level takes some frames to fall.
    assertEquals(230, ends.frame(), 8);
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
    // The background is that of the last two seconds; after them the noise is the background.
    assertTrue(events.get(1).frame() < 300 + 200 + 60, events::toString);
  }

  @Test
  void speechOverNoiseThatHasLongBeenThereOpensAndCloses() {
    List<Event> events = events(1_500, 500, 100, 6_000, 200, 500);

    List<Event> last = events.subList(events.size() - 2, events.size());
    assertEquals(1_509, last.get(0).frame(), 2);
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
    assertEquals(1_209, last.get(0).frame(), 2);
    assertEquals(Endpointer.Turn.ENDS, last.get(1).turn());
    assertTrue(last.get(1).frame() < 1_300 + 65, events::toString);
  }

  @Test
  void noiseThatAStreamBeginsWithIsKnownAfterASecondAndWasNoUtterance() {
    List<Event> events = events(300, 2_000, 100, 20_000, 200, 2_000);

    assertEquals(4, events.size(), events::toString);
    assertEquals(new Event(Endpointer.Turn.WAS_NOISE, 99), events.get(1));
    assertEquals(309, events.get(2).frame(), 2);
    assertEquals(Endpointer.Turn.ENDS, events.get(3).turn());
  }

  /** A gust: twice and four times as loud within a second or two, and again. */
  @Test
  void speechInGustsCloses() {
    List<Event> events =
        events(
            500, 100, 100, 200, 100, 400, 100, 200, 100, 100, 100, 6_000, 50, 100, 50, 200, 100,
            400, 200, 200, 200, 100);

    Event speech = events.stream().filter(event -> event.frame() >= 900).findFirst().orElseThrow();
    assertEquals(909, speech.frame(), 2);
    Event closes = events.get(events.indexOf(speech) + 1);
    assertEquals(Endpointer.Turn.ENDS, closes.turn());
    assertTrue(closes.frame() < 1_000 + 65, events::toString);
  }

  /** A consonant that the noise of all bands together drowns, but not that of its own. */
  @Test
  void aSoundThatStandsOutInOneBandIsSpeech() {
    Endpointer endpointer = new Endpointer(SETTINGS);
    List<Event> events = new ArrayList<>();
    for (int frame = 0; frame < 500; frame++) {
      short[] samples = new short[Endpointer.FRAME];
      boolean speaks = frame >= 300 && frame < 400;
      for (int s = 0; s < samples.length; s++) {
        double at = (frame * samples.length + s) / (double) Sound.RATE;
        double tone = speaks ? 400 * Math.sin(2 * Math.PI * 500 * at) : 0;
        samples[s] = (short) (300 * dice.nextGaussian() + tone);
      }
      Endpointer.Turn turn = endpointer.take(samples);
      if (turn == Endpointer.Turn.BEGINS || turn == Endpointer.Turn.ENDS) {
        events.add(new Event(turn, frame));
      }
    }

    Event begins = events.get(events.size() - 2);
    assertEquals(Endpointer.Turn.BEGINS, begins.turn());
    assertEquals(309, begins.frame(), 4);
  }

  /** Rain: now and then a drop, which does not keep an utterance open. */
  @Test
  void aDropInThePauseDoesNotKeepItOpen() {
    List<Event> events = events(100, 5, 80, 3_000, 35, 5, 1, 60, 100, 5);

    assertEquals(2, events.size(), events::toString);
    assertTrue(events.get(1).frame() < 180 + 65, events::toString);
  }

  @Test
  void whoeverNeverPausesIsCutOff() {
    // In the first two seconds the background is still the quiet that was before.
    Endpointer endpointer = new Endpointer(new Endpointer.Settings(6, 10, 15, 50, 150));
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
