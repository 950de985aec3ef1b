package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import rigspeak.quantity.Interval;

class ResultantTest {
  /** Half of the last printed figure, and what two catalogues are off by at 40 degrees. */
  private static final double PRINTED = 0.011;

  @ParameterizedTest
  @PublishedTable("angle-factors.csv")
  void angleFactor(PublishedTable.Row row) {
    double factor = Resultant.angleFactor(row.degrees("inside_deg"));
    assertEquals(row.number("printed"), factor, PRINTED);
    assertEquals(row.number("exact"), factor, 0.00005);
  }

  @ParameterizedTest
  @PublishedTable("block-examples.csv")
  void blockExample(PublishedTable.Row row) {
    double inside = row.degrees("inside_deg");
    double tension = row.number("tension");
    Vector3D load =
        Resultant.ofLegsN(tension, Directions.unit(0, 0), tension, Directions.unit(0, inside));
    assertEquals(row.number("answer"), load.getNorm(), row.number("tolerance"));
    assertEquals(
        row.number("answer"), Resultant.sizeN(tension, tension, inside), row.number("tolerance"));
  }

  @ParameterizedTest
  @PublishedTable("two-leg-shares.csv")
  void shareOfALoadOnEachOfTwoLegs(PublishedTable.Row row) {
    double share = 100 / Resultant.angleFactor(row.degrees("included_deg"));
    assertEquals(row.number("share_percent"), share, row.number("tolerance"));
  }

  /** Beer and Johnston's wall section; pounds and feet, only the directions matter. Source 2. */
  @Test
  void twoCablesOnOneStake() {
    Vector3D first = new Vector3D(-16, 8, 11).normalize();
    Vector3D second = new Vector3D(-16, 8, -16).normalize();
    Vector3D alone = Resultant.ofLegsN(840, first, 0, second);
    assertEquals(0, alone.distance(new Vector3D(-640, 320, 440)), 1e-9);

    Vector3D both = Resultant.ofLegsN(840, first, 1200, second);
    assertEquals(0, both.distance(new Vector3D(-1440, 720, -360)), 1e-9);
    assertEquals(1650, both.getNorm(), 0.3);
    assertEquals(150.8, Math.toDegrees(Vector3D.angle(both, Vector3D.PLUS_I)), 0.05);
    assertEquals(64.1, Math.toDegrees(Vector3D.angle(both, Vector3D.PLUS_J)), 0.05);
    assertEquals(102.6, Math.toDegrees(Vector3D.angle(both, Vector3D.PLUS_K)), 0.05);

    double inside = Resultant.insideRad(first, second);
    assertEquals(1650, Resultant.sizeN(840, 1200, inside), 0.3);
    assertEquals(Vector3D.angle(first, both), Resultant.leanRad(840, 1200, inside), 1e-12);
  }

  @ParameterizedTest
  @PublishedTable("plane-forces.csv")
  void planeForces(PublishedTable.Row row) {
    Vector3D two =
        Resultant.ofLegsN(
            row.number("first"),
            Directions.unit(0, row.degrees("first_deg")),
            row.number("second"),
            Directions.unit(0, row.degrees("second_deg")));
    Vector3D all =
        Resultant.ofLegsN(
            two.getNorm(),
            two.normalize(),
            row.number("third"),
            Directions.unit(0, row.degrees("third_deg")));
    assertEquals(row.number("answer"), all.getNorm(), row.number("tolerance"));
    double off = Math.toDegrees(Directions.bearingRad(all)) - row.number("answer_deg");
    assertEquals(0, Math.IEEEremainder(off, 360), row.number("tolerance_deg"));
  }

  @ParameterizedTest
  @PublishedTable("friction.csv")
  void frictionTurnsTheLoadTowardTheTightLeg(PublishedTable.Row row) {
    double inside = row.degrees("inside_deg");
    double slack = Capstan.tensionRatio(row.number("friction"), Resultant.wrapRad(inside)).low();
    assertEquals(row.number("slack_over_tight"), slack, 0.00005);
    assertEquals(row.number("load_over_tight"), Resultant.sizeN(1, slack, inside), 0.00005);
    assertEquals(
        row.number("lean_deg"), Math.toDegrees(Resultant.leanRad(1, slack, inside)), 0.005);

    // The same in space: tight leg level toward the tip, slack leg to its left.
    Vector3D load = Resultant.ofLegsN(1, Directions.unit(0, 0), slack, Directions.unit(0, inside));
    assertEquals(row.number("load_over_tight"), load.getNorm(), 0.00005);
    assertEquals(row.number("lean_deg"), Math.toDegrees(Directions.bearingRad(load)), 0.005);
  }

