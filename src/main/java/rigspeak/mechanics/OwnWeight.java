package rigspeak.mechanics;

import rigspeak.quantity.Force;

/**
 * The weight of the limb itself.
 *
 * <p>Model: a uniform solid cylinder from the union to the tip. Taper makes the true weight and
 * lever arm less, so this is on the heavy side; side branches and leaves, ice and wind are left out
 * and make it more. A hollow is not taken off: it need not run the whole length. Source: weight and
 * centroid of a uniform beam, source 6. Units: SI. Range: length 0 to 100 m, diameter 0 to 10 m,
 * density 0 to 2,000 kg/m3, rise as for {@link LimbAxes}.
 *
 * <p>Tested by: a horizontal and an inclined uniform beam against w l^2 / 2.
 *
 * @param lengthM from the union to the tip; 0 when it was not stated, and then there is no weight
 * @param diameterM of the limb
 * @param densityKgM3 of the green wood
 * @param riseRad above the horizontal
 */
public record OwnWeight(double lengthM, double diameterM, double densityKgM3, double riseRad) {
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
    Refuse.unlessWithin("density of wood", densityKgM3, 0, MAX_DENSITY_KG_M3);
    Refuse.unlessWithin("rise of a limb", riseRad, -MAX_RISE_RAD, MAX_RISE_RAD);
  }

  /**
   * The weight of all that is farther out than a distance from the union, on the limb's axes;
   * nothing is farther out than the tip.
   */
  public LimbLoad beyond(double distanceM) {
    double weightN = weightBeyondN(distanceM);
    return new LimbLoad(-weightN * Math.sin(riseRad), -weightN * Math.cos(riseRad), 0);
  }

  /**
   * The bending moment of that weight at that distance, in newton metres; negative bends the limb
   * down, as it does unless the limb leans back past the vertical.
   */
  public double topMomentNm(double distanceM) {
    return -weightBeyondN(distanceM) * Math.cos(riseRad) * restM(distanceM) / 2;
  }

  private double weightBeyondN(double distanceM) {
    double areaM2 = Math.PI * diameterM * diameterM / 4;
    return densityKgM3 * Force.STANDARD_GRAVITY * areaM2 * restM(distanceM);
  }

  private double restM(double distanceM) {
    Refuse.unlessNotNegative("distance from the union", distanceM);
    return Math.max(0, lengthM - distanceM);
  }
}
