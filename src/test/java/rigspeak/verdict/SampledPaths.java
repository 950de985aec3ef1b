package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/**
 * Ropes over a main point and one to three redirects, spread evenly by Sobol's sequence; each
 * support is one of the sampled rigs, hung on the rope. The same number always gives the same
 * ropes.
 */
final class SampledPaths {
  /** As many as a rope draws from at most. */
  private static final int SIDES = 24;

  private static final int MOST_REDIRECTS = 3;

  private SampledPaths() {}

  /** The first so many ropes of which every support is known and nothing contradicts. */
  static List<RopePath> first(int count) {
    // Some ropes turn too little, or a leg of theirs lies on the next.
    List<Rig> rigs = SampledRigs.first(2 * (MOST_REDIRECTS + 1) * count);
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(SIDES);
    // The first point is a corner.
    sobol.nextVector();
    List<RopePath> paths = new ArrayList<>();
    for (int next = 0; paths.size() < count; next += MOST_REDIRECTS + 1) {
      RopePath path =
          new Draw(sobol.nextVector(), rigs.subList(next, next + MOST_REDIRECTS + 1)).path();
      if (Supports.of(QuickLook.CATALOGUE, path).otherwise().isEmpty()) {
        paths.add(path);
      }
    }
    return paths;
  }

  /** One point of the space on its way to a rope. */
  private static final class Draw {
    private final double[] shares;
    private final List<Rig> rigs;
    private int next;

    Draw(double[] shares, List<Rig> rigs) {
      this.shares = shares;
      this.rigs = rigs;
    }

    RopePath path() {
      int redirects = 1 + (int) between(0, MOST_REDIRECTS);
      boolean moving = between(0, 1) < 0.3;
      boolean base = between(0, 1) < 0.5;
      boolean single = between(0, 1) < 0.5;
      Rig climb = rigs.get(0);
      HowGot how = climb.said(Slot.ALL_UP).orElseThrow().how();
      climb = say(climb, Slot.ROPE_SYSTEM, system(moving), how);
      if (!moving) {
        climb = say(climb, Slot.ANCHOR, base ? Value.Anchor.BASE : Value.Anchor.CANOPY, how);
      }
      TreeMap<Place, Rig> supports = new TreeMap<>();
      double rise = 0;
      double lengthM = 0;
      for (int number = 0; number <= redirects; number++) {
        Rig rig = withoutRope(rigs.get(number)).withClimbOf(climb);
        if (number > 0) {
          rig = say(rig, Slot.ANCHOR_LEG, leg(rise, bearing(), lengthM), how);
          if (moving) {
            rig =
                say(rig, Slot.CAPTURED, single ? Value.Captured.SINGLE : Value.Captured.BOTH, how);
          }
        } else if (moving ? single : base) {
          rig = say(rig, Slot.ANCHOR_LEG, leg(between(-90, -60), bearing(), 15), how);
        }
        boolean last = number == redirects;
        double down = last ? between(20, 90) : between(-30, 60);
        lengthM = between(2, 10);
        rise = down;
        rig = say(rig, Slot.WORKING_LEG, leg(-down, bearing(), lengthM), how);
        supports.put(new Place(number), rig);
      }
      return RopePath.of(supports);
    }

    private static Rig withoutRope(Rig rig) {
      Rig bare = rig;
      for (Slot slot :
          List.of(
              Slot.CAPTURED,
              Slot.ANCHOR_LEG,
              Slot.WORKING_LEG,
              Slot.INSIDE_ANGLE,
              Slot.BEND,
              Slot.SLING_POINTS,
              Slot.SLACK)) {
        bare = bare.without(slot);
      }
      return bare;
    }

    private static Value.RopeSystem system(boolean moving) {
      return moving ? Value.RopeSystem.MOVING : Value.RopeSystem.STATIONARY;
    }

    private static Value.Leg leg(double elevation, double bearing, double metres) {
      return new Value.Leg(
          Direction.ofDegrees(elevation, bearing),
          Optional.of(new Value.Distance(Length.ofMetres(metres), UnitSystem.METRIC)));
    }

    private static Rig say(Rig rig, Slot slot, Value value, HowGot how) {
      return rig.with(slot, new Said(value, how));
    }

    private double bearing() {
      return between(-180, 180);
    }

    private double between(double low, double high) {
      return low + (high - low) * shares[next++];
    }
  }
}
