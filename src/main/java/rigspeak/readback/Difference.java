package rigspeak.readback;

import rigspeak.rig.Place;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;

/** One item of a rig that is not as it was planned. */
public sealed interface Difference {
  /** The support that it belongs to; what belongs to the climb is told of the plan's first one. */
  Place place();

  Slot slot();

  /** Planned one way and said another. */
  record Other(Place place, Slot slot, Said planned, Said said) implements Difference {}

  /** Said, and the plan knows nothing of it. */
  record NotPlanned(Place place, Slot slot, Said said) implements Difference {}

  /** In the plan and not said, or called wrong and not said again. */
  record NotSaid(Place place, Slot slot) implements Difference {}
}
