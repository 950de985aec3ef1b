package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class SlingGripTest {
  private static final int STEPS = 4000;

  /** By hand: mu 0.2, one turn, a right angle: phi = 4.7124, x = e^-0.66643 = 0.51354. */
  @Test
  void oneTurnByHand() {
    assertEquals(432.74, SlingGrip.chokeN(1000, 0.2, 1, Math.PI / 2), 0.01);
  }

  /** By hand: mu 0.3 over a quarter turn a leg: 1 - e^-0.33322 = 0.28339. */
  @Test
  void basketByHand() {
    assertEquals(283.39, SlingGrip.basketN(1000, 0.3, 0), 0.01);
  }

  @Test
  void capstanCountByHand() {
    // The ratios of source 4 with more figures: e^0.4pi and e^0.2pi.
    assertEquals(1000 * (1 - 1 / 3.51359), SlingGrip.capstanCountN(1000, 0.2, 1), 0.01);
    assertEquals(1000 * (1 - 1 / 1.87446), SlingGrip.capstanCountN(1000, 0.2, 0.5), 0.01);
    assertEquals(0, SlingGrip.capstanCountN(1000, 0.2, 0));
  }

  /**
   * Friction is laid step by step round the limb at 45 degrees; then the two parts of the loop are
   * added as vectors to find what square pull goes with it.
   */
  @Test
  void chokeAgreesWithLayingTheFrictionByHand() {
    Samples.over(0.02, 1, 1, 5, 0, 90)
        .each(
            p -> {
              double loop = Math.toRadians(p[2]);
              double contact = 2 * Math.PI * (p[1] - 1) + Math.PI + loop;
              Laid laid = lay(p[0], 1, contact);
              double square = balanced(1, laid.endTension(), loop);
              double expected = laid.along() / square;
              assertEquals(expected, SlingGrip.chokeN(1, p[0], p[1], loop), 2e-5);
            });
  }

  @Test
  void basketAgreesWithLayingTheFrictionByHand() {
    Samples.over(0.02, 1, 0, 170)
        .each(
            p -> {
              double included = Math.toRadians(p[1]);
              Laid oneLeg = lay(p[0], 1, (Math.PI - included) / 2);
              double square = balanced(1, 1, included);
              assertEquals(2 * oneLeg.along() / square, SlingGrip.basketN(1, p[0], included), 2e-5);
            });
  }

  /** Using less of the friction round the limb leaves more tension, and that holds more. */
  @Test
  void fullFrictionRoundTheLimbIsTheLeastGrip() {
    Samples.over(0.02, 1, 1, 5, 0, 90, 0.01, 1)
        .each(
            p -> {
              double loop = Math.toRadians(p[2]);
              double contact = 2 * Math.PI * (p[1] - 1) + Math.PI + loop;
              double each = p[0] / Math.sqrt(2);
              double left = Math.exp(-p[3] * each * contact);
              double along = (1 - left) / p[3];
              double grip = along / balanced(1, left, loop);
              assertTrue(SlingGrip.chokeN(1, p[0], p[1], loop) <= grip + 1e-9);
            });
  }

  @Test
  void theLowerBoundIsNeverAboveTheUpperOne() {
    Samples.over(0, 2, 1, 20, 0, 90, -8000, 8000, -8000, 8000, -8000, 8000)
        .each(
            p -> {
              LimbLoad load = new LimbLoad(p[3], p[4], p[5]);
              double upper = SlingGrip.capstanCountN(load.sizeN(), p[0], p[1]);
              double choke =
                  SlingGrip.chokeN(load.perpendicularN(), p[0], p[1], Math.toRadians(p[2]));
              assertTrue(choke <= upper * (1 + 1e-12), "choke");
              // The figure that takes the first turn's tension for the square pull lies between.
              double between =
                  load.perpendicularN() * (1 - Math.exp(-2 * Math.PI * p[1] * p[0] / Math.sqrt(2)));
              assertTrue(choke <= between * (1 + 1e-12), "between");
              double halfTurn = SlingGrip.capstanCountN(load.sizeN(), p[0], 0.5);
              double basket =
                  SlingGrip.basketN(load.perpendicularN(), p[0], 1.9 * Math.toRadians(p[2]));
              assertTrue(basket <= halfTurn * (1 + 1e-12), "basket");
            });
  }

  @Test
  void moreTurnsMoreFrictionATighterLoopNeverHoldLess() {
    Samples.over(0, 1.9, 1, 19, 0, 89)
        .each(
            p -> {
              double loop = Math.toRadians(p[2]);
              double here = SlingGrip.chokeN(1, p[0], p[1], loop);
              assertTrue(SlingGrip.chokeN(1, p[0] + 0.1, p[1], loop) >= here);
              assertTrue(SlingGrip.chokeN(1, p[0], p[1] + 1, loop) >= here);
              assertTrue(SlingGrip.chokeN(1, p[0], p[1], loop + 0.01) >= here);
              assertTrue(here <= 1);
            });
  }

  /** Up to 120 degrees and with the friction of bark; very wide legs press harder again. */
  @Test
  void spreadLegsHoldLess() {
    Samples.over(0.01, 0.5, 0, 119)
        .each(
            p -> {
              double included = Math.toRadians(p[1]);
              double here = SlingGrip.basketN(1, p[0], included);
              assertTrue(SlingGrip.basketN(1, p[0], included + 0.01) < here);
            });
  }

  @Test
  void moreFrictionNeverLoosensABasket() {
    Samples.over(0, 1.9, 0, 178)
        .each(
            p -> {
              double included = Math.toRadians(p[1]);
              double here = SlingGrip.basketN(1, p[0], included);
              assertTrue(SlingGrip.basketN(1, p[0] + 0.1, included) >= here);
            });
  }

  /** Wide legs on a very rough limb: e^-2pi is 0.0018674, so the count over half a turn is less. */
  @Test
  void aBasketIsCreditedWithNoMoreThanTheCount() {
    assertEquals(998.13, SlingGrip.basketN(1000, 2, Math.toRadians(150)), 0.01);
  }

  @Test
  void nothingIsHeldWithoutFrictionOrSquarePull() {
    assertEquals(0, SlingGrip.chokeN(1000, 0, 3, 1));
    assertEquals(0, SlingGrip.basketN(1000, 0, 1));
    assertEquals(0, SlingGrip.chokeN(0, 0.4, 3, 1));
    assertEquals(0, SlingGrip.basketN(0, 0.4, 1));
    assertEquals(0, SlingGrip.capstanCountN(0, 0.4, 1));
  }

  @Test
  void gripGrowsWithThePull() {
    assertEquals(7 * SlingGrip.chokeN(100, 0.3, 2, 1), SlingGrip.chokeN(700, 0.3, 2, 1), 1e-9);
    assertEquals(7 * SlingGrip.basketN(100, 0.3, 1), SlingGrip.basketN(700, 0.3, 1), 1e-9);
  }

  private record Laid(double along, double endTension) {}

  /** Small steps; at each the friction vector at 45 degrees, as long as the cone allows. */
  private static Laid lay(double friction, double tension, double contactRad) {
    double step = contactRad / STEPS;
    double along = 0;
    double left = tension;
    for (int i = 0; i < STEPS; i++) {
      // The tension at the middle of the step, found from its own loss.
      double middle = left / (1 + friction * Math.sin(Math.PI / 4) * step / 2);
      Vector2D held = new Vector2D(friction * middle * step, turned(Math.PI / 4));
      left -= held.getX();
      along += held.getY();
    }
    return new Laid(along, left);
  }

  private static Vector2D turned(double angleRad) {
    return new Vector2D(Math.cos(angleRad), Math.sin(angleRad));
  }

  /** The size of the pull that two tensions with an angle between them can balance. */
  private static double balanced(double first, double second, double betweenRad) {
    return new Vector2D(first, turned(0), second, turned(betweenRad)).getNorm();
  }

  @Test
  void theStepsAreFineEnough() {
    // A closed value of its own: half the tension is lost when m phi = ln 2.
    double contact =
        new BrentSolver(1e-12).solve(100, phi -> lay(0.3, 1, phi).endTension() - 0.5, 0.1, 10);
    assertEquals(Math.log(2) / (0.3 / Math.sqrt(2)), contact, 1e-5);
  }
}
