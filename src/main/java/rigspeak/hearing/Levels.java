package rigspeak.hearing;

/**
 * How loud a person and the place were at enrolment. Decibels below full scale after the first
 * difference, in the bands of the voice, as the endpointer measures them (negative).
 *
 * @param speech the loudest moment of an utterance, in the middle of all
 * @param background the quietest, in the middle of all
 */
public record Levels(double speech, double background) {
  /** What is taken for the background, without a profile, until something quieter is heard. */
  private static final double FIRST_GUESS = -55;

  /** A voice below this does not reach the microphone. */
  private static final double LEAST = -60;

  /**
   * A voice so far below the person's own is another's, or the microphone has moved: the same voice
   * is 34 dB louder at 3 cm than at 1.5 m, by the inverse distance. A judgement.
   */
  private static final double FAR_BELOW = 25;

  public Levels {
    if (!(Double.isFinite(speech) && Double.isFinite(background) && speech > background)) {
      throw new IllegalArgumentException("no levels: " + speech + ", " + background);
    }
  }

  /**
   * The first guess at the background. A quiet room does not lower it: where the work is louder
   * than the enrolment was, the noise itself would be taken for an utterance.
   */
  double firstGuess() {
    return Math.max(FIRST_GUESS, background);
  }

  /** The least level of a voice that is taken. */
  double leastLevel() {
    return Math.max(LEAST, speech - FAR_BELOW);
  }

  /** What holds where nobody enrolled. */
  static Levels unknown() {
    return new Levels(LEAST + FAR_BELOW, FIRST_GUESS);
  }
}
