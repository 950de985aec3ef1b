package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Spoken;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** "Good to load" holds wherever in its box the truth may lie. */
class GoodMeansGoodTest {
  private static final int FRESH_POINTS = 20_000;

  /** Only what comes near its limit can be over it; so many of the nearest are looked at. */
  private static final int NEAREST = 60;

  private static final double NEAR = 0.8;

  /** Each verdict comes up often enough for what is said of all rigs to mean something. */
  @Test
  @Tag("sampled")
  void goodMarginalAndRefusedRigsAllComeUp() {
    Map<Rating, Integer> count = new EnumMap<>(Rating.class);
    for (QuickLook look : QuickLook.everyday()) {
      count.merge(look.rating(), 1, Integer::sum);
    }
    for (Rating rating : Rating.values()) {
      assertTrue(
          count.getOrDefault(rating, 0) >= QuickLook.EVERYDAY_RIGS / 10, "of 2,000 rigs " + count);
    }
  }

  @Test
  @Tag("sampled")
  void theGoodRigsThatAreNearestToTheirLimits() {
    List<Judged> good = new ArrayList<>();
    for (QuickLook look : QuickLook.everyday()) {
      if (look.nearItsLimit() && look.largest() <= 1.02) {
        Judged judged = QuickLook.judged(look.rig());
        if (judged.rating() == Rating.GOOD) {
          good.add(judged);
        }
      }
    }
    good.sort(Comparator.comparingDouble(judged -> -judged.governing().utilisation().high()));
    assertTrue(good.size() >= NEAREST, good.size() + " good rigs near their limits");
    List<String> over = new ArrayList<>();
    int seed = 0;
    for (Judged judged : good.subList(0, NEAREST)) {
      over.addAll(overTheirLimits(judged.rig(), seed++, FRESH_POINTS));
    }
    assertEquals(List.of(), over);
  }

  @Test
  @Tag("long")
  void everyGoodRigOfTwentyThousand() {
    List<String> over = new ArrayList<>();
    int good = 0;
    for (QuickLook look : QuickLook.atAll(SampledRigs.first(QuickLook.LONG_RIGS))) {
      Rating rating =
          look.refused() ? Rating.REFUSE : QuickLook.wholeRatingAlone(look.rig()).orElseThrow();
      if (rating == Rating.GOOD) {
        int points = look.largest() >= NEAR ? FRESH_POINTS : FRESH_POINTS / 10;
        over.addAll(overTheirLimits(look.resolved(), good, points));
        good++;
      }
    }
    assertTrue(good >= QuickLook.LONG_RIGS / 10, good + " good rigs");
    assertEquals(List.of(), over);
  }

  private static List<String> overTheirLimits(ResolvedRig good, int seed, int points) {
    List<String> over = new ArrayList<>();
    new OutsideLook(good, 1_000 + seed)
        .freshPoints(points)
        .corners()
        .climbs(NEAR / 2)
        .worst()
        .forEach(
            (kind, worst) -> {
              if (!(worst <= 1)) {
                over.add(kind.key() + " " + worst + " of " + good.said());
              }
            });
    return over;
  }

  /**
   * Rigs whose worst lies between the corners of the box and behind another, lower top: a plumb leg
   * that may lean any way, beside a bearing that is only seen.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        """
        all up 160 kilograms by tape species oak live wood
        limb 24 centimeters by eye limb rises 67 out 30 centimeters stem 86 centimeters union sound
        over bark bark smooth seated on a stub moving rope both parts
        anchor leg up 4 at one o'clock
        working leg straight down
        """,
        """
        all up 145 kilograms by tape species oak live wood
        limb 24 centimeters by eye limb rises 67 out 30 centimeters stem 86 centimeters union sound
        over bark bark smooth seated on a stub moving rope both parts
        anchor leg up 4 at two o'clock
        working leg straight down
        """
      })
  void aTopBetweenTheCornersIsFound(String said) {
    Judged judged = QuickLook.judged(Spoken.rig(said));
    Map<CheckKind, Double> outside =
        new OutsideLook(judged.rig(), 7).freshPoints(FRESH_POINTS).corners().climbs(0).worst();
    if (judged.rating() == Rating.GOOD) {
      outside.forEach((kind, worst) -> assertTrue(worst <= 1, kind.key() + " " + worst));
    }
    double found = judged.governing().utilisation().high();
    double there = outside.get(judged.governing().kind());
    assertTrue(found >= 0.99 * there, "found " + found + ", there is " + there);
  }
}
