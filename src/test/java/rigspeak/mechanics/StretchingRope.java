package rigspeak.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/**
 * A second opinion: the climber on a rope that stretches, in the upright plane, by another library.
 *
 * <p>The rope pulls {@code k s + c ds/dt} while it is longer than it was laid. Damping that loses
 * the speed along the rope for good must be free to hold back too: a rope that never pushes would
 * throw the climber back a little. No catch, no pendulum, no change of rule: only the weight and
 * the rope, from the loss of the support to the far turn. Lengths of the rope, weights of the
 * climber and times of {@code sqrt(L / g)}.
 *
 * @param stiffness k, weights for a stretch by the whole length
 * @param damping c, weights for a stretch by the whole length in the unit of time
 */
record StretchingRope(double stiffness, double damping) {
  private static final double LONGEST = 8;

  /** Out, height over A, and how fast each grows. */
  record At(double time, double x, double z, double vx, double vz) {
    /** Square to the rope, positive the way the climber first swings. */
    double across() {
      return (x * -vz + z * vx) / Math.hypot(x, z);
    }
  }

  /**
   * The way.
   *
   * @param crossings of the upright lines asked for, in their order; empty where it never got there
   * @param end the far turn, or the end of the time
   */
  record Course(List<Optional<At>> crossings, At end) {}

  /**
   * The largest tensions on the way.
   *
   * @param first until it falls for the first time
   * @param beforeSlack until the rope is slack again after the catch
   * @param ever up to the far turn
   */
  record Tensions(double first, double beforeSlack, double ever) {}

  /** From the loss of the support to the far turn. */
  Course course(double out, double below, double... lines) {
    List<Watch> watches = new ArrayList<>();
    for (double line : lines) {
      watches.add(new Watch(at -> at.x() - line, Action.CONTINUE));
    }
    DormandPrince853Integrator integrator = integrator();
    watches.forEach(integrator::addEventDetector);
    At end = run(integrator, out, below);
    return new Course(
        watches.stream().map(watch -> Optional.ofNullable(watch.first)).toList(), end);
  }

  /** The same way, looked at for the tension. */
  Tensions tensions(double out, double below) {
    DormandPrince853Integrator integrator = integrator();
    Largest largest = new Largest();
    integrator.addStepHandler(largest);
    run(integrator, out, below);
    return new Tensions(largest.first, largest.beforeSlack, largest.ever);
  }

  private static DormandPrince853Integrator integrator() {
    return new DormandPrince853Integrator(1e-15, 0.05, 1e-9, 1e-9);
  }

  private At run(DormandPrince853Integrator integrator, double out, double below) {
    integrator.addEventDetector(new Watch(At::across, Action.STOP));
    return at(
        integrator.integrate(
            new Forces(), new ODEState(0, new double[] {out, -below, 0, 0}), LONGEST));
  }

  double tension(At at) {
    double reach = Math.hypot(at.x(), at.z());
    if (reach <= 1) {
      return 0;
    }
    double lengthening = (at.x() * at.vx() + at.z() * at.vz()) / reach;
    return stiffness * (reach - 1) + damping * lengthening;
  }

  private static At at(ODEStateAndDerivative state) {
    double[] y = state.getPrimaryState();
    return new At(state.getTime(), y[0], y[1], y[2], y[3]);
  }

  /** Looks at the tension several times in each step. */
  private final class Largest implements ODEStepHandler {
    private static final int LOOKS = 16;
    private double first;
    private double beforeSlack;
    private double ever;
    private boolean fallen;
    private boolean slackAgain;

    @Override
    public void handleStep(ODEStateInterpolator step) {
      double from = step.getPreviousState().getTime();
      double until = step.getCurrentState().getTime();
      for (int look = 1; look <= LOOKS; look++) {
        note(tension(at(step.getInterpolatedState(from + (until - from) * look / LOOKS))));
      }
    }

    private void note(double now) {
      fallen |= now < ever;
      slackAgain |= now == 0 && ever > 0;
      ever = Math.max(ever, now);
      first = fallen ? first : ever;
      beforeSlack = slackAgain ? beforeSlack : ever;
    }
  }

  private final class Forces implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public double[] computeDerivatives(double time, double[] y) {
      At at = new At(time, y[0], y[1], y[2], y[3]);
      double share = tension(at) / Math.hypot(at.x(), at.z());
      return new double[] {at.vx(), at.vz(), -share * at.x(), -1 - share * at.z()};
    }
  }

  /** Notes the first fall of a reading through zero. */
  private static final class Watch implements ODEEventDetector, ODEEventHandler {
    private final ToDoubleFunction<At> reading;
    private final Action then;
    private At first;

    Watch(ToDoubleFunction<At> reading, Action then) {
      this.reading = reading;
      this.then = then;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return (state, forward) -> 0.02;
    }

    @Override
    public int getMaxIterationCount() {
      return 100;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, 1e-10, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return this;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return reading.applyAsDouble(at(state));
    }

    @Override
    public Action eventOccurred(
        ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
      if (increasing) {
        return Action.CONTINUE;
      }
      if (first == null) {
        first = at(state);
      }
      return then;
    }
  }
}
