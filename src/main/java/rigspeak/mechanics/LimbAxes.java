package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The limb's own three axes: along it from union to tip, square to it on its upper side, and
 * horizontally to its left.
 *
 * <p>Model: {@code along = (cos i, 0, sin i)}, {@code top = (-sin i, 0, cos i)}, {@code side = (0,
 * 1, 0)} with the rise i above the horizontal. A force is split by its scalar products with them.
 * Left out: the limb's bends; it is straight from the union to the sling. Source: orthogonal
 * components, source 1. For a vertical leader {@code top} points toward the parent stem. Range: the
 * rise may pass the vertical by 30 degrees either way and the axes turn on without a jump, so that
 * the uncertainty of a nearly plumb leader does not swap its sides; beyond, it is refused.
 *
 * <p>Tested by: a plumb pull on limbs at 0, 30, 45, 90 and -30 degrees, and by turning the whole
 * scene with another library's rotations.
 */
public final class LimbAxes {
  private static final double MAX_RISE_RAD = Math.PI * 2 / 3;

  private final double riseRad;
  private final double cosine;
  private final double sine;

  private LimbAxes(double riseRad) {
    this.riseRad = Refuse.unlessWithin("rise of a limb", riseRad, -MAX_RISE_RAD, MAX_RISE_RAD);
    this.cosine = Math.cos(riseRad);
    this.sine = Math.sin(riseRad);
  }

  /**
   * @param riseRad radians above the horizontal, positive when the tip is above the union, from -2
   *     pi/3 to 2 pi/3
   * @throws IllegalArgumentException outside the range
   */
  public static LimbAxes ofRise(double riseRad) {
    return new LimbAxes(riseRad);
  }

  /** Radians above the horizontal. */
  public double riseRad() {
    return riseRad;
  }

  /** From the union to the tip. */
  public Vector3D along() {
    return new Vector3D(cosine, 0, sine);
  }

  /** Square to the limb, in its vertical plane, on the upper side. */
  public Vector3D top() {
    return new Vector3D(-sine, 0, cosine);
  }

  /** Horizontal and square to the limb, to the left when looking toward the tip. */
  public Vector3D side() {
    return Vector3D.PLUS_J;
  }

  /**
   * A force in newtons, split on the three axes.
   *
   * @throws IllegalArgumentException if a component is infinite or not a number
   */
  public LimbLoad split(Vector3D forceN) {
    return new LimbLoad(
        forceN.getX() * cosine + forceN.getZ() * sine,
        forceN.getZ() * cosine - forceN.getX() * sine,
        forceN.getY());
  }
}
