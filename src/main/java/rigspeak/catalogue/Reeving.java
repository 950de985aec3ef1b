package rigspeak.catalogue;

import java.util.Optional;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** How the rope runs at one place of its path, as far as that was said. */
final class Reeving {
  private final RopePath path;
  private final Place place;
  private final Rig rig;

  Reeving(RopePath path, Place place) {
    this.path = path;
    this.place = place;
    this.rig = path.at(place);
  }

  /** The support nearer the climber, if there is one. */
  Optional<Rig> next() {
    return path.after(place).map(path::at);
  }

  /** The leg toward the climber, as it was said at its other end. */
  Optional<Value.Leg> sharedWorkingLeg() {
    return next().flatMap(rig -> rig.value(Slot.ANCHOR_LEG, Value.Leg.class));
  }

  boolean hasWorkingLeg() {
    return rig.has(Slot.WORKING_LEG) || sharedWorkingLeg().isPresent();
  }

  boolean isStationary() {
    return is(rig, Slot.ROPE_SYSTEM, Value.RopeSystem.STATIONARY);
  }

  boolean isMoving() {
    return is(rig, Slot.ROPE_SYSTEM, Value.RopeSystem.MOVING);
  }

  boolean isAnchoredAtBase() {
    return is(rig, Slot.ANCHOR, Value.Anchor.BASE);
  }

  /**
   * Only one part of a moving rope runs through: of a redirect as it was said, of the main point as
   * it was said of the redirect next to it.
   */
  boolean carriesHalf() {
    Rig captured = place.isMainPoint() ? next().orElse(rig) : rig;
    return isMoving() && is(captured, Slot.CAPTURED, Value.Captured.SINGLE);
  }

  /**
   * Whether all that the rope carries leaves the main point along one leg: a stationary rope that
   * is tied there, or both parts of a moving one.
   */
  boolean hasOneLeg() {
    return place.isMainPoint() && (isMoving() ? !carriesHalf() : !isAnchoredAtBase());
  }

  /** Whether the rope comes to this redirect straight from the main point. */
  boolean isNextToMainPoint() {
    return path.before(place).filter(Place::isMainPoint).isPresent();
  }

  static boolean is(Rig rig, Slot slot, Value value) {
    return rig.said(slot).filter(said -> said.value() == value).isPresent();
  }
}
