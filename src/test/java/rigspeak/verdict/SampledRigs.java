package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Resolution;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.rig.Value.CavityShape;
import rigspeak.rig.Value.UnionCondition;

/**
 * Rigs from all over what a climber may hang a rope on, spread evenly by Sobol's sequence.
 *
 * <p>The space is chosen so that good, marginal and refused rigs all come up in force. The same
 * number always gives the same rigs.
 */
public final class SampledRigs {
  /** As many as a rig draws from at most. */
  private static final int SIDES = 56;

  private static final UnitSystem METRIC = UnitSystem.METRIC;

  private static final List<Value.Species> SPECIES =
      List.of(
          Value.Species.unknown(),
          species("oak"),
          species("northern", "red", "oak"),
          species("live", "oak"),
          species("silver", "maple"),
          species("sugar", "maple"),
          species("white", "ash"),
          species("black", "locust"),
          species("douglas-fir"),
          species("american", "beech"));

  private SampledRigs() {}

  /** The first so many rigs of which everything is known and nothing contradicts. */
  public static List<Rig> first(int count) {
    Catalogue catalogue = Catalogue.bundled();
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(SIDES);
    // The first point is a corner.
    sobol.nextVector();
    List<Rig> rigs = new ArrayList<>();
    while (rigs.size() < count) {
      Rig rig = new Draw(sobol.nextVector()).rig();
      // Two legs may fall together or into one line, or a sling point where no rope pulls it.
      if (catalogue.resolve(RopePath.alone(rig), Place.redirectNumber(1))
              instanceof Resolution.Known known
          && SlingDirection.conflict(known.rig()).isEmpty()) {
        rigs.add(rig);
      }
    }
    return rigs;
  }

  private static Value.Species species(String... words) {
    return new Value.Species(Set.of(words));
  }

  /** One point of the space on its way to a rig. */
  private static final class Draw {
    private final double[] shares;
    private int next;
    private Rig rig = Rig.empty();
    private final HowGot how;

    Draw(double[] shares) {
      this.shares = shares;
      this.how = oneOf(HowGot.BY_TAPE, HowGot.BY_TAPE, HowGot.BY_HAND_SPAN, HowGot.BY_EYE);
    }

    Rig rig() {
      climber();
      limb();
      sling();
      rope();
      return rig;
    }

    private void climber() {
      say(Slot.ALL_UP, new Value.Weight(Mass.ofKilograms(between(50, 130)), METRIC));
      say(Slot.SPECIES, SPECIES.get((int) between(0, SPECIES.size())));
      say(Slot.WOOD, Value.Wood.LIVE);
    }

    private void limb() {
      double diameter = between(0.08, 0.5);
      double stem = diameter * between(1, 4);
      say(Slot.LIMB_DIAMETER, metres(diameter));
      double butt = diameter * between(1, 1.8);
      if (butt < stem && oneOf(true, false, false)) {
        say(Slot.THICK_END, metres(butt));
      }
      say(Slot.STEM_DIAMETER, metres(stem));
      double rise = oneOf(between(-20, 80), between(-20, 80), 0.0, 90.0);
      say(Slot.LIMB_RISE, new Value.Turned(Angle.ofDegrees(rise)));
      double out = oneOf(0.0, between(0.1, 0.6), between(0.6, 3));
      say(Slot.OUT, metres(out));
      double length = between(4, 8);
      if (oneOf(true, false, false)) {
        say(Slot.LIMB_LENGTH, metres(length));
      }
      say(
          Slot.UNION,
          oneOf(
              Value.Union.of(UnionCondition.SOUND),
              Value.Union.of(UnionCondition.SOUND),
              Value.Union.of(UnionCondition.CODOMINANT),
              Value.Union.of(UnionCondition.INCLUDED_BARK)));
      double cavity = between(0.05, 0.6);
      if (!rig.value(Slot.UNION, Value.Union.class).orElseThrow().has(UnionCondition.SOUND)) {
        double hollow = oneOf(0.0, 0.0, cavity);
        say(Slot.CAVITY, new Value.Share(hollow));
        CavityShape shape =
            oneOf(
                CavityShape.CENTERED,
                CavityShape.CENTERED,
                CavityShape.OFF_CENTER,
                CavityShape.OPEN);
        if (hollow > 0) {
          say(Slot.CAVITY_SHAPE, shape);
        }
      }
      if (out == 0) {
        say(Slot.SEAT, oneOf(Value.Seat.UNION, Value.Seat.FREE));
      } else {
        say(Slot.SEAT, oneOf(Value.Seat.STUB, Value.Seat.FREE));
      }
    }

