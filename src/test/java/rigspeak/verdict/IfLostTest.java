package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;

/** What happens if a support lets go, and how the climber swings with everything holding. */
class IfLostTest {
  /** A tenth of a percent; the steps are printed to four decimals. */
  private static final double SHARE = 0.001;

  private static final double HALF_A_MILLIMETRE = 0.0005;
  private static final double HALF_A_HUNDREDTH = 0.005;

  private static final double G = 9.80665;
  private static final double CLIMBER_N = 80 * G;
  private static final double ROPE_MODULUS_N = 49_000;

  /** Met 3 m from a climber 45 degrees off plumb on 10 m of rope, as said and at the most. */
  private static final double SPEED_SAID = 6.36;

  private static final double SPEED_MOST = 6.78;

  private static final Place REDIRECT_1 = Place.redirectNumber(1);
  private static final Place REDIRECT_2 = Place.redirectNumber(2);

  /** Everything holds and everything is said but the legs. */
  private static final String STOUT =
      """
      all up 80 kilograms by tape, species northern red oak
      stationary rope, canopy anchor
      @ main point
      live wood, limb 40 centimeters by tape, limb rises 35 by tape, out 30 centimeters by tape
      stem 80 centimeters by tape, union sound
      sling choked, three wraps, seated on a stub, bark rough, sling rated 60 kilonewtons, over ring
      @ redirect 1
      live wood, limb 30 centimeters by tape, limb rises 60 by tape, out 20 centimeters by tape
      stem 60 centimeters by tape, union sound
      sling choked, four wraps, seated on a stub, bark rough, sling rated 50 kilonewtons
      over carabiner
      """;

  private static final String PLUMB =
      """
      anchor leg up 60 toward the stem 5 meters by tape
      working leg straight down 6 meters by tape
      """;

  static List<WorkedPath> workedLosses() throws IOException {
    List<WorkedPath> paths = WorkedPath.in("worked-losses");
    assertTrue(paths.size() >= 5, paths.size() + " worked falls");
    return paths;
  }

  private static RopePath stout(String legs) {
    return SpokenPath.of(STOUT + legs);
  }

  private static PathVerdict judge(RopePath path) {
    return QuickLook.BRIEF.judge(path, path.last());
  }

  private static Loss.Falls falls(RopePath path, Place lost) {
    return falls(judge(path), lost);
  }

  private static Loss.Falls falls(PathVerdict verdict, Place lost) {
    return assertInstanceOf(Loss.Falls.class, verdict.losses().get(lost), lost.key());
  }

