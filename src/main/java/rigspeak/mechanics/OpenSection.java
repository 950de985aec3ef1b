package rigspeak.mechanics;

/**
 * A round cross-section with a round hollow in its middle and a part of the wall missing: an open
 * cavity.
 *
 * <p>Model: a ring of diameters D and {@code q D}, cut away between two radii over an angle of the
 * circumference. What is left is an arc of half angle {@code a = pi - opening/2}. Plane sections
 * stay plane. Area, centroid, second moments, the modulus of the worst direction and the bending by
 * an axial force, which acts on the limb's axis and so beside the centroid, are exact.
 *
 * <p>Shear is a bound on the weak side, the sum of two parts. Transverse: {@code V Q / (I t)}, the
 * mean over a cut through the wall along a radius, its largest value along the opening's line of
 * symmetry and its largest square to it taken as one right-angled sum. Torsion: an open strip of
 * length s and thickness t twists freely with {@code J = s t^3/3 - 0.21 t^4}, the last part being
 * what its two ends lose; the stress is the one at the inside of a bent strip, more than {@code T
 * t/J}. A force through the limb's axis passes beside the shear centre, so it twists as well: by
 * its distance from the shear centre of a thin arc on the middle of the wall. With an opening of no
 * width this is a slit: bending as the ring, torsion as the cut tube.
 *
 * <p>Left out: bark; that a short opening is held closed at its ends, which helps; the stresses
 * along the grain where a union or the closed limb beside it holds the ends of a twisting opening
 * from warping, which add to bending and grow with the length of the opening (by Vlasov's formulas
 * for a thin slit tube with the force square to the slit about a tenth for a slit half as long as
 * the lever arm, but more than twice the bending stress where the limb is slit all the way from a
 * rigid union to the sling); how the wall's edges buckle or split; the peak in the bottom of a
 * notch sharper than a fifth of the diameter. Source: sections of beams, open thin-walled sections,
 * source 6; the bounds are derived here and checked against solutions by finite elements. Units:
 * metres and radians. Range: diameter and hollow ratio as for {@link RoundSection}, opening from 0
 * to pi; anything else is refused.
 *
 * <p>Tested by: worked values and finite elements (source 6), by integrating along the edges
 * (Green's theorem), and by its limits.
 *
 * @param diameterM outside diameter
 * @param hollowRatio diameter of the hollow over the outside diameter
 * @param openRad the angle of the circumference over which the wall is missing
 */
public record OpenSection(double diameterM, double hollowRatio, double openRad) implements Section {
  /**
   * In torsion a smaller hollow counts as this: below, the strip would be so thick that its formula
   * makes more wood weaker.
   */
  private static final double LEAST_HOLLOW_IN_TORSION = 0.3;

  /** What both ends of a twisted strip lose, over the fourth power of its thickness. */
  private static final double END_LOSS = 0.21;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public OpenSection {
    RoundSection.requireSize(diameterM, hollowRatio);
    Refuse.unlessWithin("opening of a cavity", openRad, 0, Math.PI);
  }

  /** Square metres: {@code a (R^2 - r^2)}. */
  @Override
  public double areaM2() {
    return halfArcRad() * wallM() * (outerM() + innerM());
  }

  /**
   * How far the wood's centroid lies off the limb's axis, away from the opening, metres: {@code 2/3
   * (R^3 - r^3) / (R^2 - r^2) sin a / a}.
   */
  public double centroidShiftM() {
    return 2 * firstMomentM3() * Math.sin(halfArcRad()) / areaM2();
  }

  /** About the axis through the centroid that is square to the line of symmetry: the least one. */
  @Override
  public double secondMomentM4() {
    double arcRad = halfArcRad();
    return quarterM4() * (arcRad + Math.sin(arcRad) * Math.cos(arcRad))
        - areaM2() * square(centroidShiftM());
  }

  /** About the line of symmetry. */
  public double greatestSecondMomentM4() {
    double arcRad = halfArcRad();
    return quarterM4() * (arcRad - Math.sin(arcRad) * Math.cos(arcRad));
  }

