package rigspeak.hearing;

import edu.cmu.sphinx.decoder.scorer.Scoreable;
import edu.cmu.sphinx.decoder.scorer.SimpleAcousticScorer;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.frontend.Signal;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import edu.cmu.sphinx.linguist.acoustic.AcousticModel;
import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.HMMPosition;
import edu.cmu.sphinx.linguist.acoustic.HMMState;
import edu.cmu.sphinx.util.LogMath;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4Component;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Sphinx4's scorer, which also notes for each frame how well the best of all sounds fits it,
 * whatever word it belongs to. The phones are looked at even where the search has given up all rows
 * that could have them: else a pause could take in whatever is said after the last word.
 */
public final class NotingScorer extends SimpleAcousticScorer {
  /** Whose phones are all the sounds there are. */
  @S4Component(type = AcousticModel.class)
  public static final String PROP_ACOUSTIC_MODEL = "acousticModel";

  /** Frames of a pause in which somebody could have said something: 0.3 s. */
  private static final int LONG_PAUSE = 30;

  private AcousticModel model;
  private List<HMMState> phones = List.of();
  private final List<Float> best = new ArrayList<>();
  private final List<Data> frames = new ArrayList<>();
  private Optional<NotingScorer> leader = Optional.empty();
  private int followed;
  private boolean ended;

  /** For Sphinx4's configuration. */
  public NotingScorer() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    super.newProperties(sheet);
    model = (AcousticModel) sheet.getComponent(PROP_ACOUSTIC_MODEL);
  }

  /** The next search hears new sound. */
  void hearOn() {
    frames.clear();
    ended = false;
  }

  /** The next search hears what another one hears, always after it. */
  void follow(NotingScorer other) {
    leader = Optional.of(other);
    followed = 0;
    ended = false;
  }

  /**
   * Hears what is left of the utterance.
   *
   * @return whether the search had given up before: no row of words could go on
   */
  boolean hearOut() {
    boolean left = !ended;
    while (!ended) {
      getNextData();
    }
    return left;
  }

  /** What was heard is not asked for again. */
  void letGo() {
    frames.clear();
    best.clear();
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
    Data data = leader.map(this::next).orElseGet(this::nextHeard);
    ended = data instanceof SpeechEndSignal;
    return data;
  }

  private Data nextHeard() {
    Data data = super.getNextData();
    if (data instanceof Signal) {
      return data;
    }
    HeardFrame frame = HeardFrame.of(FloatData.toFloatData(data));
    frames.add(frame);
    return frame;
  }

  private Data next(NotingScorer other) {
    return followed < other.frames.size() ? other.frames.get(followed++) : new SpeechEndSignal();
  }

  @Override
  protected <T extends Scoreable> T doScoring(List<T> tokens, Data data) {
    T leader = super.doScoring(tokens, data);
    float highest = Float.NEGATIVE_INFINITY;
    for (T token : tokens) {
      highest = Math.max(highest, ((Token) token).getAcousticScore());
    }
    // A sound that the search has just compared with this frame is remembered, and costs nothing.
    for (HMMState phone : phones()) {
      highest = Math.max(highest, phone.getScore(data));
    }
    best.add(highest);
    return leader;
  }

  private List<HMMState> phones() {
    if (phones.isEmpty()) {
      List<HMMState> all = new ArrayList<>();
      model
          .getContextIndependentUnitIterator()
          .forEachRemaining(
              phone -> {
                HMM hmm = model.lookupNearestHMM(phone, HMMPosition.UNDEFINED, true);
                for (int i = 0; i < hmm.getOrder(); i++) {
                  all.add(hmm.getState(i));
                }
              });
      phones = List.copyOf(all);
    }
    return phones;
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
