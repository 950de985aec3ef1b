package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** Saying the same rig otherwise, or seeing it in a mirror, changes no verdict. */
class SameVerdictTest {
  private static final int PLACES = 20;

  /** Exact conversions, there and back in floating point. */
  private static final double ROUNDING = 1e-9;

  private static final double TURN_DEG = 35;
  private static final int MOST_TURNED = 100;
  private static final int MOST_COMPARED = 100;

  private static final double FOOT = 0.3048;
  private static final double POUND = 0.45359237;

  @Test
  @Tag("sampled")
  void feetAndPoundsLoadLikeMetresAndKilograms() {
    RandomGenerator random = new MersenneTwister(21);
    for (QuickLook metric : QuickLook.everyday()) {
      Rig other = imperial(metric.rig());
      same(metric, other);
      ResolvedRig metres = metric.resolved();
      ResolvedRig feet = QuickLook.resolved(other);
      for (int i = 0; i < PLACES; i++) {
        Place place = Place.anywhere(random);
        alike(place.utilisations(metres), place.utilisations(feet));
      }
    }
  }

  private static void alike(Map<CheckKind, Double> one, Map<CheckKind, Double> other) {
    assertEquals(one.keySet(), other.keySet());
    one.forEach(
        (kind, used) ->
            assertEquals(used, other.get(kind), ROUNDING * Math.max(1, used), kind.key()));
  }

  /** Far from its limit no search that misses a little could tell the two apart. */
  private static void same(QuickLook one, Rig other) {
    QuickLook look = QuickLook.at(other);
    assertEquals(one.refused(), look.refused());
    if (one.nearItsLimit() && one.rating() != look.rating()) {
      assertEquals(
          QuickLook.wholeRating(one.rig()),
          QuickLook.wholeRating(other),
          () -> one.rig() + " and " + other);
    }
  }

  /** The same lengths as words, in either system; inch and foot are exact in centimetres. */
  @ParameterizedTest
  @CsvSource({
    "limb 10 inches by tape, limb 25.4 centimeters by tape",
    "stem 5 inches by tape, stem 12.7 centimeters by tape",
    "out 2 feet by tape, out 60.96 centimeters by tape",
    "out 5 feet by tape, out 1.524 meters by tape",
    "limb length 10 feet by tape, limb length 3.048 meters by tape",
    "sling rated 6 thousand pounds, sling rated 26.689 kilonewtons"
  })
  void theSameWordsInAnotherUnit(String one, String other) {
    Rig rig = Spoken.with(Spoken.rig(Spoken.STOUT), "limb 4 inches by tape");
    Verdict first = QuickLook.verdict(Spoken.with(rig, one));
    Verdict second = QuickLook.verdict(Spoken.with(rig, other));
    if (first instanceof Judged judged) {
      Judged same = (Judged) second;
      assertEquals(judged.rating(), same.rating());
      for (int c = 0; c < judged.checks().size(); c++) {
        Check check = judged.checks().get(c);
        assertEquals(
            check.utilisation().high(),
            same.checks().get(c).utilisation().high(),
            // The kilonewtons are said to the newton.
            1e-4 * check.utilisation().high(),
            check.kind().key());
      }
    } else {
      assertEquals(first, second);
    }
  }

  private static Rig imperial(Rig rig) {
    Rig other = rig;
    for (Map.Entry<Slot, Said> entry : rig.said().entrySet()) {
      Said said = entry.getValue();
      other = other.with(entry.getKey(), new Said(imperial(said.value()), said.how()));
    }
    return other;
  }

  private static Value imperial(Value value) {
    if (value instanceof Value.Weight weight) {
      return new Value.Weight(
          Mass.ofPounds(weight.mass().kilograms() / POUND), UnitSystem.INCH_POUND);
    }
    if (value instanceof Value.Distance distance) {
      return new Value.Distance(
          Length.ofFeet(distance.length().metres() / FOOT), UnitSystem.INCH_POUND);
    }
    if (value instanceof Value.Leg leg) {
      return new Value.Leg(leg.direction(), leg.length().map(l -> (Value.Distance) imperial(l)));
    }
    return value;
  }

