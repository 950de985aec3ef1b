package rigspeak.contract;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.RopePath;
import rigspeak.verdict.HiddenWorst;
import rigspeak.verdict.Sieve;

/**
 * Looks for the good rope with the most hidden in it, by a walk along the choices and numbers of a
 * rope in words that keeps what is worse, one or a few sides at a time, near or anywhere. First it
 * goes where the judge misses the largest share of the worst, then to where the rope is only just
 * good.
 */
final class WorstRope {
  private static final double WELL_WITHIN = 0.98;

  /** A rope so far over its limits is not moved to where it is good. */
  private static final double HOPELESS = 3.0;

  /** Less than a share that is missed is worth. */
  private static final double PULL = 0.03;

  /** So much a rope that is not good is worth less; else the walk would end beside the margin. */
  private static final double NOT_GOOD = 0.01;

  private final SplittableRandom random;
  private final int seed;
  private final int evaluations;
  private double[] here = new double[RopeDraw.SIDES];
  private Look look = new Look(0, 0, List.of());
  private double score = -1;

  /** The good rope with the most hidden in it that the walk came by. */
  private Optional<double[]> good = Optional.empty();

  private double hiddenInGood;
  private int tried;
  private long points;

  /**
   * What two searches find of one rope.
   *
   * @param judges the largest utilisation by the judge's own search
   * @param hidden the largest by the other
   * @param where that is
   */
  record Look(double judges, double hidden, List<String> where) {
    double missed() {
      return judges == 0 ? 0 : hidden / judges;
    }

    /**
     * Where the rope is good, what is hidden; where it is not, what would be if all of it came down
     * to the margin, and a little less the farther it has to come.
     */
    double whenJustGood() {
      return judges <= WELL_WITHIN
          ? hidden
          : WELL_WITHIN * missed() - PULL * (judges - WELL_WITHIN) - NOT_GOOD;
    }

    /** Whether the judge would call it good. */
    boolean isGood() {
      return judges > 0 && judges <= WELL_WITHIN;
    }
  }

  WorstRope(int seed, int evaluations) {
    this.random = new SplittableRandom(seed);
    this.seed = seed;
    this.evaluations = evaluations;
  }

  /** A third of the steps for the share that is missed, the rest for a rope that is just good. */
  void move(int steps) {
    for (int step = 0; step < steps; step++) {
      boolean free = step < steps / 3;
      if (step == steps / 3) {
        score = look.whenJustGood();
      }
      double[] there = step < steps / 6 || score <= 0 ? anywhere() : near();
      Look found = look(RopeDraw.of(there));
      if (found.isGood() && found.hidden() > hiddenInGood) {
        hiddenInGood = found.hidden();
        good = Optional.of(there);
      }
      double worth = free ? found.missed() : found.whenJustGood();
      if (worth >= score) {
        score = worth;
        look = found;
        here = there;
      }
    }
  }

  private double[] anywhere() {
    double[] there = new double[RopeDraw.SIDES];
    for (int side = 0; side < there.length; side++) {
      there[side] = random.nextDouble();
    }
    return there;
  }

  private double[] near() {
    double[] there = here.clone();
    int sides = 1 + random.nextInt(4);
    for (int i = 0; i < sides; i++) {
      int side = random.nextInt(there.length);
      double step = 0.1 * (random.nextDouble() + random.nextDouble() - 1);
      there[side] =
          random.nextDouble() < 0.3
              ? random.nextDouble()
              : Math.min(1, Math.max(0, there[side] + step));
    }
    return there;
  }

  private Look look(SaidRope rope) {
    Optional<Map<Place, ResolvedRig>> known = Sieve.known(path(rope));
    if (known.isEmpty() || quickMost(known.get()) > HOPELESS) {
      return new Look(0, 0, List.of());
    }
    tried++;
    Look all = new Look(0, 0, List.of());
    for (ResolvedRig rig : known.get().values()) {
      HiddenWorst worst = HiddenWorst.of(rig, seed).corners().evolution(2, 0.3, 2, evaluations);
      points += worst.points();
      double judges = Math.max(all.judges(), most(Sieve.judgesWorst(rig)));
      boolean worse = worst.largest() > all.hidden();
      all =
          new Look(
              judges, worse ? worst.largest() : all.hidden(), worse ? worst.where() : all.where());
    }
    return all;
  }

  private static double quickMost(Map<Place, ResolvedRig> known) {
    return known.values().stream().mapToDouble(rig -> most(Sieve.quickWorst(rig))).max().orElse(0);
  }

  private static double most(Map<?, Double> byCheck) {
    return byCheck.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  private static RopePath path(SaidRope rope) {
    return Talk.with(Talk.BRIEF).sayAll(rope).rope();
  }

  /** The worst good rope of the walk, if it came by any. */
  Optional<SaidRope> worstGood() {
    return good.map(RopeDraw::of);
  }

  Look look() {
    return look;
  }

  int tried() {
    return tried;
  }

  long points() {
    return points;
  }
}
