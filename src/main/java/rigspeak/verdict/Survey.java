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
 * A rig tried all over its box: at its word, at even samples, and in the worst corner that a search
 * from the worst sample finds for each check.
 */
final class Survey {
  /** Stress and force are worst at an end of the rope's friction, sliding perhaps in between. */
  private static final List<Creep> FRICTION =
      List.of(Creep.TOWARD_ANCHOR, Creep.TOWARD_CLIMBER, Creep.NEAREST_THE_LIMB);

  private static final int SEARCH_ROUNDS = 6;

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

  Survey(ResolvedRig rig, int samples) {
    this.rig = rig;
    this.box = new Box(rig);
    this.shares = box.evenly(samples);
    this.found = nominal();
    this.utilisation = new double[found.size()][samples];
    this.load = new LoadRange(Trial.of(rig, rig.nominal(), Creep.NONE));
    trySamples();
    searchCorners();
  }

  private List<Found> nominal() {
    List<Found> all = new ArrayList<>();
    double[] nominalShares = box.nominalShares();
    for (Held held : worstFriction(rig.nominal())) {
      Found one = new Found(held);
      one.take(held, nominalShares);
      all.add(one);
    }
    return all;
  }

  private void trySamples() {
    for (int i = 0; i < shares.length; i++) {
      Point point = box.at(shares[i]);
      for (Creep creep : FRICTION) {
        Trial trial = Trial.of(rig, point, creep);
        load.take(trial);
        for (int c = 0; c < utilisation.length; c++) {
          Held held = trial.held().get(c);
          found.get(c).take(held, shares[i]);
          utilisation[c][i] = Math.max(utilisation[c][i], held.utilisation());
        }
      }
    }
  }

  /** From each check's worst sample along one side after the other, as long as it gets worse. */
  private void searchCorners() {
    for (int c = 0; c < found.size(); c++) {
      Found check = found.get(c);
      double[] here = check.worstShares.clone();
      for (int round = 0; round < SEARCH_ROUNDS; round++) {
        double before = check.worst;
        for (int side = 0; side < here.length; side++) {
          for (double end : new double[] {0, 1}) {
            double[] there = here.clone();
            there[side] = end;
            Held held = worstFriction(box.at(there)).get(c);
            if (held.utilisation() > check.worst) {
              check.take(held, there);
              here = there;
            }
          }
        }
        if (check.worst <= before) {
          break;
        }
      }
    }
  }

  /** Each check with the state of friction that is worst for it. */
  private List<Held> worstFriction(Point point) {
    List<Held> worst = new ArrayList<>(Trial.of(rig, point, Creep.NONE).held());
    for (Creep creep : FRICTION) {
      List<Held> held = Trial.of(rig, point, creep).held();
      for (int c = 0; c < worst.size(); c++) {
        if (held.get(c).utilisation() > worst.get(c).utilisation()) {
          worst.set(c, held.get(c));
        }
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
    int check = kinds().indexOf(kind);
    Optional<Measure> most = Optional.empty();
    double largest = 0;
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

  private List<CheckKind> kinds() {
    return found.stream().map(one -> one.kind).toList();
  }
}
