package rigspeak.verdict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.verdict.Trial.Held;

/**
 * A rig tried all over its box: at its word, at even samples, and at the worst point that a search
 * finds for each check.
 */
final class Survey {
  /** Stress and force are worst at an end of the rope's friction, sliding perhaps in between. */
  private static final List<Creep> FRICTION =
      List.of(Creep.TOWARD_ANCHOR, Creep.TOWARD_CLIMBER, Creep.NEAREST_THE_LIMB);

  /** From here on a search may find what the samples did not: a point over the limit. */
  private static final double CLOSE_TO_LIMIT = 0.7;

  private static final int PARTS = 4;

  /** A share of the variance that even a measure without any effect can seem to make. */
  private static final double NOISE = 0.02;

  private final ResolvedRig rig;
  private final Box box;
  private final double[][] shares;

  /** Utilisation by check and sample, with the friction that is worst for it. */
  private final double[][] utilisation;

  private final List<Found> found;
  private final LoadRange load;

  /** What became of one check. */
  private static final class Found {
    final CheckKind kind;
    final Held nominal;
    final double nominalUtilisation;
    double lowDemand = Double.MAX_VALUE;
    double highDemand;
    double lowCapacity = Double.MAX_VALUE;
    double highCapacity;
    double low = Double.MAX_VALUE;
    double worst;
    double[] worstShares;

    Found(Held nominal) {
      this.kind = nominal.kind();
      this.nominal = nominal;
      this.nominalUtilisation = nominal.utilisation();
    }

    void take(Held held, double[] shares) {
      lowDemand = Math.min(lowDemand, held.demand());
      highDemand = Math.max(highDemand, held.demand());
      lowCapacity = Math.min(lowCapacity, held.capacity());
      highCapacity = Math.max(highCapacity, held.capacity());
      double utilisation = held.utilisation();
      low = Math.min(low, utilisation);
      if (worstShares == null || utilisation > worst) {
        worst = utilisation;
        worstShares = shares;
      }
    }
  }

  private Survey(ResolvedRig rig, int samples) {
    this.rig = rig;
    this.box = Box.ofChecks(rig);
    this.shares = box.evenly(samples);
    this.found = nominal();
    this.utilisation = new double[found.size()][samples];
    this.load = new LoadRange(Trial.of(rig, rig.nominal(), Creep.NONE));
  }

  /** With a search for the worst point of every check. */
  static Survey whole(ResolvedRig rig, int samples) {
    Survey survey = new Survey(rig, samples);
    survey.trySamples(Double.MAX_VALUE);
    for (int check = 0; check < survey.found.size(); check++) {
      survey.searchWorst(check, Double.MAX_VALUE);
    }
    return survey;
  }

  /**
   * Whether every check stays well within its limit, by the samples and searches of {@link #whole}.
   * The first that does not ends it.
   */
  static boolean staysWithin(ResolvedRig rig, int samples) {
    if (asSaid(rig) > Check.WELL_WITHIN) {
      return false;
    }
    Survey survey = new Survey(rig, samples);
    survey.trySamples(Check.WELL_WITHIN);
    for (int check = 0; check < survey.found.size() && survey.isWithin(); check++) {
      survey.searchWorst(check, Check.WELL_WITHIN);
    }
    return survey.isWithin();
  }

  /**
   * The largest utilisation of any check, with a search for the worst point of that check alone:
   * quick enough to solve for.
   */
  static double worst(ResolvedRig rig, int samples) {
    Survey survey = new Survey(rig, samples);
    survey.trySamples(Double.MAX_VALUE);
    int worst = 0;
    for (int check = 1; check < survey.found.size(); check++) {
      if (survey.found.get(check).worst > survey.found.get(worst).worst) {
        worst = check;
      }
    }
    survey.searchWorst(worst, Double.MAX_VALUE);
    return survey.found.get(worst).worst;
  }

  /** The largest utilisation of one check, with a search for its worst point. */
  static double worst(ResolvedRig rig, CheckKind kind, int samples) {
    Survey survey = new Survey(rig, samples);
    survey.trySamples(Double.MAX_VALUE);
    int check = survey.indexOf(kind);
    survey.searchWorst(check, Double.MAX_VALUE);
    return survey.found.get(check).worst;
  }

  private int indexOf(CheckKind kind) {
    return found.stream().map(one -> one.kind).toList().indexOf(kind);
  }

  /** The largest utilisation of any check with every value at its word. */
  static double asSaid(ResolvedRig rig) {
    double largest = 0;
    for (Held held : worstFriction(rig, rig.nominal())) {
      largest = Math.max(largest, held.utilisation());
    }
    return largest;
  }

  private boolean isWithin() {
    return found.stream().allMatch(one -> one.worst <= Check.WELL_WITHIN);
  }

