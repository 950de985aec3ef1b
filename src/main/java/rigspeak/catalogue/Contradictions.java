package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Length;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What cannot be true at once of one support, or of the leg that it shares with the next. */
final class Contradictions {
  /** Closer than eyes can tell apart, two legs are one. */
  private static final double ONE_LINE_RAD = Math.toRadians(5);

  /** A branch that looks thicker than its stem by more than this was named wrongly. */
  private static final double THICKER = 1.1;

  /** A sling that sits in the union is no farther out than a hand. */
  private static final Length SEATED_AT_MOST = Length.ofMetres(0.15);

  private final RopePath path;
  private final Place place;
  private final Rig rig;
  private final Reeving reeving;
  private final Bounds bounds;
  private final List<Conflict> found = new ArrayList<>();

  private Contradictions(RopePath path, Place place, Bounds bounds) {
    this.path = path;
    this.place = place;
    this.rig = path.at(place);
    this.reeving = new Reeving(path, place);
    this.bounds = bounds;
  }

  static List<Conflict> in(RopePath path, Place place, Ranges ranges, Bounds bounds) {
    Contradictions contradictions = new Contradictions(path, place, bounds);
    for (Map.Entry<Slot, Said> said : path.at(place).said().entrySet()) {
      ranges.offence(said.getKey(), said.getValue().value()).ifPresent(contradictions.found::add);
    }
    contradictions.lookAtLimb();
    contradictions.lookAtSling();
    contradictions.lookAtRope();
    contradictions.lookAtSharedLeg();
    return List.copyOf(contradictions.found);
  }

  private void lookAtLimb() {
    Optional<Length> limb = length(Slot.LIMB_DIAMETER);
    Optional<Length> stem = length(Slot.STEM_DIAMETER);
    Optional<Length> out = length(Slot.OUT);
    Optional<Length> limbLength = length(Slot.LIMB_LENGTH);
    Optional<Length> thickEnd = length(Slot.THICK_END);
    Optional<Length> thickest = thickEnd.or(() -> limb);
    if (thickest.isPresent()
        && stem.isPresent()
        && thickest.get().metres() > THICKER * stem.get().metres()) {
      found.add(new Conflict.LimbThickerThanStem());
    }
    if (thickEnd.isPresent() && limb.isPresent() && thickEnd.get().compareTo(limb.get()) < 0) {
      found.add(new Conflict.ThickEndThinnerThanLimb());
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
    boolean none = hollow.filter(share -> share == 0).isPresent() || (sound && hollow.isEmpty());
    if (rig.has(Slot.CAVITY_SHAPE) && none) {
      found.add(new Conflict.ShapeOfNoCavity());
    }
  }

  private void lookAtSling() {
    boolean basket = Reeving.is(rig, Slot.HITCH, Value.Hitch.BASKET);
    Slot foreign = basket ? Slot.CHOKE_ANGLE : Slot.BASKET_ANGLE;
    if (rig.has(Slot.HITCH) && rig.has(foreign)) {
      found.add(new Conflict.NotOfThisHitch(foreign));
    }
    if (Reeving.is(rig, Slot.HITCH, Value.Hitch.GIRTH)
        && rig.value(Slot.WRAPS, Value.Wraps.class).filter(w -> w.turns() > 1).isPresent()) {
      found.add(new Conflict.NotOfThisHitch(Slot.WRAPS));
    }
    if (Questions.overBark(rig) && rig.has(Slot.CONNECTOR_LIES)) {
      found.add(new Conflict.ConnectorOverBark());
    }
  }

  private void lookAtRope() {
    boolean both = Reeving.is(rig, Slot.CAPTURED, Value.Captured.BOTH);
    if (reeving.isStationary() && both) {
      found.add(new Conflict.BothPartsOfStationaryRope());
    }
    if (reeving.isMoving() && reeving.isAnchoredAtBase()) {
      found.add(new Conflict.MovingRopeFromBase());
    }
    if (reeving.isNextToMainPoint()
        && !new Reeving(path, Place.MAIN_POINT).hasOneLeg()
        && !hasLength(Slot.ANCHOR_LEG)) {
      found.add(new Conflict.AnchorLegWithoutLength());
    }
    Optional<Direction> anchorLeg = direction(Slot.ANCHOR_LEG);
    Optional<Direction> workingLeg = direction(Slot.WORKING_LEG);
    boolean last = reeving.next().isEmpty();
    if (last && workingLeg.filter(leg -> leg.elevation().radians() > 0).isPresent()) {
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

  /** The working leg of one support is the anchor leg of the next. */
  private void lookAtSharedLeg() {
    Optional<Value.Leg> here = rig.value(Slot.WORKING_LEG, Value.Leg.class);
    Optional<Value.Leg> there = reeving.sharedWorkingLeg();
    if (here.isEmpty() || there.isEmpty()) {
      return;
    }
    Place next = path.after(place).orElseThrow();
    HowGot howHere = how(rig, Slot.WORKING_LEG);
    HowGot howThere = how(path.at(next), Slot.ANCHOR_LEG);
    Angle up = here.get().direction().elevation();
    Angle back = there.get().direction().elevation();
    double allowed =
        half(here.get().direction(), howHere) + half(there.get().direction(), howThere);
    if (Math.abs(up.radians() + back.radians()) > allowed) {
      found.add(new Conflict.SharedLegTurns(place, up, next, back));
    }
    if (here.get().length().isPresent() && there.get().length().isPresent()) {
      Value.Distance one = here.get().length().get();
      Value.Distance other = there.get().length().get();
      double apart = Math.abs(one.length().metres() - other.length().metres());
      if (apart > half(one, howHere) + half(other, howThere)) {
        found.add(new Conflict.SharedLegLengths(place, one, next, other));
      }
    }
  }

  private double half(Direction direction, HowGot how) {
    Bounds.Kind kind = direction.isPlumb() ? Bounds.Kind.PLUMB : Bounds.Kind.ANGLE;
    return bounds.half(direction.elevation().radians(), kind, how);
  }

  private double half(Value.Distance distance, HowGot how) {
    return bounds.half(distance.length().metres(), Bounds.Kind.DISTANCE, how);
  }

  private static HowGot how(Rig rig, Slot slot) {
    return rig.said(slot).map(Said::how).orElse(HowGot.BY_EYE);
  }

  /** A rope from the base may well come up and go down the same way over the main point. */
  private void lookAtAngle(Angle inside) {
    if (inside.radians() < ONE_LINE_RAD && !place.isMainPoint()) {
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
    double one = bounds.half(0, Bounds.Kind.ANGLE, how(rig, slot));
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
