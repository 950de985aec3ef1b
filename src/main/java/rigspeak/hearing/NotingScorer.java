package rigspeak.hearing;

import edu.cmu.sphinx.decoder.scorer.Scoreable;
import edu.cmu.sphinx.decoder.scorer.SimpleAcousticScorer;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.Signal;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import edu.cmu.sphinx.util.LogMath;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * Sphinx4's scorer, which also notes for each frame how well the best of all sounds under
 * consideration fits it, whatever word it belongs to. Because the loop of all phones is searched
 * beside the grammar, these are nearly all sounds there are.
 */
public final class NotingScorer extends SimpleAcousticScorer {
  /** Frames of a pause in which somebody could have said something: 0.3 s. */
  private static final int LONG_PAUSE = 30;

  private final List<Float> best = new ArrayList<>();
  private final List<Data> frames = new ArrayList<>();
  private Optional<Iterator<Data>> repeated = Optional.empty();

  /** For Sphinx4's configuration. */
  public NotingScorer() {}

  /** The searches from here on hear new sound. */
  void hearOn() {
    frames.clear();
    repeated = Optional.empty();
  }

  /** The next search hears the frames of the last one again. */
  void hearAgain() {
    repeated = Optional.of(List.copyOf(frames).iterator());
  }

  /** What was heard, as the model sees it. */
  List<Data> frames() {
    return List.copyOf(frames);
  }

  @Override
  public void startRecognition() {
    super.startRecognition();
    best.clear();
  }

  @Override
  protected Data getNextData() {
    if (repeated.isPresent()) {
      return repeated.get().hasNext() ? repeated.get().next() : new SpeechEndSignal();
    }
    Data data = super.getNextData();
    if (!(data instanceof Signal) && data != null) {
      frames.add(data);
    }
    return data;
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
    List<Double> words = new ArrayList<>();
    List<Double> pauses = new ArrayList<>();
    double sum = 0;
    int count = 0;
    int frame = 0;
    Token word = null;
    for (Token token : path) {
      if (token.isWord() || token.isFinal()) {
        if (word != null && count > 0) {
          if (!word.getWord().isFiller()) {
            words.add(sum / count);
          } else if (count >= LONG_PAUSE) {
            pauses.add(sum / count);
          }
        }
        word = token.isWord() ? token : null;
        sum = 0;
        count = 0;
      }
      if (token.isEmitting() && frame < best.size()) {
        sum += LogMath.getLogMath().logToLn(token.getAcousticScore() - best.get(frame));
        count++;
        frame++;
      }
    }
    return new Fit(worst(words), worst(pauses));
  }

  /**
   * How well a path fits: the mean over the frames of a word or pause of the natural logarithm of
   * its likelihood less that of the best sound at that moment. 0 is perfect, more negative is
   * worse.
   *
   * @param worstWord of the word that fits worst
   * @param worstPause of the pause that fits worst: badly if somebody spoke in it
   */
  record Fit(double worstWord, double worstPause) {}

  private static double worst(List<Double> values) {
    return values.stream().mapToDouble(v -> v).min().orElse(0);
  }
}
