package rigspeak.mechanics;

/**
 * A falling climber stopped by the stretch of the rope.
 *
 * <p>Model: standard impact force, {@code F = W + sqrt(W^2 + 2 W k f)}, with the rope as a straight
 * spring whose force is k (its modulus times its area) for each unit of strain, and the fall factor
 * f (fall over length of rope). Left out: damping, slip of hitch or device, give of the limb and of
 * the body, friction at supports: each makes it less, except friction, which shortens the rope that
 * stretches and makes it more. Source: impact force of a fall, source 10. Units: newtons. Range:
 * weight and k above 0, f at least 0.
 *
 * <p>Tested by: a suddenly applied load of exactly twice the weight, static rope under the standard
 * test fall, the dynamic-rope test fall (source 10).
 */
public final class Impact {
  private Impact() {}

  /**
   * The largest tension of the rope in newtons.
   *
   * @param weightN above 0
   * @param modulusN force for each unit of strain, above 0
   * @param fallFactor height fallen before the rope is taut over the length of rope, at least 0
   * @throws IllegalArgumentException outside the range
   */
  public static double peakN(double weightN, double modulusN, double fallFactor) {
    Refuse.unlessPositive("weight", weightN);
    Refuse.unlessPositive("modulus of a rope", modulusN);
    Refuse.unlessNotNegative("fall factor", fallFactor);
    return weightN + Math.sqrt(weightN * weightN + 2 * weightN * modulusN * fallFactor);
  }

  /**
   * Height fallen over length of rope.
   *
   * @param fallM at least 0
   * @param ropeM above 0
   * @throws IllegalArgumentException outside the range
   */
  public static double fallFactor(double fallM, double ropeM) {
    return Refuse.unlessNotNegative("fall", fallM) / Refuse.unlessPositive("length of rope", ropeM);
  }

  /**
   * The rope's modulus from its stretch under an added load, as its label states it.
   *
   * @param addedN above 0
   * @param strain added length over length, above 0 up to 1
   * @throws IllegalArgumentException outside the range
   */
  public static double modulusN(double addedN, double strain) {
    if (!(strain > 0 && strain <= 1)) {
      throw Refuse.refusal("stretch of a rope", strain);
    }
    return Refuse.unlessPositive("load on a rope", addedN) / strain;
  }
}
