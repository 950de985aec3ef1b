package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import rigspeak.mechanics.Arrival.Reached;

class LettingGoTest {
  private static final double G = 9.80665;
  private static final double WEIGHT_N = 90 * G;
  private static final double MODULUS_N = 25_000;

  @ParameterizedTest
  @PublishedTable("letting-go.csv")
  void legsOfTheList(PublishedTable.Row row) {
    double fromDown = row.degrees("inside_deg");
    FreedRope rope =
        FreedRope.ofLegs(
            Directions.unit(fromDown - Math.PI / 2, 0.7),
            row.number("previous_leg_m"),
            Vector3D.MINUS_K,
            row.number("climber_leg_m"));
    LettingGo fall = LettingGo.of(rope, WEIGHT_N, MODULUS_N);
    double half = 0.00006;
    assertEquals(row.number("slack_m"), rope.slackM(), half);
    assertEquals(row.number("free_fall_m"), rope.freeFallM(), half);
    assertEquals(row.number("taut_deg"), Math.toDegrees(rope.tautFromPlumbRad()), half);
    assertEquals(row.number("drop_m"), fall.dropM(), half);
    assertEquals(row.number("out_m"), rope.outM(), half);
    assertEquals(0.7, rope.bearingRad(), 1e-12);
    assertEquals(row.number("lowest_ms"), fall.swing().lowestSpeedMS(), half);
    assertEquals(row.number("equivalent_fall_m"), fall.swing().lowestEquivalentFallM(), half);
    assertEquals(row.number("lowest_weights") * WEIGHT_N, fall.swingTensionN(), half * WEIGHT_N);
    assertEquals(row.number("catch_kn"), fall.catchTensionN() / 1000, half);
    Reached stem = assertInstanceOf(Reached.class, fall.arrivalAt(rope.outM()));
    assertEquals(row.number("lowest_ms"), stem.speedMS(), half);
  }

  /** The same legs as listed for the slack alone. */
  @ParameterizedTest
  @PublishedTable("lost-support.csv")
  void slack(PublishedTable.Row row) {
    FreedRope rope =
        FreedRope.ofLegs(
            Directions.unit(0, row.degrees("inside_deg")),
            row.number("anchor_leg_m"),
            Directions.unit(0, 0),
            row.number("climber_leg_m"));
    assertEquals(row.number("slack_m"), rope.slackM(), 0.0005);
  }

  /** A plumb fall is the standard impact force, in the catch and at the peak. */
  @ParameterizedTest
  @PublishedTable("impact.csv")
  void plumb(PublishedTable.Row row) {
    double modulusN =
        row.has("modulus_n")
            ? row.number("modulus_n")
            : Impact.modulusN(100 * G, row.number("strain_percent") / 100);
    FreedRope rope = new FreedRope(10, 0, 10 * (1 - row.number("fall_factor")), 0);
    LettingGo fall = LettingGo.of(rope, row.number("mass_kg") * G, modulusN);
    assertEquals(row.number("peak_kn"), fall.catchTensionN() / 1000, row.number("tolerance_kn"));
    assertEquals(fall.catchTensionN(), fall.peakTensionN(), 1e-9);
    assertEquals(fall.peakTensionN() / modulusN * 10, fall.stretchM(), 1e-12);
    assertEquals(0, fall.swing().lowestSpeedMS());
    assertEquals(row.number("mass_kg") * G, fall.swingTensionN(), 1e-9);
  }

