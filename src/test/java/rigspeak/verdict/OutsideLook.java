package rigspeak.verdict;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.verdict.Trial.Held;

/**
 * The worst of a rig's box, looked for by other ways than the judge's survey: another sequence of
 * points, all corners, climbs from random places, and every state of the rope's friction, not only
 * its ends. It shares with the survey only what one point comes to.
 */
final class OutsideLook {
  /** Up to so many sides all corners are tried, of a box with more so many as these have. */
  private static final int ALL_CORNERS = 12;

  private static final int CLIMBS = 4;
  private static final int PLACES_ON_A_SIDE = 12;
  private static final int MOST_ROUNDS = 8;

  private final ResolvedRig rig;
  private final int sides;
  private final RandomGenerator random;
  private final List<CheckKind> kinds;
  private final double[] worst;

  OutsideLook(ResolvedRig rig, int seed) {
    this.rig = rig;
    this.sides = rig.measures().size();
    this.random = new MersenneTwister(seed);
    this.kinds = Trial.of(rig, rig.nominal(), Creep.NONE).held().stream().map(Held::kind).toList();
    this.worst = new double[kinds.size()];
  }

  /** The largest utilisation that was seen of each check. */
  Map<CheckKind, Double> worst() {
    Map<CheckKind, Double> byKind = new TreeMap<>();
    for (int c = 0; c < worst.length; c++) {
      byKind.put(kinds.get(c), worst[c]);
    }
    return byKind;
  }

  OutsideLook freshPoints(int points) {
    for (int i = 0; i < points; i++) {
      double[] shares = anywhere();
      take(shares, 1);
      take(shares, -1);
      take(shares, 2 * random.nextDouble() - 1);
    }
    return this;
  }

  OutsideLook corners() {
    for (int i = 0; i < 1 << Math.min(sides, ALL_CORNERS); i++) {
      double[] shares = new double[sides];
      for (int side = 0; side < sides; side++) {
        boolean high = side < ALL_CORNERS ? (i >> side & 1) == 1 : random.nextBoolean();
        shares[side] = high ? 1 : 0;
      }
      take(shares, 1);
      take(shares, -1);
    }
    return this;
  }

  /** From random places uphill, one side after the other, for each check that can come near 1. */
  OutsideLook climbs(double fromUtilisation) {
    for (int c = 0; c < worst.length; c++) {
      if (worst[c] >= fromUtilisation) {
        for (int start = 0; start < CLIMBS; start++) {
          climb(c);
        }
      }
    }
    return this;
  }

  private void climb(int check) {
    // The last place is the friction's, from -1 to 1.
    double[] here = Arrays.copyOf(anywhere(), sides + 1);
    here[sides] = random.nextBoolean() ? 1 : 0;
    double best = utilisation(here, check);
    double before = 0;
    for (int round = 0; round < MOST_ROUNDS && best > before; round++) {
      before = best;
      for (int side = 0; side <= sides; side++) {
        for (int place = 0; place <= PLACES_ON_A_SIDE; place++) {
          double[] there = here.clone();
          there[side] = (double) place / PLACES_ON_A_SIDE;
          double utilisation = utilisation(there, check);
          if (utilisation > best) {
            best = utilisation;
            here = there;
          }
        }
      }
    }
    worst[check] = Math.max(worst[check], best);
  }

  private double utilisation(double[] place, int check) {
    return held(Arrays.copyOf(place, sides), 2 * place[sides] - 1).get(check).utilisation();
  }

  private double[] anywhere() {
    double[] shares = new double[sides];
    for (int side = 0; side < sides; side++) {
      shares[side] = random.nextDouble();
    }
    return shares;
  }

  private void take(double[] shares, double friction) {
    List<Held> held = held(shares, friction);
    for (int c = 0; c < worst.length; c++) {
      worst[c] = Math.max(worst[c], held.get(c).utilisation());
    }
  }

  /**
   * @param friction from -1 (all of it toward the climber) over 0 (none) to 1 (toward the anchor)
   */
  private List<Held> held(double[] shares, double friction) {
    Point point = Point.at(rig.measures(), shares);
    double all = point.get(Measure.ROPE_FRICTION);
    Point part = point.with(Measure.ROPE_FRICTION, Math.abs(friction) * all);
    return Trial.of(rig, part, friction < 0 ? Creep.TOWARD_CLIMBER : Creep.TOWARD_ANCHOR).held();
  }
}
