package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.mechanics.Directions;
import rigspeak.mechanics.Pendulum;
import rigspeak.mechanics.WorkingSwing;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;

/** Where the climber works, off the plumb line of the support they hang from. */
final class WorkingPosition {
  private static final int SAMPLES = 1_000;

  private WorkingPosition() {}

  /** The swing of a slip, where the leg to the climber is known with its length. */
  static Optional<Swing> swing(ResolvedRig rig, double promptDeg) {
    if (!rig.has(Measure.WORKING_LEG_ELEVATION) || !rig.has(Measure.WORKING_LEG_LENGTH)) {
      return Optional.empty();
    }
    Spreading offPlumb = new Spreading();
    Spreading offset = new Spreading();
    Spreading speed = new Spreading();
    Spreading fall = new Spreading();
    Meeting meeting = new Meeting();
    Box box = Box.whole(rig);
    List<Point> points = new ArrayList<>(List.of(rig.nominal()));
    for (double[] shares : box.evenly(SAMPLES)) {
      points.add(box.at(shares));
    }
    for (Point point : points) {
      Pendulum swing = swing(point);
      offPlumb.take(Math.toDegrees(swing.fromPlumbRad()));
      offset.take(swing.outM());
      speed.take(swing.lowestSpeedMS());
      fall.take(swing.lowestEquivalentFallM());
      if (rig.has(Measure.STEM_CLEAR)) {
        meeting.take(swing.arrivalAt(point.get(Measure.STEM_CLEAR)));
      }
    }
    return Optional.of(
        new Swing(
            rig.place(),
            offPlumb.spread(),
            offset.spread(),
            speed.spread(),
            fall.spread(),
            meeting.obstacle(),
            promptDeg));
  }

  /** Above the level of the support the rope is slack; level with it is the widest swing. */
  private static Pendulum swing(Point point) {
    double elevation = Math.min(0, point.get(Measure.WORKING_LEG_ELEVATION));
    return WorkingSwing.ofLeg(
        point.get(Measure.WORKING_LEG_LENGTH),
        Directions.unit(elevation, point.get(Measure.WORKING_LEG_BEARING)));
  }
}
