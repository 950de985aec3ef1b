package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.hearing.Acceptance.Evidence;

/** More that speaks for a row of words never makes the ear less sure of it. */
class AcceptanceTest {
  private static final Acceptance ACCEPTANCE =
      new ConfigurationManager(AcceptanceTest.class.getResource("/rigspeak/hearing/ear.xml"))
          .lookup("acceptance");

  private static final Evidence FAIR = new Evidence(20, 10, -10, -5, -1, 4, false, 30);

  private static void neverLess(DoubleFunction<Evidence> with, double... rising) {
    double before = 0;
    for (double value : rising) {
      double sure = ACCEPTANCE.surety(with.apply(value));
      assertTrue(sure >= before && sure <= 1, value + ": " + sure);
      before = sure;
    }
    assertTrue(before > ACCEPTANCE.surety(with.apply(rising[0])), "it counts");
  }

  @Test
  void theRivalFartherBehind() {
    neverLess(
        lead -> new Evidence(lead, 10, -10, -5, -1, 4, false, 30),
        Double.NEGATIVE_INFINITY,
        0,
        5,
        50,
        Double.POSITIVE_INFINITY);
  }

  @Test
  void otherSpeechFartherBehind() {
    neverLess(
        lead -> new Evidence(20, lead, -10, -5, -1, 4, false, 30), -1_000, -20, 0, 20, 1_000, 1e9);
  }

  @Test
  void wordsThatFitBetter() {
    neverLess(fit -> new Evidence(20, 10, -10, fit, -1, 4, false, 30), -30, -8, -2, 0);
  }

  @Test
  void aVoiceFartherAboveTheNoise() {
    neverLess(above -> FAIR.aboveNoise(above), 0, 10, 20, 50);
  }

  /** However well the words fit, in such noise they are asked back at best. */
  @Test
  void ofAVoiceThatTheNoiseNearlyDrownsNothingIsSure() {
    Evidence drowned = new Evidence(100, 100, 0, 0, 0, 5, false, 10.9);
    for (Caution caution : Caution.values()) {
      assertFalse(ACCEPTANCE.isSure(drowned, caution));
      assertTrue(ACCEPTANCE.isSure(drowned.aboveNoise(11.1), caution));
    }
    assertTrue(ACCEPTANCE.isWorthAsking(drowned, Caution.NORMAL));
  }

  /** "Seven" for "ten" when a number was asked for. */
  @ParameterizedTest
  @EnumSource
  void aBareAnswerHasToBeSurerThanAValueWithItsName(Caution caution) {
    Evidence named = new Evidence(70, 60, -10, -2.1, -1, 4, false, 30);
    Evidence bare = new Evidence(70, 60, -10, -2.1, -1, 1, true, 30);
    assertEquals(ACCEPTANCE.surety(named), ACCEPTANCE.surety(bare));
    assertTrue(ACCEPTANCE.surety(bare) < 0.95, "as sure as " + ACCEPTANCE.surety(bare));
    assertTrue(ACCEPTANCE.isSure(named, caution));
    assertFalse(ACCEPTANCE.isSure(bare, caution));
    assertEquals(caution != Caution.CAUTIOUS, ACCEPTANCE.isWorthAsking(bare, caution));
    assertTrue(ACCEPTANCE.isSure(new Evidence(100, 100, 0, 0, -1, 1, true, 30), caution));
  }

  @Test
  void ofABareAnswerIsAskedBackWhatIsMoreLikelyThanNot() {
    Evidence named = new Evidence(20, 10, -10, -3.3, -1, 4, false, 30);
    Evidence bare = new Evidence(20, 10, -10, -3.3, -1, 1, true, 30);
    double sure = ACCEPTANCE.surety(bare);
    assertTrue(sure > 0.35 && sure < 0.5, "as sure as " + sure);
    assertTrue(ACCEPTANCE.isWorthAsking(named, Caution.NORMAL));
    assertFalse(ACCEPTANCE.isWorthAsking(bare, Caution.NORMAL));
  }

