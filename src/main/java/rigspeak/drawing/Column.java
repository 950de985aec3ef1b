package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import rigspeak.verdict.PathVerdict.Outcome;

/** Text and pictures one below the other, from the top of a sheet or of a part of it. */
final class Column {
  private static final double BADGE = 11;
  private static final double BADGE_INDENT = 32;

  private final double width;
  private final List<Mark> marks = new ArrayList<>();
  private double y;

  Column(double width) {
    this.width = width;
  }

  double width() {
    return width;
  }

  /** How far down it has come. */
  double bottom() {
    return y;
  }

  List<Mark> marks() {
    return marks;
  }

  void space(double height) {
    y += height;
  }

  /** A text in as many lines as it takes; nothing for an empty one. */
  void text(String text, Type type, double indent) {
    if (text.isBlank()) {
      return;
    }
    for (String line : type.wrapped(text, width - indent)) {
      y += Type.LEADING * type.size();
      marks.add(new Mark.Words(Spot.of(indent, y), line, type));
    }
    y += 0.3 * type.size();
  }

  void text(String text, Type type) {
    text(text, type, 0);
  }

  /** A sign, and beside it what comes of a support and why. */
  void outcome(Outcome outcome, String verdict, String reason, double size) {
    double top = y;
    text(verdict, Type.bold(size), BADGE_INDENT);
    text(reason, Type.plain(0.9 * size), BADGE_INDENT);
    marks.add(Badge.of(outcome, Spot.of(BADGE + 2, top + BADGE + 5), BADGE));
    y = Math.max(y, top + 2 * BADGE + 8);
  }

  /** A part of its own, drawn in an area that goes from here across the whole width. */
  Area area(double height) {
    Area area = new Area(0, y, width, y + height);
    y += height;
    return area;
  }

  void add(Mark mark) {
    marks.add(mark);
  }

  void rule() {
    marks.add(new Mark.Line(Spot.of(0, y), Spot.of(width, y), Ink.line(Ink.Colour.PALE, 1)));
  }
}
