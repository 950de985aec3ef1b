package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import rigspeak.mechanics.Arrival.Clear;
import rigspeak.mechanics.Arrival.Reached;

class PendulumTest {
  private static final double G = 9.80665;

  @ParameterizedTest
  @PublishedTable("swing-tension.csv")
  void tensionAtTheLowestPoint(PublishedTable.Row row) {
    double ropeM = row.number("rope_m");
    double startRad =
        row.has("start_deg")
            ? row.degrees("start_deg")
            : Math.acos(1 - row.number("drop_m") / ropeM);
    double weights =
        WorkingSwing.ofOffset(ropeM, ropeM * Math.sin(startRad)).lowestTensionInWeights();
    assertEquals(
        row.number("tension_n"), row.number("weight_n") * weights, row.number("tolerance_n"));
  }

  @ParameterizedTest
  @PublishedTable("swing-speed.csv")
  void speedAtTheLowestPoint(PublishedTable.Row row) {
    Pendulum swing =
        WorkingSwing.ofLeg(
            row.number("rope_m"), Directions.unit(row.degrees("start_deg") - Math.PI / 2, 1.2));
    assertEquals(row.number("speed_ms"), swing.lowestSpeedMS(), row.number("tolerance_ms"));
  }

  /** Source 22: 56 kg at 4.2 m/s on 10.0 m, worked out with 9.8 m/s2: 24.5 degrees, 499, 648 N. */
  @Test
  void fromTheLowestPointWithASpeed() {
    Pendulum swing = new Pendulum(10, 0, 4.2);
    double endRad = assertInstanceOf(SwingEnd.Turns.class, swing.end()).fromPlumbRad();
    double weightN = 56 * 9.8;
    assertEquals(24.5, Math.toDegrees(endRad), 0.05);
    assertEquals(499, weightN * swing.tensionInWeights(endRad), 0.5);
    assertEquals(648, weightN * swing.lowestTensionInWeights(), 0.5);
    assertEquals(10 * Math.sin(endRad), swing.farOutM(), 1e-12);
  }

  /**
   * Source 22, rope of 10 m from 60 degrees: half way down (t = 45 to the plumb line, say) the fall
   * is 10 (cos 45 - cos 60), the speed that of a free fall of as much.
   */
  @Test
  void arrivesOnTheWayDown() {
    Pendulum swing = WorkingSwing.ofOffset(10, 10 * Math.sin(Math.PI / 3));
    double distanceM = 10 * (Math.sqrt(3) - Math.sqrt(2)) / 2;
    Reached reached = assertInstanceOf(Reached.class, swing.arrivalAt(distanceM));
    double fallM = 10 * (Math.sqrt(2) - 1) / 2;
    assertEquals(45, Math.toDegrees(reached.fromPlumbRad()), 1e-9);
    assertEquals(fallM, reached.equivalentFallM(), 1e-9);
    assertEquals(fallM, reached.belowStartM(), 1e-9);
    assertEquals(Math.sqrt(2 * G * fallM), reached.speedMS(), 1e-9);
  }

  @Test
  void arrivesAtTheLowestPointAsFastAsItGets() {
    Samples.over(1, 40, 0.001, 1, 0, 15)
        .each(
            p -> {
              Pendulum swing = new Pendulum(p[0], Math.asin(p[1]), p[2]);
              Reached lowest = assertInstanceOf(Reached.class, swing.arrivalAt(swing.outM()));
              assertEquals(swing.lowestSpeedMS(), lowest.speedMS(), 1e-9);
              assertEquals(swing.lowestEquivalentFallM(), lowest.equivalentFallM(), 1e-9);
              assertEquals(swing.startHeightM(), lowest.belowStartM(), 1e-9);
              Reached first = assertInstanceOf(Reached.class, swing.arrivalAt(0));
              assertEquals(p[2], first.speedMS(), 1e-6);
              assertEquals(0, first.belowStartM(), 1e-9);
            });
  }

  /** From rest the far side mirrors the near one; a little farther is out of reach. */
  @Test
  void reachesAsFarAsItGoes() {
    Samples.over(1, 40, 0.001, 1)
        .each(
            p -> {
              Pendulum swing = WorkingSwing.ofOffset(p[0], p[0] * p[1]);
              assertEquals(swing.outM(), swing.farOutM(), 1e-7 * p[0]);
              double mirroredM = swing.outM() + swing.farOutM();
              Reached end = assertInstanceOf(Reached.class, swing.arrivalAt(mirroredM));
              assertEquals(0, end.speedMS(), 1e-3);
              Clear clear = assertInstanceOf(Clear.class, swing.arrivalAt(mirroredM + 0.3));
              assertEquals(0.3, clear.spareM(), 1e-9);
            });
  }