  @Test
  @Tag("sampled")
  void aMirroredRigGetsTheMirroredAnswer() {
    RandomGenerator random = new MersenneTwister(22);
    for (QuickLook look : QuickLook.everyday()) {
      Rig mirrored = mirrored(look.rig());
      same(look, mirrored);
      ResolvedRig one = look.resolved();
      ResolvedRig other = QuickLook.resolved(mirrored);
      for (int i = 0; i < PLACES; i++) {
        Place here = Place.anywhere(random);
        Place there = here.mirrored();
        alike(here.utilisations(one), there.utilisations(other));
        assertEquals(here.load(one).sideN(), -there.load(other).sideN(), 1e-6);
      }
    }
  }

  @Test
  @Tag("long")
  void manyMirroredRigsGetTheMirroredAnswer() {
    for (Rig rig : SampledRigs.first(QuickLook.LONG_RIGS)) {
      same(QuickLook.at(rig), mirrored(rig));
    }
  }

  @Test
  @Tag("sampled")
  void aMirrorSwapsTheSidesOfTheLoad() {
    for (QuickLook look : QuickLook.everyday().subList(0, 200)) {
      mirroredLoad(look.load(), QuickLook.at(mirrored(look.rig())).load());
    }
  }

  private static void mirroredLoad(Load here, Load there) {
    double newton = 1e-6;
    assertEquals(here.resultantN().nominal(), there.resultantN().nominal(), newton);
    assertEquals(here.alongN().nominal(), there.alongN().nominal(), newton);
    assertEquals(here.topN().nominal(), there.topN().nominal(), newton);
    assertEquals(here.sideN().nominal(), -there.sideN().nominal(), newton);
    assertEquals(here.elevationDeg().nominal(), there.elevationDeg().nominal(), 1e-6);
    double bothBearings = here.bearingDeg().nominal() + there.bearingDeg().nominal();
    assertEquals(0, Math.IEEEremainder(bothBearings, 360), 1e-6);
    assertEquals(here.loadClass(), there.loadClass());
    assertEquals(
        here.insideDeg().orElseThrow().nominal(), there.insideDeg().orElseThrow().nominal(), 1e-6);
  }

  private static Rig mirrored(Rig rig) {
    Rig other = rig;
    for (Slot slot : List.of(Slot.ANCHOR_LEG, Slot.WORKING_LEG, Slot.SLING_POINTS)) {
      Optional<Said> said = rig.said(slot);
      if (said.isPresent()) {
        other = other.with(slot, new Said(turned(said.get().value(), true, 0), said.get().how()));
      }
    }
    return other;
  }

  private static Value turned(Value value, boolean mirror, double degrees) {
    if (value instanceof Value.Leg leg) {
      return new Value.Leg(turned(leg.direction(), mirror, degrees), leg.length());
    }
    return new Value.Toward(turned(((Value.Toward) value).direction(), mirror, degrees));
  }

  private static Direction turned(Direction direction, boolean mirror, double degrees) {
    Direction seen = mirror ? direction.mirrored() : direction;
    return new Direction(seen.elevation(), Angle.ofDegrees(seen.bearing().degrees() + degrees));
  }

