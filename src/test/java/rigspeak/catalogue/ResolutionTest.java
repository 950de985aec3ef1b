package rigspeak.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.Assumption;
import rigspeak.rig.ResolvedRig.Turn;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;

/** From a rig as said to its numbers, or to what is missing or cannot be. */
class ResolutionTest {
  private static final Rig STOUT = Spoken.rig(Spoken.STOUT);

  private static Rig turnedByAngle() {
    return Spoken.with(
        STOUT.without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG),
        "inside angle 100 by tape\nsling points down 70 left by tape");
  }

  private static Rig turnedByBend() {
    return Spoken.with(
        STOUT.without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG),
        "bend 80 by tape\nsling points down 70 left by tape");
  }

  private static Rig faulty() {
    return Spoken.with(STOUT, "union included bark");
  }

  private static Rig moving() {
    return Spoken.with(STOUT, "moving rope\nboth parts captured");
  }

  static Stream<Arguments> whatMustBeSaid() {
    Stream<Arguments> always =
        Stream.of(
                Slot.ALL_UP,
                Slot.SPECIES,
                Slot.WOOD,
                Slot.LIMB_DIAMETER,
                Slot.LIMB_RISE,
                Slot.OUT,
                Slot.STEM_DIAMETER,
                Slot.UNION,
                Slot.ROPE_SYSTEM,
                Slot.RUNNING_OVER,
                Slot.HITCH,
                Slot.WRAPS,
                Slot.ANCHOR_LEG,
                Slot.WORKING_LEG)
            .map(slot -> Arguments.of("legs", STOUT, slot));
    return Stream.concat(
        always,
        Stream.of(
            Arguments.of("inside angle", turnedByAngle(), Slot.INSIDE_ANGLE),
            Arguments.of("inside angle", turnedByAngle(), Slot.SLING_POINTS),
            Arguments.of("bend", turnedByBend(), Slot.SLING_POINTS),
            Arguments.of("faulty union", faulty(), Slot.CAVITY),
            Arguments.of("moving rope", moving(), Slot.CAPTURED)));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("whatMustBeSaid")
  void whatIsLeftOutIsMissingAndNothingElse(String name, Rig whole, Slot slot) {
    assertInstanceOf(Resolution.Known.class, Resolved.alone(whole), name);
    Rig less = whole.without(slot);
    assertEquals(new Resolution.Unknown(List.of(slot), List.of()), Resolved.alone(less));
    assertEquals(List.of(slot), Resolved.missing(less));
  }

  /** A bend is asked for as the inside angle, which loads the sling and is easier to see. */
  @Test
  void withoutTheBendTheInsideAngleIsMissing() {
    assertEquals(List.of(Slot.INSIDE_ANGLE), Resolved.missing(turnedByBend().without(Slot.BEND)));
  }

  /** Whatever is not needed can be left out; everything else is in the list above. */
  @ParameterizedTest
  @EnumSource(
      value = Slot.class,
      names = {
        "ANCHOR",
        "LIMB_LENGTH",
        "SEAT",
        "BARK",
        "SLING_RATING",
        "SLACK",
        "STEM_CLEAR",
        "SLING_THICKNESS"
      })
  void whatCanBeLeftOut(Slot slot) {
    assertInstanceOf(Resolution.Known.class, Resolved.alone(STOUT.without(slot)));
  }

  @Test
  void bareBarkNeedsNoSling() {
    Rig bare = Spoken.with(STOUT.without(Slot.HITCH).without(Slot.WRAPS), "over bark");
    ResolvedRig rig = Resolved.known(bare);
    assertEquals(Optional.empty(), rig.gear().sling());
    assertEquals(Optional.empty(), rig.gear().connector());
    assertInstanceOf(ResolvedRig.Grip.Laid.class, rig.grip());
  }

  @Test
  void aBasketNeedsNoWraps() {
    Rig basket = Spoken.with(STOUT.without(Slot.WRAPS), "sling basket");
    assertInstanceOf(ResolvedRig.Grip.Laid.class, Resolved.known(basket).grip());
  }

  @Test
  void ofAnEmptyRigEverythingIsMissing() {
    List<Slot> missing = Resolved.missing(Rig.empty());
    assertEquals(EnumSet.copyOf(missing).size(), missing.size(), "nothing is asked twice");
    assertTrue(missing.contains(Slot.ALL_UP));
    assertTrue(missing.containsAll(List.of(Slot.ANCHOR_LEG, Slot.WORKING_LEG, Slot.CAVITY)));
  }

  @ParameterizedTest
  @CsvSource({
    "LIMB_LENGTH, length_unsaid",
    "SEAT, seat_unsaid",
    "SLACK, slack_unsaid",
    "BARK, bark_unsaid",
    "CHOKE_ANGLE, choke_angle_unsaid",
    "CONNECTOR_LIES, connector_unsaid",
    "SLING_THICKNESS, thickness_unsaid",
    "SLING_RATING, sling_unrated"
  })
  void whatIsTakenForGrantedIsNamed(Slot slot, String source) {
    Rig whole = Spoken.with(STOUT, "choke angle 110 by tape\nconnector in line\nno slack");
    assertEquals(List.of(), Resolved.known(whole).assumptions());
    ResolvedRig rig = Resolved.known(whole.without(slot));
    assertEquals(
        List.of(new Assumption(slot, Resolved.CATALOGUE.sources().get(source))), rig.assumptions());
  }

  /** The least favourable bark, the least sling, no seat. */
  @Test
  void whatIsTakenForGrantedIsTheWorst() {
    Rig bare = STOUT.without(Slot.BARK).without(Slot.SEAT).without(Slot.SLING_RATING);
    ResolvedRig rig = Resolved.known(bare);
    double least =
        Stream.of("bark rough", "bark smooth", "bark wet")
            .mapToDouble(
                lines -> Resolved.stoutBut(lines).measures().get(Measure.BARK_FRICTION).low())
            .min()
            .orElseThrow();
    assertEquals(least, rig.measures().get(Measure.BARK_FRICTION).low());
    assertEquals(HowGot.ASSUMED, rig.measures().get(Measure.BARK_FRICTION).how());
    assertEquals(Value.Seat.FREE, rig.seat());
    assertEquals(22_000, rig.gear().sling().orElseThrow().base().value(), "EN 354, memory");
  }

  /** Two parts of a moving rope share the climber; where both are captured they add up again. */
  @ParameterizedTest
  @CsvSource({
    "stationary rope, 1",
    "moving rope both parts, 1",
    "moving rope single part, 0.5",
    "stationary rope single part, 1"
  })
  void theShareOfTheWeight(String lines, double share) {
    assertEquals(share, Resolved.stoutBut(lines).tensionShare());
  }

  @Test
  void twoLegsGoBeforeTheAngle() {
    assertEquals(Turn.LEGS, Resolved.known(STOUT).turn());
    assertEquals(Turn.ANGLE_AND_SLING, Resolved.known(turnedByAngle()).turn());
    double inside = Resolved.known(turnedByBend()).measures().get(Measure.INSIDE_ANGLE).nominal();
    assertEquals(100, Math.toDegrees(inside), 1e-9, "half a turn less the bend");
  }

  @Test
  void aHeightAboveTheUnionIsNeverNegative() {
    Estimate out = Resolved.stoutBut("out 2 inches").measures().get(Measure.OUT);
    assertEquals(0, out.low());
    Estimate at = Resolved.stoutBut("at the union").measures().get(Measure.OUT);
    assertEquals(0, at.nominal());
    assertEquals(0.15, at.high(), 1e-12);
  }

  /** The steeper a direction, the less its bearing can be seen. */
  @Test
  void aPlumbLegMayLeanAnyWay() {
    ResolvedRig rig = Resolved.stoutBut("working leg straight down by eye");
    Estimate bearing = rig.measures().get(Measure.WORKING_LEG_BEARING);
    assertEquals(-180, Math.toDegrees(bearing.low()), 1e-9);
    assertEquals(180, Math.toDegrees(bearing.high()), 1e-9);
    Estimate level =
        Resolved.stoutBut("anchor leg level left by eye")
            .measures()
            .get(Measure.ANCHOR_LEG_BEARING);
    assertEquals(80, Math.toDegrees(level.low()), 1e-9);
    assertEquals(100, Math.toDegrees(level.high()), 1e-9);
  }

  static Stream<Arguments> ways() {
    List<Arguments> ways = new ArrayList<>();
    for (HowGot how : HowGot.values()) {
      if (how != HowGot.ASSUMED && how != HowGot.BY_TAPE) {
        ways.add(Arguments.of(how));
      }
    }
    return ways.stream();
  }

  @ParameterizedTest
  @MethodSource("ways")
  void nothingIsKnownBetterThanByTape(HowGot how) {
    Rig loose = STOUT;
    for (Slot slot : STOUT.said().keySet()) {
      loose = loose.with(slot, new Said(STOUT.said(slot).orElseThrow().value(), how));
    }
    ResolvedRig byTape = Resolved.known(STOUT);
    ResolvedRig other = Resolved.known(loose);
    byTape
        .measures()
        .forEach(
            (measure, tape) -> {
              Estimate wide = other.measures().get(measure);
              assertEquals(tape.nominal(), wide.nominal(), measure.key());
              assertTrue(wide.low() <= tape.low(), measure.key());
              assertTrue(wide.high() >= tape.high(), measure.key());
            });
  }

  static Stream<Arguments> ranges() {
    return Table.rows("ranges").stream()
        .flatMap(
            row ->
                Stream.of(
                    Arguments.of(row.get("slot"), Table.number(row, "low"), -1, unit(row)),
                    Arguments.of(row.get("slot"), Table.number(row, "high"), 1, unit(row))));
  }

  private static String unit(CSVRecord row) {
    return row.get("unit");
  }

  @ParameterizedTest(name = "{0} beyond {1} {3}")
  @MethodSource("ranges")
  void whatLiesOutsideARangeIsNotTaken(String slotKey, double end, int outward, String unit) {
    Slot slot = Slot.of(slotKey).orElseThrow();
    assertEquals(
        Optional.empty(), Resolved.CATALOGUE.offence(slot, value(slot, end)), "the end itself");
    double beyond = end + outward * Math.max(0.001, 0.001 * Math.abs(end));
    if (beyond < 0 && !unit.equals("degree")) {
      return; // No length is negative; the quantity itself refuses it.
    }
    Value value = value(slot, beyond);
    assertTrue(Resolved.CATALOGUE.offence(slot, value).isPresent(), "beyond it");
    Resolution resolution = Resolved.alone(STOUT.with(slot, new Said(value, HowGot.BY_TAPE)));
    Resolution.Unknown unknown = assertInstanceOf(Resolution.Unknown.class, resolution);
    assertTrue(
        unknown.conflicts().stream()
            .anyMatch(
                conflict -> conflict instanceof Conflict.OutOfRange out && out.slot() == slot));
  }

  private static Value value(Slot slot, double number) {
    UnitSystem metric = UnitSystem.METRIC;
    if (slot.valueType() == Value.Weight.class) {
      return new Value.Weight(Mass.ofKilograms(number), metric);
    }
    if (slot.valueType() == Value.Distance.class) {
      return new Value.Distance(Length.ofMetres(number), metric);
    }
    if (slot.valueType() == Value.Turned.class) {
      return new Value.Turned(Angle.ofDegrees(number));
    }
    if (slot.valueType() == Value.Rating.class) {
      return new Value.Rating(Force.ofNewtons(number), metric);
    }
    return new Value.Leg(
        Direction.ofDegrees(-40, 150),
        Optional.of(new Value.Distance(Length.ofMetres(number), metric)));
  }

  @Test
  void everyNumberThatCanBeSaidHasARange() {
    EnumSet<Slot> without = EnumSet.noneOf(Slot.class);
    for (Slot slot : Slot.values()) {
      Class<?> type = slot.valueType();
      boolean number =
          type == Value.Weight.class
              || type == Value.Distance.class
              || type == Value.Turned.class
              || type == Value.Rating.class
              || type == Value.Leg.class;
      if (number
          && Table.rows("ranges").stream().noneMatch(r -> r.get("slot").equals(slot.key()))) {
        without.add(slot);
      }
    }
    assertEquals(EnumSet.noneOf(Slot.class), without);
  }
}
