package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import rigspeak.quantity.Force;

class FallTest {
  private static final double G = 9.80665;

  @ParameterizedTest
  @PublishedTable("impact.csv")
  void impact(PublishedTable.Row row) {
    double modulus =
        row.has("modulus_n")
            ? row.number("modulus_n")
            : Impact.modulusN(100 * G, row.number("strain_percent") / 100);
    double peak = Impact.peakN(row.number("mass_kg") * G, modulus, row.number("fall_factor"));
    assertEquals(row.number("peak_kn"), peak / 1000, row.number("tolerance_kn"));
  }

  /**
   * Source 10 with k = W / strain: the peak is W (1 + sqrt(1 + 2 f / strain)). At 4 % and 0.3 the
   * root is 4 to the last digit, at 0 it is 1.
   */
  @Test
  void impactInWholeNumbers() {
    assertEquals(5000, Impact.peakN(1000, Impact.modulusN(1000, 0.04), 0.3), 1e-9);
    assertEquals(2000, Impact.peakN(1000, Impact.modulusN(1000, 0.04), 0), 1e-9);
  }

  @ParameterizedTest
  @PublishedTable("rope-modulus.csv")
  void ropeModulus(PublishedTable.Row row) {
    assertEquals(
        row.number("modulus_kn"),
        Impact.modulusN(row.number("added_kg") * G, row.number("strain_percent") / 100) / 1000,
        row.number("tolerance_kn"));
  }

  /** Sources 10 and 21, from memory: at most 7 % under 540 lbf, so at least 34.3 kN. */
  @Test
  void modulusOfAClimbingLine() {
    assertEquals(34.3, Impact.modulusN(Force.ofPoundsForce(540).newtons(), 0.07) / 1000, 0.05);
  }

  /** Source 10: test fall of 4.6 m on 2.6 m of rope. */
  @Test
  void fallFactorOfTheTestFall() {
    assertEquals(1.77, Impact.fallFactor(4.6, 2.6), 0.005);
    assertEquals(0, Impact.fallFactor(0, 2.6));
  }

  @Test
  void aSuddenLoadIsExactlyTwiceTheWeight() {
    Samples.over(1, 3000, 1, 200_000)
        .each(p -> assertEquals(2 * p[0], Impact.peakN(p[0], p[1], 0), 1e-9));
  }

  /** The rope takes up the weight times the whole way down, as a spring does. */
  @Test
  void agreesWithTheEnergyBalance() {
    Samples.over(200, 2000, 5000, 60_000, 0, 2)
        .each(
            p -> {
              double strain =
                  new BrentSolver(1e-14, 1e-14)
                      .solve(500, e -> p[1] * e * e / 2 - p[0] * (p[2] + e), p[0] / p[1], 50);
              assertEquals(p[1] * strain, Impact.peakN(p[0], p[1], p[2]), 1e-6 * p[1] * strain);
            });
  }

  @Test
  void aLongerFallOrAStifferRopeNeverSoftensIt() {
    Samples.over(200, 2000, 5000, 60_000, 0, 2)
        .each(
            p -> {
              double here = Impact.peakN(p[0], p[1], p[2]);
              assertTrue(Impact.peakN(p[0], p[1], p[2] + 0.05) > here);
              assertTrue(Impact.peakN(p[0], p[1] + 500, p[2]) >= here);
              assertTrue(Impact.peakN(p[0] + 10, p[1], p[2]) > here);
            });
  }

  @ParameterizedTest
  @PublishedTable("lost-support.csv")
  void slackOfALostSupport(PublishedTable.Row row) {
    assertEquals(
        row.number("slack_m"),
        LostSupport.slackM(
            row.number("anchor_leg_m"), row.number("climber_leg_m"), row.degrees("inside_deg")),
        0.0005);
  }

  @Test
  void slackAgreesWithPointsInSpace() {
    Samples.over(-90, 90, -180, 180, -90, 90, -180, 180, 0.1, 30, 0.1, 30)
        .each(
            p -> {
              Vector3D u1 = Directions.unit(Math.toRadians(p[0]), Math.toRadians(p[1]));
              Vector3D u2 = Directions.unit(Math.toRadians(p[2]), Math.toRadians(p[3]));
              Vector3D previous = u1.scalarMultiply(p[4]);
              Vector3D climber = u2.scalarMultiply(p[5]);
              double slack = LostSupport.slackM(p[4], p[5], Resultant.insideRad(u1, u2));
              assertEquals(p[4] + p[5] - previous.distance(climber), slack, 1e-6);
            });
  }

  @Test
  void slackAtItsEnds() {
    assertEquals(0, LostSupport.slackM(5, 3, Math.PI), 1e-15);
    assertEquals(6, LostSupport.slackM(5, 3, 0), 1e-12);
    assertEquals(6, LostSupport.slackM(3, 3, 0), 1e-7);
  }
}
