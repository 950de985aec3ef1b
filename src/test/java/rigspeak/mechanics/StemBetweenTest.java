package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class StemBetweenTest {
  @ParameterizedTest
  @PublishedTable("stem-between.csv")
  void workedPositions(PublishedTable.Row row) {
    StemBetween stem =
        new StemBetween(
            LimbAxes.ofRise(row.degrees("rise_deg")).along(),
            row.number("out_m"),
            Directions.unit(row.degrees("leg_elevation_deg"), row.degrees("leg_bearing_deg")),
            row.number("leg_m"));
    SectionLoad load =
        stem.throughMain(
            row.number("tension_n"),
            row.number("anchor_tension_n"),
            row.degrees("anchor_elevation_deg"));
    assertClose(row.number("axial_n"), load.axialN());
    assertClose(row.number("bending_nm"), load.bendingNm());
    assertClose(row.number("shear_n"), load.shearN());
    assertClose(row.number("torsion_nm"), load.torsionNm());
    if (row.number("anchor_tension_n") == 0) {
      assertEquals(load, stem.endedAtMain(row.number("tension_n")));
    }
  }

  /** To the eight figures of the table. */
  private static void assertClose(double expected, double actual) {
    assertEquals(expected, actual, 1e-6 + 1e-7 * Math.abs(expected));
  }

  /**
   * By hand: a main point 6 m plumb above the union, the sling 2 m out on a level limb, 1 kN in the
   * leg. The point is pulled down by 3/sqrt 10 and toward the tip by 1/sqrt 10 kN.
   */
  @Test
  void plumbAboveTheUnionByHand() {
    Vector3D leg = new Vector3D(-2, 0, 6).normalize();
    SectionLoad load = new StemBetween(Vector3D.PLUS_I, 2, leg, Math.sqrt(40)).endedAtMain(1000);
    assertEquals(-948.683, load.axialN(), 0.001);
    assertEquals(316.228, load.shearN(), 0.001);
    assertEquals(-1897.367, load.topMomentNm(), 0.001);
    assertEquals(0, load.sideMomentNm(), 1e-9);
    assertEquals(0, load.torsionNm(), 1e-9);
  }

  /** To the left of the limb the point is bent to the right: the rope pulls it back. */
  @Test
  void signs() {
    Vector3D leg = new Vector3D(-2, 0.5, 6).normalize();
    SectionLoad load = new StemBetween(Vector3D.PLUS_I, 2, leg, 6).endedAtMain(1000);
    assertTrue(load.sideMomentNm() == 0 && load.topMomentNm() < 0, "the sling is in the plane");
    Vector3D left = Directions.unit(0, Math.PI / 2);
    Vector3D back = new Vector3D(0, -2, 6).normalize();
    SectionLoad toTheLeft = new StemBetween(left, 2, back, 6).endedAtMain(1000);
    assertTrue(toTheLeft.sideMomentNm() > 0);
    assertEquals(0, toTheLeft.topMomentNm(), 1e-9);
  }

  /** The moment and the force of both pulls, at each bearing of the anchor's leg. */
  @Test
  void noBearingIsWorseAndOneIsAsBad() {
    stems(
        (stem, p) -> {
          SectionLoad load = stem.throughMain(p[5], p[6], p[7]);
          Vector3D main =
              stem.limbAxis()
                  .scalarMultiply(stem.outM())
                  .add(stem.toMain().scalarMultiply(stem.legM()));
          double bendingNm = 0;
          double torsionNm = 0;
          double shearN = 0;
          for (int degree = 0; degree < 360; degree++) {
            Vector3D force =
                stem.toMain()
                    .scalarMultiply(-p[5])
                    .add(Directions.unit(p[7], Math.toRadians(degree)).scalarMultiply(p[6]));
            Vector3D moment = main.crossProduct(force);
            bendingNm = Math.max(bendingNm, Math.hypot(moment.getX(), moment.getY()));
            torsionNm = Math.max(torsionNm, Math.abs(moment.getZ()));
            shearN = Math.max(shearN, Math.hypot(force.getX(), force.getY()));
          }
          assertMet(bendingNm, load.bendingNm());
          assertMet(torsionNm, load.torsionNm());
          assertMet(shearN, load.shearN());
          double netN = p[6] * Math.sin(p[7]) - p[5] * stem.toMain().getZ();
          assertTrue(Math.abs(load.axialN()) >= Math.abs(netN) - 1e-9);
        });
  }

  /** Never less than what was found, and no more than a degree between two bearings can hide. */
  private static void assertMet(double found, double actual) {
    assertTrue(actual >= found - 1e-9 * (1 + found), actual + " is less than " + found);
    assertTrue(actual <= found / Math.cos(Math.toRadians(0.5)) + 1e-6, actual + " for " + found);
  }

  @Test
  void mirroringMirrorsTheAnswer() {
    stems(
        (stem, p) -> {
          StemBetween mirrored =
              new StemBetween(mirror(stem.limbAxis()), stem.outM(), mirror(stem.toMain()), p[4]);
          SectionLoad here = stem.throughMain(p[5], p[6], p[7]);
          SectionLoad there = mirrored.throughMain(p[5], p[6], p[7]);
          assertEquals(here.axialN(), there.axialN(), 1e-9);
          assertEquals(here.topMomentNm(), there.topMomentNm(), 1e-9);
          assertEquals(-here.sideMomentNm(), there.sideMomentNm(), 1e-9);
          assertEquals(here.eccentricMomentNm(), there.eccentricMomentNm(), 1e-9);
          assertEquals(here.shearN(), there.shearN(), 1e-9);
          assertEquals(here.torsionNm(), there.torsionNm(), 1e-9);
        });
  }

  private static Vector3D mirror(Vector3D v) {
    return new Vector3D(v.getX(), -v.getY(), v.getZ());
  }

  @Test
  void turningTheSceneChangesNothing() {
    stems(
        (stem, p) -> {
          SectionLoad here = stem.throughMain(p[5], p[6], p[7]);
          SectionLoad there =
              new StemBetween(
                      turn(stem.limbAxis(), p[3]), stem.outM(), turn(stem.toMain(), p[3]), p[4])
                  .throughMain(p[5], p[6], p[7]);
          assertEquals(here.axialN(), there.axialN(), 1e-6);
          assertEquals(here.bendingNm(), there.bendingNm(), 1e-6);
          assertEquals(here.shearN(), there.shearN(), 1e-6);
          assertEquals(here.torsionNm(), there.torsionNm(), 1e-6);
        });
  }

  private static Vector3D turn(Vector3D v, double angle) {
    return new Vector3D(
        v.getX() * Math.cos(angle) - v.getY() * Math.sin(angle),
        v.getX() * Math.sin(angle) + v.getY() * Math.cos(angle),
        v.getZ());
  }

  @Test
  void doubledTensionsDoubleEverything() {
    stems(
        (stem, p) -> {
          SectionLoad once = stem.throughMain(p[5], p[6], p[7]);
          SectionLoad twice = stem.throughMain(2 * p[5], 2 * p[6], p[7]);
          assertEquals(2 * once.axialN(), twice.axialN(), 1e-6);
          assertEquals(2 * once.bendingNm(), twice.bendingNm(), 1e-6);
          assertEquals(2 * once.shearN(), twice.shearN(), 1e-6);
          assertEquals(2 * once.torsionNm(), twice.torsionNm(), 1e-6);
        });
  }

  @Test
  void partsThatAgreeAddAndPartsThatOpposeDoNot() {
    StemBetween below = new StemBetween(Vector3D.PLUS_I, 2, Directions.unit(-1, 3), 1);
    assertTrue(below.endedAtMain(500).axialN() > 0, "pulled up");
    StemBetween above = new StemBetween(Vector3D.PLUS_I, 2, Vector3D.PLUS_K, 5);
    assertEquals(-800, above.throughMain(500, 800, Math.PI / 2).axialN(), 1e-9);
    assertEquals(-500, above.throughMain(500, 300, Math.PI / 2).axialN(), 1e-9);
    assertEquals(-800, above.throughMain(500, 300, -Math.PI / 2).axialN(), 1e-9);
  }

  @Test
  void refusesDirectionsThatAreNotOfLengthOne() {
    Vector3D longer = new Vector3D(1.1, 0, 0);
    assertThrows(
        IllegalArgumentException.class, () -> new StemBetween(longer, 1, Vector3D.PLUS_K, 1));
    assertThrows(
        IllegalArgumentException.class, () -> new StemBetween(Vector3D.PLUS_I, 1, longer, 1));
  }

  private interface Check {
    void of(StemBetween stem, double[] p);
  }

  /** Rise, distance out, the leg's elevation and bearing and length, tensions, the anchor's leg. */
  private static void stems(Check check) {
    Samples.over(-1, 1.7, 0, 10, 0.2, 1.7, -3.1, 3.1, 0.5, 20, 0, 3000, 0, 3000, -1.57, 1.5)
        .first(
            2048,
            p ->
                check.of(
                    new StemBetween(
                        LimbAxes.ofRise(p[0]).along(), p[1], Directions.unit(p[2], p[3]), p[4]),
                    p));
  }
}
