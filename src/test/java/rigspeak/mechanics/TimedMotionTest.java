package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import rigspeak.mechanics.Arrival.Reached;
import rigspeak.mechanics.TimedMotion.Moment;
import rigspeak.mechanics.TimedMotion.What;

class TimedMotionTest {
  private static final double G = 9.80665;
  private static final int MOTIONS = 5000;

  /** Complete elliptic integral by the arithmetic-geometric mean: T/T0 = 1 / agm(1, cos(t0/2)). */
  static double overSmall(double amplitudeRad) {
    double a = 1;
    double b = Math.cos(amplitudeRad / 2);
    while (Math.abs(a - b) > 1e-15) {
      double mean = (a + b) / 2;
      b = Math.sqrt(a * b);
      a = mean;
    }
    return 1 / a;
  }

  private static double quarterS(double ropeM, double amplitudeRad) {
    return Math.PI / 2 * Math.sqrt(ropeM / G) * overSmall(amplitudeRad);
  }

  private static double lowestS(double ropeM, double amplitudeRad) {
    return moment(TimedMotion.of(Falls.taut(ropeM, amplitudeRad)), What.LOWEST).timeS();
  }

  private static Moment moment(TimedMotion motion, What what) {
    return motion.first(what).orElseThrow(() -> new AssertionError("no " + what));
  }

  /** The printed table holds the integral, and up to a right angle the integral the motion. */
  @ParameterizedTest
  @PublishedTable("swing-period.csv")
  void periodOverThatOfASmallSwing(PublishedTable.Row row) {
    double amplitudeRad = row.degrees("amplitude_deg");
    assertEquals(row.number("over_small"), overSmall(amplitudeRad), row.number("tolerance"));
    if (amplitudeRad <= Math.PI / 2) {
      double small = Math.PI / 2 * Math.sqrt(7 / G);
      assertEquals(
          row.number("over_small"), lowestS(7, amplitudeRad) / small, row.number("tolerance"));
    }
  }

  @ParameterizedTest
  @PublishedTable("swing-time.csv")
  void timeOfASwing(PublishedTable.Row row) {
    double lowestS = lowestS(row.number("rope_m"), row.degrees("amplitude_deg"));
    assertEquals(
        row.number("time_s"),
        row.number("quarters") * lowestS * Math.sqrt(G / row.number("gravity_ms2")),
        row.number("tolerance_s"));
  }

  @Test
  void timesOfEverySwingFromRest() {
    Samples.over(0.5, 60, 0.05, 90)
        .first(
            MOTIONS,
            p -> {
              double amplitudeRad = Math.toRadians(p[1]);
              TimedMotion motion = TimedMotion.of(Falls.taut(p[0], amplitudeRad));
              double quarterS = quarterS(p[0], amplitudeRad);
              assertEquals(quarterS, moment(motion, What.LOWEST).timeS(), 1e-8 * quarterS);
              assertEquals(2 * quarterS, moment(motion, What.TURN).timeS(), 1e-6 * quarterS);
            });
  }

  /** What the closed forms say, by a way that knows neither energy nor angles. */
  @Test
  void agreesWithTheClosedForms() {
    Samples.over(0.5, 60, 0.001, 0.999, 0, 1, 0, 2)
        .first(
            MOTIONS,
            p -> {
              FreedRope rope = Falls.anywhere(p[0], p[1], p[2]);
              double distanceM = p[3] * rope.outM();
              TimedMotion motion = TimedMotion.of(rope, distanceM);
              LettingGo fall = LettingGo.of(rope, 1000, 20_000);
              Pendulum swing = fall.swing();
              double nearM = 1e-7 * p[0];
              double nearMS = 1e-7 * Math.sqrt(G * p[0]);

              Moment taut = moment(motion, What.TAUT);
              assertEquals(Math.sqrt(2 * rope.freeFallM() / G), taut.timeS(), 1e-8 * p[0]);
              assertEquals(rope.outM(), taut.outM(), nearM);
              assertEquals(rope.belowM() + rope.freeFallM(), taut.belowM(), nearM);
              assertEquals(swing.startSpeedMS(), taut.speedMS(), nearMS);

              Moment lowest = moment(motion, What.LOWEST);
              assertEquals(0, lowest.outM(), nearM);
              assertEquals(rope.belowM() + rope.dropM(), lowest.belowM(), nearM);
              assertEquals(swing.lowestSpeedMS(), lowest.speedMS(), nearMS);
              assertEquals(fall.swingTensionN() / 1000, lowest.tensionInWeights(), 1e-7);

              endsAlike(swing, motion);
              arrivesAlike(swing, motion, distanceM);
            });
  }

