package rigspeak.hearing;

import edu.cmu.sphinx.decoder.scorer.Scoreable;
import edu.cmu.sphinx.decoder.scorer.SimpleAcousticScorer;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.util.LogMath;
import java.util.ArrayList;
import java.util.List;

/**
 * Sphinx4's scorer, which also notes for each frame how well the best of all sounds under
 * consideration fits it, whatever word it belongs to. Because the loop of all phones is searched
 * beside the grammar, these are nearly all sounds there are.
 */
public final class NotingScorer extends SimpleAcousticScorer {
  private final List<Float> best = new ArrayList<>();

  /** For Sphinx4's configuration. */
  public NotingScorer() {}

  @Override
  public void startRecognition() {
    super.startRecognition();
    best.clear();
  }

  @Override
  protected <T extends Scoreable> T doScoring(List<T> tokens, Data data) {
    T leader = super.doScoring(tokens, data);
    float highest = Float.NEGATIVE_INFINITY;
    for (T token : tokens) {
      highest = Math.max(highest, ((Token) token).getAcousticScore());
    }
    best.add(highest);
    return leader;
  }

  /**
   * How well the words on a path fit what was heard.
   *
   * @param end the last step of the path
   * @return for each word from the first to the last, silences and unknown speech left out, the
   *     mean over its frames of the natural logarithm of its likelihood less that of the best
   *     sound; 0 is perfect
   */
  List<Double> fits(Token end) {
    List<Token> path = new ArrayList<>();
    for (Token token = end; token != null; token = token.getPredecessor()) {
      path.add(0, token);
    }
    List<Double> fits = new ArrayList<>();
    double sum = 0;
    int frames = 0;
    boolean inWord = false;
    int frame = 0;
    for (Token token : path) {
      if (token.isWord() || token == end) {
        if (inWord && frames > 0) {
          fits.add(sum / frames);
        }
        inWord = token.isWord() && !token.getWord().isFiller();
        sum = 0;
        frames = 0;
      }
      if (token.isEmitting() && frame < best.size()) {
        sum += LogMath.getLogMath().logToLn(token.getAcousticScore() - best.get(frame));
        frames++;
        frame++;
      }
    }
    return fits;
  }
}
