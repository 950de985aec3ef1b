package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.List;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What must be said before anything can be judged, in the order in which it is best asked. */
final class Questions {
  private Questions() {}

  static List<Slot> open(Rig rig) {
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
    needed.add(Slot.ROPE_SYSTEM);
    if (rig.value(Slot.ROPE_SYSTEM, Value.RopeSystem.class)
        .filter(system -> system == Value.RopeSystem.MOVING)
        .isPresent()) {
      needed.add(Slot.CAPTURED);
    }
    needed.add(Slot.RUNNING_OVER);
    if (!overBark(rig)) {
      needed.add(Slot.HITCH);
      if (rig.value(Slot.HITCH, Value.Hitch.class)
          .filter(hitch -> hitch == Value.Hitch.CHOKED)
          .isPresent()) {
        needed.add(Slot.WRAPS);
      }
    }
    needed.addAll(turn(rig));
    needed.addAll(rig.withdrawn());
    needed.removeIf(rig::has);
    return needed.stream().distinct().toList();
  }

  /** Two legs, or the angle between them and where the sling points. */
  private static List<Slot> turn(Rig rig) {
    boolean legs = rig.has(Slot.ANCHOR_LEG) && rig.has(Slot.WORKING_LEG);
    boolean angle = rig.has(Slot.INSIDE_ANGLE) || rig.has(Slot.BEND);
    if (legs) {
      return List.of();
    }
    if (angle) {
      return List.of(Slot.SLING_POINTS);
    }
    if (rig.has(Slot.SLING_POINTS) && !rig.has(Slot.ANCHOR_LEG) && !rig.has(Slot.WORKING_LEG)) {
      return List.of(Slot.INSIDE_ANGLE);
    }
    return List.of(Slot.ANCHOR_LEG, Slot.WORKING_LEG);
  }

  static boolean overBark(Rig rig) {
    return rig.value(Slot.RUNNING_OVER, Value.RunningOver.class)
        .filter(over -> over == Value.RunningOver.BARK)
        .isPresent();
  }

  /** A union that was called sound was looked at for cavities too. */
  private static boolean calledSound(Rig rig) {
    return rig.value(Slot.UNION, Value.Union.class)
        .filter(union -> union.has(Value.UnionCondition.SOUND))
        .isPresent();
  }
}
