package rigspeak.mechanics;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A limb whose diameter changes from its union to its sling.
 *
 * <p>Model: the diameter is linear between the two; the shape of the section is the same all along,
 * so a hollow and an opening taper with the limb. Left out: that a hollow may run out or widen
 * along the limb, the swelling of the union, knots. Where the limb is thicker at the sling than at
 * the union, as it may be by what is not known of both, the same formulas hold. Places are shares
 * of the way, from 0 at the union to 1 at the sling. Source: stress of a tapered cantilever, source
 * 6. Units: metres. Range: diameters as for {@link RoundSection}.
 *
 * <p>Tested by: finding the worst place of sampled limbs by a fine scan, and a cone by hand.
 *
 * @param butt the section at the union
 * @param slingDiameterM diameter at the sling
 */
public record TaperedLimb(Section butt, double slingDiameterM) {
  /** Of a load square to the end: the bending stress is largest where the limb is so thick. */
  private static final double WORST_DIAMETER = 1.5;

  /**
   * From one place to the next the diameter changes by no more than this factor. The stress of a
   * load at the end falls off from its peak by about three times the square of the change that is
   * missed, here a quarter of a percent.
   */
  private static final double STEP = 1.06;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public TaperedLimb {
    if (butt == null) {
      throw new IllegalArgumentException("a limb has a section at its union");
    }
    butt.withDiameter(slingDiameterM);
  }

  /**
   * Metres.
   *
   * @param share of the way from the union to the sling, from 0 to 1
   * @throws IllegalArgumentException outside the range
   */
  public double diameterM(double share) {
    Refuse.unlessWithin("share of the way", share, 0, 1);
    double betweenM = butt.diameterM() * (1 - share) + slingDiameterM * share;
    // Rounding must not lead out of the range that both ends keep.
    double thinM = Math.min(butt.diameterM(), slingDiameterM);
    double thickM = Math.max(butt.diameterM(), slingDiameterM);
    return Math.max(thinM, Math.min(thickM, betweenM));
  }

  /**
   * @param share of the way from the union to the sling, from 0 to 1
   * @throws IllegalArgumentException outside the range
   */
  public Section sectionAt(double share) {
    return butt.withDiameter(diameterM(share));
  }

  /**
   * Where a load at the sling, square to the limb, makes the largest bending stress: at the union,
   * unless that is more than one and a half times as thick as the limb at the sling; then between.
   */
  public double worstShare() {
    double worstM = WORST_DIAMETER * slingDiameterM;
    return butt.diameterM() <= worstM ? 0 : shareAt(worstM);
  }

  /**
   * The places to be looked at, outward from the union to the sling, both among them: so close that
   * none between is worse by 0.3 %, whether a load bends the limb with its lever arm, by the same
   * moment all along, or by the limb's own weight.
   */
  public List<Double> places() {
    double change = slingDiameterM / butt.diameterM();
    int steps = Math.max(1, (int) Math.ceil(Math.abs(Math.log(change)) / Math.log(STEP)));
    return IntStream.rangeClosed(0, steps).mapToObj(i -> place(i, steps, change)).toList();
  }

  private double place(int step, int steps, double change) {
    if (step == 0 || step == steps) {
      return step == 0 ? 0 : 1;
    }
    return shareAt(butt.diameterM() * Math.pow(change, (double) step / steps));
  }

  private double shareAt(double diameterM) {
    return (butt.diameterM() - diameterM) / (butt.diameterM() - slingDiameterM);
  }
}
