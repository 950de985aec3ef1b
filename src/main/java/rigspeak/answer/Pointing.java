package rigspeak.answer;

import rigspeak.quantity.Angle;
import rigspeak.rig.Direction;

/** Directions as words, seen from the sling by someone who looks from the union out to the tip. */
final class Pointing {
  private static final int DEGREES_AN_HOUR = 30;
  private static final int HOURS = 12;
  private static final int COARSE_DEGREES = 5;
  private static final int PLUMB_DEGREES = 90;

  private Pointing() {}

  /** As it was said. */
  static String exact(Direction direction) {
    return toward(direction.elevation().degrees(), direction.bearing().degrees());
  }

  /** To a whole degree, and the nearest hour of the clock. */
  static String close(Angle elevation, Angle bearing) {
    return toward(Math.rint(elevation.degrees()), bearing.degrees());
  }

  /** To five degrees, and the nearest hour of the clock. */
  static String about(double elevationDeg, double bearingDeg) {
    return toward(COARSE_DEGREES * Math.rint(elevationDeg / COARSE_DEGREES), bearingDeg);
  }

  /** Level, to the nearest hour of the clock. */
  static String along(double bearingDeg) {
    return bearing(bearingDeg, "toward");
  }

  private static String toward(double elevationDeg, double bearingDeg) {
    String slope = Amounts.degrees(Math.abs(elevationDeg));
    if (slope.equals(Amounts.degrees(PLUMB_DEGREES))) {
      return elevationDeg < 0 ? "straight down" : "straight up";
    }
    if (slope.equals(Amounts.degrees(0))) {
      return "level " + bearing(bearingDeg, "at");
    }
    return (elevationDeg < 0 ? "down " : "up ") + slope + " " + bearing(bearingDeg, "at");
  }

  /** The clock lies flat: twelve at the tip, three to the right, six at the stem. */
  private static String bearing(double degrees, String hourIs) {
    int hour = Math.floorMod(-Math.round(degrees / DEGREES_AN_HOUR), HOURS);
    return switch (hour) {
      case 0 -> "toward the tip";
      case 3 -> "to the right";
      case 6 -> "toward the stem";
      case 9 -> "to the left";
      default -> hourIs + " " + Numbers.whole(hour) + " o'clock";
    };
  }
}
