package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The stem between the main tie-in point and the union of the redirect's limb below it, bent by the
 * ropes that pull at the main point.
 *
 * <p>Model: seen from the union the redirect's sling is at {@code out a}, and the main point at
 * {@code p = out a + L u}, where the redirect's anchor leg of length L leads to it. The rope pulls
 * the main point toward the redirect, {@code -T1 u}, and, where it goes on down to an anchor, along
 * that leg, {@code T2 d}. The section is the stem's just above the union and is taken as upright.
 * Its moment is {@code out a x (-T1 u) + p x (T2 d)}: about the vertical it is torsion, else
 * bending. Of d only the elevation is known, so each of bending, shear and torsion has the bearing
 * that is worst for it. The vertical parts are the axial force; where they oppose, neither is
 * credited, and the larger counts as a push, in which wood is the weaker.
 *
 * <p>Left out: the stem's own weight, its lean and sway, wind, what the redirect's limb itself
 * brings into the stem at and below the union, and whatever else hangs on the main point. Whether
 * the main point is above the union at all is not asked: the moments are about the union either
 * way. Source: moment of a force, sources 1 and 6. Frame: that of the package; what bends the stem
 * toward the limb's tip is a negative top moment and to the left a positive side moment, as on a
 * leader of 90 degrees ({@link LimbAxes}). Units: SI. Range: distances as for {@link
 * CantileverLimb}, the leg above 0 to 100 m, tensions from 0; anything else is refused.
 *
 * <p>Tested by: worked positions from an independent calculation, trying every bearing, and
 * mirroring.
 *
 * @param limbAxis unit vector along the redirect's limb, from its union to its tip
 * @param outM from the union to the redirect's sling
 * @param toMain unit vector from the redirect's sling to the main point
 * @param legM from the redirect's sling to the main point
 */
public record StemBetween(Vector3D limbAxis, double outM, Vector3D toMain, double legM) {
  private static final double MAX_M = 100;

  /**
   * @throws IllegalArgumentException outside the range
   */
  public StemBetween {
    Directions.requireUnit("axis of a limb", limbAxis);
    Directions.requireUnit("leg", toMain);
    Refuse.unlessWithin("distance from the union", outM, 0, MAX_M);
    Refuse.unlessPositive("length of a leg", legM);
    Refuse.unlessWithin("length of a leg", legM, 0, MAX_M);
  }

  /**
   * The rope ends at the main point.
   *
   * @param tensionN of the leg to the redirect, at least 0
   * @throws IllegalArgumentException if the tension is negative, infinite or not a number
   */
  public SectionLoad endedAtMain(double tensionN) {
    return throughMain(tensionN, 0, 0);
  }

  /**
   * The rope goes on from the main point to an anchor, as at the base.
   *
   * @param tensionN of the leg to the redirect, at least 0
   * @param anchorTensionN of the leg to the anchor, at least 0
   * @param anchorElevationRad of that leg as seen from the main point; -pi/2 is plumb down
   * @throws IllegalArgumentException outside the range
   */
  public SectionLoad throughMain(
      double tensionN, double anchorTensionN, double anchorElevationRad) {
    Refuse.unlessNotNegative("tension of a leg", tensionN);
    Refuse.unlessNotNegative("tension of a leg", anchorTensionN);
    Vector3D toAnchor = Directions.unit(anchorElevationRad, 0);
    double upN = anchorTensionN * toAnchor.getZ();
    double levelN = anchorTensionN * Math.abs(toAnchor.getX());
    Vector3D main = new Vector3D(outM, limbAxis, legM, toMain);
    Vector3D pull = toMain.scalarMultiply(-tensionN);
    Vector3D knownNm = limbAxis.scalarMultiply(outM).crossProduct(pull).add(lever(main, upN));
    return new SectionLoad(
        axialN(pull.getZ(), upN),
        -knownNm.getY(),
        -knownNm.getX(),
        levelN * Math.abs(main.getZ()),
        Math.hypot(pull.getX(), pull.getY()) + levelN,
        Math.abs(knownNm.getZ()) + levelN * Math.hypot(main.getX(), main.getY()));
  }

  /** The moment of a force straight up. */
  private static Vector3D lever(Vector3D place, double upN) {
    return place.crossProduct(new Vector3D(0, 0, upN));
  }

  private static double axialN(double firstN, double secondN) {
    return firstN * secondN >= 0
        ? firstN + secondN
        : -Math.max(Math.abs(firstN), Math.abs(secondN));
  }
}