  @Test
  void slackAndFallAgreeWithPointsInSpace() {
    Samples.over(-90, 90, -180, 180, -90, 90, -180, 180, 0.1, 30, 0.1, 30)
        .each(
            p -> {
              Vector3D u1 = Directions.unit(Math.toRadians(p[0]), Math.toRadians(p[1]));
              Vector3D u2 = Directions.unit(Math.toRadians(p[2]), Math.toRadians(p[3]));
              FreedRope rope = FreedRope.ofLegs(u1, p[4], u2, p[5]);
              assertEquals(
                  LostSupport.slackM(p[4], p[5], Resultant.insideRad(u1, u2)), rope.slackM(), 1e-6);
              Vector3D previous = u1.scalarMultiply(p[4]);
              Vector3D taut =
                  u2.scalarMultiply(p[5])
                      .subtract(Vector3D.PLUS_K.scalarMultiply(rope.freeFallM()));
              assertTrue(taut.getZ() <= previous.getZ() + 1e-6);
              Vector3D leg = rope.leg(rope.tautFromPlumbRad());
              assertEquals(0, taut.distance(previous.add(leg.scalarMultiply(rope.ropeM()))), 1e-6);
              // After the catch the swing carries on along its bearing.
              Vector3D lowest = previous.add(rope.leg(0).scalarMultiply(rope.ropeM()));
              Vector3D across = lowest.subtract(taut);
              assertEquals(rope.outM() * Math.cos(rope.bearingRad()), across.getX(), 1e-6);
              assertEquals(rope.outM() * Math.sin(rope.bearingRad()), across.getY(), 1e-6);
              assertEquals(rope.dropM(), u2.getZ() * p[5] - lowest.getZ(), 1e-9);
            });
  }

  @Test
  void mirroredAndTurnedRigsFallAlike() {
    Samples.over(-90, 90, -180, 180, -90, 90, -180, 180, 0.5, 30, 0.5, 30, -180, 180)
        .each(
            p -> {
              LettingGo here = fall(p, 1, 0);
              LettingGo mirrored = fall(p, -1, 0);
              LettingGo turned = fall(p, 1, p[6]);
              alike(here, mirrored);
              alike(here, turned);
              Vector3D pull = here.catchPullN();
              Vector3D other = mirrored.catchPullN();
              double near = 1e-6 * here.catchTensionN() + 1e-6;
              assertEquals(
                  0, other.distance(new Vector3D(pull.getX(), -pull.getY(), pull.getZ())), near);
            });
  }

  private static void alike(LettingGo one, LettingGo other) {
    double near = 1e-6 * one.peakTensionN();
    assertEquals(one.catchTensionN(), other.catchTensionN(), near);
    assertEquals(one.swingTensionN(), other.swingTensionN(), near);
    assertEquals(one.peakTensionN(), other.peakTensionN(), near);
    assertEquals(one.dropM(), other.dropM(), 1e-9);
    assertEquals(one.swing().lowestSpeedMS(), other.swing().lowestSpeedMS(), 1e-6);
  }

  private static LettingGo fall(double[] p, int hand, double turnDeg) {
    return LettingGo.of(
        FreedRope.ofLegs(
            Directions.unit(Math.toRadians(p[0]), hand * Math.toRadians(p[1] + turnDeg)),
            p[4],
            Directions.unit(Math.toRadians(p[2]), hand * Math.toRadians(p[3] + turnDeg)),
            p[5]),
        WEIGHT_N,
        MODULUS_N);
  }

  /** All lengths twice as long: the same forces, everything twice as far. */
  @Test
  void scales() {
    Samples.over(Falls.ANYWHERE)
        .each(
            p -> {
              LettingGo here = LettingGo.of(Falls.anywhere(p[0], p[1], p[2]), WEIGHT_N, MODULUS_N);
              LettingGo twice =
                  LettingGo.of(Falls.anywhere(2 * p[0], p[1], p[2]), WEIGHT_N, MODULUS_N);
              assertEquals(here.catchTensionN(), twice.catchTensionN(), 1e-6);
              assertEquals(here.swingTensionN(), twice.swingTensionN(), 1e-6);
              assertEquals(2 * here.dropM(), twice.dropM(), 1e-9);
              assertEquals(
                  2 * here.swing().lowestEquivalentFallM(),
                  twice.swing().lowestEquivalentFallM(),
                  1e-9);
            });
  }

