package rigspeak.hearing;

import edu.cmu.sphinx.decoder.scorer.Scoreable;
import edu.cmu.sphinx.decoder.scorer.SimpleAcousticScorer;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.util.LogMath;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
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
   * How well a path fits what was heard.
   *
   * @param end the last step of the path
   */
  Fit fit(Token end) {
    Deque<Token> path = new ArrayDeque<>();
    for (Token token = end; token != null; token = token.getPredecessor()) {
      path.push(token);
    }
    List<Double> frames = new ArrayList<>();
    List<Double> words = new ArrayList<>();
    int wordStart = 0;
    boolean inWord = false;
    for (Token token : path) {
      if (token.isWord() || token.isFinal()) {
        if (inWord && frames.size() > wordStart) {
          words.add(mean(frames.subList(wordStart, frames.size())));
        }
        inWord = token.isWord() && !token.getWord().isFiller();
        wordStart = frames.size();
      }
      if (token.isEmitting() && frames.size() < best.size()) {
        float behind = token.getAcousticScore() - best.get(frames.size());
        frames.add((double) LogMath.getLogMath().logToLn(behind));
      }
    }
    return new Fit(worst(words), mean(words), worstStretch(frames));
  }

  /**
   * How well a path fits: the mean over frames of the natural logarithm of its likelihood less that
   * of the best sound at that moment. 0 is perfect, more negative is worse.
   *
   * @param worstWord of the word that fits worst
   * @param meanWord mean over the words
   * @param worstStretch of the {@value #STRETCH} frames in a row that fit worst, pauses included
   */
  record Fit(double worstWord, double meanWord, double worstStretch) {
    private static final int STRETCH = 20;
  }

  private static double worst(List<Double> values) {
    return values.stream().mapToDouble(v -> v).min().orElse(0);
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElse(0);
  }

  private static double worstStretch(List<Double> frames) {
    double worst = 0;
    for (int i = 0; i + Fit.STRETCH <= frames.size(); i++) {
      worst = Math.min(worst, mean(frames.subList(i, i + Fit.STRETCH)));
    }
    return worst;
  }
}
