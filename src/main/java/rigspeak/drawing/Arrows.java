package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import rigspeak.drawing.Ink.Colour;

/** Arrows, and what is seen of one that points at who looks or away. */
final class Arrows {
  private static final double HEAD_WIDTH = 0.4;

  /** So far from the tip the shaft ends, in heads: it must not show beyond the point. */
  private static final double SHAFT_END = 0.8;

  private Arrows() {}

  /** A shaft and a head; the shaft is the first mark. */
  static List<Mark> arrow(Spot from, Spot to, double width, double head, Colour colour) {
    Spot way = to.minus(from);
    double size = Math.min(head, 0.75 * way.length());
    Spot shaft = to.minus(way.unit().times(SHAFT_END * size));
    return List.of(
        new Mark.Line(from, shaft, Ink.line(colour, width)), head(to, way, size, colour));
  }

  static Mark head(Spot tip, Spot way, double size, Colour colour) {
    Spot back = tip.minus(way.unit().times(size));
    Spot side = way.unit().quarterTurned().times(HEAD_WIDTH * size);
    return new Mark.Track(
        List.of(tip, back.plus(side), back.minus(side)), true, Ink.filled(colour));
  }

  /** A measured distance: a thin line with a head at each end. */
  static List<Mark> span(Spot from, Spot to) {
    Spot way = to.minus(from);
    double head = Math.min(7, way.length() / 3);
    return List.of(
        new Mark.Line(from, to, Ink.line(Colour.GREY, 1)),
        head(to, way, head, Colour.GREY),
        head(from, way.times(-1), head, Colour.GREY));
  }

  /** End on: a point where it comes toward who looks, a cross where it goes away. */
  static List<Mark> endOn(Spot centre, double radius, boolean comes, Colour colour, double width) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Ring(centre, radius, Ink.line(colour, width)));
    if (comes) {
      marks.add(new Mark.Ring(centre, radius / 4, Ink.filled(colour)));
    } else {
      double half = radius * Math.sqrt(0.5);
      Spot one = Spot.of(half, half);
      Spot other = Spot.of(half, -half);
      marks.add(new Mark.Line(centre.minus(one), centre.plus(one), Ink.line(colour, width)));
      marks.add(new Mark.Line(centre.minus(other), centre.plus(other), Ink.line(colour, width)));
    }
    return marks;
  }
}
