package rigspeak.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * A learner who is made up, with a forgetting curve, a bias and a certainty that are known: the
 * results must see them.
 */
class LearnerTest {
  private static final double STABILITY_DAYS = 6;
  private static final double BIAS_DEGREES = 8;
  private static final double SCATTER_DEGREES = 3;
  private static final double SURE = 0.8;
  private static final int ANSWERS = 3000;

  private static final List<Answered> ANSWERED = learn(new SplittableRandom(7));

  /** One skill, asked after one to thirty days; the chance to be right is the known curve's. */
  private static List<Answered> learn(SplittableRandom chance) {
    List<Answered> answers = new ArrayList<>();
    long now = 1_700_000_000;
    for (int i = 0; i < ANSWERS; i++) {
      int days = i == 0 ? 0 : 1 + chance.nextInt(30);
      now += days * Schedule.DAY;
      boolean right = chance.nextDouble() < Schedule.remembered(days, STABILITY_DAYS);
      double truth = 30 + 5 * chance.nextInt(25);
      double said = truth + BIAS_DEGREES + SCATTER_DEGREES * chance.nextGaussian();
      answers.add(
          new Answered(
              now,
              Skill.INSIDE_ANGLE,
              Level.SECOND,
              Asking.INSIDE,
              new Truth.Figure(truth, 10),
              new Response.Amount(said),
              OptionalDouble.of(SURE),
              right ? Answered.Result.RIGHT : Answered.Result.WRONG,
              4));
    }
    return answers;
  }

  private static final Results RESULTS = new Results(ANSWERED);

  @Test
  void theBiasIsSeen() {
    Results.Tally tally = RESULTS.byAsking().get(Asking.INSIDE);
    // Three standard deviations of a mean of so many.
    double near = 3 * SCATTER_DEGREES / Math.sqrt(ANSWERS);
    assertEquals(BIAS_DEGREES, tally.bias().orElseThrow(), near);
    assertTrue(tally.meanError().orElseThrow() >= tally.bias().orElseThrow());
    assertEquals(ANSWERS, RESULTS.errors(Asking.INSIDE).size());
  }

  @Test
  void theForgettingCurveIsSeen() {
    assertEquals(STABILITY_DAYS, RESULTS.stabilityDays().orElseThrow(), 0.15 * STABILITY_DAYS);
    List<Results.After> curve = RESULTS.forgetting();
    assertEquals(5, curve.size());
    for (Results.After after : curve) {
      double known = Schedule.remembered(after.days(), STABILITY_DAYS);
      double deviation = Math.sqrt(known * (1 - known) / after.count());
      assertEquals(known, after.right(), 3 * deviation + 0.01, after::toString);
    }
  }

  @Test
  void anotherCurveIsTold() {
    List<Answered> always = new ArrayList<>();
    for (Answered one : ANSWERED) {
      always.add(
          new Answered(
              one.atSeconds(),
              one.skill(),
              one.level(),
              one.asking(),
              one.truth(),
              one.response(),
              one.sure(),
              Answered.Result.RIGHT,
              one.tookSeconds()));
    }
    assertTrue(new Results(always).stabilityDays().orElseThrow() > 1000);
    assertTrue(new Results(ANSWERED.subList(0, 10)).stabilityDays().isEmpty());
  }

  @Test
  void theCertaintyIsHeldAgainstTheHits() {
    List<Results.Bin> bins = RESULTS.calibration();
    assertEquals(1, bins.size());
    Results.Tally all = RESULTS.all().orElseThrow();
    assertEquals(SURE, bins.get(0).stated(), 1e-12);
    assertEquals(all.share(), bins.get(0).right(), 1e-12);
    double hits = all.share();
    // Brier 1950: the mean square of certainty less outcome.
    double brier = hits * Math.pow(1 - SURE, 2) + (1 - hits) * Math.pow(SURE, 2);
    assertEquals(brier, all.brier().orElseThrow(), 1e-12);
  }
}
