package rigspeak.hearing;

import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.GaussianMixture;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.GaussianWeights;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.MixtureComponent;

/** A state of a sound: its own weights of the densities in its phone's code book. */
final class TiedState extends GaussianMixture {
  private final CodeBook book;

  TiedState(GaussianWeights weights, CodeBook book, int id) {
    super(weights, new MixtureComponent[0], id);
    this.book = book;
  }

  @Override
  public float calculateScore(Data frame) {
    book.hear(frame);
    float score = 0;
    for (int stream = 0; stream < book.streams(); stream++) {
      float sum = -Float.MAX_VALUE;
      for (int i = 0; i < book.top(); i++) {
        float weight = mixtureWeights.get(id, stream, book.number(stream, i));
        sum = logMath.addAsLinear(sum, book.score(stream, i) + weight);
      }
      score += sum;
    }
    return score;
  }
}
