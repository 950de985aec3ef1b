package rigspeak.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import rigspeak.quantity.Force;

/**
 * The same fall and swing as {@link LettingGo}, second by second.
 *
 * <p>Model: Newton's law in the upright plane of the motion. Free fall until the rope is taut, the
 * speed along the rope then lost at once, and from there a rope of fixed length whose tension keeps
 * the climber at that length. It ends when the swing turns on the far side or the rope goes slack
 * again. Left out: as there, and the time of the catch itself. Nothing here uses energy or the
 * angle of the rope, so it checks {@link LettingGo} and {@link Pendulum} independently; the times
 * are only here. Source: Newton's second law, source 22; integrator of Dormand and Prince with
 * event detection from Commons Math. Units: SI. Range: that of {@link FreedRope}.
 *
 * <p>Tested by: free fall, periods by the complete elliptic integral and by a printed table (source
 * 22), and energy that never grows.
 *
 * @param moments in the order of time; the last is the end
 */
public record TimedMotion(List<Moment> moments) {
  /** What happens at a moment. */
  public enum What {
    /** The support lets go. */
    START,
    /** The rope comes taut; speed and tension are those just after. */
    TAUT,
    /** The obstacle is reached; the motion is followed on as if it gave way. */
    OBSTACLE,
    /** The climber crosses the plumb line of A. */
    LOWEST,
    /** The swing turns on the far side. */
    TURN,
    /** The rope goes slack beyond the height of A. */
    SLACK,
    /** Nothing: a step of the integration. */
    ON_THE_WAY
  }

  /**
   * One moment of the motion.
   *
   * @param what happens
   * @param timeS since the support let go
   * @param outM from the plumb line of A, positive on the side where the climber was
   * @param belowM below A
   * @param speedMS at least 0
   * @param tensionInWeights 0 in free fall
   */
  public record Moment(
      What what,
      double timeS,
      double outM,
      double belowM,
      double speedMS,
      double tensionInWeights) {}

  // One state for both parts, in lengths of the rope and times of sqrt(L / g), so that one
  // tolerance fits every rope: out, below, and how fast each grows.
  private static final int OUT = 0;
  private static final int BELOW = 1;
  private static final int OUTWARD = 2;
  private static final int DOWNWARD = 3;

  private static final double MIN_STEP = 1e-12;
  private static final double MAX_STEP = 0.1;
  private static final double TOLERANCE = 1e-12;
  private static final double CHECK_EVERY = 0.05;
  private static final int EVENT_ITERATIONS = 200;

  /** Nobody is above the rope's reach, so the fall is at most two lengths: sqrt(2 * 2). */
  private static final double LONGEST_FALL = 2.1;

  /** From rest level with A to rest on the far side takes 2 K(1/2) = 3.71; nothing takes longer. */
  private static final double LONGEST_SWING = 4;

  /** A climber nearer than this to the plumb line does not swing, as a share of the rope. */
  private static final double PLUMB = 1e-9;

  public TimedMotion {
    moments = List.copyOf(moments);
  }

  /** The motion with nothing in its way. */
  public static TimedMotion of(FreedRope rope) {
    return new Run(rope, Double.NaN).motion();
  }

  /**
   * The motion past an upright plane square to the swing.
   *
   * @param distanceM horizontal, from the climber in the direction of the swing, at least 0
   * @throws IllegalArgumentException outside the range
   */
  public static TimedMotion of(FreedRope rope, double distanceM) {
    return new Run(rope, Refuse.unlessNotNegative("distance to an obstacle", distanceM)).motion();
  }

  /** The first moment of a kind, if it comes to that. */
  public Optional<Moment> first(What what) {
    return moments.stream().filter(moment -> moment.what() == what).findFirst();
  }

  /** A number that can be read off a state. */
  private interface Reading {
    double of(double[] state);
  }

  /** Which way a reading passes zero when it counts. */
  private enum Passing {
    UP,
    DOWN
  }

  /** What pulls on the climber, in weights for each length away from A. */
  private static final Reading NOTHING = state -> 0;

  /** What keeps the length of the rope: the weight along it and the turning, over its square. */
  private static final Reading ROPE =
      state -> (speedSquared(state) + state[BELOW]) / reachSquared(state);

  private static final Reading OVER_REACH = state -> reachSquared(state) - 1;

  /** Falls through zero when a climber who swings toward and past plumb comes to rest. */
  private static final Reading TURNING =
      state -> state[OUT] * state[DOWNWARD] - state[BELOW] * state[OUTWARD];

  private static double speedSquared(double[] state) {
    return state[OUTWARD] * state[OUTWARD] + state[DOWNWARD] * state[DOWNWARD];
  }

  private static double reachSquared(double[] state) {
    return state[OUT] * state[OUT] + state[BELOW] * state[BELOW];
  }

  /** One run of the integration, and what it notes on the way. */
  private static final class Run {
    private final double ropeM;
    private final double timeUnitS;
    private final double[] state;
    private final double obstacle;
    private final List<Moment> moments = new ArrayList<>();
    private Reading pull = NOTHING;

