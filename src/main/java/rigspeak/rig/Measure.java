package rigspeak.rig;

import java.util.Locale;

/**
 * A number of a rig that is known only within bounds. The verdict is judged over all of them at
 * once.
 */
public enum Measure {
  ALL_UP(Unit.KILOGRAM),
  LIMB_DIAMETER(Unit.METRE),
  /** Of the limb at its union, where it was said beside the diameter under the sling. */
  THICK_END(Unit.METRE),
  /** Of the limb's axis from union to tip, up positive. */
  LIMB_RISE(Unit.RADIAN),
  LIMB_LENGTH(Unit.METRE),
  /** From the union to the sling along the limb. */
  OUT(Unit.METRE),
  STEM_DIAMETER(Unit.METRE),
  /** Diameter of the hollow over the limb's diameter. */
  CAVITY(Unit.RATIO),
  ANCHOR_LEG_ELEVATION(Unit.RADIAN),
  ANCHOR_LEG_BEARING(Unit.RADIAN),
  WORKING_LEG_ELEVATION(Unit.RADIAN),
  WORKING_LEG_BEARING(Unit.RADIAN),
  INSIDE_ANGLE(Unit.RADIAN),
  SLING_ELEVATION(Unit.RADIAN),
  SLING_BEARING(Unit.RADIAN),
  ANCHOR_LEG_LENGTH(Unit.METRE),
  WORKING_LEG_LENGTH(Unit.METRE),
  SLACK(Unit.METRE),
  /** Length of the rope that takes up the slack. */
  ROPE_OUT(Unit.METRE),
  /** From the climber to the stem, the way a swing would go. */
  STEM_CLEAR(Unit.METRE),
  /** Tension of the working leg over what the climber puts on the rope, by friction beyond. */
  BEYOND(Unit.RATIO),
  /** Elevation of the main point's leg to the base, on the redirect next to it. */
  BASE_LEG_ELEVATION(Unit.RADIAN),
  /** Tension of that leg over the tension of the rope from main point to redirect. */
  BASE_LEG_RATIO(Unit.RATIO),
  /** At the choke, between the standing part and the loop. */
  CHOKE_ANGLE(Unit.RADIAN),
  SLING_THICKNESS(Unit.METRE),
  /** Between the legs of a basket, or of a rope laid over bark. */
  BASKET_ANGLE(Unit.RADIAN),
  /** Of the rope on what it runs over. */
  ROPE_FRICTION(Unit.RATIO),
  /** Of the sling on the bark. */
  BARK_FRICTION(Unit.RATIO);

  /** The unit that the number is kept in. */
  public enum Unit {
    KILOGRAM("kg"),
    METRE("m"),
    RADIAN("rad"),
    RATIO("ratio");

    private final String symbol;

    Unit(String symbol) {
      this.symbol = symbol;
    }

    public String symbol() {
      return symbol;
    }
  }

  private final Unit unit;

  Measure(Unit unit) {
    this.unit = unit;
  }

  public Unit unit() {
    return unit;
  }

  /** Lower case with underscores, as the files write it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
