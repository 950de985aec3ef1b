package rigspeak.hearing;

import edu.cmu.sphinx.util.Utilities;
import java.io.IOException;

/**
 * How much of each density in its phone's code book a state of a sound takes: shares, which make 1
 * in each stream but for what the least are raised to.
 */
final class MixtureWeights {
  private final int streams;
  private final int perBook;
  private final float[] weights;

  private MixtureWeights(int states, int streams, int perBook) {
    this.streams = streams;
    this.perBook = perBook;
    weights = new float[states * streams * perBook];
  }

  /**
   * Reads them as the file has them: state after state, in each stream after stream.
   *
   * @param least no weight is less
   * @throws IOException if the file is damaged
   */
  static MixtureWeights read(NumberFile file, float least) throws IOException {
    int states = file.integer();
    int streams = file.integer();
    int perBook = file.integer();
    file.integer();
    MixtureWeights all = new MixtureWeights(states, streams, perBook);
    float[] ofStream = new float[perBook];
    for (int at = 0; at < all.weights.length; at += perBook) {
      file.floats(ofStream);
      Utilities.normalize(ofStream);
      Utilities.floorData(ofStream, least);
      System.arraycopy(ofStream, 0, all.weights, at, perBook);
    }
    file.end();
    return all;
  }

  int streams() {
    return streams;
  }

  int perBook() {
    return perBook;
  }

  /** One state's share of one density, 0 to 1. */
  float of(int state, int stream, int density) {
    return weights[(state * streams + stream) * perBook + density];
  }
}
