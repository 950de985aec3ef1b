package rigspeak.catalogue;

import java.util.List;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;

/** What the catalogue makes of a rig as said. */
public sealed interface Resolution {

  /** Every number is known within bounds. */
  record Known(ResolvedRig rig) implements Resolution {}

  /**
   * Something has not been said, or cannot be.
   *
   * @param missing in the order in which they are best asked
   */
  record Unknown(List<Slot> missing, List<Conflict> conflicts) implements Resolution {
    public Unknown {
      missing = List.copyOf(missing);
      conflicts = List.copyOf(conflicts);
    }
  }
}
