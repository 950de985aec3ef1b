package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.verdict.Verdict.Judged;

/** Whole ropes, from what is said to every check, against a calculation apart from the program. */
class WorkedPathTest {
  /** A tenth of a percent; the steps are printed to five figures. */
  private static final double SHARE = 0.001;

  /** The product of the frictions beyond is printed to seven figures. */
  private static final double BEYOND_SHARE = 1e-5;

  /** Angle factors are printed to two decimals. */
  private static final double HALF_A_HUNDREDTH = 0.005;

  static List<WorkedPath> workedPaths() throws IOException {
    List<WorkedPath> paths = WorkedPath.in("worked-paths");
    assertTrue(paths.size() >= 7, paths.size() + " worked ropes");
    return paths;
  }

  private static PathVerdict judge(WorkedPath worked) {
    return QuickLook.BRIEF.judge(worked.path(), worked.path().last());
  }

  private static Judged judged(PathVerdict verdict, Place place) {
    return assertInstanceOf(Judged.class, verdict.supports().get(place), place.key());
  }

  @ParameterizedTest
  @MethodSource("workedPaths")
  void theOutcome(WorkedPath worked) {
    PathVerdict verdict = judge(worked);
    assertEquals(worked.path().places(), List.copyOf(worked.supports().keySet()));
    assertEquals(
        worked.expected().get("outcome"), verdict.outcome().name().toLowerCase(Locale.ROOT));
    assertEquals(SpokenPath.place(worked.expected().get("governing")), verdict.governing());
    for (Place place : worked.path().places()) {
      assertEquals(
          worked.text(place, "rating"),
          judged(verdict, place).rating().name().toLowerCase(Locale.ROOT),
          place.key());
    }
  }

  @ParameterizedTest
  @MethodSource("workedPaths")
  void theLoadOfEverySupport(WorkedPath worked) {
    PathVerdict verdict = judge(worked);
    for (Place place : worked.path().places()) {
      Load load = judged(verdict, place).load();
      double size = worked.number(place, "resultant_n");
      assertEquals(size, load.resultantN().nominal(), SHARE * size, place.key());
      assertEquals(worked.number(place, "working_n"), load.workingLegN().nominal(), SHARE * size);
      assertEquals(
          worked.number(place, "elevation_deg"), load.elevationDeg().nominal(), 0.01, place.key());
      double bearing = load.bearingDeg().nominal() - worked.number(place, "bearing_deg");
      assertEquals(0, Math.IEEEremainder(bearing, 360), 0.01, place.key());
    }
  }

  /** Angle factors as makers of blocks print them. */
  @ParameterizedTest
  @MethodSource("workedPaths")
  void theLoadOverTheTensionIsThePublishedOne(WorkedPath worked) {
    PathVerdict verdict = judge(worked);
    for (Place place : worked.path().places()) {
      if (worked.has(place, "published_factor")) {
        double published = worked.number(place, "published_factor");
        Load load = judged(verdict, place).load();
        assertEquals(published, load.angleFactor().orElseThrow().nominal(), HALF_A_HUNDREDTH);
        assertEquals(
            published,
            load.resultantN().nominal() / load.workingLegN().nominal(),
            HALF_A_HUNDREDTH);
      }
    }
  }

  /** Both ends: the product of the largest ratios of the supports nearer the climber. */
  @ParameterizedTest
  @MethodSource("workedPaths")
  void frictionCompounds(WorkedPath worked) {
    PathVerdict verdict = judge(worked);
    for (Place place : worked.path().places()) {
      Judged judged = judged(verdict, place);
      assertEquals(worked.has(place, "beyond_high"), judged.rig().has(Measure.BEYOND));
      Spread working = judged.load().workingLegN();
      double most = 1;
      if (worked.has(place, "beyond_high")) {
        most = worked.number(place, "beyond_high");
        Estimate beyond = judged.rig().measures().get(Measure.BEYOND);
        assertEquals(most, beyond.high(), BEYOND_SHARE * most, place.key());
        assertEquals(1 / most, beyond.low(), BEYOND_SHARE / most, place.key());
        assertEquals(1, beyond.nominal());
      }
      // By tape a climber weighs a percent more or less.
      double weight = worked.number(place, "working_n");
      assertTrue(working.high() <= weight * 1.01 * most * (1 + BEYOND_SHARE), place.key());
      assertTrue(working.low() >= weight * 0.99 / most * (1 - BEYOND_SHARE), place.key());
    }
  }

  /**
   * The rope's tightest leg at the very most: every support beyond and this one at its most. A
   * check that is far from its limit is climbed once; what that may miss is what {@link
   * Check#WELL_WITHIN} leaves.
   */
  @ParameterizedTest
  @MethodSource("workedPaths")
  void theTightestLegAtTheMost(WorkedPath worked) {
    PathVerdict verdict = judge(worked);
    for (Place place : worked.path().places()) {
      double most = worked.number(place, "rope_high");
      double high =
          judged(verdict, place).checks().stream()
              .filter(check -> check.kind() == CheckKind.ROPE)
              .findFirst()
              .orElseThrow()
              .utilisation()
              .high();
      assertTrue(high <= most * (1 + SHARE), place.key() + " " + high);
      assertTrue(high >= most * Check.WELL_WITHIN, place.key() + " " + high);
    }
  }

  @ParameterizedTest
  @MethodSource("workedPaths")
  void everyCheckOfEverySupport(WorkedPath worked) {
    PathVerdict verdict = judge(worked);
    for (Place place : worked.path().places()) {
      int checked = 0;
      for (Check check : judged(verdict, place).checks()) {
        String name = place.key() + " " + check.kind().key();
        double expected = worked.number(place, check.kind().key());
        double nominal = check.utilisation().nominal();
        // What is worth nothing as said is rounding, in newtons over any capacity there is.
        assertEquals(expected, nominal, Math.max(SHARE * expected, 1e-6), name);
        checked++;
      }
      long listed =
          worked.supports().get(place).keySet().stream().filter(WorkedPathTest::isCheck).count();
      assertEquals(listed, checked, place.key());
    }
  }

  private static boolean isCheck(String key) {
    for (CheckKind kind : CheckKind.values()) {
      if (kind.key().equals(key)) {
        return true;
      }
    }
    return false;
  }

  /** The stem between is worked out with the rope's end there, and with a leg to the base. */
  @Test
  void theStemIsWorkedOutBothWays() throws IOException {
    Place next = Place.redirectNumber(1);
    for (boolean base : List.of(true, false)) {
      assertTrue(
          workedPaths().stream()
              .filter(worked -> worked.path().has(next))
              .anyMatch(
                  worked ->
                      worked.has(next, "stem_between")
                          && judged(judge(worked), next).rig().has(Measure.BASE_LEG_RATIO)
                              == base));
    }
  }
}
