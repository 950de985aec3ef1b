package rigspeak.mechanics;

/**
 * How much pull along the limb the sling's turns can hold by friction.
 *
 * <p>Model. A sling under tension T presses on the limb with T a radian. Friction there can be at
 * most {@code mu T} a radian in any one direction: what holds the turns from running round the limb
 * is not free to hold them from sliding along it. Both are satisfied with the friction at 45
 * degrees, {@code m = mu / sqrt 2} each way. Then the tension falls as {@code exp(-m phi)} round
 * the limb and the turns hold {@code T0 - Tend = T0 (1 - exp(-m phi))} along it.
 *
 * <ul>
 *   <li>Choke, n turns: the two parts of the loop leave the limb at the choke with the loop angle w
 *       between them and together balance the square pull P: {@code P^2 = T0^2 + Tend^2 + 2 T0 Tend
 *       cos w}. The contact is {@code phi = 2 pi n - (pi - w)}. So {@code T0} is not P but {@code P
 *       / sqrt(1 + x^2 + 2 x cos w)}, {@code x = exp(-m phi)}, and the choke holds {@code P (1 - x)
 *       / sqrt(1 + x^2 + 2 x cos w)}.
 *   <li>Basket, included angle w between its legs: each leg carries {@code P / (2 cos(w/2))} and
 *       holds over its own {@code (pi - w)/2}: {@code P (1 - exp(-m (pi - w)/2)) / cos(w/2)}. Legs
 *       that spread hold less, until very wide ones press harder again; what they then hold is cut
 *       off at the count over half a turn.
 * </ul>
 *
 * <p>The tension at the choke's far end could be higher than {@code x T0}: then the turns press
 * harder and hold more, so full use of the friction round the limb is the least grip. It is a lower
 * bound as long as the turns lie square to the limb, and it holds nothing for a load straight along
 * the limb. Left out: turns that were drawn tight, that ride over each other, or that bite; the
 * weight of the sling; a stub or union that the sling sits against. Source: belt friction, source
 * 4, with the friction cone; the derivation is ours. Units: newtons and radians. Range: coefficient
 * 0 to 2; 1 to 20 turns; loop angle 0 to pi/2 (a wider loop would be credited with more tension
 * than the load itself); included angle 0 to below pi.
 *
 * <p>Tested by integrating the friction round the limb step by step, by solving the choke's balance
 * as vectors, by trying every smaller use of the friction round the limb, and by never exceeding
 * {@link #capstanCountN}.
 */
public final class SlingGrip {
  /** A loop that is drawn up snug leaves the limb at this angle or wider: judgement. */
  public static final double SNUG_LOOP_RAD = Math.PI / 2;

  private static final double MAX_TURNS = 20;
  private static final double HALF_TURN = 0.5;

  private SlingGrip() {}

  /**
   * What a choked sling holds along the limb at least, in newtons.
   *
   * @param perpendicularN the load's part square to the limb, at least 0
   * @param friction coefficient of the sling on the bark, 0 to 2
   * @param turns full turns round the limb, 1 (a plain choke) to 20
   * @param loopRad angle between the two parts of the loop at the choke, 0 to pi/2
   * @throws IllegalArgumentException outside the range
   */
  public static double chokeN(
      double perpendicularN, double friction, double turns, double loopRad) {
    Refuse.unlessNotNegative("pull across the limb", perpendicularN);
    Capstan.requireFriction(friction);
    Refuse.unlessWithin("number of turns", turns, 1, MAX_TURNS);
    Refuse.unlessWithin("loop angle", loopRad, 0, SNUG_LOOP_RAD);
    double contactRad = 2 * Math.PI * turns - (Math.PI - loopRad);
    double left = Math.exp(-eachWay(friction) * contactRad);
    return perpendicularN * (1 - left) / Math.sqrt(1 + left * left + 2 * left * Math.cos(loopRad));
  }

  /**
   * What a basket holds along the limb at least, in newtons.
   *
   * @param perpendicularN the load's part square to the limb, at least 0
   * @param friction coefficient of the sling on the bark, 0 to 2
   * @param includedRad angle between the basket's legs, from 0 (hanging parallel) to below pi
   * @throws IllegalArgumentException outside the range
   */
  public static double basketN(double perpendicularN, double friction, double includedRad) {
    Refuse.unlessNotNegative("pull across the limb", perpendicularN);
    double contactRad = (Math.PI - includedRad) / 2;
    double heldN =
        perpendicularN
            * (1 - Math.exp(-eachWay(friction) * contactRad))
            * HangingLegs.tensionFactor(includedRad);
    return Math.min(heldN, capstanCountN(perpendicularN, friction, HALF_TURN));
  }

  /**
   * What is got by counting all friction round the limb as if it were free to hold along it: {@code
   * R (1 - exp(-2 pi mu n))}, in newtons. Nothing is to be judged by it; it bounds the two others
   * from above. A basket counts as half a turn.
   *
   * @param loadN the whole load on the sling, at least 0
   * @param friction coefficient of the sling on the bark, 0 to 2
   * @param turns turns round the limb, 0 to 20
   * @throws IllegalArgumentException outside the range
   */
  public static double capstanCountN(double loadN, double friction, double turns) {
    Refuse.unlessNotNegative("load on a sling", loadN);
    Capstan.requireFriction(friction);
    Refuse.unlessWithin("number of turns", turns, 0, MAX_TURNS);
    return loadN * (1 - Math.exp(-2 * Math.PI * friction * turns));
  }

  private static double eachWay(double friction) {
    return friction / Math.sqrt(2);
  }
}
