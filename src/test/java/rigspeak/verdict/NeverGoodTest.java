package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.catalogue.Conflict;
import rigspeak.rig.CsvTable;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.CannotSay;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;
import rigspeak.verdict.Verdict.RefusedOutright;

/** What is missing, cannot be or is dead never gets a rating, least of all "good". */
class NeverGoodTest {
  private static final Rig STOUT = Spoken.rig(Spoken.STOUT);

  private static Rig turnedByAngle() {
    return STOUT.without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG);
  }

  /** Only beside a rig that is good without them do the rows below show anything. */
  @Test
  void theStoutRigIsGood() {
    assertEquals(Rating.GOOD, QuickLook.wholeRating(STOUT));
    Rig byAngle =
        Spoken.with(turnedByAngle(), "inside angle 60 by tape\nsling points down 80 left by tape");
    assertEquals(Rating.GOOD, QuickLook.wholeRating(byAngle));
  }

  @ParameterizedTest
  @CsvTable("/rigspeak/verdict/contradictions.csv")
  void whatContradictsItself(CsvTable.Row row) {
    contradicts(STOUT, row);
  }

  @ParameterizedTest
  @CsvTable("/rigspeak/verdict/angle-contradictions.csv")
  void whatContradictsTheSling(CsvTable.Row row) {
    contradicts(turnedByAngle(), row);
  }

  private static void contradicts(Rig rig, CsvTable.Row row) {
    Rig said = Spoken.with(rig, row.text("said").replace(" / ", "\n"));
    CannotSay cannot = assertInstanceOf(CannotSay.class, QuickLook.verdict(said));
    assertEquals(List.of(), cannot.missing());
    List<String> conflicts =
        cannot.conflicts().stream().map(conflict -> conflict.getClass().getSimpleName()).toList();
    assertTrue(conflicts.contains(row.text("conflict")), conflicts.toString());
  }

  @Test
  void everyConflictIsTried() {
    Set<String> tried = new TreeSet<>();
    for (String file : List.of("contradictions", "angle-contradictions")) {
      for (CsvTable.Row row : CsvTable.Reader.rows("/rigspeak/verdict/" + file + ".csv")) {
        tried.add(row.text("conflict"));
      }
    }
    // These need a rope, see RopePathTest.
    tried.addAll(List.of("SharedLegTurns", "SharedLegLengths", "AnchorLegWithoutLength"));
    Set<String> all = new TreeSet<>();
    for (Class<?> conflict : Conflict.class.getPermittedSubclasses()) {
      all.add(conflict.getSimpleName());
    }
    assertEquals(all, tried);
  }

  /** Within what eyes can tell, two ways of saying the same do not contradict. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "inside angle 55",
        "bend 130",
        "sling points down 65 at 7 o'clock",
        "seated at the union\nout 4 inches",
        "limb 60 centimeters by tape\nstem 60 centimeters by tape",
        "union codominant and sound",
        "out 4 meters by tape\nlimb length 4 meters by tape",
        "single part captured"
      })
  void whatOnlySoundsLikeAContradiction(String said) {
    assertInstanceOf(Judged.class, QuickLook.verdict(Spoken.with(STOUT, said)));
  }

  @ParameterizedTest
  @CsvSource({
    "dead wood, DEAD_WOOD",
    "union cracked, CRACKED_UNION",
    "connector over an edge, CONNECTOR_OVER_EDGE",
    "union codominant and cracked, CRACKED_UNION",
    "union sound and cracked, CRACKED_UNION"
  })
  void whatIsRefusedWhateverTheNumbers(String said, Refusal refusal) {
    assertEquals(
        new RefusedOutright(List.of(refusal)), QuickLook.verdict(Spoken.with(STOUT, said)));
    // Even before anything else was said.
    assertEquals(new RefusedOutright(List.of(refusal)), QuickLook.verdict(Spoken.rig(said)));
    assertEquals(refusal.name(), refusal.key().toUpperCase(Locale.ROOT));
  }

  @Test
  void bothRefusalsAreNamed() {
    Verdict verdict = QuickLook.verdict(Spoken.with(STOUT, "dead wood\nunion cracked"));
    assertEquals(new RefusedOutright(List.of(Refusal.DEAD_WOOD, Refusal.CRACKED_UNION)), verdict);
  }

  @Test
  void ofNothingNothingIsSaid() {
    CannotSay cannot = assertInstanceOf(CannotSay.class, QuickLook.verdict(Rig.empty()));
    assertTrue(cannot.missing().size() >= 14, cannot.toString());
    assertEquals(List.of(), cannot.conflicts());
  }

  private static final Set<Slot> OPTIONAL =
      EnumSet.of(
          Slot.ANCHOR,
          Slot.LIMB_LENGTH,
          Slot.THICK_END,
          Slot.CHOKE_ANGLE,
          Slot.BASKET_ANGLE,
          Slot.SLING_THICKNESS,
          Slot.CONNECTOR_LIES,
          Slot.SEAT,
          Slot.BARK,
          Slot.SLING_RATING,
          Slot.SLACK,
          Slot.STEM_CLEAR);

  /** Without any one thing that must be said, no rig of two thousand is rated. */
  @Test
  void whateverIsMissing() {
    int tried = 0;
    for (QuickLook look : QuickLook.everyday()) {
      Rig rig = look.rig();
      for (Slot slot : needed(rig)) {
        Verdict verdict = QuickLook.verdict(rig.without(slot));
        CannotSay cannot = assertInstanceOf(CannotSay.class, verdict, slot + " left out of " + rig);
        // Without the bend either way to the angle will do; the inside angle is asked for.
        Slot asked = slot == Slot.BEND ? Slot.INSIDE_ANGLE : slot;
        assertTrue(cannot.missing().contains(asked), cannot.missing() + " without " + slot);
        tried++;
      }
    }
    assertTrue(tried >= 10 * QuickLook.EVERYDAY_RIGS, tried + " tried");
  }

  private static Set<Slot> needed(Rig rig) {
    EnumSet<Slot> needed = EnumSet.copyOf(rig.said().keySet());
    needed.removeAll(OPTIONAL);
    boolean bare = said(rig, Slot.RUNNING_OVER, Value.RunningOver.BARK);
    if (bare) {
      needed.remove(Slot.HITCH);
    }
    if (bare || !said(rig, Slot.HITCH, Value.Hitch.CHOKED)) {
      needed.remove(Slot.WRAPS);
    }
    return needed;
  }

  private static boolean said(Rig rig, Slot slot, Value value) {
    return rig.said(slot).map(Said::value).equals(Optional.of(value));
  }

  /** Whatever else is said of it, a rig that contradicts itself is not rated. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "union sound and decayed",
        "stem 2 inches by tape",
        "working leg up 20 left by tape",
        "stationary rope both parts",
        "inside angle 60 by tape\nbend 60 by tape",
        "anchor leg level left by tape\nworking leg level left by tape",
        "all up 20 kilograms"
      })
  void whateverElseIsSaidOfARigThatContradictsItself(String said) {
    Rig contradiction = Spoken.rig(said);
    for (QuickLook look : QuickLook.everyday()) {
      Rig rig = look.rig();
      Rig both = rig;
      for (Slot slot : contradiction.said().keySet()) {
        both = both.with(slot, contradiction.said(slot).orElseThrow());
      }
      assertInstanceOf(CannotSay.class, QuickLook.verdict(both), () -> said + " in " + rig);
    }
  }

  /** A sling seen opposite to where its legs pull it. */
  @Test
  @Tag("sampled")
  void whateverTheSlingIsSeenToDoAgainstItsLoad() {
    List<String> rated = new ArrayList<>();
    int tried = 0;
    for (QuickLook look : QuickLook.everyday()) {
      if (look.rig().has(Slot.ANCHOR_LEG) && !look.refused()) {
        tried++;
        double elevation = -look.load().elevationDeg().nominal();
        double bearing = look.load().bearingDeg().nominal() + 180;
        Value opposite = new Value.Toward(Direction.ofDegrees(elevation, bearing));
        Rig rig = look.rig().with(Slot.SLING_POINTS, new Said(opposite, HowGot.BY_EYE));
        // With legs nearly in line the load may point almost anywhere.
        if (look.load().insideDeg().orElseThrow().high() < 150
            && !(QuickLook.verdict(rig) instanceof CannotSay)) {
          rated.add(rig.toString());
        }
      }
    }
    assertTrue(tried > QuickLook.EVERYDAY_RIGS / 4, tried + " tried");
    assertEquals(List.of(), rated);
  }
}
