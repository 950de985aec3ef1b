package rigspeak.dialogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.PathVerdict.Outcome;

/**
 * A rope over main point and two redirects that is good as a whole: whatever is taken away from any
 * of them, contradicted or left unaffirmed, the rope is good no longer.
 */
class HalfSaidRopeTest {
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));
  private static final Place FIRST = Place.redirectNumber(1);
  private static final Place SECOND = Place.redirectNumber(2);

  /** The talk stands at the second redirect; the first is set. */
  private static Conversation whole;

  @BeforeAll
  static void sayAll() {
    Conversation now = step(Conversation.begin(), new Meaning.GoTo(Place.MAIN_POINT));
    now = say(now, Situation.rigs().get("main"));
    now = step(now, new Meaning.GoTo(FIRST));
    now = say(now, Situation.rigs().get("good"));
    now = say(now, List.of("working leg down seventy five toward the tip ten feet by tape"));
    now = say(now, List.of("clipped in", "affirm", "ready to set", "next redirect"));
    whole = say(now, Situation.rigs().get("second"));
  }

  @Test
  void asAWholeItIsGood() {
    assertEquals(Outcome.GOOD, checked(whole).outcome());
    assertEquals(3, checked(whole).supports().size());
  }

  record Hole(Place place, Slot slot) {
    @Override
    public String toString() {
      return place.key() + " without " + slot.key();
    }
  }

  /** All that must be known of each of them. */
  static Stream<Hole> holes() {
    List<Slot> ofEach =
        List.of(
            Slot.WOOD,
            Slot.LIMB_DIAMETER,
            Slot.LIMB_RISE,
            Slot.OUT,
            Slot.STEM_DIAMETER,
            Slot.UNION,
            Slot.HITCH,
            Slot.WRAPS,
            Slot.RUNNING_OVER);
    List<Hole> holes = new ArrayList<>();
    for (Place place : List.of(Place.MAIN_POINT, FIRST, SECOND)) {
      ofEach.forEach(slot -> holes.add(new Hole(place, slot)));
    }
    for (Place place : List.of(FIRST, SECOND)) {
      holes.add(new Hole(place, Slot.ANCHOR_LEG));
    }
    holes.add(new Hole(SECOND, Slot.WORKING_LEG));
    for (Slot slot : List.of(Slot.ALL_UP, Slot.SPECIES, Slot.ROPE_SYSTEM, Slot.ANCHOR)) {
      holes.add(new Hole(SECOND, slot));
    }
    return holes.stream();
  }

  @ParameterizedTest
  @MethodSource("holes")
  void withAHoleAnywhereNothingCanBeSaid(Hole hole) {
    Conversation now = step(whole, new Meaning.GoTo(hole.place()));
    Rope rope = now.rope();
    now = now.with(rope.with(rope.support().with(now.rig().without(hole.slot()))));
    assertEquals(Outcome.CANNOT_SAY, checked(step(now, new Meaning.GoTo(SECOND))).outcome());
  }

  /** Called wrong, even what may be left unsaid keeps the rope from being good. */
  @ParameterizedTest
  @ValueSource(strings = {"go to the main point", "go to redirect one", "go to redirect two"})
  void withAValueCalledWrongNothingCanBeSaid(String place) {
    for (String value : List.of("sling rated five thousand pounds", "bark rough")) {
      Conversation now = say(whole, List.of(place, value, "negative", "go to redirect two"));
      assertEquals(Outcome.CANNOT_SAY, checked(now).outcome(), value);
    }
  }

  /** While a corrected value waits for its affirm, anywhere, there is no verdict at all. */
  @ParameterizedTest
  @ValueSource(strings = {"go to the main point", "go to redirect one", "go to redirect two"})
  void withAValueUnaffirmedNothingIsJudged(String place) {
    Conversation now =
        say(whole, List.of(place, "correction limb twelve inches by tape", "go to redirect two"));
    Turn turn = DIALOGUE.step(now, Command.CHECK);
    assertEquals(1, turn.replies().size());
    assertTrue(turn.replies().get(0) instanceof Reply.AffirmFirst, () -> turn.replies().toString());
  }

  /** Each leg is said at both of its ends; far apart, neither end is believed. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "go to the main point|working leg down fifteen toward the tip",
        "go to the main point|working leg down sixty toward the tip three feet by tape",
        "go to redirect one|working leg down two zero toward the tip ten feet by tape",
        "go to redirect one|working leg down seventy five toward the tip four feet by tape",
        "go to redirect two|anchor leg up fifteen toward the stem ten feet by tape",
        "go to redirect two|anchor leg up seventy five toward the stem thirty feet by tape"
      })
  void withALegSaidInTwoWaysNothingCanBeSaid(String said) {
    Conversation now = say(whole, List.of(said.split("\\|", -1)));
    assertEquals(Outcome.CANNOT_SAY, checked(say(now, List.of("go to redirect two"))).outcome());
  }

  private static PathVerdict checked(Conversation now) {
    return DIALOGUE.step(now, Command.CHECK).replies().stream()
        .filter(Reply.Judged.class::isInstance)
        .map(reply -> ((Reply.Judged) reply).verdict())
        .findFirst()
        .orElseThrow();
  }

  private static Conversation say(Conversation before, List<String> lines) {
    Conversation now = before;
    for (String line : lines) {
      now = step(now, RandomTalk.meaning(line));
    }
    return now;
  }

  private static Conversation step(Conversation before, Meaning meaning) {
    return DIALOGUE.step(before, meaning).next();
  }
}
