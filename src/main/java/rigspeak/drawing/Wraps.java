package rigspeak.drawing;

import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** How often a sling is seen to cross its limb. */
final class Wraps {
  private Wraps() {}

  /** Each wrap of a choked sling, both parts of a basket, one of a girth. */
  static int drawn(Rig said) {
    return said.value(Slot.HITCH, Value.Hitch.class)
        .map(
            hitch ->
                switch (hitch) {
                  case CHOKED ->
                      said.value(Slot.WRAPS, Value.Wraps.class).map(Value.Wraps::turns).orElse(1);
                  case BASKET -> 2;
                  case GIRTH -> 1;
                })
        .orElse(1);
  }
}
