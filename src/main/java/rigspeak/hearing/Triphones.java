package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.AcousticModel;
import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.HMMPosition;
import edu.cmu.sphinx.linguist.acoustic.LeftRightContext;
import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;

/** How the acoustic model says a phone sounds: by itself, or among its neighbours in a word. */
final class Triphones {
  private final AcousticModel model;
  private final UnitManager units;

  Triphones(AcousticModel model, UnitManager units) {
    this.model = model;
    this.units = units;
  }

  /** A phone that minds no neighbours, as a pause. */
  HMM alone(Unit phone) {
    return model.lookupNearestHMM(phone, HMMPosition.UNDEFINED, false);
  }

  /**
   * A phone of a word.
   *
   * @param before the last phone before it, whichever word that belongs to
   * @param after the next phone after it, likewise
   */
  HMM among(Unit[] word, int which, Unit before, Unit after) {
    Unit inContext =
        units.getUnit(
            word[which].getName(),
            word[which].isFiller(),
            LeftRightContext.get(new Unit[] {before}, new Unit[] {after}));
    return model.lookupNearestHMM(inContext, position(which, word.length), false);
  }

  private static HMMPosition position(int phone, int count) {
    if (count == 1) {
      return HMMPosition.SINGLE;
    }
    if (phone == 0) {
      return HMMPosition.BEGIN;
    }
    return phone == count - 1 ? HMMPosition.END : HMMPosition.INTERNAL;
  }
}
