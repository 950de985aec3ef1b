package rigspeak.hearing;

import edu.cmu.sphinx.util.props.Configurable;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4Double;

/**
 * How sure it is that the best row of words is what was said. The search always finds some row;
 * noise, ordinary talk and near phrases have to be kept out here.
 *
 * <p>Model: logistic regression. Each piece of evidence is brought to about -1 to 1, weighed and
 * added up; the logistic function makes a probability of the sum. The weights are those that fit
 * the part of the corpus that is tuned on best, clean and in noise (docs/hearing.md).
 */
public final class Acceptance implements Configurable {
  /** What counts for every row. */
  @S4Double(defaultValue = 0)
  public static final String PROP_ALWAYS = "always";

  @S4Double(defaultValue = 0)
  public static final String PROP_OVER_RIVAL = "overRival";

  @S4Double(defaultValue = 0)
  public static final String PROP_OVER_OTHER_SPEECH = "overOtherSpeech";

  @S4Double(defaultValue = 0)
  public static final String PROP_OVER_UNFINISHED = "overUnfinished";

  @S4Double(defaultValue = 0)
  public static final String PROP_WORST_WORD = "worstWord";

  @S4Double(defaultValue = 0)
  public static final String PROP_ABOVE_NOISE = "aboveNoise";

  /**
   * In a pause that fits worse than this somebody spoke: "check the redirect before you load it" is
   * no command, however well its beginning fits.
   */
  @S4Double(defaultValue = -Double.MAX_VALUE)
  public static final String PROP_LEAST_PAUSE = "leastPause";

  /**
   * A single word that is less than this above the background, dB, is a noise: in the bursts of a
   * chipper "help" was heard again and again.
   */
  @S4Double(defaultValue = 0)
  public static final String PROP_ONE_WORD_ABOVE_NOISE = "oneWordAboveNoise";

  /** From how sure on a row is taken, by how cautious the ear is to be. */
  @S4Double(defaultValue = 0.9)
  public static final String PROP_CAUTIOUS = "cautious";

  @S4Double(defaultValue = 0.8)
  public static final String PROP_NORMAL = "normal";

  @S4Double(defaultValue = 0.5)
  public static final String PROP_EAGER = "eager";

  /**
   * The least for a bare answer, whatever the caution: "seven" and "ten" have no name and no unit
   * beside them that would have to fit too.
   */
  @S4Double(defaultValue = 0.95)
  public static final String PROP_BARE_ANSWER = "bareAnswer";

  /** From how sure on a row that is not taken is asked back. */
  @S4Double(defaultValue = 1)
  public static final String PROP_ASKED_BACK = "askedBack";

  /** The same of a bare answer. */
  @S4Double(defaultValue = 1)
  public static final String PROP_BARE_ASKED_BACK = "bareAskedBack";

  /** Asleep, from how sure on a call is taken with whatever comes after it. */
  @S4Double(defaultValue = 0.92)
  public static final String PROP_CALL = "call";

  /** Natural logarithm; twenty times what the price of an end makes. */
  private static final double UNFINISHED = -60;

  /**
   * A lead beyond this says no more, and to have no rival at all says as much: in rain and saw
   * noise just the rows that nothing sounds like were heard into the noise.
   */
  private static final double MOST_LEAD = 100;

  private static final String[] WEIGHTS = {
    PROP_ALWAYS,
    PROP_OVER_RIVAL,
    PROP_OVER_OTHER_SPEECH,
    PROP_OVER_UNFINISHED,
    PROP_WORST_WORD,
    PROP_ABOVE_NOISE
  };

  private final double[] weights = new double[WEIGHTS.length];
  private double leastPause;
  private double oneWordAboveNoise;
  private double cautious;
  private double normal;
  private double eager;
  private double bareAnswer;
  private double askedBack;
  private double bareAskedBack;
  private double call;

