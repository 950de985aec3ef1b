package rigspeak.rig;

import java.util.Locale;

/**
 * A number of a rig that is known only within bounds. The verdict is judged over all of them at
 * once.
 */
public enum Measure {
  ALL_UP(Unit.KILOGRAM),
  LIMB_DIAMETER(Unit.METRE),
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
