package rigspeak.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.verdict.Trial.Held;

/**
 * The worst that a support's bounds allow, looked for apart from the judge: every corner of the
 * box, then evolution with an adapted covariance (CMA-ES) for each check that comes near its limit.
 * Every number that is not exact is a side, whether the judge looks at it or not; the state of the
 * rope's friction is one more, from all of it one way to all of it the other way. It shares with
 * the judge what one point comes to, and nothing else.
 */
public final class HiddenWorst {
  /** All corners up to so many sides; of a larger box the corners of as many random choices. */
  private static final int ALL_CORNERS = 12;

  private static final int POPULATION = 12;
  private static final double FIRST_SPREAD = 0.3;

  private final ResolvedRig rig;
  private final List<Measure> sides;
  private final List<Estimate> estimates;
  private final List<CheckKind> kinds;
  private final double[] worst;
  private final double[][] worstPlace;
  private final RandomGenerator random;
  private long points;

  private HiddenWorst(ResolvedRig rig, int seed) {
    this.rig = rig;
    List<Map.Entry<Measure, Estimate>> open =
        rig.measures().entrySet().stream().filter(entry -> !entry.getValue().isExact()).toList();
    this.sides = open.stream().map(Map.Entry::getKey).toList();
    this.estimates = open.stream().map(Map.Entry::getValue).toList();
    this.kinds = Trial.kinds(rig);
    this.worst = new double[kinds.size()];
    this.worstPlace = new double[kinds.size()][sides.size() + 1];
    this.random = new MersenneTwister(seed);
    double[] nominal = new double[sides.size() + 1];
    for (int side = 0; side < sides.size(); side++) {
      Estimate estimate = estimates.get(side);
      nominal[side] = (estimate.nominal() - estimate.low()) / (estimate.high() - estimate.low());
    }
    for (double friction : new double[] {0, 0.5, 1}) {
      nominal[sides.size()] = friction;
      look(nominal);
    }
  }

  /**
   * @param seed of all chance in it; the same seed looks at the same points
   */
  public static HiddenWorst of(ResolvedRig rig, int seed) {
    return new HiddenWorst(rig, seed);
  }

  /** Every corner of the box, or as many random ones of a box with more sides. */
  public HiddenWorst corners() {
    int dimensions = sides.size() + 1;
    boolean all = dimensions <= ALL_CORNERS;
    for (int corner = 0; corner < 1 << Math.min(dimensions, ALL_CORNERS); corner++) {
      double[] place = new double[dimensions];
      for (int side = 0; side < dimensions; side++) {
        boolean high = all ? (corner >> side & 1) == 1 : random.nextBoolean();
        place[side] = high ? 1 : 0;
      }
      look(place);
    }
    return this;
  }

  /**
   * Evolves toward the worst of the checks that come nearest to their limits.
   *
   * @param most checks, the nearest first
   * @param from only checks that were seen at least so near
   * @param runs for each of them: from the worst place so far, then from anywhere
   * @param evaluations for each run
   */
  public HiddenWorst evolution(int most, double from, int runs, int evaluations) {
    List<Integer> nearest =
        IntStream.range(0, worst.length)
            .boxed()
            .filter(check -> worst[check] >= from)
            .sorted(Comparator.comparingDouble(check -> -worst[check]))
            .limit(most)
            .toList();
    for (int check : nearest) {
      for (int run = 0; run < runs; run++) {
        evolve(check, run == 0 ? worstPlace[check].clone() : anywhere(), evaluations);
      }
    }
    return this;
  }

  private void evolve(int check, double[] start, int evaluations) {
    int dimensions = start.length;
    double[] low = new double[dimensions];
    double[] high = new double[dimensions];
    double[] spread = new double[dimensions];
    for (int side = 0; side < dimensions; side++) {
      high[side] = 1;
      spread[side] = FIRST_SPREAD;
      // Not from the very edge: half of what is tried there would lie outside.
      start[side] = 0.02 + 0.96 * start[side];
    }
    CMAESOptimizer optimizer =
        new CMAESOptimizer(
            evaluations, 0, true, 0, 0, random, false, new SimpleValueChecker(1e-9, 1e-9));
    try {
      optimizer.optimize(
          new MaxEval(evaluations),
          new ObjectiveFunction(place -> look(place)[check]),
          GoalType.MAXIMIZE,
          new InitialGuess(start),
          new SimpleBounds(low, high),
          new CMAESOptimizer.Sigma(spread),
          new CMAESOptimizer.PopulationSize(POPULATION));
    } catch (MathIllegalStateException spent) {
      // All evaluations are used; what was seen on the way counts.
      if (points == 0) {
        throw spent;
      }
    }
  }

  private double[] anywhere() {
    double[] place = new double[sides.size() + 1];
    for (int side = 0; side < place.length; side++) {
      place[side] = random.nextDouble();
    }
    return place;
  }

  /** What every check comes to there; the worst of each is kept. */
  private double[] look(double[] place) {
    List<Held> held = held(place);
    double[] utilisations = new double[worst.length];
    for (int check = 0; check < worst.length; check++) {
      utilisations[check] = held.get(check).utilisation();
      if (!(utilisations[check] <= worst[check])) {
        worst[check] = utilisations[check];
        worstPlace[check] = place.clone();
      }
    }
    points++;
    return utilisations;
  }

  private List<Held> held(double[] place) {
    double[] numbers = new double[sides.size()];
    for (int side = 0; side < numbers.length; side++) {
      double share = Math.min(1, Math.max(0, place[side]));
      numbers[side] = estimates.get(side).at(share);
    }
    Point point = rig.nominal().with(sides, numbers);
    // From all of the friction toward the climber over none to all of it toward the anchor.
    double friction = 2 * Math.min(1, Math.max(0, place[sides.size()])) - 1;
    double all = point.get(Measure.ROPE_FRICTION);
    Point part = point.with(Measure.ROPE_FRICTION, Math.abs(friction) * all);
    return Trial.of(rig, part, friction < 0 ? Creep.TOWARD_CLIMBER : Creep.TOWARD_ANCHOR).held();
  }

  /** The largest utilisation that was seen of each check. */
  public Map<CheckKind, Double> worst() {
    Map<CheckKind, Double> byKind = new TreeMap<>();
    for (int check = 0; check < worst.length; check++) {
      byKind.put(kinds.get(check), worst[check]);
    }
    return byKind;
  }

  /** The largest utilisation of any check. */
  public double largest() {
    return worst().values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  /** How many points were tried. */
  public long points() {
    return points;
  }

  /** Where the check with the largest utilisation has its worst: each side with its share. */
  public List<String> where() {
    int most = 0;
    for (int check = 1; check < worst.length; check++) {
      most = worst[check] > worst[most] ? check : most;
    }
    List<String> where = new ArrayList<>();
    where.add(kinds.get(most).key() + " " + worst[most]);
    for (int side = 0; side < sides.size(); side++) {
      HowGot how = estimates.get(side).how();
      double share = worstPlace[most][side];
      where.add("%s %.3f (%s)".formatted(sides.get(side).key(), share, how));
    }
    where.add("friction %.3f".formatted(worstPlace[most][sides.size()]));
    return where;
  }
}
