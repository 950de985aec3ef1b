package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import rigspeak.answer.PictureWords;
import rigspeak.drawing.Ink.Colour;
import rigspeak.rig.Place;
import rigspeak.verdict.PathVerdict;

/**
 * A support as a free body: from the side, from above, and the slope of its load.
 *
 * <p>From the side and from above the limb, the stem and the distance out are to scale, and every
 * direction is seen as it falls on the sheet (orthographic projection): from above an arrow has its
 * bearing, from the side what of it lies in the limb's plane. Sling and legs are drawn at one
 * length; where their length was said it is written. The load's arrow is to the scale of the pull
 * of the rope.
 */
public final class RigDrawing {
  private static final double WIDTH = 420;
  private static final double SIDE_HEIGHT = 300;
  private static final double PLAN_HEIGHT = 250;
  private static final double SLOPE_WIDTH = 128;
  private static final double EDGE = 8;
  private static final double HEADING = 17;
  private static final double BODY = 13.5;

  private RigDrawing() {}

  /** The picture of a support as an SVG document, as much of it as is known. */
  public static String sideAndPlan(Subject subject) {
    return picture(subject).svg();
  }

  static Picture picture(Subject subject) {
    List<Mark> marks = new ArrayList<>();
    Place place = subject.place();
    double y = EDGE + HEADING;
    marks.add(new Mark.Words(Spot.of(EDGE, y), PictureWords.title(place), Type.bold(HEADING)));
    y += 8;
    if (subject.verdict().isPresent()) {
      PathVerdict verdict = subject.verdict().get();
      marks.add(Badge.of(PictureWords.outcome(verdict, place), Spot.of(EDGE + 14, y + 16), 12));
      y = text(marks, PictureWords.verdict(verdict, place), Type.bold(15), 36, y + 6);
      y = text(marks, PictureWords.reason(verdict, place), Type.plain(BODY), 36, y);
      y += 6;
    }
    Area side = new Area(0, y, WIDTH, y + SIDE_HEIGHT);
    marks.add(new Mark.Group("side", View.of(subject, Aspect.SIDE, side)));
    rule(marks, y);
    y += SIDE_HEIGHT;
    rule(marks, y);
    boolean loaded = Pull.of(subject).load().isPresent();
    double planWidth = loaded ? WIDTH - SLOPE_WIDTH : WIDTH;
    Area plan = new Area(0, y, planWidth, y + PLAN_HEIGHT);
    marks.add(new Mark.Group("plan", View.of(subject, Aspect.PLAN, plan)));
    if (loaded) {
      Area slope = new Area(planWidth, y, WIDTH, y + PLAN_HEIGHT);
      marks.add(
          new Mark.Group("slope", SlopeView.of(subject.loaded().orElseThrow().load(), slope)));
    }
    y += PLAN_HEIGHT;
    rule(marks, y);
    y += 4;
    if (subject.loaded().isPresent()) {
      String loadClass = PictureWords.loadClass(subject.loaded().get().load());
      y = text(marks, loadClass, Type.bold(BODY), EDGE, y);
    }
    y = text(marks, PictureWords.key(subject.said(), subject.loaded()), Type.plain(12), EDGE, y);
    return new Picture(
        WIDTH,
        y + EDGE,
        PictureWords.title(place),
        PictureWords.description(place, subject.said(), subject.loaded(), subject.verdict()),
        marks);
  }

  private static void rule(List<Mark> marks, double y) {
    marks.add(new Mark.Line(Spot.of(0, y), Spot.of(WIDTH, y), Ink.line(Colour.PALE, 1)));
  }

  /** Text in lines of the width that is left; says where it ends. */
  private static double text(List<Mark> marks, String text, Type type, double left, double top) {
    double y = top;
    for (String line : type.wrapped(text, WIDTH - left - EDGE)) {
      y += Type.LEADING * type.size();
      marks.add(new Mark.Words(Spot.of(left, y), line, type));
    }
    return y + 0.3 * type.size();
  }
}