  /**
   * The least section modulus of all directions of the load, cubic metres.
   *
   * <p>As for {@link OffCentreSection#leastModulusM3}: along the outer edge the square of the
   * largest stress is a parabola open upward, so the worst point is opposite the opening or at its
   * edge.
   */
  public double leastModulusM3() {
    double leastM4 = secondMomentM4();
    double edgeXM = outerM() * Math.cos(halfArcRad()) - centroidShiftM();
    double edgeYM = outerM() * Math.sin(halfArcRad());
    double opposite = (outerM() - centroidShiftM()) / leastM4;
    double atEdge = Math.hypot(edgeXM / leastM4, edgeYM / greatestSecondMomentM4());
    return 1 / Math.max(opposite, atEdge);
  }

  @Override
  public SectionStress under(SectionLoad load) {
    double offAxisNm = Math.abs(load.axialN()) * centroidShiftM();
    double twistNm = load.torsionNm() + load.shearN() * shearCentreM();
    return new SectionStress(
        load.axialN() / areaM2(),
        (load.bendingNm() + offAxisNm) / leastModulusM3(),
        load.shearN() * transverseShear() + twistNm / torsionModulusM3());
  }

  /**
   * The largest transverse shear of a newton, per square metre.
   *
   * <p>Square to the line of symmetry the first moment beyond a cut at the angle p is {@code (R^3 -
   * r^3)/3 (cos p - cos a)}, largest at p = 0. Along it, it is {@code (R^3 - r^3)/3 (sin p - p sin
   * a / a)}, largest where {@code cos p = sin a / a}.
   */
  private double transverseShear() {
    double arcRad = halfArcRad();
    double slope = Math.sin(arcRad) / arcRad;
    double cutRad = Math.acos(slope);
    double across = (1 - Math.cos(arcRad)) / greatestSecondMomentM4();
    double along = (Math.sin(cutRad) - cutRad * slope) / secondMomentM4();
    return firstMomentM3() * Math.hypot(across, along) / wallM();
  }

  /** From the limb's axis to the shear centre, metres; for a slit thin tube two mean radii. */
  private double shearCentreM() {
    double arcRad = halfArcRad();
    double sine = Math.sin(arcRad);
    double cosine = Math.cos(arcRad);
    return (outerM() + innerM()) * (sine - arcRad * cosine) / (arcRad - sine * cosine);
  }

  /**
   * Torque over the largest stress, cubic metres.
   *
   * <p>In a long bent strip between the radii r and R the stress of a twist is {@code (R^2 - r^2) /
   * (2 p ln(R/r)) - p} at the radius p, largest inside, where p = r; its J is more than {@code s
   * t^3/3}, which is used.
   */
  private double torsionModulusM3() {
    double hollow = Math.max(hollowRatio, LEAST_HOLLOW_IN_TORSION);
    double innerM = hollow * outerM();
    double wallM = (1 - hollow) * outerM();
    double lengthM = halfArcRad() * (outerM() + innerM);
    double stiffnessM4 = wallM * square(wallM) * (lengthM / 3 - END_LOSS * wallM);
    double bend = wallM / innerM;
    double insideM = innerM * (bend * (2 + bend) / (2 * Math.log1p(bend)) - 1);
    return stiffnessM4 / insideM;
  }

  @Override
  public OpenSection withDiameter(double diameterM) {
    return new OpenSection(diameterM, hollowRatio, openRad);
  }

  /** Half the angle of the wall that is left. */
  private double halfArcRad() {
    return Math.PI - openRad / 2;
  }

  private double outerM() {
    return diameterM / 2;
  }

  private double innerM() {
    return hollowRatio * diameterM / 2;
  }

  private double wallM() {
    return (1 - hollowRatio) * diameterM / 2;
  }

  /** {@code (R^3 - r^3) / 3}. */
  private double firstMomentM3() {
    return wallM() * (square(outerM()) + outerM() * innerM() + square(innerM())) / 3;
  }

  /** {@code (R^4 - r^4) / 4}. */
  private double quarterM4() {
    return wallM() * (outerM() + innerM()) * (square(outerM()) + square(innerM())) / 4;
  }

  private static double square(double value) {
    return value * value;
  }
}
