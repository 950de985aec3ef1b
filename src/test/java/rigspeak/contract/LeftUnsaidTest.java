package rigspeak.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rigspeak.answer.Answers;
import rigspeak.answer.Utterance;
import rigspeak.contract.SaidRope.Line;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Sieve;
import rigspeak.verdict.Verdict;

/**
 * Whatever one or two things are left unsaid of a good rope, it is good no longer, unless something
 * on the weak side is taken for them and told.
 */
class LeftUnsaidTest {
  /** What may be left unsaid, and how it is told what was taken; empty where nothing was. */
  private static final Map<Slot, String> MAY_BE_LEFT_UNSAID = new TreeMap<>();

  static {
    Ropes.rows("left-unsaid.csv")
        .forEach(row -> MAY_BE_LEFT_UNSAID.put(Slot.of(row[0]).orElseThrow(), row[1]));
  }

  @Test
  void theRopesAreGoodAsAWhole() {
    Ropes.good()
        .forEach(
            (name, rope) ->
                assertFalse(
                    Talk.with(Talk.WHOLE).sayAll(rope).type("check redirect").good().isEmpty(),
                    name));
  }

  @Test
  void whateverOneOrTwoThingsAreLeftUnsaid() {
    int tried = 0;
    int good = 0;
    for (SaidRope rope : Ropes.good().values()) {
      List<Line> lines = rope.lines();
      for (int i = 0; i < lines.size(); i++) {
        for (int j = i; j < lines.size(); j++) {
          List<Line> unsaid = i == j ? List.of(lines.get(i)) : List.of(lines.get(i), lines.get(j));
          tried++;
          good += stillGood(rope, unsaid) ? 1 : 0;
        }
      }
    }
    System.out.printf(
        "never wrongly good, left unsaid: %d cases, %d still good on what was taken and told%n",
        tried, good);
    assertTrue(tried >= 1_500 && good >= 20, tried + " tried, good " + good);
  }

  private static boolean stillGood(SaidRope rope, List<Line> unsaid) {
    SaidRope rest = rope;
    for (Line line : unsaid) {
      rest = rest.without(line.place(), line.slot());
    }
    Talk talk = Talk.with(Talk.BRIEF).sayAll(rest);
    if (!Sieve.mayBeGood(talk.rope())) {
      return false;
    }
    List<PathVerdict> good = talk.type("check redirect").good();
    good.forEach(verdict -> unsaid.forEach(line -> assertTold(verdict, line)));
    return !good.isEmpty();
  }

  /** Told when the climber asks why, of the support that governs. */
  private static void assertTold(PathVerdict verdict, Line line) {
    String told = MAY_BE_LEFT_UNSAID.get(line.slot());
    assertTrue(told != null, "good without " + line);
    if (told.isEmpty()) {
      return;
    }
    Verdict.Judged judged = (Verdict.Judged) verdict.supports().get(line.place());
    assertTrue(
        judged.rig().assumptions().stream()
            .map(ResolvedRig.Assumption::slot)
            .toList()
            .contains(line.slot()),
        line + " was taken for granted and nobody knows");
    for (Detail detail : Detail.values()) {
      String why = why(askedOf(verdict, line.place()), detail);
      assertTrue(why.contains(told), line + " is not told in: " + why);
    }
  }

  /** The same supports, as if this one governed: only of that one "why" speaks at length. */
  private static PathVerdict askedOf(PathVerdict verdict, Place place) {
    TreeMap<Place, Verdict> only = new TreeMap<>(Map.of(place, verdict.supports().get(place)));
    return new PathVerdict(
        verdict.path(), place, only, new TreeMap<>(verdict.losses()), Optional.empty());
  }

  private static String why(PathVerdict verdict, Detail detail) {
    List<String> texts = new ArrayList<>();
    for (Utterance utterance : Answers.say(List.of(new Reply.Why(verdict)), detail)) {
      texts.add(utterance.text());
    }
    return String.join(" ", texts);
  }

  /** The table speaks of nothing that is asked for. */
  @Test
  void whatMayBeLeftUnsaidIsAllThereIs() {
    List<Slot> never = new ArrayList<>();
    for (Slot slot : MAY_BE_LEFT_UNSAID.keySet()) {
      boolean tried =
          Ropes.good().values().stream()
              .flatMap(rope -> rope.lines().stream())
              .anyMatch(line -> line.slot() == slot);
      if (!tried) {
        never.add(slot);
      }
    }
    assertEquals(List.of(), never);
  }
}
