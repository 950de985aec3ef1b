package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigspeak.catalogue.Bounds.Kind;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.Assumption;
import rigspeak.rig.ResolvedRig.Gear;
import rigspeak.rig.ResolvedRig.Grip;
import rigspeak.rig.ResolvedRig.HollowRule;
import rigspeak.rig.ResolvedRig.Movement;
import rigspeak.rig.ResolvedRig.PullAbove;
import rigspeak.rig.ResolvedRig.Turn;
import rigspeak.rig.ResolvedRig.UnionRule;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
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

  /** No leg of a rope is shorter than a hand is wide. */
  private static final double LEAST_LEG_M = 0.05;

  private static final double QUARTER_TURN = Math.PI / 2;

  /** Legs of a basket that spread farther pull the sling apart more than they carry. */
  private static final double MOST_BASKET = Math.toRadians(170);

  private final Sources sources;
  private final Factors factors;
  private final Woods woods;
  private final Bounds bounds;
  private final Frictions frictions;
  private final Ranges ranges = new Ranges();
  private final SlingRules slingRules;

  private Catalogue(Supplement supplement) {
    sources = new Sources(supplement);
    factors = new Factors(sources, supplement);
    woods = new Woods(sources, factors, supplement);
    bounds = new Bounds(sources);
    frictions = new Frictions(sources, supplement);
    slingRules = new SlingRules(sources, supplement);
  }

  /** The catalogue that comes with the tool. */
  public static Catalogue bundled() {
    return new Catalogue(Supplement.none());
  }

  /**
   * The same with a crew's own numbers in it, each of which carries {@link
   * Source.Provenance#SUPPLIED}.
   *
   * @throws CatalogueFault with one sentence that has file, line and reason; nothing is taken then
   */
  public static Catalogue with(List<SuppliedTable> tables) {
    return new Catalogue(Supplement.of(tables));
  }

  /** Whether there is wood of this name. */
  public boolean knows(Value.Species species) {
    return !woods.matching(species).isEmpty();
  }

  /** The species that a crew's table has and the tool's own has not, with the words of each. */
  public Map<String, Set<String>> newSpecies() {
    return woods.newSpecies();
  }

  /** Every source that the catalogue names, by its key. */
  public Map<String, Source> sources() {
    return sources.all();
  }

  /** Why this value is not plausible in this slot, if it is not. */
  public Optional<Conflict.OutOfRange> offence(Slot slot, Value value) {
    return ranges.offence(slot, value);
  }

  /**
   * What has not been said of the support at this place and must be, in the order in which it is
   * best asked.
   */
  public List<Slot> missing(RopePath path, Place place) {
    return Questions.open(path, place);
  }

  /**
   * All numbers of the support at this place with their bounds and sources, or what is missing or
   * contradictory.
   */
  public Resolution resolve(RopePath path, Place place) {
    List<Slot> missing = Questions.open(path, place);
    List<Conflict> conflicts = Contradictions.in(path, place, ranges, bounds);
    if (!missing.isEmpty() || !conflicts.isEmpty()) {
      return new Resolution.Unknown(missing, conflicts);
    }
    return new Resolution.Known(new Resolving(path, place).rig());
  }

  /** From how far off plumb a second attachment is prompted, in degrees. */
  public Sourced swingPromptDegrees() {
    return factors.get("swing_prompt_deg");
  }

  /** One rig on its way to its numbers; nothing is missing any more. */
  private final class Resolving {
    private final RopePath path;
    private final Place place;
    private final Reeving reeving;
    private final Rig said;
    private final Map<Measure, Estimate> measures = new EnumMap<>(Measure.class);
    private final List<Assumption> assumptions = new ArrayList<>();

    Resolving(RopePath path, Place place) {
      this.path = path;
      this.place = place;
      this.reeving = new Reeving(path, place);
      this.said = path.at(place);
    }

    ResolvedRig rig() {
      climber();
      limb();
      Turn turn = turn();
      Grip grip = grip();
      slack();
      return new ResolvedRig(
          place,
          said,
          measures,
          turn,
          reeving.carriesHalf() ? 0.5 : 1,
          grip,
          said.value(Slot.SEAT, Value.Seat.class).orElse(Value.Seat.FREE),
          woods.strength(need(Slot.SPECIES, Value.Species.class)),
          unionRule(),
          hollowRule(),
          pullAbove(),
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
      if (said.has(Slot.THICK_END)) {
        length(Slot.THICK_END, Measure.THICK_END, Kind.DIAMETER);
      }
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
      } else {
        reeving.sharedWorkingLeg().ifPresent(this::sharedLeg);
      }
      if (said.has(Slot.SLING_POINTS)) {
        direction(
            need(Slot.SLING_POINTS, Value.Toward.class).direction(),
            how(Slot.SLING_POINTS),
            Measure.SLING_ELEVATION,
            Measure.SLING_BEARING);
      }
      if (said.has(Slot.STEM_CLEAR)) {
        length(Slot.STEM_CLEAR, Measure.STEM_CLEAR, Kind.DISTANCE);
      }
      String over =
          need(Slot.RUNNING_OVER, Value.RunningOver.class) == Value.RunningOver.BARK
              ? "rope_on_bark"
              : key(need(Slot.RUNNING_OVER, Value.RunningOver.class));
      measures.put(Measure.ROPE_FRICTION, frictions.of(over, how(Slot.RUNNING_OVER)));
      if (reeving.hasOneLeg()) {
        return Turn.ONE_LEG;
      }
      if (said.has(Slot.ANCHOR_LEG) && reeving.hasWorkingLeg()) {
        return Turn.LEGS;
      }
      insideAngle();
      return Turn.ANGLE_AND_SLING;
    }

    /** Seen from its other end: turned round, and from here its bearing may be any. */
    private void sharedLeg(Value.Leg leg) {
      HowGot how =
          reeving.next().flatMap(next -> next.said(Slot.ANCHOR_LEG)).map(Said::how).orElseThrow();
      Source source = sources.get("leg_shared");
      double up = -leg.direction().elevation().radians();
      Kind kind = leg.direction().isPlumb() ? Kind.PLUMB : Kind.ANGLE;
      Estimate rise = bounds.around(up, kind, how, -QUARTER_TURN, QUARTER_TURN);
      measures.put(Measure.WORKING_LEG_ELEVATION, rise);
      measures.put(
          Measure.WORKING_LEG_BEARING, new Estimate(-Math.PI, 0, Math.PI, HowGot.ASSUMED, source));
      leg.length()
          .ifPresent(length -> measures.put(Measure.WORKING_LEG_LENGTH, around(length, how)));
    }

    /**
     * Wherever on the rope there is slack, the climber falls through it; where there is more than
     * one, the one with the least rope to take it up. Slack at a support whose legs have no lengths
     * cannot be: no verdict on that support, and none on the rope.
     */
    private void slack() {
      path.supports().values().stream()
          .filter(rig -> metres(rig, Slot.SLACK) > 0)
          .filter(rig -> hasLength(rig, Slot.ANCHOR_LEG) && hasLength(rig, Slot.WORKING_LEG))
          .max(Comparator.comparingDouble(this::slackOverRope))
          .ifPresent(
              rig -> {
                Said slack = rig.said(Slot.SLACK).orElseThrow();
                measures.put(Measure.SLACK, around((Value.Distance) slack.value(), slack.how()));
                measures.put(Measure.ROPE_OUT, ropeOut(rig));
              });
      if (!said.has(Slot.SLACK) && !measures.containsKey(Measure.SLACK)) {
        assume(Slot.SLACK, "slack_unsaid");
      }
    }

    /** At its worst, so that a guess cannot hide behind what was measured. */
    private double slackOverRope(Rig rig) {
      Said slack = rig.said(Slot.SLACK).orElseThrow();
      return around((Value.Distance) slack.value(), slack.how()).high() / ropeOut(rig).low();
    }

    private static boolean hasLength(Rig rig, Slot slot) {
      return rig.value(slot, Value.Leg.class).flatMap(Value.Leg::length).isPresent();
    }

    private Estimate ropeOut(Rig rig) {
      Estimate anchor = legLength(rig, Slot.ANCHOR_LEG);
      Estimate working = legLength(rig, Slot.WORKING_LEG);
      return new Estimate(
          anchor.low() + working.low(),
          anchor.nominal() + working.nominal(),
          anchor.high() + working.high(),
          working.how(),
          working.source());
    }

    private Estimate legLength(Rig rig, Slot slot) {
      Said leg = rig.said(slot).orElseThrow();
      return around(((Value.Leg) leg.value()).length().orElseThrow(), leg.how());
    }

    /** Of a leg or of slack. */
    private Estimate around(Value.Distance distance, HowGot how) {
      return bounds.around(
          distance.length().metres(), Kind.DISTANCE, how, LEAST_LEG_M, Double.MAX_VALUE);
    }

    private void leg(Slot slot, Measure elevation, Measure bearing, Measure length) {
      Value.Leg leg = need(slot, Value.Leg.class);
      direction(leg.direction(), how(slot), elevation, bearing);
      leg.length().ifPresent(said -> measures.put(length, around(said, how(slot))));
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
      if (Questions.overBark(said)) {
        angle(Slot.BASKET_ANGLE, Measure.BASKET_ANGLE, "basket_angle_unsaid_deg", MOST_BASKET);
        return new Grip.Laid();
      }
      thickness();
      Value.Hitch hitch = need(Slot.HITCH, Value.Hitch.class);
      if (hitch == Value.Hitch.BASKET) {
        angle(Slot.BASKET_ANGLE, Measure.BASKET_ANGLE, "basket_angle_unsaid_deg", MOST_BASKET);
        return new Grip.Laid();
      }
      angle(Slot.CHOKE_ANGLE, Measure.CHOKE_ANGLE, "choke_angle_unsaid_deg", Math.PI);
      return new Grip.Choked(
          hitch == Value.Hitch.GIRTH ? 1 : need(Slot.WRAPS, Value.Wraps.class).turns());
    }

    private void thickness() {
      if (said.has(Slot.SLING_THICKNESS)) {
        length(Slot.SLING_THICKNESS, Measure.SLING_THICKNESS, Kind.THICKNESS);
      } else {
        take(
            Slot.SLING_THICKNESS,
            Measure.SLING_THICKNESS,
            factors.get("sling_thickness_unsaid_m"),
            1);
      }
    }

    /** An angle of the sling as it was said, from 0, or the one that is taken instead. */
    private void angle(Slot slot, Measure measure, String unsaid, double most) {
      if (said.has(slot)) {
        angle(measure, need(slot, Value.Turned.class).angle().radians(), how(slot), 0, most);
      } else {
        take(slot, measure, factors.get(unsaid), Math.toRadians(1));
      }
    }

    /** Takes a number for granted, in its unit. */
    private void take(Slot slot, Measure measure, Sourced number, double unit) {
      double value = number.value() * unit;
      measures.put(measure, new Estimate(value, value, value, HowGot.ASSUMED, number.source()));
      assumptions.add(new Assumption(slot, number.source()));
    }

    private PullAbove pullAbove() {
      if (!reeving.isNextToMainPoint()) {
        return PullAbove.NONE;
      }
      return new Reeving(path, Place.MAIN_POINT).hasOneLeg()
          ? PullAbove.ONE_LEG
          : PullAbove.TWO_LEGS;
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
          factors.get("hollow_limit"),
          said.value(Slot.CAVITY_SHAPE, Value.CavityShape.class).orElse(Value.CavityShape.CENTERED),
          factors.get("off_center_shift"),
          new Sourced(
              "open_cavity",
              Math.toRadians(factors.value("open_cavity_deg")),
              factors.get("open_cavity_deg").source()),
          factors.get("open_warping"));
    }

    private Gear gear() {
      Sourced share = factors.get("design_factor_share");
      Strength rope = new Strength(factors.get("rope_n"), List.of(share));
      if (Questions.overBark(said)) {
        return new Gear(
            Optional.empty(), slingRules.choke(), slingRules.bend(), Optional.empty(), rope);
      }
      Strength sling = new Strength(slingRating(), hitchFactors()).times(share);
      return new Gear(
          Optional.of(sling),
          slingRules.choke(),
          slingRules.bend(),
          Optional.of(new Strength(connectorRating(), List.of(share))),
          rope);
    }

    private Sourced connectorRating() {
      if (!said.has(Slot.CONNECTOR_LIES)) {
        assume(Slot.CONNECTOR_LIES, "connector_unsaid");
      }
      boolean across = Reeving.is(said, Slot.CONNECTOR_LIES, Value.ConnectorLies.CROSS_LOADED);
      return across
          ? factors.get("cross_loaded_n")
          : factors.get(key(need(Slot.RUNNING_OVER, Value.RunningOver.class)) + "_n");
    }

    private Sourced slingRating() {
      Optional<Value.Rating> rating = said.value(Slot.SLING_RATING, Value.Rating.class);
      if (rating.isPresent()) {
        return new Sourced("sling_n", rating.get().force().newtons(), sources.get("said"));
      }
      assume(Slot.SLING_RATING, "sling_unrated");
      return factors.get("sling_n");
    }

    /** The two legs of a basket count with their angle, see {@link Measure#BASKET_ANGLE}. */
    private List<Sourced> hitchFactors() {
      return need(Slot.HITCH, Value.Hitch.class) == Value.Hitch.BASKET
          ? List.of()
          : List.of(factors.get("hitch_choker"));
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

    private static double metres(Rig rig, Slot slot) {
      return rig.value(slot, Value.Distance.class).map(d -> d.length().metres()).orElse(0.0);
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
