package rigspeak.drawing;

import rigspeak.answer.PictureWords;
import rigspeak.rig.Place;
import rigspeak.verdict.PathVerdict;

/**
 * A support as a free body: from the side, from above, and the slope of its load.
 *
 * <p>From the side and from above the limb, the stem and the distance out are to scale, and every
 * direction is seen as it falls on the sheet (orthographic projection): from above an arrow has its
 * bearing, from the side what of it lies in the limb's plane. The slope alone is seen square to the
 * load. Sling and legs are drawn at one length; where their length was said it is written. The
 * load's arrow is to the scale of the pull of the rope.
 */
public final class RigDrawing {
  private static final double WIDTH = 420;
  private static final double EDGE = 8;
  private static final double SIDE_HEIGHT = 300;
  private static final double PLAN_HEIGHT = 250;
  private static final double SLOPE_SHARE = 0.3;
  private static final double LABEL = 12.5;

  private RigDrawing() {}

  /** The picture of a support as an SVG document, as much of it as is known. */
  public static String sideAndPlan(Subject subject) {
    return picture(subject).svg();
  }

  /** The same before it is written. */
  public static Picture picture(Subject subject) {
    Place place = subject.place();
    Column column = new Column(WIDTH - 2 * EDGE);
    column.text(PictureWords.title(place), Type.bold(17));
    if (subject.verdict().isPresent()) {
      PathVerdict verdict = subject.verdict().get();
      column.outcome(
          verdict.outcome(),
          PictureWords.verdict(verdict, place),
          PictureWords.reason(verdict, place),
          15);
    }
    column.space(4);
    column.rule();
    side(column, subject, column.area(SIDE_HEIGHT), LABEL);
    column.rule();
    plan(column, subject, column.area(PLAN_HEIGHT), LABEL);
    column.rule();
    subject
        .loaded()
        .ifPresent(loaded -> column.text(PictureWords.loadClass(loaded.load()), Type.bold(13.5)));
    column.text(PictureWords.key(subject.said(), subject.loaded()), Type.plain(12));
    return new Picture(
        WIDTH,
        column.bottom() + EDGE,
        PictureWords.title(place),
        PictureWords.description(place, subject.said(), subject.loaded(), subject.verdict()),
        column.marks().stream().map(mark -> mark.movedBy(Spot.of(EDGE, 0))).toList());
  }

  static void side(Column column, Subject subject, Area area, double label) {
    column.add(new Mark.Group("side", View.of(subject, Aspect.SIDE, area, label)));
  }

  /** From above, and beside it the slope of the load where there is one. */
  static void plan(Column column, Subject subject, Area area, double label) {
    boolean loaded = Pull.of(subject).load().isPresent();
    double right = loaded ? area.right() - SLOPE_SHARE * area.width() : area.right();
    Area plan = new Area(area.left(), area.top(), right, area.bottom());
    column.add(new Mark.Group("plan", View.of(subject, Aspect.PLAN, plan, label)));
    if (loaded) {
      Area slope = new Area(right, area.top(), area.right(), area.bottom());
      column.add(
          new Mark.Group(
              "slope", SlopeView.of(subject.loaded().orElseThrow().load(), slope, label)));
    }
  }
}
