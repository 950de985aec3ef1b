package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.tiedstate.Pool;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Senone;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Sphinx3Loader;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Sphinx4's loader, with states that look up their densities in a {@link CodeBook}. */
public final class TiedLoader extends Sphinx3Loader {
  private int top;

  /** For Sphinx4's configuration. */
  public TiedLoader() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    super.newProperties(sheet);
    top = sheet.getInt(PROP_TOPN);
  }

  /** The states have to be there before the sounds that are made of them. */
  @Override
  protected void loadHMMPool(boolean useContext, InputStream definition) throws IOException {
    senonePool = states();
    super.loadHMMPool(useContext, definition);
  }

  private Pool<Senone> states() {
    int[] bookOfState = getSenone2Ci();
    List<CodeBook> books =
        IntStream.rangeClosed(0, Arrays.stream(bookOfState).max().orElseThrow())
            .mapToObj(
                book ->
                    new CodeBook(of(meansPool, book), of(variancePool, book), varianceFloor, top))
            .toList();
    Pool<Senone> states = new Pool<>("states");
    for (int state = 0; state < bookOfState.length; state++) {
      states.put(state, new TiedState(mixtureWeights, books.get(bookOfState[state]), state));
    }
    return states;
  }

  private float[][][] of(Pool<float[]> pool, int book) {
    int streams = getNumStreams();
    int count = getNumGaussiansPerState();
    float[][][] all = new float[streams][count][];
    for (int stream = 0; stream < streams; stream++) {
      for (int k = 0; k < count; k++) {
        all[stream][k] = pool.get((book * streams + stream) * count + k);
      }
    }
    return all;
  }
}