  @Test
  void withoutFrictionBothLegsPullAlike() {
    Samples.over(0, 180, 1, 5000)
        .each(
            p -> {
              double inside = Math.toRadians(p[0]);
              var ratio = Capstan.tensionRatio(0, Resultant.wrapRad(inside));
              assertEquals(1, ratio.low());
              assertEquals(1, ratio.high());
              assertEquals(
                  p[1] * Resultant.angleFactor(inside),
                  Resultant.sizeN(p[1], p[1] * ratio.high(), inside),
                  1e-9);
              assertEquals(
                  inside / 2, Resultant.leanRad(p[1], p[1], inside), p[0] > 179.99 ? 1e-3 : 1e-9);
            });
  }

  @Test
  void angleSizeAndLeanAgreeWithAnotherLibrarysVectors() {
    Samples.over(-90, 90, -180, 180, -90, 90, -180, 180, 1, 5000, 1, 5000)
        .each(
            p -> {
              Vector3D u1 = Directions.unit(Math.toRadians(p[0]), Math.toRadians(p[1]));
              Vector3D u2 = Directions.unit(Math.toRadians(p[2]), Math.toRadians(p[3]));
              var v1 = other(u1);
              var v2 = other(u2);
              double inside = Resultant.insideRad(u1, u2);
              assertEquals(v1.angle(v2), inside, 1e-7);
              assertEquals(Math.PI, inside + Resultant.wrapRad(inside), 1e-12);
              var sum = v1.multiply(p[4]).add(v2.multiply(p[5]));
              assertEquals(sum.norm(), Resultant.ofLegsN(p[4], u1, p[5], u2).getNorm(), 1e-8);
              assertEquals(sum.norm(), Resultant.sizeN(p[4], p[5], inside), 1e-6);
              if (sum.norm() > 1) {
                assertEquals(v1.angle(sum), Resultant.leanRad(p[4], p[5], inside), 1e-6);
              }
            });
  }

  @Test
  void openingTheInsideAngleNeverRaisesTheLoad() {
    Samples.over(0, 180, 0, 180, 0, 5000, 0, 5000)
        .each(
            p -> {
              double narrow = Math.toRadians(Math.min(p[0], p[1]));
              double wide = Math.toRadians(Math.max(p[0], p[1]));
              assertTrue(
                  Resultant.sizeN(p[2], p[3], wide) <= Resultant.sizeN(p[2], p[3], narrow) + 1e-9);
              assertTrue(Resultant.angleFactor(wide) <= Resultant.angleFactor(narrow));
            });
  }

  @Test
  void doublingTheTensionsDoublesTheLoadAndSwappingTheLegsChangesNothing() {
    Samples.over(-90, 90, -180, 180, -90, 90, -180, 180, 0, 5000, 0, 5000)
        .each(
            p -> {
              Vector3D u1 = Directions.unit(Math.toRadians(p[0]), Math.toRadians(p[1]));
              Vector3D u2 = Directions.unit(Math.toRadians(p[2]), Math.toRadians(p[3]));
              Vector3D load = Resultant.ofLegsN(p[4], u1, p[5], u2);
              Vector3D twice = Resultant.ofLegsN(2 * p[4], u1, 2 * p[5], u2);
              assertEquals(0, twice.distance(load.scalarMultiply(2)), 1e-8);
              assertEquals(0, Resultant.ofLegsN(p[5], u2, p[4], u1).distance(load), 1e-8);
            });
  }

  /** Legs 60 degrees above and below the axis cancel square to it when they pull alike. */
  @Test
  void evenLegsLieAlongTheAxisBetweenThem() {
    Vector3D up = Directions.unit(Math.toRadians(60), 0);
    Vector3D down = Directions.unit(Math.toRadians(-60), 0);
    double nearest = Resultant.ratioNearestAxis(Vector3D.PLUS_I, up, down, new Interval(0.6, 1.7));
    assertEquals(1, nearest, 1e-12);
    // Where even pull is out of reach the nearer end counts.
    assertEquals(
        1.2, Resultant.ratioNearestAxis(Vector3D.PLUS_I, up, down, new Interval(1.2, 1.7)));
    assertEquals(
        0.8, Resultant.ratioNearestAxis(Vector3D.PLUS_I, up, down, new Interval(0.6, 0.8)));
  }

