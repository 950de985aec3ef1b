package rigspeak.hearing;

import rigspeak.audio.Sound;

/**
 * The silence after which an utterance counts as ended. A longer one lets a speaker think between
 * two values; every answer then comes so much later.
 *
 * @param seconds {@value #SHORTEST} to {@value #LONGEST}; a shorter one would cut words in two,
 *     which have silences of their own before hard consonants (the bounds are a judgement)
 */
public record ClosingPause(double seconds) {
  public static final double SHORTEST = 0.3;
  public static final double LONGEST = 2.0;

  /** Half a second. */
  public static final ClosingPause ORDINARY = new ClosingPause(0.5);

  public ClosingPause {
    if (!(seconds >= SHORTEST && seconds <= LONGEST)) {
      throw new IllegalArgumentException("an utterance cannot end after " + seconds + " seconds");
    }
  }

  /** In frames of the endpointer. */
  int frames() {
    return (int) Math.round(seconds * Sound.RATE / Endpointer.FRAME);
  }
}
