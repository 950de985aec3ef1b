package rigspeak.mechanics;

/**
 * The principal stresses of a surface point with one normal and one shear stress.
 *
 * <p>Model: Mohr's circle, {@code normal/2 +- sqrt((normal/2)^2 + shear^2)}. Left out: a second
 * normal stress, and that wood is weaker across the grain than along it; for a limb this is a check
 * on the arithmetic, not a measure of strength. Source: Mohr's circle and shafts in bending and
 * torsion, source 6. Units: pascals; tension is positive.
 *
 * <p>Tested by: a rod in tension and torsion, a shaft in compression and torsion, the shaft sized
 * for a moment and a torque, a limb with a twist (source 6).
 *
 * @param largestPa the largest principal stress
 * @param smallestPa the smallest, not above the largest
 */
public record PrincipalStress(double largestPa, double smallestPa) {
  /**
   * @throws IllegalArgumentException if a value is infinite or not a number, or the two are swapped
   */
  public PrincipalStress {
    Refuse.unlessFinite("principal stress", largestPa);
    Refuse.unlessFinite("principal stress", smallestPa);
    if (smallestPa > largestPa) {
      throw Refuse.refusal("smallest principal stress", smallestPa);
    }
  }

  public static PrincipalStress of(double normalPa, double shearPa) {
    double centre = Refuse.unlessFinite("normal stress", normalPa) / 2;
    double radius = Math.hypot(centre, Refuse.unlessFinite("shear stress", shearPa));
    return new PrincipalStress(centre + radius, centre - radius);
  }

  /** The largest shear stress in pascals, at least zero. */
  public double largestShearPa() {
    return (largestPa - smallestPa) / 2;
  }
}
