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
import rigspeak.rig.Place;
import rigspeak.verdict.Judge;

/** Long conversations drawn at random, each turn of them watched. */
class ConversationPropertyTest {
  private static final int STEPS = 500;
  private static final int TALKS = 36;
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
    LongStream.range(TALKS, 10L * TALKS).forEach(seed -> talk(seed, tally));
    tally.assertFarEnough();
  }

  /** How far the talks came; rules that are never put to the test prove nothing. */
  private static final class Tally {
    private int good;
    private int goodOfMany;
    private int cancelled;
    private int clippedIn;
    private int releases;
    private int takenOffKnowing;

    void add(Watch watch) {
      good += watch.good;
      goodOfMany += watch.goodOfMany;
      cancelled += watch.cancelled;
      clippedIn += watch.clippedIn;
      releases += watch.releases;
      takenOffKnowing += watch.takenOffKnowing;
    }

    void assertFarEnough() {
      String reached =
          "good %d, of which %d of several redirects, cancelled %d, clipped in %d, released %d, taken off knowing the loss %d"
              .formatted(good, goodOfMany, cancelled, clippedIn, releases, takenOffKnowing);
      assertTrue(good >= TALKS / 2, reached);
      assertTrue(goodOfMany >= TALKS / 6, reached);
      assertTrue(cancelled >= 4 * TALKS, reached);
      assertTrue(clippedIn >= 10 * TALKS, reached);
      assertTrue(releases >= TALKS / 2, reached);
      assertTrue(takenOffKnowing >= TALKS / 2, reached);
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
    now = DIALOGUE.step(now, new Meaning.GoTo(Place.MAIN_POINT)).next();
    now = say(now, "main");
    now = DIALOGUE.step(now, new Meaning.GoTo(Place.redirectNumber(1))).next();
    now = say(now, "doubtful");
    assertEquals(DIALOGUE.step(now, Command.CHECK), DIALOGUE.step(now, Command.CHECK));
  }

  private static Conversation say(Conversation before, String rig) {
    Conversation now = before;
    for (String line : Situation.rigs().get(rig)) {
      now = DIALOGUE.step(now, RandomTalk.meaning(line)).next();
    }
    return now;
  }
}
