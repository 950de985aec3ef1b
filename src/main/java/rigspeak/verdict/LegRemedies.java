package rigspeak.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.mechanics.Capstan;
import rigspeak.mechanics.Directions;
import rigspeak.quantity.Angle;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig.Turn;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/**
 * Where else the rope could go so that a support is good: another way to the climber, a wider
 * angle, or a second redirect. Directions are tried in steps that can be said: five degrees of
 * slope, an hour of the clock.
 */
final class LegRemedies {
  private static final int SEARCH_SAMPLES = 64;
  private static final int SLOPE_STEP_DEG = 5;
  private static final int LEAST_SLOPE_DEG = 20;
  private static final int HOUR_DEG = 30;
  private static final int QUARTER_DEG = 90;
  private static final int WIDEST_DEG = 170;

  /** Of the directions that hold at their word so many are looked at more closely. */
  private static final int MOST_LOOKED_AT = 8;

  /** How far a second redirect turns the rope, for the friction that it adds. */
  private static final double TURN_OF_SECOND_RAD = Math.PI / 2;

  private final Probe probe;
  private final Rig said;

  LegRemedies(Probe probe) {
    this.probe = probe;
    this.said = probe.said();
  }

  List<Remedy> cheapestFirst() {
    List<Remedy> remedies = new ArrayList<>();
    if (probe.now().turn() == Turn.ANGLE_AND_SLING) {
      widerAngle().ifPresent(remedies::add);
    } else if (!probe.goesOn() && said.has(Slot.WORKING_LEG)) {
      workingLeg().ifPresent(remedies::add);
      secondRedirect().ifPresent(remedies::add);
    }
    return remedies;
  }

  private Optional<Remedy> widerAngle() {
    Slot slot = said.has(Slot.INSIDE_ANGLE) ? Slot.INSIDE_ANGLE : Slot.BEND;
    double now = Math.toDegrees(probe.now().measures().get(Measure.INSIDE_ANGLE).nominal());
    int first = SLOPE_STEP_DEG * (int) (Math.floor(now / SLOPE_STEP_DEG) + 1);
    for (int degrees = first; degrees <= WIDEST_DEG; degrees += SLOPE_STEP_DEG) {
      double value = slot == Slot.BEND ? 2 * QUARTER_DEG - degrees : degrees;
      Rig wider = changed(slot, new Value.Turned(Angle.ofDegrees(value)));
      if (holds(probe, wider)) {
        return Optional.of(new Remedy.WiderAngle(Angle.ofDegrees(degrees)));
      }
    }
    return Optional.empty();
  }

  /** The one that turns the rope least. */
  private Optional<Remedy> workingLeg() {
    Direction now = said.value(Slot.WORKING_LEG, Value.Leg.class).orElseThrow().direction();
    List<Direction> tried = new ArrayList<>(List.of(Direction.straightDown()));
    for (int slope = QUARTER_DEG - SLOPE_STEP_DEG;
        slope >= LEAST_SLOPE_DEG;
        slope -= SLOPE_STEP_DEG) {
      for (int bearing = -QUARTER_DEG; bearing < 3 * QUARTER_DEG; bearing += HOUR_DEG) {
        tried.add(Direction.ofDegrees(-slope, bearing));
      }
    }
    tried.sort(Comparator.comparingDouble(direction -> direction.angleTo(now).radians()));
    return firstGood(probe, tried, this::leaving).map(Remedy.WorkingLeg::new);
  }

  /**
   * The rope leaves as it came, mirrored in the limb: with both legs alike the load then lies along
   * the limb toward its union.
   */
  private Optional<Remedy> secondRedirect() {
    if (!said.has(Slot.ANCHOR_LEG) || probe.now().turn() == Turn.ONE_LEG) {
      return Optional.empty();
    }
    double rise = probe.now().measures().get(Measure.LIMB_RISE).nominal();
    Vector3D toUnion = new Vector3D(-Math.cos(rise), 0, -Math.sin(rise));
    Direction came = said.value(Slot.ANCHOR_LEG, Value.Leg.class).orElseThrow().direction();
    Vector3D anchor = Directions.unit(came.elevation().radians(), came.bearing().radians());
    double into = anchor.dotProduct(toUnion);
    if (into <= 0) {
      return Optional.empty();
    }
    Vector3D leaving = new Vector3D(2 * into, toUnion, -1, anchor);
    return firstGood(withFrictionOfSecond(), List.of(sayable(leaving)), this::leaving)
        .map(Remedy.SecondRedirect::new);
  }

  private Probe withFrictionOfSecond() {
    Estimate friction = probe.now().measures().get(Measure.ROPE_FRICTION);
    double most = Capstan.largestRatio(friction.high(), TURN_OF_SECOND_RAD);
    return probe
        .goingOn()
        .with(Measure.BEYOND, new Estimate(1 / most, 1, most, HowGot.ASSUMED, friction.source()));
  }

  private static Direction sayable(Vector3D vector) {
    double slope = Math.toDegrees(Directions.elevationRad(vector));
    double bearing = Math.toDegrees(Directions.bearingRad(vector));
    return Direction.ofDegrees(
        SLOPE_STEP_DEG * Math.rint(slope / SLOPE_STEP_DEG),
        HOUR_DEG * Math.rint(bearing / HOUR_DEG));
  }

  private Rig leaving(Direction direction) {
    Value.Leg now = said.value(Slot.WORKING_LEG, Value.Leg.class).orElseThrow();
    return changed(Slot.WORKING_LEG, new Value.Leg(direction, now.length()))
        .without(Slot.SLING_POINTS)
        .without(Slot.INSIDE_ANGLE)
        .without(Slot.BEND);
  }

  private static Optional<Direction> firstGood(
      Probe probe, List<Direction> tried, Function<Direction, Rig> with) {
    return tried.stream()
        .filter(direction -> probe.asSaid(with.apply(direction)).filter(u -> u <= 1).isPresent())
        .limit(MOST_LOOKED_AT)
        .filter(direction -> holds(probe, with.apply(direction)))
        .findFirst();
  }

  private static boolean holds(Probe probe, Rig rig) {
    return probe.worst(rig, SEARCH_SAMPLES).filter(use -> use <= Check.WELL_WITHIN).isPresent()
        && probe.isGood(rig);
  }

  private Rig changed(Slot slot, Value value) {
    return said.with(slot, new Said(value, said.said(slot).orElseThrow().how()));
  }
}
