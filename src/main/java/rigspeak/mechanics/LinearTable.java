package rigspeak.mechanics;

import java.util.List;

/**
 * A factor that is printed at points of something, as the strength left over a bend is.
 *
 * <p>Model: a straight line between neighbouring points; beyond the last point its factor stays.
 * What lies below the first point is refused: the table does not know. Source: the table that the
 * caller gives.
 *
 * <p>Tested by: the strength of wire rope over bends (source 9) at and between its points.
 */
public final class LinearTable {
  /**
   * A printed point.
   *
   * @param at finite, in the table's unit
   * @param factor finite
   */
  public record Point(double at, double factor) {
    /**
     * @throws IllegalArgumentException if a number is infinite or not a number
     */
    public Point {
      Refuse.unlessFinite("point of a table", at);
      Refuse.unlessFinite("factor at a point", factor);
    }
  }

  private final List<Point> points;

  /**
   * @param points at least one, in rising order
   * @throws IllegalArgumentException if there is none or they are out of order
   */
  public LinearTable(List<Point> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a table needs a point");
    }
    double last = Double.NEGATIVE_INFINITY;
    for (Point point : points) {
      if (!(point.at() > last)) {
        throw Refuse.refusal("point after " + last, point.at());
      }
      last = point.at();
    }
    this.points = List.copyOf(points);
  }

  /** The smallest value that the table speaks of. */
  public double lowest() {
    return points.get(0).at();
  }

  /**
   * @throws IllegalArgumentException if the value is below {@link #lowest}, infinite or not a
   *     number
   */
  public double factor(double value) {
    Refuse.unlessWithin("value in this table", value, lowest(), Double.MAX_VALUE);
    Point below = points.get(0);
    for (Point above : points) {
      if (value <= above.at()) {
        double width = above.at() - below.at();
        return width > 0
            ? below.factor() + (above.factor() - below.factor()) * (value - below.at()) / width
            : above.factor();
      }
      below = above;
    }
    return below.factor();
  }
}
