package rigspeak.rig;

import rigspeak.quantity.Angle;

/**
 * A direction seen from the sling.
 *
 * @param elevation up positive, from straight down (-90 degrees) to straight up (+90 degrees)
 * @param bearing in plan, 0 toward the tip, +90 degrees left, 180 toward the stem, more than -180
 *     and at most 180 degrees; 0 where the direction is plumb
 */
public record Direction(Angle elevation, Angle bearing) {
  private static final double RIGHT_ANGLE = Math.PI / 2;

  /** Angles that differ by less are one: far below what anybody can say or see. */
  private static final double NOTHING = 1e-9;

  /**
   * @throws IllegalArgumentException if the elevation goes beyond plumb
   */
  public Direction {
    if (!(Math.abs(elevation.radians()) <= RIGHT_ANGLE + NOTHING)) {
      throw new IllegalArgumentException("no direction rises by " + elevation.degrees());
    }
    double turned = Math.IEEEremainder(bearing.radians(), 2 * Math.PI);
    boolean plumb = Math.abs(elevation.radians()) >= RIGHT_ANGLE - NOTHING;
    double within = turned <= -Math.PI + NOTHING ? Math.PI : turned;
    bearing = plumb ? Angle.ofRadians(0) : Angle.ofRadians(within);
  }

  public static Direction ofDegrees(double elevation, double bearing) {
    return new Direction(Angle.ofDegrees(elevation), Angle.ofDegrees(bearing));
  }

  public static Direction straightDown() {
    return ofDegrees(-90, 0);
  }

  public static Direction straightUp() {
    return ofDegrees(90, 0);
  }

  public boolean isPlumb() {
    return Math.abs(elevation.radians()) >= RIGHT_ANGLE - NOTHING;
  }

  /** The angle between two directions, from 0 to half a turn. */
  public Angle angleTo(Direction other) {
    double sines = Math.sin(elevation.radians()) * Math.sin(other.elevation.radians());
    double cosines = Math.cos(elevation.radians()) * Math.cos(other.elevation.radians());
    double cosine = sines + cosines * Math.cos(bearing.radians() - other.bearing.radians());
    return Angle.ofRadians(Math.acos(Math.max(-1, Math.min(1, cosine))));
  }

  /** The same seen in a mirror that stands along the limb: left becomes right. */
  public Direction mirrored() {
    return new Direction(elevation, Angle.ofRadians(-bearing.radians()));
  }
}
