package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.quantity.Interval;

class CapstanTest {
  @ParameterizedTest
  @PublishedTable("capstan.csv")
  void ratio(PublishedTable.Row row) {
    double turn = 2 * Math.PI * row.number("turns");
    double printed = row.number("ratio");
    assertEquals(
        printed, Capstan.largestRatio(row.number("friction"), turn), row.number("tolerance"));
    Interval both = Capstan.tensionRatio(row.number("friction"), turn);
    assertEquals(printed, both.high(), row.number("tolerance"));
    assertEquals(1, both.low() * both.high(), 1e-12);
  }

  @ParameterizedTest
  @PublishedTable("hardware-friction.csv")
  void frictionOfHardware(PublishedTable.Row row) {
    double friction = Capstan.equivalentFriction(row.number("efficiency"));
    assertEquals(row.number("friction"), friction, row.number("tolerance"));
    assertEquals(row.number("efficiency"), Capstan.tensionRatio(friction, Math.PI).low(), 1e-12);
  }

  @Test
  void aPerfectPulleyHasNoFriction() {
    assertEquals(0.0, Capstan.equivalentFriction(1));
  }

  /** dT = mu T dphi, integrated step by step. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.2, 0.45})
  void agreesWithIntegratingTheFriction(double friction) {
    double[] tension = {1};
    new DormandPrince853Integrator(1e-6, 0.5, 1e-12, 1e-12)
        .integrate(
            new FirstOrderDifferentialEquations() {
              @Override
              public int getDimension() {
                return 1;
              }

              @Override
              public void computeDerivatives(double phi, double[] t, double[] slope) {
                slope[0] = friction * t[0];
              }
            },
            0,
            tension,
            7,
            tension);
    assertEquals(tension[0], Capstan.largestRatio(friction, 7), 1e-8 * tension[0]);
  }
}
