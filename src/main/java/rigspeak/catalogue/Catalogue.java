package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rigspeak.catalogue.Bounds.Kind;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.Assumption;
import rigspeak.rig.ResolvedRig.Gear;
import rigspeak.rig.ResolvedRig.Grip;
import rigspeak.rig.ResolvedRig.HollowRule;
import rigspeak.rig.ResolvedRig.Movement;
import rigspeak.rig.ResolvedRig.Turn;
import rigspeak.rig.ResolvedRig.UnionRule;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Sourced;
import rigspeak.rig.Strength;
import rigspeak.rig.Value;

/**
 * The numbers of the trade, each with its source; puts them beside a rig as said.
 *
 * <p>The numbers stand in the tables beside this class, never in code.
 */
public final class Catalogue {
  /** A sling "at the union" may lie this far out, metres. */
  private static final double AT_UNION_HIGH_M = 0.15;

  private static final double QUARTER_TURN = Math.PI / 2;

  private final Sources sources = new Sources();
  private final Factors factors = new Factors(sources);
  private final Woods woods = new Woods(sources, factors);
  private final Bounds bounds = new Bounds(sources);
  private final Frictions frictions = new Frictions(sources);
  private final Ranges ranges = new Ranges();

  private Catalogue() {}

  /** The catalogue that comes with the tool. */
  public static Catalogue bundled() {
    return new Catalogue();
  }

  /** Every source that the catalogue names, by its key. */
  public Map<String, Source> sources() {
    return sources.all();
  }

  /** Why this value is not plausible in this slot, if it is not. */
  public Optional<Conflict.OutOfRange> offence(Slot slot, Value value) {
    return ranges.offence(slot, value);
  }

  /** What has not been said of this rig and must be, in the order in which it is best asked. */
  public List<Slot> missing(Rig rig) {
    return Questions.open(rig);
  }

  /** All numbers of this rig with their bounds and sources, or what is missing or contradictory. */
  public Resolution resolve(Rig rig) {
    List<Slot> missing = Questions.open(rig);
    List<Conflict> conflicts = Contradictions.in(rig, ranges, bounds);
    if (!missing.isEmpty() || !conflicts.isEmpty()) {
      return new Resolution.Unknown(missing, conflicts);
    }
    return new Resolution.Known(new Resolving(rig).rig());
  }

  /** One rig on its way to its numbers; nothing is missing any more. */
  private final class Resolving {
    private final Rig said;
    private final Map<Measure, Estimate> measures = new EnumMap<>(Measure.class);
    private final List<Assumption> assumptions = new ArrayList<>();

    Resolving(Rig said) {
      this.said = said;
    }

    ResolvedRig rig() {
      climber();
      limb();
      Turn turn = turn();
      Grip grip = grip();
      return new ResolvedRig(
          said,
          measures,
          turn,
          tensionShare(),
          grip,
          said.value(Slot.SEAT, Value.Seat.class).orElse(Value.Seat.FREE),
          woods.strength(need(Slot.SPECIES, Value.Species.class)),
          unionRule(),
          hollowRule(),
          gear(),
          new Movement(factors.get("working_peak"), factors.get("rope_modulus_n")),
          assumptions);
    }

    private void climber() {
      double kilograms = need(Slot.ALL_UP, Value.Weight.class).mass().kilograms();
      measures.put(
          Measure.ALL_UP,
          bounds.around(kilograms, Kind.WEIGHT, how(Slot.ALL_UP), 0, Double.MAX_VALUE));
    }

    private void limb() {
      length(Slot.LIMB_DIAMETER, Measure.LIMB_DIAMETER, Kind.DIAMETER);
      length(Slot.STEM_DIAMETER, Measure.STEM_DIAMETER, Kind.DIAMETER);
      if (said.has(Slot.LIMB_LENGTH)) {
        length(Slot.LIMB_LENGTH, Measure.LIMB_LENGTH, Kind.DISTANCE);
      } else {
        assume(Slot.LIMB_LENGTH, "length_unsaid");
      }
      if (metres(Slot.OUT) == 0) {
        measures.put(
            Measure.OUT,
            new Estimate(0, 0, AT_UNION_HIGH_M, how(Slot.OUT), sources.get("at_union")));
      } else {
        length(Slot.OUT, Measure.OUT, Kind.DISTANCE);
      }
      angle(
          Measure.LIMB_RISE,
          need(Slot.LIMB_RISE, Value.Turned.class).angle().radians(),
          how(Slot.LIMB_RISE),
          -QUARTER_TURN,
          QUARTER_TURN);
      double hollow =
          said.value(Slot.CAVITY, Value.Share.class).map(Value.Share::ofDiameter).orElse(0.0);
      if (hollow > 0) {
        measures.put(Measure.CAVITY, bounds.around(hollow, Kind.SHARE, how(Slot.CAVITY), 0, 0.99));
      }
    }