  @Test
  void legsThatCancelLieAlongNothing() {
    Interval even = Interval.at(1);
    assertEquals(
        1, Resultant.ratioNearestAxis(Vector3D.PLUS_I, Vector3D.PLUS_I, Vector3D.MINUS_I, even));
    assertEquals(
        2,
        Resultant.ratioNearestAxis(
            Vector3D.PLUS_I, Vector3D.PLUS_I, Vector3D.MINUS_I, new Interval(1, 2)));
  }

  @Test
  void noOtherRatioLiesNearerToTheAxis() {
    Samples.over(-90, 90, -180, 180, -90, 90, -180, 180, -90, 90, 0, 1)
        .each(
            p -> {
              Vector3D u1 = Directions.unit(Math.toRadians(p[0]), Math.toRadians(p[1]));
              Vector3D u2 = Directions.unit(Math.toRadians(p[2]), Math.toRadians(p[3]));
              Vector3D axis = LimbAxes.ofRise(Math.toRadians(p[4])).along();
              Interval ratio =
                  Capstan.tensionRatio(p[5], Resultant.wrapRad(Resultant.insideRad(u1, u2)));
              double nearest = Resultant.ratioNearestAxis(axis, u1, u2, ratio);
              assertTrue(ratio.contains(nearest));
              double share = alongShare(axis, u1, u2, nearest);
              for (int step = 0; step <= 40; step++) {
                double other = ratio.low() * Math.pow(ratio.high() / ratio.low(), step / 40.0);
                assertTrue(alongShare(axis, u1, u2, other) <= share + 1e-9, "nearer at " + other);
              }
            });
  }

  private static double alongShare(Vector3D axis, Vector3D u1, Vector3D u2, double ratio) {
    Vector3D load = Resultant.ofLegsN(1, u1, ratio, u2);
    return load.getNorm() > 0 ? Math.abs(load.dotProduct(axis)) / load.getNorm() : 0;
  }

  @Test
  void straightThroughAndTogether() {
    assertEquals(0, Resultant.sizeN(700, 700, Math.PI), 1e-10);
    assertEquals(300, Resultant.sizeN(1000, 700, Math.PI), 1e-10);
    assertEquals(1700, Resultant.sizeN(1000, 700, 0), 1e-10);
    assertEquals(0, Resultant.leanRad(0, 0, 1));
    assertEquals(1, Resultant.leanRad(0, 5, 1), 1e-15);
    assertEquals(Math.PI, Resultant.wrapRad(0));
    assertEquals(0, Resultant.wrapRad(Math.PI));
  }

  @Test
  void refusesDirectionsThatAreNotUnits() {
    Vector3D unit = Vector3D.PLUS_I;
    for (Vector3D bad :
        new Vector3D[] {
          Vector3D.ZERO, new Vector3D(1.00001, 0, 0), new Vector3D(0.99999, 0, 0), Vector3D.NaN
        }) {
      assertThrows(IllegalArgumentException.class, () -> Resultant.ofLegsN(1, bad, 1, unit));
      assertThrows(IllegalArgumentException.class, () -> Resultant.ofLegsN(1, unit, 1, bad));
      assertThrows(IllegalArgumentException.class, () -> Resultant.insideRad(bad, unit));
      assertThrows(IllegalArgumentException.class, () -> Resultant.insideRad(unit, bad));
      Interval even = Interval.at(1);
      assertThrows(
          IllegalArgumentException.class, () -> Resultant.ratioNearestAxis(bad, unit, unit, even));
      assertThrows(
          IllegalArgumentException.class, () -> Resultant.ratioNearestAxis(unit, bad, unit, even));
      assertThrows(
          IllegalArgumentException.class, () -> Resultant.ratioNearestAxis(unit, unit, bad, even));
    }
  }

  @Test
  void refusesATensionRatioBelowZero() {
    Interval below = new Interval(-0.1, 1);
    assertThrows(
        IllegalArgumentException.class,
        () -> Resultant.ratioNearestAxis(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K, below));
  }

  private static org.apache.commons.geometry.euclidean.threed.Vector3D other(Vector3D v) {
    return org.apache.commons.geometry.euclidean.threed.Vector3D.of(v.getX(), v.getY(), v.getZ());
  }
}
