package rigspeak.mechanics;

import java.util.ArrayList;
import java.util.List;

/**
 * The limb as a beam held at its union, with the sling somewhere along it.
 *
 * <p>Model: a straight cantilever in small deflection. The load's parts square to the limb bend it
 * with the lever arm from the sling; a choked sling pulls at the surface, half a diameter off the
 * axis, so that its square part twists the limb with {@code perpendicular d/2} and its axial part
 * bends it with {@code |along| d/2} in a direction that is not known (it is taken to add). A basket
 * pulls on the axis. The limb's own weight and the load are never credited against each other:
 * where they act alike they add, where they oppose each counts alone, and which is worse depends on
 * what the section holds either way; so there may be several cases. Left out: the growth of the
 * bending by the deflection (see {@link EulerColumn#stiffnessLeft}), what the union's grain does,
 * dynamic sway. Source: cantilever with end load, source 6; the eccentric pull, source 6 and
 * geometry. Units: SI; signs as in {@link SectionLoad}. Range: arm 0 to 100 m, eccentricity 0 to 5
 * m.
 *
 * <p>Tested by: a 150 mm limb with 1 kN at 1.5 m and with a twist of 100 N m (source 6), shafts in
 * bending, torsion and compression, doubled diameter.
 *
 * @param armM from the union to the sling
 * @param eccentricityM how far off the limb's axis the sling pulls
 * @param ownWeight of the limb
 */
public record CantileverLimb(double armM, double eccentricityM, OwnWeight ownWeight) {
  private static final double MAX_ARM_M = 100;
  private static final double MAX_ECCENTRICITY_M = 5;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public CantileverLimb {
    Refuse.unlessWithin("distance from the union", armM, 0, MAX_ARM_M);
    Refuse.unlessWithin("eccentricity", eccentricityM, 0, MAX_ECCENTRICITY_M);
    if (ownWeight == null) {
      throw new IllegalArgumentException(
          "a limb's own weight is a value or unstated, never absent");
    }
  }

  /** Loaded by a choked sling on a limb of that diameter. */
  public static CantileverLimb choked(double armM, double slingDiameterM, OwnWeight ownWeight) {
    return new CantileverLimb(armM, slingDiameterM / 2, ownWeight);
  }

  /** Loaded by a basket: the pull goes through the limb's axis. */
  public static CantileverLimb basket(double armM, OwnWeight ownWeight) {
    return new CantileverLimb(armM, 0, ownWeight);
  }

  /** All that the section at the union may carry: one case, or more where the weight opposes. */
  public List<SectionLoad> atUnion(LimbLoad load) {
    return at(0, load);
  }

  /** The same for the section just inside the sling. */
  public List<SectionLoad> atSling(LimbLoad load) {
    return at(1, load);
  }

  /**
   * The same for a section between.
   *
   * @param share of the way from the union to the sling, from 0 to 1
   * @throws IllegalArgumentException outside the range
   */
  public List<SectionLoad> at(double share, LimbLoad load) {
    double distanceM = Refuse.unlessWithin("share of the way", share, 0, 1) * armM;
    double leverM = armM - distanceM;
    LimbLoad weight = ownWeight.beyond(distanceM);
    double weightNm = ownWeight.topMomentNm(distanceM);
    double loadNm = load.topN() * leverM;
    double topN =
        load.topN() * weight.topN() >= 0
            ? load.topN() + weight.topN()
            : Math.max(Math.abs(load.topN()), Math.abs(weight.topN()));
    List<SectionLoad> cases = new ArrayList<>(1);
    for (double alongN : eitherWay(load.alongN(), weight.alongN())) {
      for (double topNm : eitherWay(loadNm, weightNm)) {
        cases.add(
            new SectionLoad(
                alongN,
                topNm,
                load.sideN() * leverM,
                Math.abs(load.alongN()) * eccentricityM,
                Math.sqrt(topN * topN + load.sideN() * load.sideN()),
                load.perpendicularN() * eccentricityM));
      }
    }
    return cases;
  }

  /** The sum where both have one sign, each alone where they oppose. */
  private static double[] eitherWay(double load, double weight) {
    return load * weight >= 0 ? new double[] {load + weight} : new double[] {load, weight};
  }
}
