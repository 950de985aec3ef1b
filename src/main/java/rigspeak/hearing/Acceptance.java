package rigspeak.hearing;

import edu.cmu.sphinx.util.props.Configurable;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4Double;

/**
 * Whether the best row of words is good enough to be taken. The search always finds some row; noise
 * and ordinary talk have to be kept out here.
 */
public final class Acceptance implements Configurable {
  /** The least a word may fit. */
  @S4Double(defaultValue = -1e9)
  public static final String PROP_WORST_WORD = "worstWord";

  /** The least a long pause may fit. */
  @S4Double(defaultValue = -1e9)
  public static final String PROP_WORST_PAUSE = "worstPause";

  /** How much better than the loop of all phones the row must be. */
  @S4Double(defaultValue = -1e9)
  public static final String PROP_OVER_OTHER_SPEECH = "overOtherSpeech";

  /** How much better than a row that has not come to its end the row must be. */
  @S4Double(defaultValue = -1e9)
  public static final String PROP_OVER_UNFINISHED = "overUnfinished";

  private double worstWord;
  private double worstPause;
  private double overOtherSpeech;
  private double overUnfinished;

  /** For Sphinx4's configuration. */
  public Acceptance() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    worstWord = sheet.getDouble(PROP_WORST_WORD);
    worstPause = sheet.getDouble(PROP_WORST_PAUSE);
    overOtherSpeech = sheet.getDouble(PROP_OVER_OTHER_SPEECH);
    overUnfinished = sheet.getDouble(PROP_OVER_UNFINISHED);
  }

  /**
   * What speaks for a row of words; all are natural logarithms of likelihoods, more is better.
   *
   * @param worstWord mean over the frames of the word that fits worst, less the best sound's; 0 or
   *     less
   * @param worstPause the same of the long pause that fits worst
   * @param overOtherSpeech of the whole row, less the best row of phones; infinite if that was
   *     given up on the way
   * @param overUnfinished of the whole row, less the best row of words that could not end here
   */
  record Evidence(
      double worstWord, double worstPause, double overOtherSpeech, double overUnfinished) {}

  boolean isOtherSpeech(Evidence evidence) {
    return !(evidence.worstWord() >= worstWord
        && evidence.worstPause() >= worstPause
        && evidence.overOtherSpeech() >= overOtherSpeech);
  }

  boolean isUnfinished(Evidence evidence) {
    return !(evidence.overUnfinished() >= overUnfinished);
  }
}