    private Turn turn() {
      boolean legs = said.has(Slot.ANCHOR_LEG) && said.has(Slot.WORKING_LEG);
      if (said.has(Slot.ANCHOR_LEG)) {
        leg(
            Slot.ANCHOR_LEG,
            Measure.ANCHOR_LEG_ELEVATION,
            Measure.ANCHOR_LEG_BEARING,
            Measure.ANCHOR_LEG_LENGTH);
      }
      if (said.has(Slot.WORKING_LEG)) {
        leg(
            Slot.WORKING_LEG,
            Measure.WORKING_LEG_ELEVATION,
            Measure.WORKING_LEG_BEARING,
            Measure.WORKING_LEG_LENGTH);
      }
      if (!legs) {
        insideAngle();
      }
      if (said.has(Slot.SLING_POINTS)) {
        direction(
            need(Slot.SLING_POINTS, Value.Toward.class).direction(),
            how(Slot.SLING_POINTS),
            Measure.SLING_ELEVATION,
            Measure.SLING_BEARING);
      }
      if (said.has(Slot.SLACK) && metres(Slot.SLACK) > 0) {
        length(Slot.SLACK, Measure.SLACK, Kind.DISTANCE);
      }
      String over =
          need(Slot.RUNNING_OVER, Value.RunningOver.class) == Value.RunningOver.BARK
              ? "rope_on_bark"
              : key(need(Slot.RUNNING_OVER, Value.RunningOver.class));
      measures.put(Measure.ROPE_FRICTION, frictions.of(over, how(Slot.RUNNING_OVER)));
      return legs ? Turn.LEGS : Turn.ANGLE_AND_SLING;
    }

    private void leg(Slot slot, Measure elevation, Measure bearing, Measure length) {
      Value.Leg leg = need(slot, Value.Leg.class);
      direction(leg.direction(), how(slot), elevation, bearing);
      leg.length()
          .ifPresent(
              said ->
                  measures.put(
                      length,
                      bounds.around(
                          said.length().metres(), Kind.DISTANCE, how(slot), 0, Double.MAX_VALUE)));
    }

    private void insideAngle() {
      if (said.has(Slot.INSIDE_ANGLE)) {
        angle(
            Measure.INSIDE_ANGLE,
            need(Slot.INSIDE_ANGLE, Value.Turned.class).angle().radians(),
            how(Slot.INSIDE_ANGLE),
            0,
            Math.PI);
      } else {
        angle(
            Measure.INSIDE_ANGLE,
            Math.PI - need(Slot.BEND, Value.Turned.class).angle().radians(),
            how(Slot.BEND),
            0,
            Math.PI);
      }
    }

    /** Two parts of a moving rope carry the climber; a stationary rope has only one. */
    private double tensionShare() {
      boolean moving = need(Slot.ROPE_SYSTEM, Value.RopeSystem.class) == Value.RopeSystem.MOVING;
      boolean single =
          said.value(Slot.CAPTURED, Value.Captured.class)
              .filter(captured -> captured == Value.Captured.SINGLE)
              .isPresent();
      return moving && single ? 0.5 : 1;
    }

    private Grip grip() {
      String bark;
      if (said.has(Slot.BARK)) {
        bark = "bark_" + key(need(Slot.BARK, Value.Bark.class));
      } else {
        assume(Slot.BARK, "bark_unsaid");
        bark = "bark_wet";
      }
      measures.put(Measure.BARK_FRICTION, frictions.of(bark, how(Slot.BARK)));
      if (!said.has(Slot.SEAT)) {
        assume(Slot.SEAT, "seat_unsaid");
      }
      if (isChoked()) {
        return new Grip.Choked(need(Slot.WRAPS, Value.Wraps.class).turns());
      }
      return new Grip.Laid(factors.value("basket_included_rad"));
    }

