package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.drawing.Ink.Colour;
import rigspeak.verdict.Load;
import rigspeak.verdict.Spread;

/** Where a load may point over everything that may be true, as it is seen. */
final class Wedge {
  private static final int STEPS = 8;

  /** Narrower than this it says nothing. */
  private static final double LEAST = Math.toRadians(1);

  /** Wider than this it is any way round. */
  private static final double MOST = Math.toRadians(200);

  private static final Ink INK = Ink.dotted(Colour.LOAD, 0.9).filledWith(Colour.SPREAD);

  private Wedge() {}

  /** A sector round the arrow's tail; none where nothing is in doubt. */
  static Optional<Mark> of(Load load, Aspect aspect, Spot tail, double radius) {
    Heading nominal = heading(load.elevationDeg().nominal(), load.bearingDeg().nominal());
    Spot middle = aspect.across(nominal);
    if (middle.length() < 1e-3) {
      return Optional.empty();
    }
    double about = Math.atan2(middle.y(), middle.x());
    double low = 0;
    double high = 0;
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= STEPS; j++) {
        Spot way = aspect.across(heading(at(load.elevationDeg(), i), at(load.bearingDeg(), j)));
        double turned = Math.IEEEremainder(Math.atan2(way.y(), way.x()) - about, 2 * Math.PI);
        low = Math.min(low, turned);
        high = Math.max(high, turned);
      }
    }
    return sector(about, low, high, tail, radius);
  }

  /** The same of the slope alone, seen square to it, with the load to the right. */
  static Optional<Mark> ofSlope(Load load, Spot tail, double radius) {
    double about = -Math.toRadians(load.elevationDeg().nominal());
    double low = -Math.toRadians(load.elevationDeg().high()) - about;
    double high = -Math.toRadians(load.elevationDeg().low()) - about;
    return sector(about, low, high, tail, radius);
  }

  private static Optional<Mark> sector(
      double about, double low, double high, Spot tail, double radius) {
    if (high - low < LEAST) {
      return Optional.empty();
    }
    if (high - low > MOST) {
      return Optional.of(new Mark.Ring(tail, radius, INK));
    }
    List<Spot> spots = new ArrayList<>();
    spots.add(tail);
    for (int i = 0; i <= 2 * STEPS; i++) {
      double turn = about + low + (high - low) * i / (2 * STEPS);
      spots.add(tail.plus(Spot.of(radius * Math.cos(turn), radius * Math.sin(turn))));
    }
    return Optional.of(new Mark.Group("spread", List.of(new Mark.Track(spots, true, INK))));
  }

  private static double at(Spread spread, int step) {
    return spread.low() + (spread.high() - spread.low()) * step / STEPS;
  }

  private static Heading heading(double elevationDeg, double bearingDeg) {
    return Heading.of(Math.toRadians(elevationDeg), Math.toRadians(bearingDeg));
  }
}
