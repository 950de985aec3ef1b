package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import rigspeak.drawing.Ink.Colour;

/** The clock face laid flat, by which bearings are said: twelve toward the tip, which is right. */
final class Rose {
  private static final double RADIUS = 13;
  private static final double TICK = 3;
  private static final double SIZE = 10;
  private static final int HOURS = 12;

  private Rose() {}

  static List<Mark> at(Spot centre) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Ring(centre, RADIUS, Ink.line(Colour.GREY, 0.8)));
    for (int hour = 0; hour < HOURS; hour++) {
      Spot way = way(hour);
      marks.add(
          new Mark.Line(
              centre.plus(way.times(RADIUS - TICK)),
              centre.plus(way.times(RADIUS)),
              Ink.line(Colour.GREY, 0.8)));
      if (hour % 3 == 0) {
        Spot at = centre.plus(way.times(RADIUS + 8)).plus(Spot.of(0, 0.36 * SIZE));
        Type type = Type.plain(SIZE).from(Type.From.MIDDLE).in(Colour.GREY);
        marks.add(new Mark.Words(at, Integer.toString(hour == 0 ? HOURS : hour), type));
      }
    }
    marks.addAll(
        Arrows.arrow(
            centre.minus(way(0).times(RADIUS - 4)),
            centre.plus(way(0).times(RADIUS - 2)),
            1.2,
            7,
            Colour.GREY));
    return List.of(new Mark.Group("clock", marks));
  }

  /** Hours go clockwise as seen from above, from the right. */
  private static Spot way(int hour) {
    double turn = 2 * Math.PI * hour / HOURS;
    return Spot.of(Math.cos(turn), Math.sin(turn));
  }
}
