package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.rig.Measure;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** The one value that is worth measuring again is named. */
class MeasureAgainTest {
  /** A marginal lever: near its limit in bending at the union, everything taped. */
  private static final String LEVER =
      """
      all up 80 kilograms by tape
      species northern red oak
      live wood
      stationary rope
      limb level by tape
      limb 20 centimeters by tape
      out 150 centimeters by tape
      stem 50 centimeters by tape
      union sound
      sling choked
      four wraps
      seated on a stub
      over pulley
      anchor leg down 60 right by tape
      working leg straight down by tape
      """;

  /** One value only is not taped; whatever the bearing of a plumb leg, the rest is small beside. */
  @ParameterizedTest
  @CsvSource({
    "limb 20 centimeters by eye, LIMB_DIAMETER",
    "out 150 centimeters a guess, OUT",
    "all up 80 kilograms a guess, ALL_UP"
  })
  void theOnlyValueThatIsNotTaped(String said, Measure measure) {
    Judged judged = QuickLook.judged(Spoken.with(Spoken.rig(LEVER), said));
    assertEquals(Rating.MARGINAL, judged.rating());
    assertEquals(CheckKind.LIMB_AT_UNION, judged.governing().kind());
    assertEquals(Optional.of(measure), judged.measureAgain());
  }

  /**
   * A plumb sling on a level limb bends it by T R L/S, R hardly known better for looking again: the
   * utilisation goes with m L / d^3. For values spread evenly over plus or minus a share r, the
   * square of the relative deviation is r^2/3 of m and L and 9 r^2/3 of d, to first order: by eye
   * the diameter (20 percent) outweighs the length (20 percent) nine times, and by hand span (10
   * percent) still by more than two.
   */
  @ParameterizedTest
  @CsvSource({
    "limb 20 centimeters by eye / out 150 centimeters by eye, LIMB_DIAMETER",
    "limb 20 centimeters by hand span / out 150 centimeters by eye, LIMB_DIAMETER",
    "limb 20 centimeters by tape / out 150 centimeters by eye, OUT"
  })
  void theDiameterCountsThreeTimes(String said, Measure measure) {
    Rig rig = Spoken.with(Spoken.rig(LEVER), said.replace(" / ", "\n"));
    Judged judged = QuickLook.judged(rig);
    assertEquals(Rating.MARGINAL, judged.rating());
    assertEquals(Optional.of(measure), judged.measureAgain());
  }

  /** Friction has the widest bounds of all, but nobody can measure it aloft. */
  @ParameterizedTest
  @CsvSource({"over ring", "over carabiner"})
  @Tag("sampled")
  void frictionIsNeverAskedFor(String over) {
    for (QuickLook look : QuickLook.everyday().subList(0, 100)) {
      if (look.rating() == Rating.MARGINAL) {
        Judged judged =
            QuickLook.judged(
                Spoken.with(
                    look.rig().without(Slot.BASKET_ANGLE), over + "\nsling choked\ntwo wraps"));
        judged
            .measureAgain()
            .ifPresent(measure -> assertEquals(false, measure.key().endsWith("_friction")));
      }
    }
  }
}
