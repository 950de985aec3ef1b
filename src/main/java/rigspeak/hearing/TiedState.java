package rigspeak.hearing;

import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.MixtureComponent;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Senone;
import edu.cmu.sphinx.util.LogMath;

/**
 * A state of a sound: its own weights of the densities in its phone's code book.
 *
 * <p>The likelihoods of the few densities that count are added up as such, not as logarithms: of
 * each stream they are put in relation to its best, so that none is too small for a number.
 */
final class TiedState implements Senone {
  private static final long serialVersionUID = 1;

  private final transient MixtureWeights weights;
  private final transient CodeBook book;
  private final int id;
  private transient Data heard;
  private float score;

  TiedState(MixtureWeights weights, CodeBook book, int id) {
    this.weights = weights;
    this.book = book;
    this.id = id;
  }

  /** How likely the frame is in this state, in Sphinx4's logarithm. */
  @Override
  public float getScore(Data frame) {
    if (frame != heard) {
      score = compare(book.best(frame));
      heard = frame;
    }
    return score;
  }

  private float compare(CodeBook.Best best) {
    double likelihood = 1;
    for (int stream = 0; stream < book.streams(); stream++) {
      float sum = 0;
      for (int place = 0; place < book.top(); place++) {
        sum += best.share(stream, place) * weights.of(id, stream, best.number(stream, place));
      }
      likelihood *= sum;
    }
    return LogMath.getLogMath().lnToLog((float) (best.peak() + Math.log(likelihood)));
  }

  @Override
  public long getID() {
    return id;
  }

  @Override
  public float[] calculateComponentScore(Data frame) {
    throw new UnsupportedOperationException("only whole states are compared with a frame");
  }

  @Override
  public MixtureComponent[] getMixtureComponents() {
    throw new UnsupportedOperationException("its densities are in a code book");
  }

  @Override
  public float[] getLogMixtureWeights() {
    throw new UnsupportedOperationException("its weights are no logarithms");
  }

  @Override
  public void dump(String message) {
    throw new UnsupportedOperationException("nobody reads it");
  }
}
