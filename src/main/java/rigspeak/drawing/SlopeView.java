package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import rigspeak.answer.Figures;
import rigspeak.answer.PictureWords;
import rigspeak.drawing.Ink.Colour;
import rigspeak.verdict.Load;

/**
 * The slope of a load, seen square to the upright plane that it lies in: there alone its angle is
 * the true one, whichever way the load bears.
 */
final class SlopeView {
  private static final int CURVE = 24;
  private static final int TICK_DEGREES = 15;

  private SlopeView() {}

  static List<Mark> of(Load load, Area frame, double label) {
    List<Mark> marks = new ArrayList<>();
    Spot corner = Spot.of(frame.left() + 4, frame.top() + label + 3);
    marks.add(new Mark.Words(corner, PictureWords.slopeOfTheLoad(), Type.bold(label + 0.5)));
    double radius = Math.min(frame.width() - 34, (frame.height() - 76) / 2);
    Spot tail = Spot.of(frame.left() + 14, frame.top() + 38 + radius);
    Wedge.ofSlope(load, tail, radius).ifPresent(marks::add);
    marks.addAll(dial(tail, radius));
    double elevation = Math.toRadians(load.elevationDeg().nominal());
    Spot way = Spot.of(Math.cos(elevation), -Math.sin(elevation)).times(0.86 * radius);
    TreeMap<String, String> data = new TreeMap<>();
    data.put("elevation-deg", Double.toString(load.elevationDeg().nominal()));
    marks.add(
        new Mark.Group("load slope", data, Arrows.arrow(tail, tail.plus(way), 4, 14, Colour.LOAD)));
    Spot foot = Spot.of(frame.left() + 4, tail.y() + radius + 18);
    marks.add(
        new Mark.Words(
            foot, Figures.slope(load.elevationDeg().nominal()), Type.bold(label).in(Colour.LOAD)));
    return marks;
  }

  private static List<Mark> dial(Spot tail, double radius) {
    List<Mark> marks = new ArrayList<>();
    List<Spot> arc = new ArrayList<>();
    for (int i = 0; i <= CURVE; i++) {
      arc.add(tail.plus(way(90 - 180.0 * i / CURVE, radius)));
    }
    Ink thin = Ink.line(Colour.GREY, 0.8);
    marks.add(new Mark.Track(arc, false, thin));
    for (int degrees = -90; degrees <= 90; degrees += TICK_DEGREES) {
      double inner = degrees % 45 == 0 ? radius - 8 : radius - 4;
      marks.add(
          new Mark.Line(tail.plus(way(degrees, inner)), tail.plus(way(degrees, radius)), thin));
    }
    marks.add(new Mark.Line(tail, tail.plus(way(0, radius)), Ink.dashed(Colour.GREY, 0.8)));
    marks.add(
        new Mark.Line(
            tail.plus(way(90, radius)), tail.plus(way(-90, radius)), Ink.dashed(Colour.GREY, 0.8)));
    return List.of(new Mark.Group("dial", marks));
  }

  private static Spot way(double elevationDeg, double length) {
    double elevation = Math.toRadians(elevationDeg);
    return Spot.of(Math.cos(elevation), -Math.sin(elevation)).times(length);
  }
}
