package rigspeak.mechanics;

/**
 * A round cross-section with a round hollow whose middle lies off the limb's axis.
 *
 * <p>Model: circle of diameter D less a circle of diameter {@code q D}, its middle {@code e = s (1
 * - q) D/2} off the axis; at s = 1 the hollow touches the bark. Plane sections stay plane. Area,
 * centroid, second moments, the modulus of the worst direction and the bending by an axial force,
 * which acts on the limb's axis and so beside the centroid, are exact (parallel-axis theorem).
 *
 * <p>Shear is a bound on the weak side. As long as the section is whole, its stress is taken as
 * that of the concentric ring over {@code 1 - s}, the share of the ring's wall that the thinnest
 * wall has: exact at s = 0, and more than a thin tube of varying wall has (Bredt, Jourawski). Where
 * this comes out worse than a ring slit along its length ({@link OpenSection} with no width of
 * opening), the thin wall may tear and the slit section has to hold: its stress stands. So the
 * stress stays finite when the hollow touches the bark.
 *
 * <p>Left out: bark, the other things that {@link RoundSection} leaves out, and how a thin wall
 * buckles or cracks by itself. Source: parallel-axis theorem, shear of thin tubes, source 6; the
 * bounds are derived here and checked against solutions of the torsion problem by finite elements.
 * Units: metres. Range: diameter and hollow ratio as for {@link RoundSection}, shift ratio from 0
 * to 1; anything else is refused.
 *
 * <p>Tested by: worked values and finite elements (source 6), by integrating along the edges
 * (Green's theorem), by a printed loss of a real cavity (source 18) and by its limits.
 *
 * @param diameterM outside diameter
 * @param hollowRatio diameter of the hollow over the outside diameter; 0 is solid
 * @param shiftRatio how far the hollow's middle lies off the axis, as a share of the most it can
 */
public record OffCentreSection(double diameterM, double hollowRatio, double shiftRatio)
    implements Section {
  /**
   * @throws IllegalArgumentException outside the range
   */
  public OffCentreSection {
    RoundSection.requireSize(diameterM, hollowRatio);
    Refuse.unlessWithin("shift of a hollow", shiftRatio, 0, 1);
  }

  /** Square metres: the same wherever the hollow lies. */
  @Override
  public double areaM2() {
    return concentric().areaM2();
  }

  /** How far the wood's centroid lies off the limb's axis, metres: {@code e q^2 / (1 - q^2)}. */
  public double centroidShiftM() {
    return shiftRatio * hollowRatio * hollowRatio / (1 + hollowRatio) * diameterM / 2;
  }

  /**
   * About the axis through the centroid that is square to the shift. The parallel-axis theorem
   * takes {@code e^2} times the hollow's area and the centroid's shift squared times the wood's
   * from the ring's second moment; together that is {@code pi D^2/4} times e times the centroid's
   * shift.
   */
  @Override
  public double secondMomentM4() {
    double eccentricityM = shiftRatio * (1 - hollowRatio) * diameterM / 2;
    return greatestSecondMomentM4()
        - Math.PI * diameterM * diameterM / 4 * eccentricityM * centroidShiftM();
  }

  /** About the axis along which the hollow is shifted: the shift does not change it. */
  public double greatestSecondMomentM4() {
    return concentric().secondMomentM4();
  }

  /**
   * The least section modulus of all directions of the load, cubic metres.
   *
   * <p>Over all directions of a moment the largest stress in a point is {@code M sqrt((x/Iy)^2 +
   * (y/Ix)^2)}, x and y from the centroid. On the edge its square is a parabola in the cosine of
   * the place, open upward because Iy is the lesser: it is largest at an end, and that is where the
   * wall is thinnest.
   */
  public double leastModulusM3() {
    return secondMomentM4() / (diameterM / 2 + centroidShiftM());
  }

  @Override
  public SectionStress under(SectionLoad load) {
    double offAxisNm = Math.abs(load.axialN()) * centroidShiftM();
    return new SectionStress(
        load.axialN() / areaM2(), (load.bendingNm() + offAxisNm) / leastModulusM3(), shearPa(load));
  }

  private double shearPa(SectionLoad load) {
    double slitPa = new OpenSection(diameterM, hollowRatio, 0).under(load).shearPa();
    if (shiftRatio == 1) {
      return slitPa;
    }
    return Math.min(concentric().under(load).shearPa() / (1 - shiftRatio), slitPa);
  }

  @Override
  public OffCentreSection withDiameter(double diameterM) {
    return new OffCentreSection(diameterM, hollowRatio, shiftRatio);
  }

  private RoundSection concentric() {
    return new RoundSection(diameterM, hollowRatio);
  }
}
