package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.answer.PictureWords;
import rigspeak.answer.PlanWords;
import rigspeak.drawing.Ink.Colour;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/**
 * A rope over the whole tree, unrolled into one plane: every leg to scale, with its own slope, one
 * after the other from left to right. Which way each bears from the next nobody has said.
 */
final class Overview {
  private static final double MARGIN = 14;
  private static final double FOOT = 30;
  private static final double HEAD = 24;
  private static final double SUPPORT = 5;

  /** Drawn where a leg's length was not said, metres. */
  private static final double USUAL_LENGTH = 3;

  private static final double USUAL_SLOPE = Math.toRadians(-60);

  /** One stop of the rope; its way from the stop before, in metres to the right and down. */
  private record Stop(List<String> words, Spot at, boolean lengthSaid, boolean support) {}

  private Overview() {}

  static List<Mark> of(PathVerdict verdict, Area frame, double label) {
    List<Stop> stops = stops(verdict);
    Area reach = Area.around(stops.stream().map(Stop::at).toList());
    Area room = frame.within(MARGIN, HEAD, MARGIN + 90, FOOT);
    double scale =
        Math.min(
            room.width() / Math.max(reach.width(), 1), room.height() / Math.max(reach.height(), 1));
    Spot origin =
        Spot.of(room.left(), room.top()).minus(Spot.of(reach.left(), reach.top()).times(scale));
    UnitSystem units = PictureWords.units(verdict.path().at(verdict.asked()));
    Labels labels = new Labels(frame.within(2, HEAD - 8, 2, 2));
    List<Mark> marks = new ArrayList<>();
    Spot corner = Spot.of(frame.left() + 6, frame.top() + label + 3);
    marks.add(new Mark.Words(corner, PlanWords.overview(), Type.bold(label + 0.5)));
    marks.addAll(
        ScaleBar.at(Spot.of(frame.left() + 10, frame.bottom() - 8), scale, units, label - 1));
    for (int i = 1; i < stops.size(); i++) {
      Ink ink = stops.get(i).lengthSaid() ? Ink.line(Colour.ROPE, 2.2) : Ink.dashed(Colour.ROPE, 2);
      marks.add(
          new Mark.Line(
              place(stops.get(i - 1), origin, scale), place(stops.get(i), origin, scale), ink));
    }
    for (Stop stop : stops) {
      Spot at = place(stop, origin, scale);
      Ink ink =
          Ink.line(Colour.BLACK, 1.8).filledWith(stop.support() ? Colour.WHITE : Colour.BLACK);
      marks.add(new Mark.Ring(at, stop.support() ? SUPPORT : SUPPORT - 2, ink));
    }
    marks.forEach(labels::keepOff);
    for (Stop stop : stops) {
      marks.addAll(
          labels.label(stop.words(), List.of(place(stop, origin, scale)), Type.bold(label)));
    }
    return marks;
  }

  private static Spot place(Stop stop, Spot origin, double scale) {
    return origin.plus(stop.at().times(scale));
  }

  private static List<Stop> stops(PathVerdict verdict) {
    RopePath path = verdict.path();
    List<Stop> stops = new ArrayList<>();
    Place first = path.places().get(0);
    base(path.at(first)).ifPresent(stops::add);
    stops.add(new Stop(words(verdict, first), Spot.of(0, 0), true, true));
    Spot at = Spot.of(0, 0);
    Place before = first;
    for (Place place : path.places().subList(1, path.places().size())) {
      Optional<Value.Leg> back = leg(path.at(place), Slot.ANCHOR_LEG);
      Optional<Value.Leg> forth = leg(path.at(before), Slot.WORKING_LEG);
      double slope =
          back.map(leg -> -leg.direction().elevation().radians())
              .or(() -> forth.map(leg -> leg.direction().elevation().radians()))
              .orElse(USUAL_SLOPE);
      Optional<Double> length =
          back.flatMap(Overview::length).or(() -> forth.flatMap(Overview::length));
      at = at.plus(way(slope, length));
      stops.add(new Stop(words(verdict, place), at, length.isPresent(), true));
      before = place;
    }
    Optional<Value.Leg> last = leg(path.at(path.last()), Slot.WORKING_LEG);
    double slope = last.map(leg -> leg.direction().elevation().radians()).orElse(-Math.PI / 2);
    Optional<Double> length = last.flatMap(Overview::length);
    stops.add(
        new Stop(
            climber(length.isPresent()), at.plus(way(slope, length)), length.isPresent(), false));
    return stops;
  }

  private static List<String> climber(boolean lengthSaid) {
    return lengthSaid
        ? List.of(PlanWords.climber())
        : List.of(PlanWords.climber(), PlanWords.lengthNotSaid());
  }

  /** The end at the foot of the tree, left of everything. */
  private static Optional<Stop> base(Rig main) {
    boolean atBase =
        main.value(Slot.ANCHOR, Value.Anchor.class)
            .filter(anchor -> anchor == Value.Anchor.BASE)
            .isPresent();
    return leg(main, Slot.ANCHOR_LEG)
        .filter(leg -> atBase)
        .map(
            leg -> {
              Spot way = way(leg.direction().elevation().radians(), length(leg));
              Spot at = Spot.of(-Math.abs(way.x()) - 1, way.y());
              return new Stop(List.of(PlanWords.anchorEnd()), at, length(leg).isPresent(), false);
            });
  }

  private static Spot way(double slope, Optional<Double> length) {
    double metres = length.orElse(USUAL_LENGTH);
    return Spot.of(Math.cos(slope) * metres, -Math.sin(slope) * metres);
  }

  private static Optional<Value.Leg> leg(Rig rig, Slot slot) {
    return rig.value(slot, Value.Leg.class);
  }

  private static Optional<Double> length(Value.Leg leg) {
    return leg.length().map(distance -> distance.length().metres());
  }

  /** What it is called, and how it is pulled. */
  private static List<String> words(PathVerdict verdict, Place place) {
    String title = PictureWords.title(place);
    if (verdict.supports().get(place) instanceof Verdict.Judged judged) {
      UnitSystem units = PictureWords.units(judged.rig().said());
      return List.of(title, PictureWords.loadSize(judged.load(), units));
    }
    return List.of(title);
  }
}
