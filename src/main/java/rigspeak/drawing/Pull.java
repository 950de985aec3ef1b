package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Load;
import rigspeak.verdict.LoadAsSaid;

/**
 * Where sling, rope and load point.
 *
 * @param sling where the sling leads from the limb
 * @param legs the legs of the rope that are known
 * @param load what pulls on the sling; none where it is not known or the legs cancel
 */
record Pull(Sling sling, List<Leg> legs, Optional<Arrow> load) {

  /**
   * @param said whether the direction is known, and not only drawn as a guess
   */
  record Sling(Heading heading, boolean said) {}

  /**
   * A leg of the rope.
   *
   * @param known how much of its heading is
   * @param tension over that of the working leg; 0 where it is not known
   */
  record Leg(Slot slot, Heading heading, Known known, double tension) {}

  /** How much is known of where a leg goes. */
  enum Known {
    ALL,
    /** Only how steep it is: it was said from its other end. */
    SLOPE,
    /** Only its angle to the other leg. */
    ANGLE
  }

  /**
   * The load.
   *
   * @param size over the tension of the working leg
   * @param sideKnown whether its bearing is
   */
  record Arrow(Load load, Heading heading, double size, boolean sideKnown) {}

  static Pull of(Subject subject) {
    Optional<Arrow> arrow = subject.loaded().flatMap(Pull::arrow);
    List<Leg> legs = legs(subject, arrow);
    return new Pull(sling(subject.said(), legs, arrow), legs, arrow);
  }

  private static Optional<Arrow> arrow(LoadAsSaid loaded) {
    Load load = loaded.load();
    double working = load.workingLegN().nominal();
    double size = load.resultantN().nominal() / working;
    if (!(size > 1e-6 && size <= Double.MAX_VALUE)) {
      return Optional.empty();
    }
    Heading heading =
        Heading.of(
            Math.toRadians(load.elevationDeg().nominal()),
            Math.toRadians(load.bearingDeg().nominal()));
    return Optional.of(new Arrow(load, heading, size, isSideKnown(loaded)));
  }

  private static boolean isSideKnown(LoadAsSaid loaded) {
    Estimate bearing = loaded.rig().measures().get(Measure.WORKING_LEG_BEARING);
    return bearing == null || bearing.how() != HowGot.ASSUMED;
  }

  private static Sling sling(Rig said, List<Leg> legs, Optional<Arrow> arrow) {
    if (arrow.isPresent()) {
      return new Sling(arrow.get().heading(), true);
    }
    return said.value(Slot.SLING_POINTS, Value.Toward.class)
        .map(toward -> new Sling(Heading.of(toward.direction()), true))
        .orElseGet(
            () ->
                new Sling(
                    legs.size() == 1 ? legs.get(0).heading() : Heading.DOWN, legs.size() == 2));
  }

  private static List<Leg> legs(Subject subject, Optional<Arrow> arrow) {
    List<Leg> legs = new ArrayList<>();
    leg(subject, Slot.ANCHOR_LEG, Measure.ANCHOR_LEG_ELEVATION, Measure.ANCHOR_LEG_BEARING)
        .ifPresent(
            heading ->
                legs.add(new Leg(Slot.ANCHOR_LEG, heading, Known.ALL, anchorTension(subject))));
    Known working =
        subject.loaded().filter(loaded -> !isSideKnown(loaded)).isPresent()
            ? Known.SLOPE
            : Known.ALL;
    leg(subject, Slot.WORKING_LEG, Measure.WORKING_LEG_ELEVATION, Measure.WORKING_LEG_BEARING)
        .ifPresent(heading -> legs.add(new Leg(Slot.WORKING_LEG, heading, working, 1)));
    return legs.isEmpty() ? guessed(arrow) : legs;
  }

  private static double anchorTension(Subject subject) {
    return subject
        .loaded()
        .map(LoadAsSaid::load)
        .map(load -> load.anchorLegN().nominal() / load.workingLegN().nominal())
        .filter(share -> share <= Double.MAX_VALUE)
        .orElse(0.0);
  }

  private static Optional<Heading> leg(
      Subject subject, Slot slot, Measure elevation, Measure bearing) {
    return subject
        .loaded()
        .map(LoadAsSaid::rig)
        .filter(rig -> rig.has(elevation) && rig.has(bearing))
        .map(
            rig ->
                Heading.of(
                    rig.measures().get(elevation).nominal(), rig.measures().get(bearing).nominal()))
        .or(
            () ->
                subject
                    .said()
                    .value(slot, Value.Leg.class)
                    .map(leg -> Heading.of(leg.direction())));
  }

  /** The angle between them is known, and not in which plane: they are drawn in an upright one. */
  private static List<Leg> guessed(Optional<Arrow> arrow) {
    if (arrow.isEmpty() || arrow.get().load().insideDeg().isEmpty()) {
      return List.of();
    }
    double half = Math.toRadians(arrow.get().load().insideDeg().get().nominal()) / 2;
    double elevation = Math.toRadians(arrow.get().heading().elevationDeg());
    double bearing = Math.toRadians(arrow.get().heading().bearingDeg());
    return List.of(
        new Leg(Slot.ANCHOR_LEG, Heading.of(elevation + half, bearing), Known.ANGLE, 1),
        new Leg(Slot.WORKING_LEG, Heading.of(elevation - half, bearing), Known.ANGLE, 1));
  }
}
