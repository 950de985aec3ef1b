package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Length;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What cannot be true of one rig at once. */
final class Contradictions {
  /** Closer than eyes can tell apart, two legs are one. */
  private static final double ONE_LINE_RAD = Math.toRadians(5);

  /** A branch that looks thicker than its stem by more than this was named wrongly. */
  private static final double THICKER = 1.1;

  /** A sling that sits in the union is no farther out than a hand. */
  private static final Length SEATED_AT_MOST = Length.ofMetres(0.15);

  private final Rig rig;
  private final Bounds bounds;
  private final List<Conflict> found = new ArrayList<>();

  private Contradictions(Rig rig, Bounds bounds) {
    this.rig = rig;
    this.bounds = bounds;
  }

  static List<Conflict> in(Rig rig, Ranges ranges, Bounds bounds) {
    Contradictions contradictions = new Contradictions(rig, bounds);
    for (Map.Entry<Slot, Said> said : rig.said().entrySet()) {
      ranges.offence(said.getKey(), said.getValue().value()).ifPresent(contradictions.found::add);
    }
    contradictions.lookAtLimb();
    contradictions.lookAtRope();
    return List.copyOf(contradictions.found);
  }

  private void lookAtLimb() {
    Optional<Length> limb = length(Slot.LIMB_DIAMETER);
    Optional<Length> stem = length(Slot.STEM_DIAMETER);
    Optional<Length> out = length(Slot.OUT);
    Optional<Length> limbLength = length(Slot.LIMB_LENGTH);
    if (limb.isPresent()
        && stem.isPresent()
        && limb.get().metres() > THICKER * stem.get().metres()) {
      found.add(new Conflict.LimbThickerThanStem());
    }
    if (out.isPresent() && limbLength.isPresent() && out.get().compareTo(limbLength.get()) > 0) {
      found.add(new Conflict.OutBeyondLimb());
    }
    lookAtUnion();
    boolean seatedAtUnion =
        rig.value(Slot.SEAT, Value.Seat.class).filter(seat -> seat == Value.Seat.UNION).isPresent();
    if (seatedAtUnion && out.isPresent() && out.get().compareTo(SEATED_AT_MOST) > 0) {
      found.add(new Conflict.SeatedButOut());
    }
  }

  private void lookAtUnion() {
    Optional<Value.Union> union = rig.value(Slot.UNION, Value.Union.class);
    Optional<Double> hollow =
        rig.value(Slot.CAVITY, Value.Share.class).map(Value.Share::ofDiameter);
    boolean sound = union.filter(u -> u.has(Value.UnionCondition.SOUND)).isPresent();
    boolean decayed = union.filter(u -> u.has(Value.UnionCondition.DECAYED)).isPresent();
    if (union.filter(Value.Union::isContradictory).isPresent()
        || (sound && hollow.filter(share -> share > 0).isPresent())) {
      found.add(new Conflict.SoundAndFaulty());
    }
    if (decayed && hollow.filter(share -> share == 0).isPresent()) {
      found.add(new Conflict.DecayWithoutExtent());
    }
  }

  private void lookAtRope() {
    boolean stationary =
        rig.value(Slot.ROPE_SYSTEM, Value.RopeSystem.class)
            .filter(system -> system == Value.RopeSystem.STATIONARY)
            .isPresent();
    boolean both =
        rig.value(Slot.CAPTURED, Value.Captured.class)
            .filter(captured -> captured == Value.Captured.BOTH)
            .isPresent();
    if (stationary && both) {
      found.add(new Conflict.BothPartsOfStationaryRope());
    }
    Optional<Direction> anchorLeg = direction(Slot.ANCHOR_LEG);
    Optional<Direction> workingLeg = direction(Slot.WORKING_LEG);
    if (workingLeg.filter(leg -> leg.elevation().radians() > 0).isPresent()) {
      found.add(new Conflict.WorkingLegUp());
    }
    boolean slack = length(Slot.SLACK).filter(length -> length.metres() > 0).isPresent();
    if (slack && !(hasLength(Slot.ANCHOR_LEG) && hasLength(Slot.WORKING_LEG))) {
      found.add(new Conflict.SlackWithoutLengths());
    }
    Optional<Angle> bend =
        angle(Slot.BEND).map(angle -> Angle.ofRadians(Math.PI - angle.radians()));
    Optional<Angle> inside = angle(Slot.INSIDE_ANGLE);
    Optional<Angle> betweenLegs = Optional.empty();
    if (anchorLeg.isPresent() && workingLeg.isPresent()) {
      betweenLegs = Optional.of(anchorLeg.get().angleTo(workingLeg.get()));
    }
    compare(Slot.INSIDE_ANGLE, inside, Slot.BEND, bend);
    compare(Slot.ANCHOR_LEG, betweenLegs, Slot.INSIDE_ANGLE, inside);
    compare(Slot.ANCHOR_LEG, betweenLegs, Slot.BEND, bend);
    betweenLegs.or(() -> inside).or(() -> bend).ifPresent(this::lookAtAngle);
  }

  private void lookAtAngle(Angle inside) {
    if (inside.radians() < ONE_LINE_RAD) {
      found.add(new Conflict.LegsCoincide());
    }
    if (inside.radians() > Math.PI - ONE_LINE_RAD) {
      found.add(new Conflict.LegsInLine());
    }
  }

  /** Two ways to the inside angle must meet within what both can be off. */
  private void compare(Slot one, Optional<Angle> first, Slot other, Optional<Angle> second) {
    if (first.isEmpty() || second.isEmpty()) {
      return;
    }
    double apart = Math.abs(first.get().radians() - second.get().radians());
    double allowed = half(one) + half(other);
    if (apart > allowed) {
      found.add(new Conflict.AnglesDisagree(one, first.get(), other, second.get()));
    }
  }

  private double half(Slot slot) {
    HowGot how = rig.said(slot).map(Said::how).orElse(HowGot.BY_EYE);
    double one = bounds.half(0, Bounds.Kind.ANGLE, how);
    // An angle between two legs is off by as much as both of them are.
    return slot == Slot.ANCHOR_LEG ? 2 * one : one;
  }

  private boolean hasLength(Slot leg) {
    return rig.value(leg, Value.Leg.class).flatMap(Value.Leg::length).isPresent();
  }

  private Optional<Length> length(Slot slot) {
    return rig.value(slot, Value.Distance.class).map(Value.Distance::length);
  }

  private Optional<Angle> angle(Slot slot) {
    return rig.value(slot, Value.Turned.class).map(Value.Turned::angle);
  }

  private Optional<Direction> direction(Slot slot) {
    return rig.value(slot, Value.Leg.class).map(Value.Leg::direction);
  }
}
