package rigspeak.catalogue;

import java.util.List;
import rigspeak.rig.HowGot;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;

/** What the catalogue makes of the stout rig, said otherwise in parts. */
final class Resolved {
  static final Catalogue CATALOGUE = Catalogue.bundled();

  private Resolved() {}

  static ResolvedRig stoutBut(String lines) {
    return known(Spoken.with(Spoken.rig(Spoken.STOUT), lines));
  }

  static ResolvedRig ofSpecies(Value.Species species) {
    return known(Spoken.rig(Spoken.STOUT).with(Slot.SPECIES, new Said(species, HowGot.BY_EYE)));
  }

  /** What the catalogue makes of one redirect by itself. */
  static Resolution alone(Rig rig) {
    return CATALOGUE.resolve(RopePath.alone(rig), Place.redirectNumber(1));
  }

  static List<Slot> missing(Rig rig) {
    return CATALOGUE.missing(RopePath.alone(rig), Place.redirectNumber(1));
  }

  static ResolvedRig known(Rig rig) {
    Resolution resolution = alone(rig);
    if (resolution instanceof Resolution.Known known) {
      return known.rig();
    }
    throw new AssertionError("not known: " + resolution);
  }
}
