package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.HMMManager;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Pool;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Senone;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Sphinx3Loader;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import java.io.IOException;
import java.net.URISyntaxException;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sphinx4's loader, with states that look up their densities in a {@link CodeBook} and sounds that
 * are made when they are asked for. It reads the two large files in a tenth of the time.
 */
public final class TiedLoader extends Sphinx3Loader {
  private int top;
  private UnitManager units;
  private SoundTable sounds;
  private MixtureWeights weights;

  /** For Sphinx4's configuration. */
  public TiedLoader() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    super.newProperties(sheet);
    top = sheet.getInt(PROP_TOPN);
    units = (UnitManager) sheet.getComponent(PROP_UNIT_MANAGER);
  }

  @Override
  protected void loadModelFiles() throws IOException, URISyntaxException {
    meansPool = loadDensityFile("means", -Float.MAX_VALUE);
    variancePool = loadDensityFile("variances", varianceFloor);
    weights =
        MixtureWeights.read(NumberFile.read(getDataStream("mixture_weights")), mixtureWeightFloor);
    transitionsPool = loadTransitionMatrices("transition_matrices");
    transformMatrix = loadTransformMatrix("feature_transform");
    modelProps = loadModelProps("feat.params");
    try (Tokens definition = new Tokens(getDataStream("mdef"))) {
      sounds = new SoundTable(definition, units);
    }
    for (Unit phone : sounds.phones()) {
      getContextIndependentUnits().put(phone.getName(), phone);
    }
    senonePool = states();
    sounds.use(senonePool, transitionsPool);
  }

  @Override
  public void logInfo() {
    // It would tell of weights that are kept elsewhere.
  }

  /** How much each state takes of each density. */
  MixtureWeights weights() {
    return weights;
  }

  @Override
  public HMMManager getHMMManager() {
    return sounds;
  }

  @Override
  public int[] getSenone2Ci() {
    return sounds.bookOfState();
  }

  private Pool<Senone> states() {
    int[] bookOfState = getSenone2Ci();
    List<CodeBook> books =
        IntStream.range(0, sounds.phones().size())
            .mapToObj(
                book ->
                    new CodeBook(
                        book, of(meansPool, book), of(variancePool, book), varianceFloor, top))
            .toList();
    Pool<Senone> states = new Pool<>("states");
    for (int state = 0; state < bookOfState.length; state++) {
      states.put(state, new TiedState(weights, books.get(bookOfState[state]), state));
    }
    return states;
  }

  private float[][][] of(Pool<float[]> pool, int book) {
    int streams = weights.streams();
    int count = weights.perBook();
    float[][][] all = new float[streams][count][];
    for (int stream = 0; stream < streams; stream++) {
      for (int k = 0; k < count; k++) {
        all[stream][k] = pool.get((book * streams + stream) * count + k);
      }
    }
    return all;
  }
}