    private void sling() {
      say(
          Slot.RUNNING_OVER,
          oneOf(
              Value.RunningOver.CARABINER,
              Value.RunningOver.RING,
              Value.RunningOver.PULLEY,
              Value.RunningOver.PULLEY,
              Value.RunningOver.BARK));
      Value.Hitch hitch =
          oneOf(
              Value.Hitch.CHOKED,
              Value.Hitch.CHOKED,
              Value.Hitch.CHOKED,
              Value.Hitch.BASKET,
              Value.Hitch.BASKET,
              Value.Hitch.GIRTH);
      say(Slot.HITCH, hitch);
      int wraps = (int) between(1, 7);
      if (hitch != Value.Hitch.GIRTH) {
        say(Slot.WRAPS, new Value.Wraps(wraps));
      }
      double angle = between(20, 140);
      if (oneOf(true, false)) {
        Slot slot = hitch == Value.Hitch.BASKET ? Slot.BASKET_ANGLE : Slot.CHOKE_ANGLE;
        say(slot, new Value.Turned(Angle.ofDegrees(angle)));
      }
      double thickness = between(0.01, 0.04);
      if (oneOf(true, false)) {
        say(Slot.SLING_THICKNESS, metres(thickness));
      }
      if (rig.value(Slot.RUNNING_OVER, Value.RunningOver.class).orElseThrow()
              != Value.RunningOver.BARK
          && oneOf(true, false, false, false)) {
        say(Slot.CONNECTOR_LIES, Value.ConnectorLies.CROSS_LOADED);
      }
      say(Slot.BARK, oneOf(Value.Bark.ROUGH, Value.Bark.SMOOTH, Value.Bark.WET));
      say(Slot.SLING_RATING, new Value.Rating(Force.ofKilonewtons(between(20, 40)), METRIC));
    }

    private void rope() {
      say(Slot.ROPE_SYSTEM, oneOf(Value.RopeSystem.STATIONARY, Value.RopeSystem.MOVING));
      boolean moving =
          rig.value(Slot.ROPE_SYSTEM, Value.RopeSystem.class).orElseThrow()
              == Value.RopeSystem.MOVING;
      Value.Captured captured = oneOf(Value.Captured.SINGLE, Value.Captured.BOTH);
      if (moving) {
        say(Slot.CAPTURED, captured);
      }
      Direction anchor = Direction.ofDegrees(between(-45, 85), between(-180, 180));
      Direction working =
          oneOf(
              Direction.straightDown(), Direction.ofDegrees(between(-90, -30), between(-180, 180)));
      double anchorLength = between(1, 15);
      double workingLength = between(1, 15);
      double inside = between(10, 170);
      Direction sling = Direction.ofDegrees(between(-85, 40), between(-180, 180));
      if (oneOf(true, true, false)) {
        boolean lengths = oneOf(true, false);
        say(Slot.ANCHOR_LEG, leg(anchor, anchorLength, lengths));
        say(Slot.WORKING_LEG, leg(working, workingLength, lengths));
        if (lengths) {
          say(Slot.SLACK, metres(oneOf(0.0, 0.0, 0.0, 0.1)));
        }
      } else if (oneOf(true, false)) {
        say(Slot.INSIDE_ANGLE, new Value.Turned(Angle.ofDegrees(inside)));
        say(Slot.SLING_POINTS, new Value.Toward(sling));
      } else {
        say(Slot.BEND, new Value.Turned(Angle.ofDegrees(inside)));
        say(Slot.SLING_POINTS, new Value.Toward(sling));
      }
    }

    private static Value.Leg leg(Direction direction, double metres, boolean withLength) {
      return new Value.Leg(direction, withLength ? Optional.of(metres(metres)) : Optional.empty());
    }

    private static Value.Distance metres(double metres) {
      return new Value.Distance(Length.ofMetres(metres), METRIC);
    }

    private void say(Slot slot, Value value) {
      rig = rig.with(slot, new Said(value, how));
    }

    private double between(double low, double high) {
      return low + (high - low) * shares[next++];
    }

    @SafeVarargs
    private <T> T oneOf(T... options) {
      return options[(int) (options.length * shares[next++])];
    }
  }
}
