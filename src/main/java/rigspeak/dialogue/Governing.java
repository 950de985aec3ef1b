package rigspeak.dialogue;

import java.util.List;
import java.util.Optional;
import rigspeak.dialogue.Reply.Item;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/** The values that a verdict hangs on; they are read back once more with it. */
final class Governing {
  private Governing() {}

  static List<Item> items(PathVerdict verdict) {
    if (!(verdict.ofGoverning() instanceof Verdict.Judged judged)) {
      return List.of();
    }
    Rig rig = verdict.path().at(verdict.governing());
    return slots(judged.governing().kind()).stream()
        .filter(rig::has)
        .map(slot -> new Item(slot, rig.said(slot).orElseThrow(), Optional.empty()))
        .toList();
  }

  /** At most three: more is not kept in mind. */
  private static List<Slot> slots(CheckKind kind) {
    return switch (kind) {
      case LIMB_AT_UNION, SHEAR_AT_UNION, COLUMN ->
          List.of(Slot.LIMB_DIAMETER, Slot.OUT, Slot.UNION);
      case LIMB_BETWEEN -> List.of(Slot.LIMB_DIAMETER, Slot.THICK_END, Slot.OUT);
      case STEM_BETWEEN -> List.of(Slot.STEM_DIAMETER, Slot.OUT, Slot.ANCHOR_LEG);
      case LIMB_AT_SLING, SHEAR_AT_SLING -> List.of(Slot.LIMB_DIAMETER, Slot.HITCH);
      case SHELL -> List.of(Slot.CAVITY, Slot.LIMB_DIAMETER);
      case SLING -> List.of(Slot.ALL_UP, Slot.HITCH, Slot.SLING_RATING);
      case SLIP -> List.of(Slot.HITCH, Slot.WRAPS, Slot.BARK);
      case CONNECTOR -> List.of(Slot.ALL_UP, Slot.RUNNING_OVER);
      case ROPE -> List.of(Slot.ALL_UP, Slot.ROPE_SYSTEM);
    };
  }
}
