package rigspeak.drawing;

/**
 * A place on a sheet, or the way from one place to another.
 *
 * @param x to the right
 * @param y down
 */
public record Spot(double x, double y) {
  public Spot {
    if (!(Math.abs(x) <= Double.MAX_VALUE && Math.abs(y) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("no spot is at " + x + ", " + y);
    }
  }

  static Spot of(double x, double y) {
    return new Spot(x, y);
  }

  Spot plus(Spot other) {
    return new Spot(x + other.x, y + other.y);
  }

  Spot minus(Spot other) {
    return new Spot(x - other.x, y - other.y);
  }

  Spot times(double factor) {
    return new Spot(factor * x, factor * y);
  }

  double length() {
    return Math.hypot(x, y);
  }

  /** The same way, one long; a way of no length stays as it is. */
  Spot unit() {
    double length = length();
    return length == 0 ? this : times(1 / length);
  }

  /** Turned by a quarter, anticlockwise as it is seen. */
  Spot quarterTurned() {
    return new Spot(y, -x);
  }
}
