package rigspeak.drawing;

import rigspeak.rig.Direction;

/**
 * A direction in space, one long, in the frame of the sling.
 *
 * @param tip toward the tip of the limb
 * @param left to the left of who looks toward the tip
 * @param up against gravity
 */
record Heading(double tip, double left, double up) {
  static final Heading DOWN = new Heading(0, 0, -1);

  /**
   * @param elevationRad up positive
   * @param bearingRad 0 toward the tip, a quarter turn to the left
   */
  static Heading of(double elevationRad, double bearingRad) {
    double flat = Math.cos(elevationRad);
    return new Heading(
        flat * Math.cos(bearingRad), flat * Math.sin(bearingRad), Math.sin(elevationRad));
  }

  static Heading of(Direction direction) {
    return of(direction.elevation().radians(), direction.bearing().radians());
  }

  double elevationDeg() {
    return Math.toDegrees(Math.atan2(up, Math.hypot(tip, left)));
  }

  double bearingDeg() {
    return Math.toDegrees(Math.atan2(left, tip));
  }
}