  @Test
  void tensionIsThatOfThePublishedFormula() {
    Samples.over(1, 40, 0, 90, -1, 1)
        .each(
            p -> {
              double startRad = Math.toRadians(p[1]);
              double atRad = startRad * p[2];
              assertEquals(
                  3 * Math.cos(atRad) - 2 * Math.cos(startRad),
                  new Pendulum(p[0], startRad, 0).tensionInWeights(atRad),
                  1e-12);
            });
  }

  /**
   * Source 22. A climber who passes the lowest point at v^2 = 3 g L leaves the circle where the
   * tension is gone: cos t = (2 - 3)/3. At 5 g L the rope just stays taut at the top.
   */
  @Test
  void passesTheHeightOfTheSupport() {
    SwingEnd.GoesSlack slack =
        assertInstanceOf(
            SwingEnd.GoesSlack.class, new Pendulum(10, 0, Math.sqrt(3 * G * 10)).end());
    assertEquals(Math.acos(-1.0 / 3), slack.fromPlumbRad(), 1e-12);
    assertEquals(10, new Pendulum(10, 0, Math.sqrt(3 * G * 10)).farOutM(), 0);
    assertInstanceOf(SwingEnd.GoesSlack.class, new Pendulum(10, 0, Math.sqrt(4.99 * G * 10)).end());
    SwingEnd round = new Pendulum(10, 0, Math.sqrt(5.01 * G * 10)).end();
    assertEquals(Math.PI, assertInstanceOf(SwingEnd.GoesRound.class, round).fromPlumbRad());
    assertInstanceOf(SwingEnd.Turns.class, new Pendulum(10, 0, Math.sqrt(1.99 * G * 10)).end());
    assertInstanceOf(SwingEnd.Turns.class, new Pendulum(10, Math.PI / 2, 0).end());
  }

  /**
   * Source 22. As fast at the lowest point as a fall from the height of the support makes it, the
   * climber comes to rest level with the support; with the speed of a fall of 5/2 of the rope the
   * rope is just taut at the top. Both heights come out of their division without rounding.
   */
  @Test
  void theLastSwingThatTurnsAndTheFirstThatGoesRound() {
    double fallM = 14.0 * 14.0 / (2 * G);
    SwingEnd level = new Pendulum(fallM, 0, 14).end();
    assertEquals(Math.PI / 2, assertInstanceOf(SwingEnd.Turns.class, level).fromPlumbRad(), 1e-12);
    assertEquals(new SwingEnd.GoesRound(Math.PI), new Pendulum(fallM / 2.5, 0, 14).end());
  }

  /** What is a rounding depends on the rope: a thousand-millionth of it. */
  @Test
  void anObstacleThatIsMissedByARoundingIsReached() {
    for (double ropeM : new double[] {0.5, 10, 60}) {
      Pendulum swing = new Pendulum(ropeM, Math.PI / 3, 0);
      double mostM = swing.outM() + swing.farOutM();
      assertInstanceOf(Reached.class, swing.arrivalAt(mostM + 0.5e-9 * ropeM));
      assertInstanceOf(Clear.class, swing.arrivalAt(mostM + 2e-9 * ropeM));
    }
  }

  @Test
  void fartherOutIsNeverSofter() {
    Samples.over(1, 40, 0, 0.95)
        .each(
            p -> {
              Pendulum here = WorkingSwing.ofOffset(p[0], p[0] * p[1]);
              Pendulum farther = WorkingSwing.ofOffset(p[0], p[0] * (p[1] + 0.05));
              assertTrue(farther.lowestSpeedMS() > here.lowestSpeedMS());
              assertTrue(farther.lowestTensionInWeights() > here.lowestTensionInWeights());
              assertTrue(farther.farOutM() > here.farOutM());
            });
  }

  @Test
  void aPlumbRopeHangsStill() {
    Pendulum still = WorkingSwing.ofLeg(8, Vector3D.MINUS_K);
    assertEquals(0, still.lowestSpeedMS());
    assertEquals(1, still.lowestTensionInWeights());
    assertEquals(new Clear(2), still.arrivalAt(2));
    assertEquals(new Reached(0, 0, 0, 0), still.arrivalAt(0));
  }
}
