package rigspeak.mechanics;

/**
 * A round cross-section of a limb, with or without a round hollow in its middle.
 *
 * <p>Model: circle of diameter D less a concentric circle of diameter {@code q D}; plane sections
 * stay plane, one modulus throughout. Left out: bark, an off-centre hollow ({@link
 * OffCentreSection}), an open one ({@link OpenSection}), an oval limb, and how a thin shell fails
 * (flattening and splitting come first when the wall is thinner than about a quarter of the
 * radius). Source: section properties of circle and ring, source 6; the shear of a ring is derived
 * at {@link #shearFactor}. Units: metres. Range: diameter from 1 mm to 10 m, hollow ratio from 0 to
 * below 1; anything else is refused.
 *
 * <p>Tested by: worked values of solid and hollow sections (source 6), and by integrating area,
 * second moment and first moment over the ring numerically.
 *
 * @param diameterM outside diameter
 * @param hollowRatio diameter of the hollow over the outside diameter; 0 is solid
 */
public record RoundSection(double diameterM, double hollowRatio) implements Section {
  private static final double MIN_DIAMETER_M = 0.001;
  private static final double MAX_DIAMETER_M = 10;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public RoundSection {
    requireSize(diameterM, hollowRatio);
  }

  /** The range of every round limb with a round hollow, wherever the hollow lies. */
  static void requireSize(double diameterM, double hollowRatio) {
    Refuse.unlessWithin("diameter of a limb", diameterM, MIN_DIAMETER_M, MAX_DIAMETER_M);
    if (!(hollowRatio >= 0 && hollowRatio < 1)) {
      throw Refuse.refusal("hollow ratio", hollowRatio);
    }
  }

  public static RoundSection solid(double diameterM) {
    return new RoundSection(diameterM, 0);
  }

  /** Square metres: {@code pi D^2 (1 - q^2) / 4}. */
  @Override
  public double areaM2() {
    return Math.PI * diameterM * diameterM * (1 - hollowRatio * hollowRatio) / 4;
  }

  /** About a diameter, metres to the fourth: {@code pi D^4 (1 - q^4) / 64}. */
  @Override
  public double secondMomentM4() {
    return sectionModulusM3() * diameterM / 2;
  }

  /** For bending, cubic metres: {@code pi D^3 (1 - q^4) / 32}. */
  public double sectionModulusM3() {
    double q2 = hollowRatio * hollowRatio;
    return Math.PI * diameterM * diameterM * diameterM * (1 - q2 * q2) / 32;
  }

  /** For torsion, cubic metres: {@code pi D^3 (1 - q^4) / 16}. */
  public double polarModulusM3() {
    return 2 * sectionModulusM3();
  }

  /**
   * The largest shear stress of a transverse force as a multiple of force over area.
   *
   * <p>From {@code tau = V Q / (I b)} at the neutral axis, with the half ring's first moment {@code
   * Q = 2 (R^3 - r^3) / 3}, {@code I = pi (R^4 - r^4) / 4} and the width of the cut {@code b = 2 (R
   * - r)}: {@code 4/3 (1 + q + q^2) / (1 + q^2)}. It is 4/3 for a solid limb and grows to 2 for a
   * thin ring.
   */
  public double shearFactor() {
    double q2 = hollowRatio * hollowRatio;
    return 4 * (1 + hollowRatio + q2) / (3 * (1 + q2));
  }

  /**
   * The stresses of a load on this section.
   *
   * <p>The largest transverse shear (at the neutral axis) and the largest torsional shear (at the
   * surface) are added as if they met in one point: never less than the truth.
   */
  @Override
  public SectionStress under(SectionLoad load) {
    double areaM2 = areaM2();
    double modulusM3 = sectionModulusM3();
    return new SectionStress(
        load.axialN() / areaM2,
        load.bendingNm() / modulusM3,
        shearFactor() * load.shearN() / areaM2 + load.torsionNm() / (2 * modulusM3));
  }

  @Override
  public RoundSection withDiameter(double diameterM) {
    return new RoundSection(diameterM, hollowRatio);
  }
}
