package rigspeak.mechanics;

/**
 * A load on two equal sling legs, as in a basket.
 *
 * <p>Model: each leg carries {@code load / (2 cos(w/2))} with the included angle w. Left out:
 * unequal legs, friction on what the basket goes round, the bend. Source: sling angle tables,
 * source 7. Units: radians. Range: included angle from 0 (parallel) to below pi, refused outside.
 *
 * <p>Tested by: printed basket ratings and leg tension factors (source 7).
 */
public final class HangingLegs {
  private HangingLegs() {}

  /** What the basket carries as a multiple of what one leg does: {@code 2 cos(w/2)}, 2 to 0. */
  public static double basketFactor(double includedRad) {
    requireIncluded(includedRad);
    return 2 * Math.cos(includedRad / 2);
  }

  /** A leg's tension as a multiple of its share of the load: {@code 1 / cos(w/2)}, from 1 up. */
  public static double tensionFactor(double includedRad) {
    requireIncluded(includedRad);
    return 1 / Math.cos(includedRad / 2);
  }

  private static void requireIncluded(double includedRad) {
    if (!(includedRad >= 0 && includedRad < Math.PI)) {
      throw Refuse.refusal("included angle of a basket", includedRad);
    }
  }
}
