package rigspeak.dialogue;

import java.util.List;
import java.util.Optional;
import rigspeak.rig.Slot;

/**
 * What the next thing said may refer to.
 *
 * @param asked the slot whose bare value is waited for
 * @param correcting that value takes the place of an earlier one
 * @param pending what waits for an affirm
 * @param latest the values taken last, the newest at the end
 */
public record Floor(
    Optional<Slot> asked, boolean correcting, Optional<Pending> pending, List<Reply.Item> latest) {
  public Floor {
    latest = List.copyOf(latest);
  }

  static Floor open() {
    return new Floor(Optional.empty(), false, Optional.empty(), List.of());
  }

  Floor asking(Slot slot) {
    return new Floor(Optional.of(slot), false, pending, latest);
  }

  Floor askingToCorrect(Slot slot) {
    return new Floor(Optional.of(slot), true, pending, latest);
  }

  Floor askingNothing() {
    return new Floor(Optional.empty(), false, pending, latest);
  }

  Floor waitingFor(Pending what) {
    return new Floor(asked, correcting, Optional.of(what), latest);
  }

  Floor waitingForNothing() {
    return new Floor(asked, correcting, Optional.empty(), latest);
  }

  Floor after(List<Reply.Item> taken) {
    return new Floor(asked, correcting, pending, taken);
  }
}
