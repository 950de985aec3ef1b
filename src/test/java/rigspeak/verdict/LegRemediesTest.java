package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.mechanics.Directions;
import rigspeak.rig.Direction;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.Rating;

/** Where else the rope could go: nothing nearer would do, and nothing is offered that does not. */
class LegRemediesTest {
  private static final String PULLED_ASIDE =
      """
      limb 14 centimeters by tape
      limb level by tape
      out 1 meter by tape
      anchor leg up 50 toward the stem by tape
      """;

  private static <R extends Remedy> Optional<R> offered(Rig rig, Class<R> kind) {
    return QuickLook.remedies(rig).stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }

  private static Rig leaving(Rig rig, Direction direction) {
    Said now = rig.said(Slot.WORKING_LEG).orElseThrow();
    Value.Leg leg = new Value.Leg(direction, ((Value.Leg) now.value()).length());
    return rig.with(Slot.WORKING_LEG, new Said(leg, now.how()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "working leg down 40 left by tape",
        "working leg down 35 at 2 o'clock by tape",
        "working leg down 30 at 10 o'clock by tape"
      })
  void theLegIsTurnedNoFartherThanItMust(String said) {
    Rig rig = Spoken.with(Spoken.rig(Spoken.STOUT), PULLED_ASIDE + said);
    assertNotEquals(Rating.GOOD, QuickLook.wholeRating(rig));
    Direction better = offered(rig, Remedy.WorkingLeg.class).orElseThrow().direction();
    assertEquals(Rating.GOOD, QuickLook.wholeRating(leaving(rig, better)));

    Direction now = rig.value(Slot.WORKING_LEG, Value.Leg.class).orElseThrow().direction();
    double turned = now.angleTo(better).radians();
    for (int slope = 20; slope <= 85; slope += 5) {
      for (int bearing = -180; bearing < 180; bearing += 30) {
        Direction other = Direction.ofDegrees(-slope, bearing);
        if (now.angleTo(other).radians() < turned - 1e-9) {
          assertNotEquals(
              Optional.of(Rating.GOOD),
              QuickLook.wholeRatingAlone(leaving(rig, other)),
              () -> other.toString());
        }
      }
    }
  }

  /** The load of two legs alike lies along their bisector: here along the limb, to its union. */
  @Test
  void aSecondRedirectPressesTheLimbIntoItsUnion() {
    Rig rig =
        Spoken.with(
            Spoken.rig(Spoken.STOUT),
            """
            limb 14 centimeters by tape
            limb level by tape
            out 1 meter by tape
            anchor leg up 30 at 7 o'clock by tape
            working leg down 40 left by tape
            """);
    Direction onward = offered(rig, Remedy.SecondRedirect.class).orElseThrow().direction();
    Direction came = rig.value(Slot.ANCHOR_LEG, Value.Leg.class).orElseThrow().direction();
    Vector3D load = unit(came).add(unit(onward));
    assertTrue(Vector3D.angle(load, Vector3D.MINUS_I) < Math.toRadians(5), onward.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"inside angle 60 by tape", "bend 120 by tape"})
  void theAngleIsOpenedNoWiderThanItMust(String said) {
    Rig rig =
        Spoken.with(
            Spoken.rig(Spoken.STOUT).without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG),
            "limb 14 centimeters by tape\nout 1 meter by tape\nsling points down 60 toward the tip\n"
                + said);
    assertNotEquals(Rating.GOOD, QuickLook.wholeRating(rig));
    int degrees =
        (int) Math.rint(offered(rig, Remedy.WiderAngle.class).orElseThrow().atLeast().degrees());
    assertEquals(Rating.GOOD, QuickLook.wholeRating(opened(rig, said, degrees)));
    for (int less = degrees - 5; less > 60; less -= 5) {
      assertNotEquals(
          Rating.GOOD, QuickLook.wholeRating(opened(rig, said, less)), less + " degrees");
    }
  }

  private static Rig opened(Rig rig, String said, int insideDegrees) {
    return Spoken.with(
        rig,
        said.startsWith("bend")
            ? "bend %d by tape".formatted(180 - insideDegrees)
            : "inside angle %d by tape".formatted(insideDegrees));
  }

  /** Where the rope goes on to another redirect, the climber cannot swing its leg about. */
  @Test
  void aLegThatLeadsToAnotherRedirectIsLeftAlone() {
    Rig rig =
        Spoken.with(Spoken.rig(Spoken.STOUT), PULLED_ASIDE + "working leg down 40 left by tape");
    Rig next = Spoken.with(Spoken.rig(Spoken.STOUT), "anchor leg up 40 toward the stem by tape");
    Place one = Place.redirectNumber(1);
    RopePath path = RopePath.of(Map.of(one, rig, Place.redirectNumber(2), next));
    Verdict verdict = QuickLook.BRIEF.judge(path, one).ofAsked();
    List<Remedy> remedies = ((Verdict.Judged) verdict).remedies();
    assertTrue(
        remedies.stream()
            .noneMatch(r -> r instanceof Remedy.WorkingLeg || r instanceof Remedy.SecondRedirect),
        remedies.toString());
  }

  private static Vector3D unit(Direction direction) {
    return Directions.unit(direction.elevation().radians(), direction.bearing().radians());
  }
}
