package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class StressTest {
  @ParameterizedTest
  @PublishedTable("combined-stress.csv")
  void combinedStress(PublishedTable.Row row) {
    SectionStress stress =
        RoundSection.solid(row.number("diameter_mm") / 1000)
            .under(
                new SectionLoad(
                    row.number("axial_n"),
                    0,
                    row.number("moment_nm"),
                    0,
                    0,
                    row.number("torsion_nm")));
    double tolerance = row.number("tolerance_mpa");
    PrincipalStress principal = PrincipalStress.of(stress.mostStretchedPa(), stress.shearPa());
    assertEquals(row.number("normal_mpa"), stress.mostStretchedPa() / 1e6, tolerance);
    assertEquals(row.number("shear_mpa"), stress.shearPa() / 1e6, tolerance);
    assertEquals(row.number("largest_mpa"), principal.largestPa() / 1e6, tolerance);
    assertEquals(row.number("smallest_mpa"), principal.smallestPa() / 1e6, tolerance);
    assertEquals(row.number("largest_shear_mpa"), principal.largestShearPa() / 1e6, tolerance);
  }

  /** Source 6: 12 kN m and 50 kN m within 80 MPa of shear need 148.5 mm. */
  @Test
  void shaftForAMomentAndATorque() {
    double diameter =
        new BrentSolver(1e-9)
            .solve(
                100,
                d -> {
                  SectionStress stress =
                      RoundSection.solid(d).under(new SectionLoad(0, 12e3, 0, 0, 0, 50e3));
                  return PrincipalStress.of(stress.bendingPa(), stress.shearPa()).largestShearPa()
                      - 80e6;
                },
                0.05,
                0.5);
    assertEquals(148.5, diameter * 1000, 0.05);
  }

  @Test
  void agreesWithTheEigenvaluesOfTheStressTensor() {
    Samples.over(-200, 200, -200, 200)
        .each(
            p -> {
              double[] eigen =
                  new EigenDecomposition(
                          new Array2DRowRealMatrix(new double[][] {{p[0], p[1]}, {p[1], 0}}))
                      .getRealEigenvalues();
              PrincipalStress principal = PrincipalStress.of(p[0], p[1]);
              assertEquals(Math.max(eigen[0], eigen[1]), principal.largestPa(), 1e-9);
              assertEquals(Math.min(eigen[0], eigen[1]), principal.smallestPa(), 1e-9);
            });
  }

  @Test
  void pureShearPullsAndPushesAlike() {
    PrincipalStress principal = PrincipalStress.of(0, -5);
    assertEquals(5, principal.largestPa());
    assertEquals(-5, principal.smallestPa());
    assertEquals(5, principal.largestShearPa());
  }

  @Test
  void bendingStretchesOneSideAndPressesTheOther() {
    SectionStress stress = new SectionStress(-3, 5, 1);
    assertEquals(2, stress.mostStretchedPa());
    assertEquals(-8, stress.mostCompressedPa());
  }

  /** 3 and 4 make 5; the moment of unknown direction comes on top. */
  @Test
  void momentsOfTwoAxesMakeOne() {
    assertEquals(5, new SectionLoad(0, -3, 4, 0, 0, 0).bendingNm(), 1e-15);
    assertEquals(7, new SectionLoad(0, 3, -4, 2, 0, 0).bendingNm(), 1e-15);
    SectionStress stress = RoundSection.solid(0.1).under(new SectionLoad(0, 3, -4, 2, 0, 0));
    // 32 M / pi d^3 with M = 7, by hand.
    assertEquals(71301.41, stress.bendingPa(), 0.01);
  }

  @Test
  void refusesSwappedPrincipalStresses() {
    assertThrows(IllegalArgumentException.class, () -> new PrincipalStress(1, 2));
    assertEquals(0, new PrincipalStress(2, 2).largestShearPa());
  }
}
