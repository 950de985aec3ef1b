package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.HMMPosition;
import edu.cmu.sphinx.linguist.acoustic.LeftRightContext;
import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.HMMManager;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Pool;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Senone;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.SenoneHMM;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.SenoneSequence;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The model's list of sounds: of which states each phone is made, by itself and between each two
 * others. A sound is made into an object when it is first asked for: of 137,000 few thousand are
 * ever heard, and all of them took 50 MB.
 */
final class SoundTable extends HMMManager {
  private static final String VERSION = "0.3";
  private static final String NO_NEIGHBOUR = "-";
  private static final String FILLER = "filler";

  private final List<Unit> phones = new ArrayList<>();
  private final Map<Unit, Integer> numbers = new HashMap<>();
  private final int statesPerSound;
  private final int[] bookOfState;

  /** By position; then by phone, the one before, the one after: its row, counted from 1. */
  private final Map<HMMPosition, int[]> rows = new EnumMap<>(HMMPosition.class);

  private final char[] states;
  private final byte[] transitions;
  private final SenoneHMM[] made;
  private Pool<Senone> allStates = new Pool<>("none");
  private Pool<float[][]> allTransitions = new Pool<>("none");

  /**
   * Reads a model definition in the form of Sphinx3.
   *
   * @param units names the phones
   * @throws IOException if it is in another form
   */
  SoundTable(Tokens file, UnitManager units) throws IOException {
    file.expect(VERSION);
    int alone = file.counted("n_base");
    int count = alone + file.counted("n_tri");
    statesPerSound = file.counted("n_state_map") / count - 1;
    bookOfState = new int[file.counted("n_tied_state")];
    file.counted("n_tied_ci_state");
    file.counted("n_tied_tmat");
    for (HMMPosition position : HMMPosition.values()) {
      rows.put(position, new int[alone * alone * alone]);
    }
    states = new char[count * statesPerSound];
    transitions = new byte[count];
    made = new SenoneHMM[count];
    List<String> names = new ArrayList<>();
    for (int row = 0; row < count; row++) {
      if (row < alone) {
        names.add(file.next());
        file.expect(NO_NEIGHBOUR);
        file.expect(NO_NEIGHBOUR);
        file.expect(NO_NEIGHBOUR);
        boolean filler = file.next().equals(FILLER);
        Unit phone = units.getUnit(names.get(row), filler);
        numbers.put(phone, row);
        phones.add(phone);
      } else {
        int phone = file.nextOf(names);
        int before = file.nextOf(names);
        int after = file.nextOf(names);
        rows.get(HMMPosition.lookup(file.next()))[index(phone, before, after)] = row + 1;
        file.next();
      }
      transitions[row] = (byte) file.number();
      for (int i = 0; i < statesPerSound; i++) {
        int state = file.number();
        states[row * statesPerSound + i] = (char) state;
        bookOfState[state] = transitions[row];
      }
      file.expect("N");
    }
  }

  /** What the sounds are made of. */
  void use(Pool<Senone> ofStates, Pool<float[][]> ofTransitions) {
    allStates = ofStates;
    allTransitions = ofTransitions;
  }

  /** The phones in the order of the file. */
  List<Unit> phones() {
    return List.copyOf(phones);
  }

  /** For each state, whose code book it shares. */
  int[] bookOfState() {
    return bookOfState;
  }

  private int index(int phone, int before, int after) {
    int count = numbers.size();
    return (phone * count + before) * count + after;
  }

  @Override
  public HMM get(HMMPosition position, Unit unit) {
    OptionalInt row = row(position, unit);
    return row.isPresent() ? sound(row.getAsInt(), position, unit) : null;
  }

  private OptionalInt row(HMMPosition position, Unit unit) {
    if (!unit.isContextDependent()) {
      return position == HMMPosition.UNDEFINED && numbers.containsKey(unit)
          ? OptionalInt.of(numbers.get(unit))
          : OptionalInt.empty();
    }
    if (unit.isFiller() || !(unit.getContext() instanceof LeftRightContext around)) {
      return OptionalInt.empty();
    }
    int before = neighbour(around.getLeftContext());
    int after = neighbour(around.getRightContext());
    if (before < 0 || after < 0) {
      return OptionalInt.empty();
    }
    int row = rows.get(position)[index(numbers.get(unit.getBaseUnit()), before, after)];
    return row == 0 ? OptionalInt.empty() : OptionalInt.of(row - 1);
  }

  private int neighbour(Unit[] context) {
    return context.length == 1 ? numbers.getOrDefault(context[0], -1) : -1;
  }

  private SenoneHMM sound(int row, HMMPosition position, Unit unit) {
    if (made[row] == null) {
      Senone[] own = new Senone[statesPerSound];
      for (int i = 0; i < own.length; i++) {
        own[i] = allStates.get(states[row * statesPerSound + i]);
      }
      made[row] =
          new SenoneHMM(
              unit, new SenoneSequence(own), allTransitions.get(transitions[row]), position);
    }
    return made[row];
  }
}