    private boolean isChoked() {
      return !Questions.overBark(said) && need(Slot.HITCH, Value.Hitch.class) == Value.Hitch.CHOKED;
    }

    private UnionRule unionRule() {
      Value.Union union = need(Slot.UNION, Value.Union.class);
      return new UnionRule(
          factors.get("union_full_ratio"),
          factors.get("union_codominant_ratio"),
          factors.get("union_codominant"),
          union.has(Value.UnionCondition.CODOMINANT),
          union.has(Value.UnionCondition.INCLUDED_BARK)
              ? factors.get("union_included_bark")
              : new Sourced("union_clear", 1, sources.get("said")),
          factors.get("union_across"));
    }

    private HollowRule hollowRule() {
      boolean outer = need(Slot.UNION, Value.Union.class).has(Value.UnionCondition.DECAYED);
      return new HollowRule(
          outer
              ? factors.get("outer_decay_diameter")
              : new Sourced("inner_hollow", 1, sources.get("exact")),
          factors.get("hollow_limit"));
    }

    private Gear gear() {
      Sourced share = factors.get("design_factor_share");
      Strength rope = new Strength(factors.get("rope_n"), List.of(share));
      if (Questions.overBark(said)) {
        return new Gear(Optional.empty(), Optional.empty(), rope);
      }
      Strength sling = new Strength(slingRating(), hitchFactors()).times(share);
      String connector = key(need(Slot.RUNNING_OVER, Value.RunningOver.class)) + "_n";
      return new Gear(
          Optional.of(sling),
          Optional.of(new Strength(factors.get(connector), List.of(share))),
          rope);
    }

    private Sourced slingRating() {
      Optional<Value.Rating> rating = said.value(Slot.SLING_RATING, Value.Rating.class);
      if (rating.isPresent()) {
        return new Sourced("sling_n", rating.get().force().newtons(), sources.get("said"));
      }
      assume(Slot.SLING_RATING, "sling_unrated");
      return factors.get("sling_n");
    }

    private List<Sourced> hitchFactors() {
      return isChoked()
          ? List.of(factors.get("hitch_choker"), factors.get("choke_angle_unsaid"))
          : List.of(factors.get("hitch_basket"));
    }

    private void length(Slot slot, Measure measure, Kind kind) {
      measures.put(measure, bounds.around(metres(slot), kind, how(slot), 0, Double.MAX_VALUE));
    }

    private void angle(Measure measure, double radians, HowGot how, double least, double most) {
      measures.put(measure, bounds.around(radians, Kind.ANGLE, how, least, most));
    }

    /** A cone around the direction: the steeper it is, the less its bearing is known. */
    private void direction(
        Direction direction, HowGot how, Measure elevationMeasure, Measure bearingMeasure) {
      Kind kind = direction.isPlumb() ? Kind.PLUMB : Kind.ANGLE;
      double elevation = direction.elevation().radians();
      double bearing = direction.bearing().radians();
      Estimate rise = bounds.around(elevation, kind, how, -QUARTER_TURN, QUARTER_TURN);
      measures.put(elevationMeasure, rise);
      double half = bounds.half(elevation, kind, how);
      double swing = Math.min(Math.PI, half / Math.max(Math.cos(elevation), half / Math.PI));
      measures.put(
          bearingMeasure,
          new Estimate(bearing - swing, bearing, bearing + swing, how, rise.source()));
    }

    private void assume(Slot slot, String sourceKey) {
      assumptions.add(new Assumption(slot, sources.get(sourceKey)));
    }

    private double metres(Slot slot) {
      return need(slot, Value.Distance.class).length().metres();
    }

    private <V extends Value> V need(Slot slot, Class<V> type) {
      return said.value(slot, type).orElseThrow();
    }

    private HowGot how(Slot slot) {
      return said.said(slot).map(Said::how).orElse(HowGot.ASSUMED);
    }

    private String key(Enum<?> word) {
      return word.name().toLowerCase(Locale.ROOT);
    }
  }
}
