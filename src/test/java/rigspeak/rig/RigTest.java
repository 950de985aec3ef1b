package rigspeak.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.rig.Value.Union;
import rigspeak.rig.Value.UnionCondition;

/** What was said of a rig is kept as it was said. */
class RigTest {
  private static final Rig STOUT = Spoken.rig(Spoken.STOUT);
  private static final Said DEAD = new Said(Value.Wood.DEAD, HowGot.BY_EYE);

  @Test
  void sayingAgainReplacesAndTheEarlierRigStays() {
    Rig dead = STOUT.with(Slot.WOOD, DEAD);
    assertEquals(Optional.of(DEAD), dead.said(Slot.WOOD));
    assertEquals(Optional.of(Value.Wood.LIVE), STOUT.value(Slot.WOOD, Value.Wood.class));
    assertNotEquals(STOUT, dead);
    assertEquals(STOUT, dead.with(Slot.WOOD, STOUT.said(Slot.WOOD).orElseThrow()));
  }

  @Test
  void whatIsTakenBackIsGone() {
    Rig less = STOUT.without(Slot.WOOD);
    assertFalse(less.has(Slot.WOOD));
    assertEquals(Optional.empty(), less.said(Slot.WOOD));
    assertEquals(STOUT.said().size() - 1, less.said().size());
    assertEquals(less, less.without(Slot.WOOD));
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void noSlotTakesAValueOfAnotherKind(Slot slot) {
    Value wrong = slot.valueType() == Value.Share.class ? Value.Wood.LIVE : new Value.Share(0.25);
    assertThrows(
        IllegalArgumentException.class,
        () -> Rig.empty().with(slot, new Said(wrong, HowGot.BY_EYE)));
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void everySlotIsFoundByItsKey(Slot slot) {
    assertEquals(Optional.of(slot), Slot.of(slot.key()));
    assertTrue(slot.key().matches("[a-z_]+"), slot.key());
  }

  @Test
  void anUnknownKeyIsNoSlot() {
    assertEquals(Optional.empty(), Slot.of("rope_angle"));
  }

  @Test
  void theNextSupportBeginsWithTheClimbAlone() {
    assertEquals(
        EnumSet.of(Slot.ALL_UP, Slot.SPECIES, Slot.ROPE_SYSTEM), STOUT.climbOnly().said().keySet());
    Rig heavier = STOUT.with(Slot.ALL_UP, Spoken.rig("all up 300 pounds").said(Slot.ALL_UP).get());
    Rig moved = STOUT.withClimbOf(heavier);
    assertEquals(heavier.said(Slot.ALL_UP), moved.said(Slot.ALL_UP));
    assertEquals(STOUT.said(Slot.OUT), moved.said(Slot.OUT));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 190, 10, -170",
    "10, -180, 10, 180",
    "10, 540, 10, 180",
    "90, 77, 90, 0",
    "-90, -77, -90, 0",
    "0, 0, 0, 0",
    "-45, -90, -45, -90"
  })
  void aBearingIsCountedWithinHalfATurn(
      double elevation, double bearing, double sameElevation, double sameBearing) {
    Direction direction = Direction.ofDegrees(elevation, bearing);
    assertEquals(sameElevation, direction.elevation().degrees(), 1e-9);
    assertEquals(sameBearing, direction.bearing().degrees(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"90.1, 0", "-90.1, 0", "180, 10"})
  void noDirectionRisesBeyondPlumb(double elevation, double bearing) {
    assertThrows(IllegalArgumentException.class, () -> Direction.ofDegrees(elevation, bearing));
  }

  /**
   * Spherical geometry by hand: quarter turns, and cos a = cos 60 cos 60 cos 90 + sin 60 sin 60.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, 90, 90",
    "0, 0, 0, 180, 180",
    "90, 0, -90, 0, 180",
    "90, 0, 30, 123, 60",
    "60, 0, 60, 90, 41.40962210927086",
    "-20, 170, -20, -170, 18.78",
    "33, 44, 33, 44, 0"
  })
  void theAngleBetweenTwoDirections(
      double elevation, double bearing, double other, double otherBearing, double apart) {
    double angle =
        Direction.ofDegrees(elevation, bearing)
            .angleTo(Direction.ofDegrees(other, otherBearing))
            .degrees();
    assertEquals(apart, angle, 0.02);
  }

  @Test
  void aMirrorAlongTheLimbSwapsLeftAndRight() {
    assertEquals(Direction.ofDegrees(20, -60), Direction.ofDegrees(20, 60).mirrored());
    assertEquals(
        180, Direction.ofDegrees(20, 180).mirrored().bearing().degrees(), 1e-9, "toward the stem");
    assertEquals(Direction.straightDown(), Direction.straightDown().mirrored());
  }

  @Test
  void faultsOfAUnionAddUpAndSoundnessDoesNotTakeThemBack() {
    Union cracked = Union.of(UnionCondition.CRACKED);
    Union sound = Union.of(UnionCondition.SOUND);
    assertTrue(((Union) sound.after(cracked)).has(UnionCondition.CRACKED));
    assertTrue(((Union) sound.after(cracked)).isContradictory());
    assertEquals(cracked, cracked.after(cracked));
    assertEquals(Value.Wood.LIVE, Value.Wood.LIVE.after(Value.Wood.DEAD));
  }

  @Test
  void aCodominantUnionIsAShapeAndNoFault() {
    assertFalse(Union.of(UnionCondition.SOUND, UnionCondition.CODOMINANT).isContradictory());
    for (UnionCondition fault :
        EnumSet.of(UnionCondition.INCLUDED_BARK, UnionCondition.CRACKED, UnionCondition.DECAYED)) {
      assertTrue(Union.of(UnionCondition.SOUND, fault).isContradictory(), fault.name());
    }
  }

  @Test
  void valuesThatCannotBeAreMistakes() {
    assertThrows(IllegalArgumentException.class, () -> new Value.Wraps(0));
    assertThrows(IllegalArgumentException.class, () -> new Value.Wraps(7));
    for (double share : new double[] {-0.1, 1, 2, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> new Value.Share(share));
    }
    Source source = new Source("x", Source.Provenance.JUDGEMENT, "x");
    for (double[] ends :
        new double[][] {
          {2, 1, 3},
          {1, 4, 3},
          {Double.NaN, 1, 2},
          {1, Double.NaN, 2},
          {1, 2, Double.NaN},
          {Double.NEGATIVE_INFINITY, 0, 1},
          {0, 1, Double.POSITIVE_INFINITY}
        }) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new Estimate(ends[0], ends[1], ends[2], HowGot.BY_EYE, source));
    }
    for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> new Sourced("x", value, source));
    }
  }

  @Test
  void anUnknownSpeciesHasNoWords() {
    assertTrue(Value.Species.unknown().isUnknown());
    assertFalse(new Value.Species(Set.of("oak")).isUnknown());
  }

  @Test
  void theWordsOfAnEmptyRigAreNone() {
    assertEquals(Rig.empty().hashCode(), STOUT.climbOnly().withClimbOf(Rig.empty()).hashCode());
    assertEquals("{}", Rig.empty().toString());
  }
}