  private List<Found> nominal() {
    List<Found> all = new ArrayList<>();
    double[] nominalShares = box.nominalShares();
    for (Held held : worstFriction(rig, rig.nominal())) {
      Found one = new Found(held);
      one.take(held, nominalShares);
      all.add(one);
    }
    return all;
  }

  /**
   * @param enough a utilisation beyond which no more need be tried
   */
  private void trySamples(double enough) {
    double largest = 0;
    for (int i = 0; i < shares.length && largest <= enough; i++) {
      Point point = box.at(shares[i]);
      for (Creep creep : frictions(rig)) {
        Trial trial = Trial.of(rig, point, creep);
        load.take(trial);
        List<Held> held = trial.held();
        for (int c = 0; c < utilisation.length; c++) {
          found.get(c).take(held.get(c), shares[i]);
          utilisation[c][i] = Math.max(utilisation[c][i], held.get(c).utilisation());
          largest = Math.max(largest, utilisation[c][i]);
        }
      }
    }
  }

  /** Where there is one leg, friction has nothing to do. */
  private static List<Creep> frictions(ResolvedRig rig) {
    return rig.turn() == ResolvedRig.Turn.ONE_LEG ? List.of(Creep.NONE) : FRICTION;
  }

  /**
   * Climbs to the check's worst point, from its worst samples in several parts of the sequence
   * (each part fills the box evenly) and from the nominal point, under every state of the rope's
   * friction: the one that is worst at the start may not be so at the top. A check that is far from
   * its limit even in its worst sample is climbed from there alone.
   *
   * @param enough a utilisation beyond which no more need be looked for
   */
  private void searchWorst(int check, double enough) {
    Found one = found.get(check);
    List<double[]> starts = new ArrayList<>();
    starts.add(one.worstShares);
    if (one.worst >= CLOSE_TO_LIMIT) {
      starts.add(box.nominalShares());
      for (int part = 0; part < PARTS; part++) {
        starts.add(worstSample(check, part));
      }
    }
    for (double[] start : starts) {
      for (Creep creep : frictions(rig)) {
        if (one.worst > enough) {
          return;
        }
        climb(check, start, creep);
      }
    }
  }

  private void climb(int check, double[] start, Creep creep) {
    Found one = found.get(check);
    double[] top =
        Climb.from(
            start, there -> Trial.of(rig, box.at(there), creep).held(one.kind).utilisation());
    one.take(worstFriction(rig, box.at(top)).get(check), top);
  }

  private double[] worstSample(int check, int part) {
    int from = part * shares.length / PARTS;
    int to = (part + 1) * shares.length / PARTS;
    int worst = from;
    for (int i = from; i < to; i++) {
      if (utilisation[check][i] > utilisation[check][worst]) {
        worst = i;
      }
    }
    return shares[worst];
  }

  /** Each check with the state of friction that is worst for it. */
  static List<Held> worstFriction(ResolvedRig rig, Point point) {
    List<Held> worst = Trial.of(rig, point, Creep.NONE).held();
    for (Creep creep : frictions(rig)) {
      worst = worstOf(worst, Trial.of(rig, point, creep).held());
    }
    return worst;
  }

  /** Of two trials of one rig the worse of each check. */
  static List<Held> worstOf(List<Held> one, List<Held> other) {
    List<Held> worst = new ArrayList<>(one);
    for (int c = 0; c < worst.size(); c++) {
      if (other.get(c).utilisation() > worst.get(c).utilisation()) {
        worst.set(c, other.get(c));
      }
    }
    return worst;
  }

  Load load() {
    return load.load();
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (int c = 0; c < found.size(); c++) {
      Found one = found.get(c);
      checks.add(
          new Check(
              one.kind,
              new Spread(one.lowDemand, one.nominal.demand(), one.highDemand),
              new Spread(one.lowCapacity, one.nominal.capacity(), one.highCapacity),
              new Spread(one.low, one.nominalUtilisation, one.worst),
              percentile95(utilisation[c]),
              Capacities.sources(one.kind, rig)));
    }
    return checks;
  }

  private static double percentile95(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.ceil(0.95 * sorted.length) - 1];
  }

  /** Of the measures that can be measured again, the one whose own doubt makes most of it. */
  Optional<Measure> mostDoubtful(CheckKind kind, Predicate<Measure> measurable) {
    int check = indexOf(kind);
    Optional<Measure> most = Optional.empty();
    double largest = NOISE;
    for (int side = 0; side < box.sides().size(); side++) {
      Measure measure = box.sides().get(side);
      double share =
          measurable.test(measure) ? VarianceShare.ofSide(shares, side, utilisation[check]) : 0;
      if (share > largest) {
        largest = share;
        most = Optional.of(measure);
      }
    }
    return most;
  }
}
