package rigspeak.dialogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Understanding;
import rigspeak.verdict.Judge;

/** When the ear opens and when it closes, in seconds of sound. */
class AttentionTest {
  private static final double WINDOW = 8;
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));

  private static final Meaning FLUBBER =
      new Meaning.NotUnderstood(Meaning.Reason.NO_SUCH_SENTENCE, "flubber");
  private static final Meaning SILENCE = new Meaning.NotUnderstood(Meaning.Reason.NOTHING_SAID, "");
  private static final Meaning NOISE = new Meaning.CannotHear(Meaning.Trouble.TOO_NOISY);

  private Conversation talk = Conversation.begin();
  private Attention attention = Attention.asleep(WINDOW);

  private void say(double now, Meaning meaning) {
    Turn turn = DIALOGUE.step(talk, meaning);
    talk = turn.next();
    attention = attention.after(meaning, turn, now);
  }

  private void say(double now, String words) {
    say(now, UNDERSTANDING.hear(words, talk.asked()));
  }

  @Test
  void itIsAsleepUntilItIsCalled() {
    assertTrue(attention.isAsleep());
    assertEquals(0, attention.leftSeconds(1_000));
    say(100, "copper lantern");
    assertFalse(attention.isAsleep());
    assertEquals(WINDOW, attention.leftSeconds(100));
    assertEquals(3, attention.leftSeconds(105));
  }

  @Test
  void itSleepsWhenTheWindowIsOverAndNotBefore() {
    say(100, "copper lantern");
    assertFalse(attention.at(107.9).isAsleep());
    assertTrue(attention.at(108).isAsleep());
    assertEquals(Attention.asleep(WINDOW), attention.at(500));
  }

  @Test
  void everyExchangeOpensItAnew() {
    say(100, "copper lantern");
    say(107, "limb eight inches");
    assertEquals(WINDOW, attention.leftSeconds(107));
    say(114, "read back");
    assertEquals(WINDOW, attention.leftSeconds(114));
  }

  @Test
  void anAnswerIsWaitedForLongerAndNotForEver() {
    say(100, "limb eight inches");
    say(101, "correction limb nine inches");
    assertEquals(3 * WINDOW, attention.leftSeconds(101));
    assertTrue(attention.at(101 + 3 * WINDOW).isAsleep());
    say(110, "affirm");
    assertEquals(WINDOW, attention.leftSeconds(110));
    say(111, "what is missing");
    assertEquals(3 * WINDOW, attention.leftSeconds(111));
    say(112, "clipped in");
    assertEquals(3 * WINDOW, attention.leftSeconds(112));
  }

  @Test
  void whatWaitsForAnAffirmIsNotLostInSleep() {
    say(100, "clipped in");
    attention = attention.at(200);
    assertTrue(attention.isAsleep());
    assertEquals(Optional.of(new Pending.ClippedIn()), talk.floor().pending());
    assertEquals(Lanyard.UNKNOWN, talk.gate().lanyard());
    Turn turn = DIALOGUE.step(talk, Command.WAKE);
    assertEquals(
        java.util.List.of(new Reply.Listening(), new Reply.AffirmClippedIn()), turn.replies());
  }

  /** Talk with others cannot keep it open: the ladder has four rungs. */
  @Test
  void whatIsNotUnderstoodOpensItAnewThreeTimesAtMost() {
    say(100, "copper lantern");
    for (double now : new double[] {102, 104, 106}) {
      say(now, FLUBBER);
      assertEquals(WINDOW, attention.leftSeconds(now));
    }
    say(108, FLUBBER);
    assertTrue(attention.isAsleep());
    say(120, "copper lantern");
    say(121, FLUBBER);
    assertFalse(attention.isAsleep(), "called again, the ladder is at its foot");
  }

  @Test
  void silenceAndNoiseOpenNothing() {
    say(100, "copper lantern");
    say(103, SILENCE);
    assertEquals(5, attention.leftSeconds(103));
    say(105, NOISE);
    assertEquals(3, attention.leftSeconds(105));
    say(109, NOISE);
    assertTrue(attention.isAsleep());
  }

  @Test
  void standByIsSleep() {
    say(100, "copper lantern");
    say(101, "stand by");
    assertTrue(attention.isAsleep());
  }

  @Test
  void openForEverItNeverSleeps() {
    attention = Attention.alwaysOpen();
    say(100, "stand by");
    for (int i = 0; i < 5; i++) {
      say(200 + i, FLUBBER);
      say(300 + i, SILENCE);
    }
    attention = attention.at(1e9).afterStream(1e9);
    assertFalse(attention.isAsleep());
    assertEquals(Double.POSITIVE_INFINITY, attention.leftSeconds(1e12));
  }

  @Test
  void theWindowGoesOnInTheNextStream() {
    say(100, "copper lantern");
    attention = attention.afterStream(103);
    assertEquals(5, attention.leftSeconds(0));
    assertTrue(Attention.asleep(WINDOW).afterStream(103).isAsleep());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void aWindowIsATime(double seconds) {
    assertThrows(IllegalArgumentException.class, () -> Attention.asleep(seconds));
  }
}