  @Test
  void thePeakCoversWhatCanCome() {
    Samples.over(0.5, 60, 0, 1, 0, 1, 300, 2000, 5000, 90_000)
        .each(
            p -> {
              FreedRope rope = Falls.anywhere(p[0], p[1], p[2]);
              LettingGo fall = LettingGo.of(rope, p[3], p[4]);
              double sum = fall.peakTensionN() * (1 + 1e-12);
              assertTrue(sum >= fall.catchTensionN());
              assertTrue(sum >= fall.swingTensionN());
              assertTrue(fall.peakTensionN() <= Impact.peakN(p[3], p[4], rope.dropM() / p[0]));
              assertTrue(
                  fall.swing().lowestEquivalentFallM() <= fall.dropM() * (1 + 1e-12),
                  "energy from nowhere");
              assertEquals(
                  fall.dropM(), rope.freeFallM() + fall.swing().startHeightM(), 1e-9 * p[0]);
              assertEquals(fall.catchTensionN(), fall.catchPullN().getNorm(), 1e-6);
              assertEquals(
                  fall.peakTensionN(),
                  fall.peakPullN(1).dotProduct(fall.catchPullN()) / fall.catchTensionN(),
                  1e-6);
              assertEquals(-fall.peakTensionN(), fall.peakPullN(0).getZ(), 1e-6);
              assertEquals(-fall.swingTensionN(), fall.lowestPullN().getZ(), 1e-6);
            });
  }

  @Test
  void heavierStifferOrHigherIsNeverSofter() {
    Samples.over(1, 40, 0, 0.99, 0, 0.9, 300, 2000, 5000, 90_000)
        .each(
            p -> {
              LettingGo here = LettingGo.of(Falls.below(p[0], p[1], p[2]), p[3], p[4]);
              worse(here, LettingGo.of(Falls.below(p[0], p[1], p[2]), p[3] * 1.1, p[4]));
              worse(here, LettingGo.of(Falls.below(p[0], p[1], p[2]), p[3], p[4] * 1.1));
              worse(here, LettingGo.of(Falls.below(p[0], p[1], p[2] + 0.1), p[3], p[4]));
            });
  }

  private static void worse(LettingGo here, LettingGo there) {
    double rounding = 1 - 1e-12;
    assertTrue(there.catchTensionN() >= here.catchTensionN() * rounding);
    assertTrue(there.swingTensionN() >= here.swingTensionN() * rounding);
    assertTrue(there.peakTensionN() >= here.peakTensionN() * rounding);
    assertTrue(there.swing().lowestSpeedMS() >= here.swing().lowestSpeedMS() * rounding);
  }

  /**
   * Below A or level with it, the swing never passes the height of A: rise over length 1 - cos^3.
   */
  @Test
  void onlyAHighClimberSwingsPastTheHeightOfTheSupport() {
    Samples.over(Falls.ANYWHERE)
        .each(
            p -> {
              Pendulum swing =
                  LettingGo.of(Falls.below(p[0], p[1], p[2]), WEIGHT_N, MODULUS_N).swing();
              assertInstanceOf(SwingEnd.Turns.class, swing.end());
            });
    LettingGo high = LettingGo.of(Falls.anywhere(10, Math.sqrt(2.0 / 3), 1), WEIGHT_N, MODULUS_N);
    assertInstanceOf(SwingEnd.GoesSlack.class, high.swing().end());
    assertEquals(Impact.peakN(WEIGHT_N, MODULUS_N, high.dropM() / 10), high.peakTensionN(), 1e-9);
  }

  /**
   * A climber level with A, 6 m out on 10 m of rope, falls 8 m; cos t = 0.8, sin t = 0.6. By hand,
   * in weights: F = 0.8 + 2 * 8 * 0.36 / 10 = 1.376, B = 1 + 2 (2 + 2.88) / 10 = 1.976. A level
   * climber is not above A, so the lower ceiling counts.
   */
  @Test
  void levelWithThePreviousSupport() {
    LettingGo fall = LettingGo.of(new FreedRope(10, 6, 0, 0), 1000, 100_000);
    double bounce = Math.sqrt(1.376 * 1.376 + 2 * 100 * 0.64 * 0.8);
    assertEquals(1000 * (1.376 + bounce), fall.catchTensionN(), 1e-6);
    assertEquals(1000 * 1.976, fall.swingTensionN(), 1e-6);
    assertEquals(1000 * (1.376 + bounce + 2 * (1.976 - 1.376)), fall.peakTensionN(), 1e-6);
    // The whole drop of 10 m would allow more.
    assertTrue(fall.peakTensionN() < 1000 * (1 + Math.sqrt(1 + 2 * 100)));
  }

