package rigspeak.drill;

import java.util.Optional;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;

/**
 * One thing about a rig that is other than usual.
 *
 * @param said what is said of the slot, or nothing where nobody says anything of it
 */
public record Change(Slot slot, Optional<Said> said) {
  static Change unsaid(Slot slot) {
    return new Change(slot, Optional.empty());
  }

  Rig in(Rig rig) {
    return said.map(value -> rig.with(slot, value)).orElseGet(() -> rig.without(slot));
  }
}
