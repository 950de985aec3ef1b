package rigspeak.mechanics;

import rigspeak.quantity.Force;

/**
 * The weight of the limb itself.
 *
 * <p>Model: solid wood from the union to the tip, whose diameter is linear from the union to the
 * sling and stays from there on. The true limb tapers on beyond the sling, and one of which only
 * the diameter at the union is known tapers all along: weight and lever arm are on the heavy side.
 * Side branches and leaves, ice and wind are left out and make it more. A hollow is not taken off:
 * it need not run the whole length. Source: weight and centroid of a beam and of a cut cone, source
 * 6. Units: SI. Range: length and distance of the sling 0 to 100 m, diameters 0 to 10 m, density 0
 * to 2,000 kg/m3, rise as for {@link LimbAxes}.
 *
 * <p>Tested by: a horizontal and an inclined uniform beam against w l^2 / 2, a whole cone by hand,
 * and by adding up slices.
 *
 * @param lengthM from the union to the tip; 0 when it was not stated, and then there is no weight
 * @param diameterM of the limb at its union
 * @param slingM from the union to the sling
 * @param slingDiameterM of the limb at the sling and beyond
 * @param densityKgM3 of the green wood
 * @param riseRad above the horizontal
 */
public record OwnWeight(
    double lengthM,
    double diameterM,
    double slingM,
    double slingDiameterM,
    double densityKgM3,
    double riseRad) {
  /** The limb's length was not stated: its weight is left out. */
  public static final OwnWeight UNSTATED = new OwnWeight(0, 0, 0, 0);

  private static final double MAX_LENGTH_M = 100;
  private static final double MAX_DIAMETER_M = 10;
  private static final double MAX_DENSITY_KG_M3 = 2000;
  private static final double MAX_RISE_RAD = Math.PI * 2 / 3;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public OwnWeight {
    Refuse.unlessWithin("length of a limb", lengthM, 0, MAX_LENGTH_M);
    Refuse.unlessWithin("diameter of a limb", diameterM, 0, MAX_DIAMETER_M);
    Refuse.unlessWithin("distance of the sling", slingM, 0, MAX_LENGTH_M);
    Refuse.unlessWithin("diameter of a limb", slingDiameterM, 0, MAX_DIAMETER_M);
    Refuse.unlessWithin("density of wood", densityKgM3, 0, MAX_DENSITY_KG_M3);
    Refuse.unlessWithin("rise of a limb", riseRad, -MAX_RISE_RAD, MAX_RISE_RAD);
  }

  /** Of a limb that is as thick all along as at its union. */
  public OwnWeight(double lengthM, double diameterM, double densityKgM3, double riseRad) {
    this(lengthM, diameterM, 0, diameterM, densityKgM3, riseRad);
  }

  /**
   * The weight of all that is farther out than a distance from the union, on the limb's axes;
   * nothing is farther out than the tip.
   */
  public LimbLoad beyond(double distanceM) {
    double weightN = newtonsPerCubicMetre() * rest(distanceM).volumeM3();
    return new LimbLoad(-weightN * Math.sin(riseRad), -weightN * Math.cos(riseRad), 0);
  }

  /**
   * The bending moment of that weight at that distance, in newton metres; negative bends the limb
   * down, as it does unless the limb leans back past the vertical.
   */
  public double topMomentNm(double distanceM) {
    return -newtonsPerCubicMetre() * Math.cos(riseRad) * rest(distanceM).volumeMomentM4();
  }

  private double newtonsPerCubicMetre() {
    return densityKgM3 * Force.STANDARD_GRAVITY;
  }

  private Rest rest(double distanceM) {
    Refuse.unlessNotNegative("distance from the union", distanceM);
    double coneEndM = Math.max(distanceM, Math.min(slingM, lengthM));
    double cylinderM = Math.max(0, lengthM - Math.max(distanceM, slingM));
    return new Rest(diameterAtM(distanceM), diameterAtM(coneEndM), coneEndM - distanceM, cylinderM);
  }

  private double diameterAtM(double distanceM) {
    if (distanceM >= slingM) {
      return slingDiameterM;
    }
    return diameterM + (slingDiameterM - diameterM) * distanceM / slingM;
  }

  /** What is farther out: a cut cone, and a cylinder on its end. */
  private record Rest(double fromM, double toM, double coneM, double cylinderM) {
    double volumeM3() {
      return Math.PI * coneM * (fromM * fromM + fromM * toM + toM * toM) / 12 + cylinderM3();
    }

    /** The volume times the distance of its middle. */
    double volumeMomentM4() {
      double squares = fromM * fromM + 2 * fromM * toM + 3 * toM * toM;
      return Math.PI * coneM * coneM * squares / 48 + cylinderM3() * (coneM + cylinderM / 2);
    }

    private double cylinderM3() {
      return Math.PI * toM * toM / 4 * cylinderM;
    }
  }
}