  /**
   * Bearings are counted from the limb, so turning a rig together with its limb changes no word of
   * it. An upright leader can be turned under its rope: the load's size, what it does to the gear
   * and to the sling's section stay, and its bearing turns along. (The union does not: it holds
   * less against some sides than against others.)
   */
  @Test
  @Tag("sampled")
  void turningTheRopeRoundAnUprightLeaderOnlyTurnsTheLoad() {
    int turned = 0;
    for (QuickLook here : QuickLook.everyday()) {
      Rig rig = here.rig();
      boolean upright =
          rig.value(Slot.LIMB_RISE, Value.Turned.class).orElseThrow().angle().degrees() == 90;
      if (!upright || turned >= MOST_TURNED) {
        continue;
      }
      turned++;
      QuickLook there = QuickLook.at(turned(rig));
      Spread size = here.load().resultantN();
      assertEquals(size.nominal(), there.load().resultantN().nominal(), 1e-6);
      // A plumb leg keeps its bearing of 0, so the samples of its box do not turn along.
      boolean plumb =
          rig.value(Slot.WORKING_LEG, Value.Leg.class)
              .filter(leg -> leg.direction().isPlumb())
              .isPresent();
      if (!plumb) {
        assertEquals(size.low(), there.load().resultantN().low(), 1e-6);
        assertEquals(size.high(), there.load().resultantN().high(), 1e-6);
      }
      Load before = here.load();
      Load after = there.load();
      assertEquals(before.elevationDeg().nominal(), after.elevationDeg().nominal(), 1e-6);
      double by = after.bearingDeg().nominal() - before.bearingDeg().nominal();
      assertEquals(0, Math.IEEEremainder(by - TURN_DEG, 360), 1e-6);
      Map<CheckKind, Double> one = here.nominal();
      Map<CheckKind, Double> other = there.nominal();
      one.remove(CheckKind.LIMB_AT_UNION);
      other.remove(CheckKind.LIMB_AT_UNION);
      alike(one, other);
    }
    assertEquals(MOST_TURNED, turned, turned + " upright leaders");
  }

  private static Rig turned(Rig rig) {
    Rig other = rig;
    for (Slot slot : List.of(Slot.ANCHOR_LEG, Slot.WORKING_LEG, Slot.SLING_POINTS)) {
      Optional<Said> said = rig.said(slot);
      if (said.isPresent()) {
        Value value = turned(said.get().value(), false, TURN_DEG);
        other = other.with(slot, new Said(value, said.get().how()));
      }
    }
    return other;
  }

  /** Looking closer at the same values: less can be true, so the worst is never worse. */
  @Test
  @Tag("sampled")
  void byTapeIsNeverWiderThanByEye() {
    int compared = 0;
    int narrowed = 0;
    for (QuickLook look : QuickLook.everyday()) {
      QuickLook eye = QuickLook.at(got(look.rig(), HowGot.BY_EYE));
      QuickLook tape = QuickLook.at(got(look.rig(), HowGot.BY_TAPE));
      Map<Measure, Estimate> wide = eye.resolved().measures();
      Map<Measure, Estimate> narrow = tape.resolved().measures();
      assertEquals(wide.keySet(), narrow.keySet());
      for (Measure measure : wide.keySet()) {
        assertTrue(narrow.get(measure).low() >= wide.get(measure).low(), measure.key());
        assertTrue(narrow.get(measure).high() <= wide.get(measure).high(), measure.key());
      }
      // Refused is refused as said, however it was measured.
      if (look.rating() == Rating.REFUSE) {
        assertEquals(Rating.REFUSE, eye.rating());
        assertEquals(Rating.REFUSE, tape.rating());
      } else if (compared < MOST_COMPARED && eye.nearItsLimit()) {
        compared++;
        narrowed += tape.largest() < eye.largest() ? 1 : 0;
        if (tape.rating().compareTo(eye.rating()) > 0) {
          assertEquals(QuickLook.wholeRating(eye.rig()), QuickLook.wholeRating(tape.rig()));
        }
      }
    }
    assertEquals(MOST_COMPARED, compared);
    assertTrue(narrowed > compared * 9 / 10, narrowed + " of " + compared + " got narrower");
  }

  private static Rig got(Rig rig, HowGot how) {
    Rig other = rig;
    for (Map.Entry<Slot, Said> entry : rig.said().entrySet()) {
      other = other.with(entry.getKey(), new Said(entry.getValue().value(), how));
    }
    return other;
  }
}