  /** What is a rounding depends on the rope: a thousand-millionth of it. */
  @Test
  void aClimberWithinARoundingOfThePlumbLineHasNoBearing() {
    for (double ropeM : new double[] {0.5, 10, 60}) {
      FreedRope plumb = nearlyPlumb(ropeM, 0.5e-9);
      assertEquals(0, plumb.outM());
      assertEquals(0, plumb.bearingRad());
      FreedRope off = nearlyPlumb(ropeM, 2e-9);
      assertEquals(2e-9 * ropeM, off.outM(), 1e-15 * ropeM);
      assertEquals(Math.PI / 2, off.bearingRad(), 1e-6);
    }
  }

  /** The previous support straight above, the climber a share of the rope to the right of it. */
  private static FreedRope nearlyPlumb(double ropeM, double share) {
    Vector3D toClimber = new Vector3D(0, -2 * share, -1);
    return FreedRope.ofLegs(Vector3D.PLUS_K, ropeM / 2, toClimber, ropeM / 2);
  }

  @Test
  void aRopeThatIsStraightThroughSwingsAtOnce() {
    FreedRope rope =
        FreedRope.ofLegs(
            Directions.unit(Math.PI / 6, 0), 4, Directions.unit(-Math.PI / 6, Math.PI), 6);
    assertEquals(0, rope.slackM(), 1e-9);
    assertEquals(0, rope.freeFallM(), 1e-6);
    assertEquals(5, rope.dropM(), 1e-9);
    assertEquals(0, rope.bearingRad(), 1e-12);
    LettingGo fall = LettingGo.of(rope, WEIGHT_N, MODULUS_N);
    // 2 W cos 60 in a rope that is loaded at once, then 3 - 2 cos 60 at the lowest point.
    assertEquals(WEIGHT_N, fall.catchTensionN(), 1);
    assertEquals(2 * WEIGHT_N, fall.swingTensionN(), 1e-3);
    // F = S = W/2 and B = 2 W: F + S + 2 (B - F) = 4 W, with 25 kN well below the whole drop's.
    assertEquals(4 * WEIGHT_N, fall.peakTensionN(), 1);
    assertEquals(4 * WEIGHT_N / 2500, fall.stretchM(), 1e-3);
  }

  /** A straight above C, level with it, straight below it, and in the same place. */
  @Test
  void theOddPlaces() {
    FreedRope above = FreedRope.ofLegs(Vector3D.PLUS_K, 3, Vector3D.MINUS_K, 5);
    assertEquals(0, above.freeFallM());
    assertEquals(0, above.dropM());
    FreedRope doubled = FreedRope.ofLegs(Vector3D.MINUS_K, 3, Vector3D.MINUS_K, 5);
    assertEquals(6, doubled.freeFallM(), 1e-12);
    assertEquals(0, doubled.bearingRad());
    FreedRope beside = FreedRope.ofLegs(Vector3D.MINUS_K, 5, Vector3D.MINUS_K, 5);
    assertEquals(10, beside.freeFallM(), 1e-12);
    assertEquals(0, beside.outM());
    FreedRope low = FreedRope.ofLegs(Vector3D.MINUS_K, 9, Vector3D.MINUS_K, 4);
    assertEquals(18, low.freeFallM(), 1e-12);
    assertEquals(-5, low.belowM(), 1e-12);
    // The whole drop on 13 m of rope: W (1 + sqrt(1 + 2 * 12 * 18 / 13)), by hand.
    assertEquals(
        1000 * (1 + Math.sqrt(1 + 432.0 / 13)),
        LettingGo.of(low, 1000, 12_000).peakTensionN(),
        1e-9);
    FreedRope level = new FreedRope(10, 6, 0, 0);
    assertEquals(8, level.freeFallM(), 1e-12);
    FreedRope out = new FreedRope(10, 10, 0, 0);
    assertEquals(0, out.freeFallM(), 1e-12);
    assertEquals(3, LettingGo.of(out, 1, 1000).swingTensionN(), 1e-12);
  }
}
