package rigspeak.drawing;

import java.util.List;

/** An upright rectangle on a sheet; its ends are in order. */
public record Area(double left, double top, double right, double bottom) {
  public Area {
    if (!(left <= right && top <= bottom)) {
      throw new IllegalArgumentException("no area from " + left + " to " + right);
    }
  }

  static Area around(List<Spot> spots) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (Spot spot : spots) {
      left = Math.min(left, spot.x());
      top = Math.min(top, spot.y());
      right = Math.max(right, spot.x());
      bottom = Math.max(bottom, spot.y());
    }
    return new Area(left, top, right, bottom);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  Spot centre() {
    return Spot.of((left + right) / 2, (top + bottom) / 2);
  }

  /** Smaller by a margin on each side. */
  Area within(double leftMargin, double topMargin, double rightMargin, double bottomMargin) {
    return new Area(left + leftMargin, top + topMargin, right - rightMargin, bottom - bottomMargin);
  }

  /** How much of the one lies in the other. */
  double shared(Area other) {
    double wide = Math.min(right, other.right) - Math.max(left, other.left);
    double high = Math.min(bottom, other.bottom) - Math.max(top, other.top);
    return wide > 0 && high > 0 ? wide * high : 0;
  }

  /** How much of a straight line lies in it (Liang and Barsky). */
  double lengthInside(Spot from, Spot to) {
    double[] shares = {0, 1};
    Spot way = to.minus(from);
    boolean meets =
        clip(-way.x(), from.x() - left, shares)
            && clip(way.x(), right - from.x(), shares)
            && clip(-way.y(), from.y() - top, shares)
            && clip(way.y(), bottom - from.y(), shares);
    return meets ? (shares[1] - shares[0]) * way.length() : 0;
  }

  private static boolean clip(double speed, double room, double[] shares) {
    if (speed == 0) {
      return room >= 0;
    }
    double share = room / speed;
    if (speed < 0) {
      shares[0] = Math.max(shares[0], share);
    } else {
      shares[1] = Math.min(shares[1], share);
    }
    return shares[0] <= shares[1];
  }
}
