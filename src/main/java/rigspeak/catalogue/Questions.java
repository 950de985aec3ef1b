package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.List;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What must be said before anything can be judged, in the order in which it is best asked. */
final class Questions {
  private Questions() {}

  static List<Slot> open(RopePath path, Place place) {
    Rig rig = path.at(place);
    Reeving reeving = new Reeving(path, place);
    List<Slot> needed = new ArrayList<>();
    needed.add(Slot.ALL_UP);
    needed.add(Slot.SPECIES);
    needed.add(Slot.WOOD);
    needed.add(Slot.LIMB_DIAMETER);
    needed.add(Slot.LIMB_RISE);
    needed.add(Slot.OUT);
    needed.add(Slot.STEM_DIAMETER);
    needed.add(Slot.UNION);
    if (!calledSound(rig)) {
      needed.add(Slot.CAVITY);
    }
    if (hasHollow(rig)) {
      needed.add(Slot.CAVITY_SHAPE);
    }
    needed.add(Slot.ROPE_SYSTEM);
    if (reeving.isStationary() && (place.isMainPoint() || reeving.isNextToMainPoint())) {
      needed.add(Slot.ANCHOR);
    }
    if (reeving.isMoving() && !place.isMainPoint()) {
      needed.add(Slot.CAPTURED);
    }
    needed.add(Slot.RUNNING_OVER);
    if (!overBark(rig)) {
      needed.add(Slot.HITCH);
      if (Reeving.is(rig, Slot.HITCH, Value.Hitch.CHOKED)) {
        needed.add(Slot.WRAPS);
      }
    }
    needed.addAll(turn(rig, reeving));
    needed.addAll(rig.withdrawn());
    needed.removeIf(rig::has);
    return needed.stream().distinct().toList();
  }

  /** Two legs, or the angle between them and where the sling points; sometimes one leg will do. */
  private static List<Slot> turn(Rig rig, Reeving reeving) {
    List<Slot> legs = new ArrayList<>();
    if (!reeving.hasOneLeg()) {
      legs.add(Slot.ANCHOR_LEG);
    }
    if (!reeving.hasWorkingLeg()) {
      legs.add(Slot.WORKING_LEG);
    }
    if (reeving.hasOneLeg() || rig.said().keySet().containsAll(legs)) {
      return legs;
    }
    if (rig.has(Slot.INSIDE_ANGLE) || rig.has(Slot.BEND)) {
      return List.of(Slot.SLING_POINTS);
    }
    if (rig.has(Slot.SLING_POINTS) && !rig.has(Slot.ANCHOR_LEG) && !rig.has(Slot.WORKING_LEG)) {
      return List.of(Slot.INSIDE_ANGLE);
    }
    return legs;
  }

  static boolean overBark(Rig rig) {
    return Reeving.is(rig, Slot.RUNNING_OVER, Value.RunningOver.BARK);
  }

  /** A union that was called sound was looked at for cavities too. */
  static boolean calledSound(Rig rig) {
    return rig.value(Slot.UNION, Value.Union.class)
        .filter(union -> union.has(Value.UnionCondition.SOUND))
        .isPresent();
  }

  static boolean hasHollow(Rig rig) {
    return rig.value(Slot.CAVITY, Value.Share.class)
        .filter(share -> share.ofDiameter() > 0)
        .isPresent();
  }
}