    /**
     * @param distanceM not a number when nothing is in the way
     */
    Run(FreedRope rope, double distanceM) {
      ropeM = rope.ropeM();
      timeUnitS = Math.sqrt(ropeM / Force.STANDARD_GRAVITY);
      state = new double[] {rope.outM() / ropeM, rope.belowM() / ropeM, 0, 0};
      obstacle = (rope.outM() - distanceM) / ropeM;
    }

    TimedMotion motion() {
      note(What.START, 0, state);
      double tautAt = fall();
      loseSpeedAlongTheRope();
      pull = ROPE;
      note(What.TAUT, tautAt, state);
      if (obstacle == state[OUT]) {
        note(What.OBSTACLE, tautAt, state);
      }
      if (state[OUT] <= PLUMB) {
        note(What.LOWEST, tautAt, state);
      } else {
        swing(tautAt);
      }
      return new TimedMotion(moments);
    }

    private double fall() {
      if (OVER_REACH.of(state) >= -TOLERANCE && state[BELOW] >= 0) {
        return 0;
      }
      DormandPrince853Integrator integrator = integrator();
      watch(integrator, OVER_REACH, Passing.UP, (time, there) -> EventHandler.Action.STOP);
      return finish(integrator, 0, LONGEST_FALL);
    }

    private void swing(double from) {
      DormandPrince853Integrator integrator = integrator();
      noteAndGoOn(integrator, s -> s[OUT], What.LOWEST);
      if (!Double.isNaN(obstacle)) {
        noteAndGoOn(integrator, s -> s[OUT] - obstacle, What.OBSTACLE);
      }
      noteAndStop(integrator, ROPE, there -> What.SLACK);
      // A rope that pushes where the swing turns went slack just before, between two looks.
      noteAndStop(integrator, TURNING, there -> ROPE.of(there) < 0 ? What.SLACK : What.TURN);
      finish(integrator, from, from + LONGEST_SWING);
    }

    private void loseSpeedAlongTheRope() {
      double outward = state[OUT] * state[OUTWARD] + state[BELOW] * state[DOWNWARD];
      double share = outward / reachSquared(state);
      state[OUTWARD] -= share * state[OUT];
      state[DOWNWARD] -= share * state[BELOW];
    }

    private double finish(DormandPrince853Integrator integrator, double from, double latest) {
      double end = integrator.integrate(new Newton(pull), from, state, latest, state);
      if (!(end < latest)) {
        throw new IllegalStateException("the motion did not end");
      }
      return end;
    }

    private DormandPrince853Integrator integrator() {
      DormandPrince853Integrator integrator =
          new DormandPrince853Integrator(MIN_STEP, MAX_STEP, TOLERANCE, TOLERANCE);
      integrator.addStepHandler(
          new StepHandler() {
            @Override
            public void init(double start, double[] there, double latest) {}

            @Override
            public void handleStep(StepInterpolator step, boolean last) {
              note(What.ON_THE_WAY, step.getCurrentTime(), step.getInterpolatedState());
            }
          });
      return integrator;
    }

    private void noteAndGoOn(DormandPrince853Integrator integrator, Reading reading, What what) {
      watch(
          integrator,
          reading,
          Passing.DOWN,
          (time, there) -> {
            note(what, time, there);
            return EventHandler.Action.CONTINUE;
          });
    }

    private void noteAndStop(
        DormandPrince853Integrator integrator, Reading reading, Function<double[], What> what) {
      watch(
          integrator,
          reading,
          Passing.DOWN,
          (time, there) -> {
            note(what.apply(there), time, there);
            return EventHandler.Action.STOP;
          });
    }

    private void note(What what, double time, double[] there) {
      moments.add(
          new Moment(
              what,
              time * timeUnitS,
              there[OUT] * ropeM,
              there[BELOW] * ropeM,
              Math.sqrt(speedSquared(there)) * ropeM / timeUnitS,
              Math.max(0, pull.of(there)) * Math.sqrt(reachSquared(there))));
    }
  }

  /** What to do when a reading passes zero. */
  private interface Then {
    EventHandler.Action at(double time, double[] state);
  }

  private static void watch(
      DormandPrince853Integrator integrator, Reading reading, Passing counts, Then then) {
    EventHandler handler =
        new EventHandler() {
          @Override
          public void init(double start, double[] there, double latest) {}

          @Override
          public double g(double time, double[] there) {
            return reading.of(there);
          }

          @Override
          public Action eventOccurred(double time, double[] there, boolean increasing) {
            return increasing == (counts == Passing.UP) ? then.at(time, there) : Action.CONTINUE;
          }

          @Override
          public void resetState(double time, double[] there) {}
        };
    integrator.addEventHandler(handler, CHECK_EVERY, TOLERANCE, EVENT_ITERATIONS);
  }

  /** Newton's second law: the weight, and a pull toward A. */
  private record Newton(Reading pull) implements FirstOrderDifferentialEquations {
    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public void computeDerivatives(double time, double[] state, double[] rate) {
      double toward = pull.of(state);
      rate[OUT] = state[OUTWARD];
      rate[BELOW] = state[DOWNWARD];
      rate[OUTWARD] = -toward * state[OUT];
      rate[DOWNWARD] = 1 - toward * state[BELOW];
    }
  }
}
