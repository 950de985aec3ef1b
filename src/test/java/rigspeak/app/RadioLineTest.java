package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.Sound;
import rigspeak.audio.Squelch;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;

/** A read-back on a radio without a radio: time is the sound that goes by. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
class RadioLineTest {
  /** A second of nothing, then half a second of noise. */
  private static final Sound NOISE = noise();

  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-05-04T12:00:00Z"), ZoneOffset.UTC);

  @TempDir static Path folder;
  private static Grammar grammar;
  private static Ear ear;
  private static Mouth mouth;
  private static FreeTtsVoice voice;
  private static PlannedRig plan;

  private final StringWriter out = new StringWriter();

  @BeforeAll
  static void open() throws Exception {
    grammar = Grammar.bundled();
    ear = Ear.open(grammar);
    mouth = new Mouth();
    voice = FreeTtsVoice.load();
    plan =
        PlannedRig.read(
            Files.writeString(folder.resolve("plan.txt"), "limb eight inches\nsling choked\n")
                .toString());
  }

  /**
   * A channel on which others speak after so many of our transmissions have ended, or in the middle
   * of one. While nobody speaks it is silent; it never waits.
   */
  private static final class Air implements Microphone, Loudspeaker {
    private static final int SPOKEN_FOR = 2 * Sound.RATE;

    /** From here on silence goes by no faster than whoever is about to speak can begin. */
    private static final int LONG_SILENCE = 5 * Sound.RATE;

    /** After so much silence nobody will say anything more. */
    private static final int LONGEST_SILENCE = 300 * Sound.RATE;

    private final Deque<Sound> turns = new ArrayDeque<>();
    private final List<String> events = new ArrayList<>();
    private short[] incoming = new short[0];
    private int at;
    private boolean onAir;
    private boolean hushed;
    private int heardWhileOnAir;
    private int stepOn = -1;
    private int begun;
    private int silent;

    /** Somebody else speaks whenever we have been heard. */
    Air(String... said) {
      for (String words : said) {
        turns.add(spoken(words));
      }
      next();
    }

    /** Somebody breaks in on this transmission of ours, counted from 0. */
    Air steppedOn(int transmission) {
      stepOn = transmission;
      return this;
    }

    private synchronized void next() {
      Sound turn = turns.poll();
      if (turn != null) {
        incoming = turn.samples();
        at = 0;
      }
    }

    @Override
    public String name() {
      return "air";
    }

    @Override
    public synchronized int read(short[] into, int from, int most) {
      silent = at < incoming.length ? 0 : silent + most;
      if (silent > LONGEST_SILENCE) {
        return END;
      }
      if (silent > LONG_SILENCE && !onAir) {
        awaitSpeaker();
      }
      for (int i = 0; i < most; i++) {
        into[from + i] = at < incoming.length ? incoming[at++] : 0;
      }
      if (onAir) {
        heardWhileOnAir += most;
        notifyAll();
      }
      return most;
    }

    private void awaitSpeaker() {
      try {
        // Whoever reads looks again.
        TimeUnit.MILLISECONDS.timedWait(this, 1);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    /** It takes two seconds of the sound that comes in meanwhile. */
    @Override
    public synchronized long play(Iterable<Sound> parts) {
      onAir = true;
      hushed = false;
      heardWhileOnAir = 0;
      int number = begun++;
      if (number == stepOn) {
        incoming = NOISE.samples();
        at = 0;
      }
      while (!hushed && heardWhileOnAir < SPOKEN_FOR) {
        try {
          wait();
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          hushed = true;
        }
      }
      onAir = false;
      events.add(hushed ? "stopped" : "spoken");
      if (!hushed) {
        next();
      }
      return System.nanoTime();
    }

    @Override
    public synchronized void hush() {
      hushed = true;
      notifyAll();
    }

    @Override
    public void shut() {}

    @Override
    public void reopen(long playedNanos) {}

    @Override
    public void close() {}
  }

  private static Sound noise() {
    SplittableRandom random = new SplittableRandom(1);
    short[] samples = new short[3 * Sound.RATE / 2];
    for (int i = Sound.RATE; i < samples.length; i++) {
      samples[i] = (short) random.nextInt(-3000, 3000);
    }
    return Sound.of(samples);
  }

  private static Sound spoken(String words) {
    return Sound.joined(
        List.of(Sound.silence(1), voice.speak(words, Pace.ORDINARY), Sound.silence(0.5)));
  }

  private String converse(Air air) throws Exception {
    RadioTalk talk = new RadioTalk(grammar, plan.rope(), "climber", NOON);
    RadioReport report =
        new RadioReport(new PrintWriter(out, true), false, "climber", "ground worker");
    new RadioLine(talk, report, mouth, air, air, new Squelch(-45))
        .run(() -> ear, ClosingPause.ORDINARY);
    report.end(plan.name(), talk);
    return out.toString();
  }

  @Test
  void aReadBackComesToItsEnd() throws Exception {
    Air air = new Air("limb eight inches by tape over", "sling choked over", "", "affirm over");
    String said = converse(air);
    assertTrue(said.contains("CONFIRMED AS PLANNED"), said);
    assertTrue(said.contains("at        2026-05-04 12:00"), said);
    assertEquals(List.of("spoken", "spoken", "spoken", "spoken"), air.events);
  }

  @Test
  void whatIsSteppedOnIsSpokenAgainFromItsBeginning() throws Exception {
    Air air =
        new Air("limb eight inches by tape over", "sling choked over", "", "affirm over")
            .steppedOn(0);
    String said = converse(air);
    assertTrue(said.contains("CONFIRMED AS PLANNED"), said);
    assertEquals("stopped", air.events.get(0));
    assertEquals("spoken", air.events.get(1));
  }
}