  /** For Sphinx4's configuration. */
  public Acceptance() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    for (int i = 0; i < weights.length; i++) {
      weights[i] = sheet.getDouble(WEIGHTS[i]);
    }
    leastPause = sheet.getDouble(PROP_LEAST_PAUSE);
    oneWordAboveNoise = sheet.getDouble(PROP_ONE_WORD_ABOVE_NOISE);
    cautious = sheet.getDouble(PROP_CAUTIOUS);
    normal = sheet.getDouble(PROP_NORMAL);
    eager = sheet.getDouble(PROP_EAGER);
    bareAnswer = sheet.getDouble(PROP_BARE_ANSWER);
    askedBack = sheet.getDouble(PROP_ASKED_BACK);
    bareAskedBack = sheet.getDouble(PROP_BARE_ASKED_BACK);
    call = sheet.getDouble(PROP_CALL);
  }

  /**
   * What speaks for a row of words. All but the last two are natural logarithms of likelihoods,
   * more is better; a rival that was given up on the way is infinitely far behind.
   *
   * @param overRival of the row, less that of the row most like it that means something else
   * @param overOtherSpeech of the row, less that of the best row of phones
   * @param overUnfinished of the row, less that of the best row of words that could not end here
   * @param worstWord mean over the frames of the word that fits worst, less the best sound's
   * @param worstPause the same of the long pause that fits worst
   * @param words how many words it has
   * @param bare whether it is a value without its name, which had been asked for
   * @param aboveNoise how much louder than the background the voice was, dB
   */
  record Evidence(
      double overRival,
      double overOtherSpeech,
      double overUnfinished,
      double worstWord,
      double worstPause,
      int words,
      boolean bare,
      double aboveNoise) {

    Evidence overRival(double lead) {
      return new Evidence(
          lead, overOtherSpeech, overUnfinished, worstWord, worstPause, words, bare, aboveNoise);
    }

    Evidence aboveNoise(double decibels) {
      return new Evidence(
          overRival, overOtherSpeech, overUnfinished, worstWord, worstPause, words, bare, decibels);
    }

    /** In the order of the weights, each about -1 to 1. */
    double[] scaled() {
      return new double[] {
        1,
        Math.log1p(within(overRival, 0, MOST_LEAD)) / 5,
        within(overOtherSpeech, -100, 100) / 100,
        within(overUnfinished, -60, 60) / 60,
        within(worstWord, -20, 0) / 10,
        within(aboveNoise, 0, 50) / 50
      };
    }

    private static double within(double value, double least, double most) {
      return Math.max(least, Math.min(most, value));
    }
  }

  /** How sure, 0 to 1; not at all if somebody spoke in a pause, or of a word that is a noise. */
  double surety(Evidence evidence) {
    boolean isNoise = evidence.words() == 1 && evidence.aboveNoise() < oneWordAboveNoise;
    if (isNoise || evidence.worstPause() < leastPause) {
      return 0;
    }
    double sum = 0;
    double[] scaled = evidence.scaled();
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * scaled[i];
    }
    return 1 / (1 + Math.exp(-sum));
  }

  /** Whether the row only seems to have come to its end: going on fits far better. */
  boolean isUnfinished(Evidence evidence) {
    return evidence.overUnfinished() < UNFINISHED;
  }

  boolean isSure(Evidence evidence, Caution caution) {
    double needed = needed(caution);
    return isSure(evidence, evidence.bare() ? Math.max(needed, bareAnswer) : needed);
  }

  /** However well the words fit: of a voice that the noise nearly drowns nothing is sure. */
  boolean isSure(Evidence evidence, double needed) {
    return evidence.aboveNoise() >= SoundCheck.LEAST_DISTANCE && surety(evidence) >= needed;
  }

  /** Who is cautious would rather be asked to say it again. */
  boolean isWorthAsking(Evidence evidence, Caution caution) {
    double needed = evidence.bare() ? bareAskedBack : askedBack;
    return caution != Caution.CAUTIOUS && surety(evidence) >= needed && !isUnfinished(evidence);
  }

  boolean isSureOfCall(Evidence evidence) {
    return isSure(evidence, call);
  }

  private double needed(Caution caution) {
    return switch (caution) {
      case CAUTIOUS -> cautious;
      case NORMAL -> normal;
      case EAGER -> eager;
    };
  }
}