  private static void endsAlike(Pendulum swing, TimedMotion motion) {
    SwingEnd end = swing.end();
    Moment last = moment(motion, end instanceof SwingEnd.Turns ? What.TURN : What.SLACK);
    // A rope that goes slack for less than the time between two looks is noticed where the swing
    // turns, a third of the surplus height later.
    double surplus = swing.lowestEquivalentFallM() / swing.ropeM() - 1;
    double nearRad = surplus > 0 && surplus < 1e-3 ? surplus / 2 : 1e-6;
    assertEquals(end.fromPlumbRad(), Math.atan2(-last.outM(), last.belowM()), nearRad);
    assertEquals(motion.moments().get(motion.moments().size() - 1).timeS(), last.timeS());
    if (end instanceof SwingEnd.GoesSlack) {
      assertEquals(0, last.tensionInWeights(), 1e-7);
    }
  }

  private static void arrivesAlike(Pendulum swing, TimedMotion motion, double distanceM) {
    if (swing.arrivalAt(distanceM) instanceof Reached reached) {
      Moment there = moment(motion, What.OBSTACLE);
      assertEquals(reached.speedMS(), there.speedMS(), 1e-6 * Math.sqrt(G * swing.ropeM()));
    } else {
      assertTrue(motion.first(What.OBSTACLE).isEmpty());
    }
  }

  @Test
  void energyNeverGrowsAndTheRopeKeepsItsLength() {
    Samples.over(Falls.ANYWHERE)
        .first(
            MOTIONS,
            p -> {
              TimedMotion motion = TimedMotion.of(Falls.anywhere(p[0], p[1], p[2]));
              List<Moment> moments = motion.moments();
              double tautS = moment(motion, What.TAUT).timeS();
              for (int i = 1; i < moments.size(); i++) {
                Moment before = moments.get(i - 1);
                Moment now = moments.get(i);
                assertTrue(now.timeS() >= before.timeS(), "time runs backward");
                assertTrue(energy(now) <= energy(before) + 1e-9 * G * p[0], "energy grows");
                double reachM = Math.hypot(now.outM(), now.belowM());
                assertTrue(reachM <= p[0] * (1 + 1e-9), "beyond the rope");
                assertTrue(now.timeS() <= tautS || reachM >= p[0] * (1 - 1e-8), "inside it");
              }
            });
  }

  /** It starts at rest where the climber was, and is followed in small steps to its end. */
  @Test
  void isFollowedFromTheStart() {
    TimedMotion motion = TimedMotion.of(new FreedRope(10, 6, 3, 0));
    List<Moment> moments = motion.moments();
    assertEquals(new Moment(What.START, 0, 6, 3, 0, 0), moments.get(0));
    double stepS = 0.1 * Math.sqrt(10 / G);
    for (int i = 1; i < moments.size(); i++) {
      assertTrue(moments.get(i).timeS() - moments.get(i - 1).timeS() <= stepS * (1 + 1e-9));
    }
  }

  /** A taut rope level with A does not fall first: from there it is a quarter of a period. */
  @Test
  void aLevelRopeSwingsAtOnce() {
    TimedMotion motion = TimedMotion.of(new FreedRope(10, 10, 0, 0));
    assertEquals(0, moment(motion, What.TAUT).timeS());
    double quarterS = quarterS(10, Math.PI / 2);
    assertEquals(quarterS, moment(motion, What.LOWEST).timeS(), 1e-8 * quarterS);
  }

  private static double energy(Moment moment) {
    return moment.speedMS() * moment.speedMS() / 2 - G * moment.belowM();
  }

  @Test
  void aPlumbFallEndsAtTheCatch() {
    TimedMotion motion = TimedMotion.of(new FreedRope(10, 0, 4, 0), 2);
    Moment lowest = moment(motion, What.LOWEST);
    assertEquals(Math.sqrt(2 * 6 / G), lowest.timeS(), 1e-9);
    assertEquals(0, lowest.speedMS(), 1e-9);
    assertEquals(1, lowest.tensionInWeights(), 1e-9);
    assertTrue(motion.first(What.OBSTACLE).isEmpty());
    assertEquals(0, moment(TimedMotion.of(new FreedRope(10, 0, 10, 0)), What.LOWEST).timeS());
  }

  @Test
  void anObstacleAtHandIsReachedWithTheCatch() {
    TimedMotion motion = TimedMotion.of(new FreedRope(10, 5, 5, 0), 0);
    Moment there = moment(motion, What.OBSTACLE);
    assertEquals(moment(motion, What.TAUT).timeS(), there.timeS());
    Reached reached =
        assertInstanceOf(
            Reached.class, LettingGo.of(new FreedRope(10, 5, 5, 0), 1, 1).arrivalAt(0));
    assertEquals(reached.speedMS(), there.speedMS(), 1e-6);
  }
}