  @Test
  void whoIsCautiousIsNotAskedBack() {
    Evidence middling = new Evidence(50, 60, -10, -5, -1, 4, false, 30);
    assertFalse(ACCEPTANCE.isSure(middling, Caution.NORMAL));
    assertTrue(ACCEPTANCE.isWorthAsking(middling, Caution.NORMAL));
    assertFalse(ACCEPTANCE.isWorthAsking(middling, Caution.CAUTIOUS));
    Evidence goesOn = new Evidence(100, 100, -61, -5, -1, 4, false, 30);
    assertTrue(
        ACCEPTANCE.isWorthAsking(
            new Evidence(100, 100, -59, -5, -1, 4, false, 30), Caution.NORMAL));
    assertFalse(ACCEPTANCE.isWorthAsking(goesOn, Caution.NORMAL));
  }

  @Test
  void whatTheCautiousTakeTheOthersTakeToo() {
    int taken = 0;
    for (double fit = -12; fit <= 0; fit += 0.25) {
      Evidence evidence = new Evidence(20, 10, -10, fit, -1, 4, false, 30);
      boolean cautious = ACCEPTANCE.isSure(evidence, Caution.CAUTIOUS);
      boolean normal = ACCEPTANCE.isSure(evidence, Caution.NORMAL);
      boolean eager = ACCEPTANCE.isSure(evidence, Caution.EAGER);
      assertTrue(!cautious || normal, evidence.toString());
      assertTrue(!normal || eager, evidence.toString());
      taken += (cautious ? 1 : 0) + (normal ? 1 : 0) + (eager ? 1 : 0);
    }
    assertTrue(taken > 3 && taken < 3 * 49, "they differ: " + taken);
  }

  @Test
  void nothingSpeaksForIt() {
    Evidence none = new Evidence(-50, -200, -60, -15, -6, 1, false, 10);
    for (Caution caution : Caution.values()) {
      assertFalse(ACCEPTANCE.isSure(none, caution));
    }
  }

  /** "Check redirect" of "check the redirect before you load it": the rest was said in a pause. */
  @Test
  void somebodySpokeInThePause() {
    Evidence best = new Evidence(100, 100, 0, 0, -4.9, 15, false, 50);
    Evidence spoken = new Evidence(100, 100, 0, 0, -5.1, 15, false, 50);
    assertTrue(ACCEPTANCE.isSure(best, Caution.CAUTIOUS));
    assertTrue(ACCEPTANCE.isSureOfCall(best));
    for (Caution caution : Caution.values()) {
      assertFalse(ACCEPTANCE.isSure(spoken, caution));
    }
    assertFalse(ACCEPTANCE.isSureOfCall(spoken));
  }

  @Test
  void aSingleWordHardlyAboveTheNoise() {
    Evidence word = new Evidence(100, 100, 0, 0, -1, 1, false, 13.9);
    for (Caution caution : Caution.values()) {
      assertFalse(ACCEPTANCE.isSure(word, caution));
      assertTrue(ACCEPTANCE.isSure(word.aboveNoise(14.1), caution));
      assertTrue(ACCEPTANCE.isSure(new Evidence(100, 100, 0, 0, -1, 2, false, 13.9), caution));
    }
  }

  @Test
  void itSeemsToGoOn() {
    assertTrue(ACCEPTANCE.isUnfinished(new Evidence(20, 10, -61, -5, -1, 4, false, 30)));
    assertFalse(ACCEPTANCE.isUnfinished(FAIR));
  }

  @Test
  void theSumIsByHand() {
    // Everything but the lead at the end of its scale, so that each weight counts once.
    Evidence most = new Evidence(Math.exp(4) - 1, 100, 60, -10, -3, 10, false, 50);
    double[] scaled = most.scaled();
    double[] expected = {1, 0.8, 1, 1, -1, 1};
    for (int i = 0; i < scaled.length; i++) {
      assertEquals(expected[i], scaled[i], 1e-9);
    }
  }

  /** Of a row that nothing sounds like it is not known that it was said. */
  @Test
  void noRivalAtAllSaysAsMuchAsAFarOne() {
    Evidence far = FAIR.overRival(100);
    assertEquals(ACCEPTANCE.surety(far), ACCEPTANCE.surety(FAIR.overRival(1_000)));
    assertEquals(
        ACCEPTANCE.surety(far), ACCEPTANCE.surety(FAIR.overRival(Double.POSITIVE_INFINITY)));
    assertTrue(ACCEPTANCE.surety(far) > ACCEPTANCE.surety(FAIR.overRival(90)));
  }
}
