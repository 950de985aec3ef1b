package rigspeak.mechanics;

/**
 * A cross-section of a limb: what it measures, and what a load does to it.
 *
 * <p>Which way a hollow or an opening lies to the load is not known. So every stress is that of the
 * worst direction. Units: SI.
 */
public sealed interface Section permits RoundSection, OffCentreSection, OpenSection {
  /** Outside diameter, metres. */
  double diameterM();

  /** Area of the wood, square metres. */
  double areaM2();

  /** The least second moment about any axis through the centroid, metres to the fourth. */
  double secondMomentM4();

  /** The stresses of a load, in its worst direction. */
  SectionStress under(SectionLoad load);

  /**
   * The same shape at another size.
   *
   * @throws IllegalArgumentException if no limb can have that diameter
   */
  Section withDiameter(double diameterM);
}
