package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EulerColumnTest {
  /** 150 mm, 8.6 GPa, 3 m by hand: I = 2.48505e-5 m4, so pi^2 213,714 / 36 = 58.59 kN. */
  @Test
  void byHand() {
    assertEquals(
        58.59, EulerColumn.criticalLoadN(RoundSection.solid(0.15), 8.6e9, 3) / 1000, 0.005);
  }

  /** The force at which a bowed shape, held at the union, ends without moment at the sling. */
  @ParameterizedTest
  @CsvSource({"0.06, 0, 4e9, 4", "0.15, 0, 8.6e9, 3", "0.15, 0.7, 8.6e9, 3", "0.3, 0.4, 1e10, 7"})
  void agreesWithShootingForTheFreeEnd(
      double diameter, double hollow, double modulus, double length) {
    RoundSection section = new RoundSection(diameter, hollow);
    double stiffness =
        modulus * Math.PI / 4 * (Math.pow(diameter / 2, 4) - Math.pow(hollow * diameter / 2, 4));
    double scale = stiffness / (length * length);
    double found =
        new BrentSolver(1e-12).solve(200, share -> slopeChangeAtEnd(share, length), 0.5, 9) * scale;
    assertEquals(found, EulerColumn.criticalLoadN(section, modulus, length), 1e-7 * found);
  }

  /**
   * Slope s of the bowed shape: s'' = -(P / E I) s, s(0) = 0; the bending s' dies at the free end.
   */
  private static double slopeChangeAtEnd(double share, double length) {
    double[] state = {0, 1};
    new DormandPrince853Integrator(1e-6, length / 5, 1e-12, 1e-12)
        .integrate(
            new FirstOrderDifferentialEquations() {
              @Override
              public int getDimension() {
                return 2;
              }

              @Override
              public void computeDerivatives(double x, double[] y, double[] slope) {
                slope[0] = y[1];
                slope[1] = -share / (length * length) * y[0];
              }
            },
            0,
            state,
            length,
            state);
    return state[1];
  }

  @Test
  void aPushTakesStiffness() {
    assertEquals(1, EulerColumn.stiffnessLeft(0, 500));
    assertEquals(0.75, EulerColumn.stiffnessLeft(125, 500));
    assertEquals(0, EulerColumn.stiffnessLeft(500, 500));
    assertEquals(-1, EulerColumn.stiffnessLeft(1000, 500));
  }
}