  /**
   * The climber right below the support before, so that the whole slack is the fall and the drop,
   * and the rope takes all of the speed. Slack of 5 and 5, 8 and 4, 3 and 4 metres by the law of
   * cosines, computed (source 1); where the legs are not alike they were turned until plumb by
   * hand.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 30, 5, 30, 5.000",
    "5, 45, 5, 45, 2.929",
    "5, 60, 5, 60, 1.340",
    "5, 75, 5, 75, 0.341",
    "8, 63 point 4 3 4 9 5, 4, 26 point 5 6 5 0 5, 3.056",
    "8, 70 point 8 9 3 3 9, 4, 49 point 1 0 6 6 1, 1.417",
    "3, 36 point 8 6 9 9, 4, 53 point 1 3 0 1, 2.000",
  })
  void theSlackOfTheLastRedirect(int anchorM, String up, int workingM, String down, double slackM) {
    String anchor = "anchor leg up " + up + " left " + anchorM + " meters by tape\n";
    String working = "working leg down " + down + " left " + workingM + " meters by tape\n";
    Loss.Falls falls = falls(stout(anchor + working), REDIRECT_1);
    assertEquals(Place.MAIN_POINT, falls.catching());
    assertEquals(slackM, falls.freeFallM().nominal(), HALF_A_MILLIMETRE);
    assertEquals(slackM, falls.dropM().nominal(), HALF_A_MILLIMETRE);
    assertEquals(0, falls.lowestSpeedMS().nominal(), HALF_A_HUNDREDTH);
    if (anchorM == workingM) {
      // Right at plumb nothing but the free fall takes time: s = g t^2 / 2.
      assertEquals(Math.sqrt(2 * slackM / G), falls.lowestAfterS().orElseThrow(), SHARE);
    }
    double factor = slackM / (anchorM + workingM);
    // The standard impact force (source 10), as if written on a card.
    double peakN =
        CLIMBER_N + Math.sqrt(CLIMBER_N * CLIMBER_N + 2 * CLIMBER_N * ROPE_MODULUS_N * factor);
    assertEquals(peakN, falls.peakN().nominal(), SHARE * peakN);
  }

  @ParameterizedTest
  @MethodSource("workedLosses")
  void theFall(WorkedPath worked) {
    PathVerdict verdict = judge(worked.path());
    for (Place lost : worked.path().places()) {
      if (!worked.text(lost, "lost").equals("falls")) {
        assertInstanceOf(Loss.NothingElseHolds.class, verdict.losses().get(lost));
        continue;
      }
      Loss.Falls falls = falls(verdict, lost);
      assertEquals(SpokenPath.place(worked.text(lost, "catching")), falls.catching());
      same(worked.number(lost, "free_fall_m"), falls.freeFallM(), lost);
      same(worked.number(lost, "drop_m"), falls.dropM(), lost);
      same(worked.number(lost, "speed_ms"), falls.lowestSpeedMS(), lost);
      same(worked.number(lost, "peak_n"), falls.peakN(), lost);
      if (worked.has(lost, "bearing_deg")) {
        double off = falls.bearingDeg().nominal() - worked.number(lost, "bearing_deg");
        assertEquals(0, Math.IEEEremainder(off, 360), 0.01, lost.key());
      }
    }
  }

  private static void same(double expected, Spread spread, Place lost) {
    double printed = Math.max(SHARE * expected, HALF_A_MILLIMETRE);
    assertEquals(expected, spread.nominal(), printed, lost.key());
  }

  @ParameterizedTest
  @MethodSource("workedLosses")
  void whatTheSwingMeets(WorkedPath worked) {
    PathVerdict verdict = judge(worked.path());
    for (Place lost : worked.path().places()) {
      if (!worked.has(lost, "obstacle")) {
        continue;
      }
      Obstacle obstacle = falls(verdict, lost).obstacle();
      switch (worked.text(lost, "obstacle")) {
        case "reached" -> {
          Obstacle.Reached reached = assertInstanceOf(Obstacle.Reached.class, obstacle);
          assertTrue(reached.asSaid());
          double asSaid = worked.number(lost, "obstacle_speed_ms");
          assertTrue(reached.speedMS() >= asSaid * (1 - SHARE), reached.toString());
          double fallM = reached.speedMS() * reached.speedMS() / (2 * G);
          assertEquals(fallM, reached.equivalentFallM(), SHARE * fallM);
        }
        case "clear" -> {
          Obstacle.Clear clear = assertInstanceOf(Obstacle.Clear.class, obstacle);
          double asSaid = worked.number(lost, "spare_m");
          assertTrue(clear.spareM() > 0 && clear.spareM() <= asSaid * (1 + SHARE));
        }
        default -> assertInstanceOf(Obstacle.NotSaid.class, obstacle);
      }
    }
  }

  /**
   * The check that is named is as worked out where the rope comes taut, and at its worst at least
   * as bad as any check there, at the lowest point and between.
   */
  @ParameterizedTest
  @MethodSource("workedLosses")
  void whatTheFallDoesToTheSupportThatCatches(WorkedPath worked) {
    PathVerdict verdict = judge(worked.path());
    for (Place lost : worked.path().places()) {
      if (!worked.text(lost, "lost").equals("falls")) {
        continue;
      }
      Loss.Left left = falls(verdict, lost).left().orElseThrow();
      double nominal = worked.number(lost, "left_100_" + left.kind().key());
      assertEquals(nominal, left.utilisation().nominal(), SHARE * nominal, lost.key());
      int looked = 0;
      double most = 0;
      for (Map.Entry<String, String> entry : worked.supports().get(lost).entrySet()) {
        if (entry.getKey().startsWith("left_")) {
          most = Math.max(most, Double.parseDouble(entry.getValue()));
          looked++;
        }
      }
      assertTrue(looked >= 3 * 7, looked + " looked at");
      assertTrue(left.utilisation().high() >= most * (1 - SHARE), lost + " " + left + " " + most);
      if (most > 1) {
        assertFalse(left.holds());
      }
    }
  }

