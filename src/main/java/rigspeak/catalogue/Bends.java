package rigspeak.catalogue;

import java.util.List;
import rigspeak.rig.Source;
import rigspeak.rig.Sourced;

/**
 * What a bend leaves of a sling's strength, by the diameter of the bend over its own.
 *
 * <p>A straight line between the printed points; beyond the last its factor stays; below the first,
 * where the table knows nothing, half the first one's counts.
 */
final class Bends {
  private record Point(double ratio, double factor) {}

  private static final double BELOW_THE_TABLE = 0.5;

  private final List<Point> points;
  private final Source source;

  Bends(Sources sources) {
    this.points =
        Table.rows("bend").stream()
            .map(row -> new Point(Table.number(row, "bend_over_rope"), Table.number(row, "factor")))
            .toList();
    this.source = sources.get("sling_bend");
  }

  /**
   * @param ratio above 0
   */
  Sourced factor(double ratio) {
    return new Sourced("bend", at(ratio), source);
  }

  private double at(double ratio) {
    Point below = points.get(0);
    if (ratio < below.ratio()) {
      return BELOW_THE_TABLE * below.factor();
    }
    for (Point above : points.subList(1, points.size())) {
      if (ratio <= above.ratio()) {
        double way = (ratio - below.ratio()) / (above.ratio() - below.ratio());
        return below.factor() + way * (above.factor() - below.factor());
      }
      below = above;
    }
    return below.factor();
  }
}
