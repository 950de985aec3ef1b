package rigspeak.mechanics;

/**
 * The stresses in a cross-section.
 *
 * <p>Source: combined stresses in a beam, source 6. The shear is kept apart, for wood's shear
 * strength along the grain is a strength of its own.
 *
 * @param axialPa pascals; positive is tension
 * @param bendingPa pascals in the outermost fibre, at least zero, tension on one side and
 *     compression on the other
 * @param shearPa pascals, transverse and torsional together, at least zero
 */
public record SectionStress(double axialPa, double bendingPa, double shearPa) {
  /**
   * @throws IllegalArgumentException if a value is infinite, not a number or outside its range
   */
  public SectionStress {
    Refuse.unlessFinite("axial stress", axialPa);
    Refuse.unlessNotNegative("bending stress", bendingPa);
    Refuse.unlessNotNegative("shear stress", shearPa);
  }

  /** The stress of the most stretched fibre in pascals; negative when even that is compressed. */
  public double mostStretchedPa() {
    return axialPa + bendingPa;
  }

  /** The stress of the most compressed fibre in pascals; negative is compression. */
  public double mostCompressedPa() {
    return axialPa - bendingPa;
  }
}