  @Test
  void onlyTheLanyardIsLeftOfTheMainPoint() {
    PathVerdict verdict = judge(stout(PLUMB));
    assertEquals(new Loss.NothingElseHolds(), verdict.losses().get(Place.MAIN_POINT));
    assertInstanceOf(Loss.Falls.class, verdict.losses().get(REDIRECT_1));
  }

  /** Of the rest of the rope nothing was said, so nothing is counted on. */
  @Test
  void nothingElseHoldsARedirectByItself() {
    RopePath alone = RopePath.alone(stout(PLUMB).at(REDIRECT_1));
    assertEquals(new Loss.NothingElseHolds(), judge(alone).losses().get(REDIRECT_1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "anchor leg up 60 left by tape / working leg straight down 6 meters | ANCHOR_LEG",
        "anchor leg up 60 left 5 meters / working leg straight down | WORKING_LEG",
        "anchor leg up 60 left / working leg straight down | ANCHOR_LEG, WORKING_LEG",
        "inside angle 90 / sling points down 40 right | ANCHOR_LEG, WORKING_LEG"
      })
  void whatMustBeKnown(String said, String legs) {
    // The main point's leg is said, for seen by its angle the redirect shares none.
    String lines = "@ redirect 1\n" + said.replace(" / ", "\n") + "\n";
    RopePath path = SpokenPath.of(STOUT + lines.replace("@ redirect 1\n", ""));
    path = SpokenPath.with(path, Place.MAIN_POINT, "working leg down 60 left by tape");
    Loss.NotKnown unknown =
        assertInstanceOf(Loss.NotKnown.class, judge(path).losses().get(REDIRECT_1));
    assertEquals(REDIRECT_1, unknown.place());
    assertEquals(legs, String.join(", ", unknown.legs().stream().map(Slot::name).toList()));
  }

  /** For the loss of another redirect the climber's own must be known too. */
  @Test
  void whatMustBeKnownOfTheSupportThatTheClimberHangsFrom() {
    String second = STOUT.substring(STOUT.indexOf("@ redirect 1")).replace('1', '2');
    RopePath path =
        SpokenPath.of(
            STOUT
                + "anchor leg up 60 toward the stem 5 meters by tape\n"
                + "working leg down 10 left 3 meters by tape\n"
                + second
                + "anchor leg up 10 right 3 meters by tape\nworking leg straight down by tape\n");
    Loss unknown = new Loss.NotKnown(REDIRECT_2, List.of(Slot.WORKING_LEG));
    assertEquals(unknown, judge(path).losses().get(REDIRECT_1));
    assertEquals(unknown, judge(path).losses().get(REDIRECT_2));
    RopePath known =
        SpokenPath.with(path, REDIRECT_2, "working leg straight down 6 meters by tape");
    assertInstanceOf(Loss.Falls.class, judge(known).losses().get(REDIRECT_1));
  }

  /** The fall is known from the redirect alone; what it does to a main point unknown is not. */
  @Test
  void theFallOntoASupportOfWhichTooLittleIsKnown() {
    RopePath path = SpokenPath.without(stout(PLUMB), Place.MAIN_POINT, Slot.LIMB_DIAMETER);
    Loss.Falls falls = falls(path, REDIRECT_1);
    assertEquals(Optional.empty(), falls.left());
    Loss.Falls known = falls(stout(PLUMB), REDIRECT_1);
    assertTrue(known.left().isPresent());
    assertEquals(known.dropM().nominal(), falls.dropM().nominal());
    assertEquals(known.peakN().nominal(), falls.peakN().nominal());
  }

  private Swing swing(String working) {
    RopePath path = stout("anchor leg up 20 right 5 meters by tape\n" + working);
    Swing swing = judge(path).swing().orElseThrow();
    assertEquals(REDIRECT_1, swing.from());
    return swing;
  }

  /**
   * 10 m from 45, 60 and 90 degrees: computed, an integration agrees. 31.0 m from 36 degrees, and
   * drops of 3.2 m on 18 m and on 16 m and of 4.3 m on 14 m: worked problems (source 22).
   */
  @ParameterizedTest
  @CsvSource({
    "10, down 45, 45, 7.579, 2.929",
    "10, down 30, 60, 9.903, 5",
    "10, level, 90, 14.005, 10",
    "31, down 54, 36, 10.78, 5.921",
    "18, down 55 point 3 1 2 8, 34.687, 7.922, 3.2",
    "16, down 53 point 1 3 0 1, 36.870, 7.922, 3.2",
    "14, down 43 point 8 5 5 3, 46.145, 9.184, 4.3"
  })
  void theSwingOfASlip(int ropeM, String leg, double offDeg, double speedMS, double fallM) {
    Swing swing = swing("working leg " + leg + " left " + ropeM + " meters by tape");
    assertEquals(offDeg, swing.offPlumbDeg().nominal(), 0.001);
    double offsetM = ropeM * Math.sin(Math.toRadians(offDeg));
    assertEquals(offsetM, swing.offsetM().nominal(), SHARE * offsetM);
    assertEquals(speedMS, swing.lowestSpeedMS().nominal(), HALF_A_HUNDREDTH);
    assertEquals(fallM, swing.equivalentFallM().nominal(), SHARE);
    assertInstanceOf(Obstacle.NotSaid.class, swing.obstacle());
  }

  /** By tape three degrees and two in a hundred of the rope. */
  @Test
  void theSwingRangesOverWhatMayBeTrue() {
    Swing swing = swing("working leg down 60 left 10 meters by tape");
    assertTrue(swing.offPlumbDeg().low() >= 27 && swing.offPlumbDeg().high() <= 33);
    assertTrue(swing.offPlumbDeg().low() < 27.1 && swing.offPlumbDeg().high() > 32.9);
    double most = 10.2 * (1 - Math.cos(Math.toRadians(33)));
    double least = 9.8 * (1 - Math.cos(Math.toRadians(27)));
    assertTrue(swing.equivalentFallM().high() <= most && swing.equivalentFallM().low() >= least);
    assertTrue(swing.equivalentFallM().high() > 0.98 * most);
    assertTrue(swing.equivalentFallM().low() < 1.02 * least);
  }

  /** Worked out by energy; the ends are those of the rope, the leg and the distance by tape. */
  @Test
  void whatIsInTheWayOfASlip() {
    String leg = "working leg down 45 left 10 meters by tape\nstem clear of swing by ";
    Obstacle.Reached reached =
        assertInstanceOf(Obstacle.Reached.class, swing(leg + "3 meters by tape").obstacle());
    assertTrue(reached.asSaid());
    assertTrue(reached.speedMS() >= SPEED_SAID && reached.speedMS() <= SPEED_MOST);
    Obstacle.Clear clear =
        assertInstanceOf(Obstacle.Clear.class, swing(leg + "20 meters by tape").obstacle());
    double asSaidM = 20 - 2 * 10 * Math.sin(Math.toRadians(45));
    double leastM = 19.6 - 2 * 10.2 * Math.sin(Math.toRadians(48));
    assertTrue(clear.spareM() <= asSaidM && clear.spareM() >= leastM);
    Obstacle.Reached perhaps =
        assertInstanceOf(Obstacle.Reached.class, swing(leg + "14 point 5 meters").obstacle());
    assertFalse(perhaps.asSaid());
  }

  @ParameterizedTest
  @CsvSource({
    "working leg down 50 left 10 meters by tape, false",
    "working leg down 50 left 10 meters by eye, true",
    "working leg down 47 left 10 meters by tape, true",
    "working leg down 70 left 10 meters by tape / stem clear of swing by 9 meters by tape, false",
    "working leg down 70 left 10 meters by tape / stem clear of swing by 3 meters by tape, true",
    "working leg straight down 10 meters by tape, false"
  })
  void whenASecondAttachmentIsWorthAWord(String said, boolean prompted) {
    assertEquals(prompted, swing(said.replace(" / ", "\n")).callsForSecondAttachment(), said);
  }

  @Test
  void noSwingWithoutALength() {
    assertEquals(
        Optional.empty(),
        judge(stout("anchor leg up 60 right\nworking leg straight down\n")).swing());
  }
}
