package rigspeak.contract;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every talk of so many steps, and long steered ones, that tries to get at a "good" it has no right
 * to: a value changed after the check, a redirect moved, another support, a word taken back, a
 * lanyard that nobody affirmed. {@link Talk} holds each step against the contract.
 */
class EveryTalkTest {
  /** All that can open, shut, void or bring back a verdict or the gate. */
  private static final List<String> WORDS =
      List.of(
          "check redirect",
          "ready to set",
          "change redirect",
          "ready to take off",
          "clipped in",
          "affirm",
          "negative",
          "rope loaded",
          "lanyard released",
          "say again",
          "what would help",
          "scrap that",
          "correction",
          "limb eleven inches by tape",
          "correction limb eleven inches by tape",
          "go to the main point",
          "go to redirect one",
          "next redirect");

  /** Beside these, what a steered talk may say. */
  private static final List<String> MORE =
      List.of(
          "limb three inches by tape",
          "dead wood",
          "live wood",
          "union cracked",
          "union sound",
          "limb fifteen inches by tape",
          "limb one five inches by tape",
          "out nine feet by tape",
          "at the union",
          "limb twelve inches limb thirteen inches",
          "limb ninety inches",
          "rope angle sixty",
          "correction rope angle sixty",
          "inside angle one five one by tape",
          "all up two hundred pounds by tape",
          "all up four hundred pounds by tape",
          "correction all up two hundred pounds by tape union sound",
          "stop talking",
          "stand by",
          "brief answers",
          "full answers",
          "what is missing",
          "read back",
          "tell me why",
          "copper lantern",
          "copper lantern check redirect",
          "go to redirect two",
          "get me the saw",
          "what holds me");

  private static Talk good() {
    return Talk.with(Talk.BRIEF).sayAll(Ropes.good().get("by its legs"));
  }

  @Test
  void everyShortTalk() {
    report("every talk", every(4, List.of(good())));
  }

  @Test
  @Tag("long")
  void everyLongerTalk() {
    report("every longer talk", every(6, List.of(good())));
  }

  private record Count(int depth, int states, long steps, int good) {}

  private static void report(String what, Count count) {
    System.out.printf(
        "never wrongly good, %s of %d words: %d different states, %d steps, %d times good%n",
        what, count.depth(), count.states(), count.steps(), count.good());
    assertTrue(count.good() > 100, count::toString);
  }

  /** From each state that is new every word is said, and so on to the depth. */
  private static Count every(int depth, List<Talk> starts) {
    Set<List<Object>> seen = new HashSet<>();
    List<Talk> edge = new ArrayList<>(starts);
    long steps = 0;
    int good = 0;
    for (int step = 0; step < depth; step++) {
      List<Talk> next = new ArrayList<>();
      for (Talk talk : edge) {
        for (String words : WORDS) {
          Talk there = talk.fork();
          good += there.type(words).good().size();
          steps++;
          if (seen.add(there.state())) {
            next.add(there);
          }
        }
      }
      edge = next;
    }
    return new Count(depth, seen.size(), steps, good);
  }

  @Test
  void steeredTalks() {
    steered(80, 60);
  }

  @Test
  @Tag("long")
  void manySteeredTalks() {
    steered(1_200, 100);
  }

  /** Half of the steps go where a "good" is near: checks and the lanyard in their order. */
  private static void steered(int talks, int steps) {
    List<String> toward =
        List.of(
            "check redirect",
            "ready to set",
            "clipped in",
            "affirm",
            "rope loaded",
            "lanyard released",
            "limb twelve inches by tape",
            "scrap that");
    int good = 0;
    for (int seed = 0; seed < talks; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Talk talk = good();
      int at = 0;
      for (int step = 0; step < steps; step++) {
        String words;
        if (random.nextDouble() < 0.6) {
          words = toward.get(at++ % toward.size());
        } else if (random.nextDouble() < 0.6) {
          words = WORDS.get(random.nextInt(WORDS.size()));
        } else {
          words = MORE.get(random.nextInt(MORE.size()));
        }
        good += (random.nextBoolean() ? talk.hear(words) : talk.type(words)).good().size();
      }
    }
    System.out.printf(
        "never wrongly good, steered talks: %d of %d steps, %d times good%n", talks, steps, good);
    assertTrue(good >= talks / 2, good + " times good");
  }
}
