package rigspeak.rig;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** One thing that can be said of a rig. The grammar calls it by the same name in lower case. */
public enum Slot {
  ALL_UP(Scope.CLIMB, Value.Weight.class),
  SPECIES(Scope.CLIMB, Value.Species.class),
  ROPE_SYSTEM(Scope.CLIMB, Value.RopeSystem.class),
  ANCHOR(Scope.CLIMB, Value.Anchor.class),

  WOOD(Scope.SUPPORT, Value.Wood.class),
  /** Where the sling lies. */
  LIMB_DIAMETER(Scope.SUPPORT, Value.Distance.class),
  /** Its thick end, at the union. */
  THICK_END(Scope.SUPPORT, Value.Distance.class),
  LIMB_RISE(Scope.SUPPORT, Value.Turned.class),
  LIMB_LENGTH(Scope.SUPPORT, Value.Distance.class),
  OUT(Scope.SUPPORT, Value.Distance.class),
  STEM_DIAMETER(Scope.SUPPORT, Value.Distance.class),
  UNION(Scope.SUPPORT, Value.Union.class),
  CAVITY(Scope.SUPPORT, Value.Share.class),
  CAVITY_SHAPE(Scope.SUPPORT, Value.CavityShape.class),

  HITCH(Scope.SUPPORT, Value.Hitch.class),
  WRAPS(Scope.SUPPORT, Value.Wraps.class),
  /** At the choke, between the standing part and the loop. */
  CHOKE_ANGLE(Scope.SUPPORT, Value.Turned.class),
  /** Between the two legs of a basket. */
  BASKET_ANGLE(Scope.SUPPORT, Value.Turned.class),
  SLING_THICKNESS(Scope.SUPPORT, Value.Distance.class),
  SEAT(Scope.SUPPORT, Value.Seat.class),
  BARK(Scope.SUPPORT, Value.Bark.class),
  SLING_RATING(Scope.SUPPORT, Value.Rating.class),
  RUNNING_OVER(Scope.SUPPORT, Value.RunningOver.class),
  CONNECTOR_LIES(Scope.SUPPORT, Value.ConnectorLies.class),

  CAPTURED(Scope.SUPPORT, Value.Captured.class),
  ANCHOR_LEG(Scope.SUPPORT, Value.Leg.class),
  WORKING_LEG(Scope.SUPPORT, Value.Leg.class),
  /** The angle between the two legs. */
  INSIDE_ANGLE(Scope.SUPPORT, Value.Turned.class),
  /** How far the rope is turned from straight on: half a turn less the inside angle. */
  BEND(Scope.SUPPORT, Value.Turned.class),
  SLING_POINTS(Scope.SUPPORT, Value.Toward.class),
  SLACK(Scope.SUPPORT, Value.Distance.class),
  /** From the climber, the way the swing would go, to the stem or other wood. */
  STEM_CLEAR(Scope.SUPPORT, Value.Distance.class);

  /** Whether a value stays from redirect to redirect. */
  public enum Scope {
    /** Of the climber, the rope and the tree: said once. */
    CLIMB,
    /** Of one support: said anew for each. */
    SUPPORT
  }

  private final Scope scope;
  private final Class<? extends Value> valueType;

  Slot(Scope scope, Class<? extends Value> valueType) {
    this.scope = scope;
    this.valueType = valueType;
  }

  public Scope scope() {
    return scope;
  }

  public Class<? extends Value> valueType() {
    return valueType;
  }

  /** The name that the grammar and the files use: lower case with underscores. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Slot> of(String key) {
    return Arrays.stream(values()).filter(slot -> slot.key().equals(key)).findFirst();
  }
}
