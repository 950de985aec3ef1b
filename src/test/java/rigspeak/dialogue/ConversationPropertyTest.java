package rigspeak.dialogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rigspeak.catalogue.Catalogue;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.verdict.Judge;

/** Long conversations drawn at random, each turn of them watched. */
class ConversationPropertyTest {
  private static final int STEPS = 3_000;
  private static final int TALKS = 6;
  private static final int LAST_TURNS = 8;

  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));

  @Test
  void noTalkLeadsWhereItMustNot() {
    Tally tally = new Tally();
    LongStream.range(0, TALKS).forEach(seed -> talk(seed, tally));
    tally.assertFarEnough();
  }

  @Test
  @Tag("long")
  void noneOfManyTalksLeadsWhereItMustNot() {
    Tally tally = new Tally();
    LongStream.range(TALKS, 40L * TALKS).forEach(seed -> talk(seed, tally));
    tally.assertFarEnough();
  }

  /** How far the talks came; rules that are never put to the test prove nothing. */
  private static final class Tally {
    private int good;
    private int cancelled;
    private int clippedIn;
    private int releases;

    void add(Watch watch) {
      good += watch.good;
      cancelled += watch.cancelled;
      clippedIn += watch.clippedIn;
      releases += watch.releases;
    }

    void assertFarEnough() {
      String reached =
          "good %d, cancelled %d, clipped in %d, released %d"
              .formatted(good, cancelled, clippedIn, releases);
      assertTrue(good >= TALKS, reached);
      assertTrue(cancelled >= 10 * TALKS, reached);
      assertTrue(clippedIn >= 10 * TALKS, reached);
      assertTrue(releases >= TALKS, reached);
    }
  }

  private static void talk(long seed, Tally tally) {
    RandomTalk talk = new RandomTalk(seed);
    Watch watch = new Watch();
    Conversation now = Conversation.begin();
    Deque<String> last = new ArrayDeque<>();
    for (int step = 0; step < STEPS; step++) {
      Meaning meaning = talk.next(now);
      try {
        Turn turn = DIALOGUE.step(now, meaning);
        last.add("> " + meaning + "\n< " + turn.replies().stream().map(ReplyNotation::of).toList());
        if (last.size() > LAST_TURNS) {
          last.remove();
        }
        if (meaning != Command.CHECK) {
          assertEquals(turn, DIALOGUE.step(now, meaning), "another turn the second time");
        }
        watch.see(now, meaning, turn);
        now = turn.next();
      } catch (RuntimeException | AssertionError e) {
        throw new AssertionError(
            "talk " + seed + ", step " + step + ":\n" + String.join("\n", last) + "\n> " + meaning,
            e);
      }
    }
    tally.add(watch);
  }

  /** A check, too, is the same the second time. */
  @Test
  void aCheckIsTheSameTheSecondTime() {
    Conversation now = Conversation.begin();
    for (String line : Situation.rigs().get("doubtful")) {
      now = DIALOGUE.step(now, RandomTalk.meaning(line)).next();
    }
    assertEquals(DIALOGUE.step(now, Command.CHECK), DIALOGUE.step(now, Command.CHECK));
  }
}
