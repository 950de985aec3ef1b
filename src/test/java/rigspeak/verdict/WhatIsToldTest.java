package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.verdict.Verdict.Judged;

/** The numbers that are told beside a rating: how far the load ranges, and what is exceeded. */
class WhatIsToldTest {
  /** The sling seen to point toward the stem, where bearings pass half a turn. */
  private static final Rig BY_ANGLE =
      Spoken.with(
          Spoken.rig(Spoken.STOUT).without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG),
          "over ring\ninside angle 90 by tape\nsling points down 45 toward the stem by tape");

  /** Ten thousand points come near a corner of the few sides that count, but not all the way. */
  private static final double NEAR_THE_END = 0.8;

  /**
   * Each number of the load by its own formula at the ends of what goes into it: weight {@code m
   * g}, {@code exp(mu (pi - w))} for the tighter leg, the law of cosines, {@code 2 cos(w/2)}.
   */
  @Test
  void theLoadRangesAsFarAsItsMeasures() {
    Judged judged = QuickLook.judged(BY_ANGLE);
    Map<Measure, Estimate> measures = judged.rig().measures();
    Estimate mass = measures.get(Measure.ALL_UP);
    Estimate inside = measures.get(Measure.INSIDE_ANGLE);
    Estimate elevation = measures.get(Measure.SLING_ELEVATION);
    Estimate bearing = measures.get(Measure.SLING_BEARING);
    double friction = measures.get(Measure.ROPE_FRICTION).high();
    Load load = judged.load();

    double lightN = 9.80665 * mass.low();
    double heavyN = 9.80665 * mass.high();
    ranges(load.workingLegN(), lightN, heavyN);
    double turn = Math.exp(friction * (Math.PI - inside.low()));
    ranges(load.anchorLegN(), lightN / turn, heavyN * turn);
    ranges(
        load.insideDeg().orElseThrow(),
        Math.toDegrees(inside.low()),
        Math.toDegrees(inside.high()));
    ranges(
        load.angleFactor().orElseThrow(),
        2 * Math.cos(inside.high() / 2),
        2 * Math.cos(inside.low() / 2));
    double back = Math.exp(-friction * (Math.PI - inside.high()));
    double mostN = resultant(heavyN, heavyN * turn, inside.low());
    ranges(load.resultantN(), resultant(lightN, lightN * back, inside.high()), mostN);
    ranges(load.elevationDeg(), Math.toDegrees(elevation.low()), Math.toDegrees(elevation.high()));
    ranges(load.bearingDeg(), Math.toDegrees(bearing.low()), Math.toDegrees(bearing.high()));
    assertEquals(180, load.bearingDeg().nominal(), 1e-9);
    assertTrue(load.bearingDeg().high() > 180);
    // Square to the sling's own upright plane it pulls both ways alike, at most by its bearing.
    double aside = Math.sin(bearing.high() - Math.PI) * Math.cos(elevation.high());
    assertTrue(load.sideN().low() >= -mostN * aside && load.sideN().high() <= mostN * aside);
    assertEquals(-load.sideN().low(), load.sideN().high(), 0.1 * load.sideN().high());
    assertTrue(load.sideN().high() >= mostN * aside / 2);
  }

  private static double resultant(double workingN, double anchorN, double insideRad) {
    return Math.sqrt(
        workingN * workingN + anchorN * anchorN + 2 * workingN * anchorN * Math.cos(insideRad));
  }

  private static void ranges(Spread spread, double low, double high) {
    double rounding = 1e-9 * high;
    double nominal = spread.nominal();
    assertTrue(spread.low() >= low - rounding, spread + " below " + low);
    assertTrue(spread.high() <= high + rounding, spread + " above " + high);
    assertTrue(
        spread.low() <= nominal - NEAR_THE_END * (nominal - low), spread + " far off " + low);
    assertTrue(
        spread.high() >= nominal + NEAR_THE_END * (high - nominal), spread + " far off " + high);
  }

  /**
   * A hollow counts by its diameter; decay in the outer wood weighs like a hollow of twice the area
   * (Arboriculture and Urban Forestry 38(6), published), whose diameter is the root of two larger.
   */
  @ParameterizedTest
  @CsvSource({"union codominant, 0.3333", "union decayed, 0.4714"})
  void decayWidensAHollow(String union, double share) {
    Rig rig = Spoken.with(Spoken.rig(Spoken.STOUT), union + "\ncavity one third\ncavity centered");
    assertEquals(share, check(QuickLook.judged(rig), CheckKind.SHELL).demand().nominal(), 5e-5);
  }

  private static Check check(Judged judged, CheckKind kind) {
    return judged.checks().stream().filter(c -> c.kind() == kind).findFirst().orElseThrow();
  }

  /** Of fresh places in the box so many are above, give or take four standard deviations. */
  @ParameterizedTest
  @EnumSource(
      value = CheckKind.class,
      names = {"LIMB_AT_UNION", "SLING", "CONNECTOR", "ROPE"})
  void fiveInAHundredExceedIt(CheckKind kind) {
    int places = 5_000;
    Judged judged = QuickLook.judged(BY_ANGLE);
    Check check = check(judged, kind);
    RandomGenerator random = new MersenneTwister(31);
    int above = 0;
    for (int i = 0; i < places; i++) {
      Map<Measure, Double> shares = Place.anywhere(random).shares();
      double towardAnchor = new Place(shares, 1).utilisations(judged.rig()).get(kind);
      double towardClimber = new Place(shares, -1).utilisations(judged.rig()).get(kind);
      above += Math.max(towardAnchor, towardClimber) > check.utilisation95() ? 1 : 0;
    }
    double deviation = Math.sqrt(0.05 * 0.95 / places);
    assertEquals(0.05, above / (double) places, 4 * deviation, kind.key());
  }
}
