package rigspeak.mechanics;

/**
 * A long limb pressed along its axis toward its union.
 *
 * <p>Model: Euler's column, fixed at the union and free at the sling: {@code P = pi^2 E I / (K
 * L)^2}, K = 2. Left out: a union that yields, a crooked limb, own weight, taper (the section of
 * the thin end is on the weak side); a short thick limb crushes before it buckles, which this does
 * not see. Source: Euler's critical load, source 6. Units: SI. Range: modulus and length above 0.
 *
 * <p>Tested by finding, by integrating the bowed shape and shooting for its free end, the force at
 * which it stands of itself; the second moment by the 150 mm limb (source 6).
 */
public final class EulerColumn {
  /** Effective length over length of a column fixed at one end and free at the other. */
  private static final double FIXED_FREE = 2;

  private EulerColumn() {}

  /**
   * The axial force at which the limb would bow out, in newtons.
   *
   * @param section of the limb; it bows out the way in which it is weakest
   * @param modulusPa modulus of elasticity along the grain, above 0
   * @param lengthM from the union to the sling, above 0
   * @throws IllegalArgumentException outside the range
   */
  public static double criticalLoadN(Section section, double modulusPa, double lengthM) {
    Refuse.unlessPositive("modulus of elasticity", modulusPa);
    double effectiveM = FIXED_FREE * Refuse.unlessPositive("length of a column", lengthM);
    return Refuse.unlessPositive(
        "critical load",
        Math.PI * Math.PI * modulusPa * section.secondMomentM4() / (effectiveM * effectiveM));
  }

  /**
   * How much of the limb's stiffness against bending an axial push leaves: 1 for none, 0 or less
   * when it buckles. A deflection, and the moment that grows with it, is about the first-order one
   * divided by this (source 6, beam-columns).
   *
   * @param pushN newtons into the union, at least 0
   * @param criticalLoadN above 0
   * @throws IllegalArgumentException outside the range
   */
  public static double stiffnessLeft(double pushN, double criticalLoadN) {
    Refuse.unlessNotNegative("push into the union", pushN);
    Refuse.unlessPositive("critical load", criticalLoadN);
    return 1 - pushN / criticalLoadN;
  }
}
