package rigspeak.mechanics;

/**
 * What a cross-section of the limb has to carry.
 *
 * <p>Model: an axial force, bending about two axes, a bending moment of unknown direction, a shear
 * force and a torsion. Source: internal forces of a beam, source 6.
 *
 * @param axialN newtons; positive is tension
 * @param topMomentNm newton metres in the limb's vertical plane; positive bends it up, negative
 *     down
 * @param sideMomentNm newton metres sideways; positive bends it to the left
 * @param eccentricMomentNm newton metres, at least zero, of a direction that is not known; it
 *     counts as adding to the others
 * @param shearN newtons across the limb, at least zero
 * @param torsionNm newton metres about the limb's own axis, at least zero
 */
public record SectionLoad(
    double axialN,
    double topMomentNm,
    double sideMomentNm,
    double eccentricMomentNm,
    double shearN,
    double torsionNm) {
  /**
   * @throws IllegalArgumentException if a value is infinite, not a number or outside its range
   */
  public SectionLoad {
    Refuse.unlessFinite("axial force", axialN);
    Refuse.unlessFinite("bending moment", topMomentNm);
    Refuse.unlessFinite("bending moment", sideMomentNm);
    Refuse.unlessNotNegative("eccentric moment", eccentricMomentNm);
    Refuse.unlessNotNegative("shear force", shearN);
    Refuse.unlessNotNegative("torsion", torsionNm);
  }

  /** The resultant bending moment in newton metres, at least zero. */
  public double bendingNm() {
    return Math.sqrt(topMomentNm * topMomentNm + sideMomentNm * sideMomentNm) + eccentricMomentNm;
  }
}
