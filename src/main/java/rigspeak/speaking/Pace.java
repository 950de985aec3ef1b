package rigspeak.speaking;

/**
 * How fast the voice speaks.
 *
 * @param wordsPerMinute over ordinary answers, their pauses included; {@value #SLOWEST} to {@value
 *     #FASTEST}
 */
public record Pace(double wordsPerMinute) {
  /** Slower than this, words fall apart. A judgement. */
  public static final double SLOWEST = 100;

  /** Faster than this, a listener at work loses numbers. A judgement. */
  public static final double FASTEST = 220;

  /** About 150 words a minute. */
  public static final Pace ORDINARY = new Pace(150);

  private static final double STEP = 1.2;

  public Pace {
    if (!(wordsPerMinute >= SLOWEST && wordsPerMinute <= FASTEST)) {
      throw new IllegalArgumentException(
          "a pace lies between "
              + SLOWEST
              + " and "
              + FASTEST
              + " words a minute, not at "
              + wordsPerMinute);
    }
  }

  /** A step slower, as far as it goes. */
  public Pace slower() {
    return new Pace(Math.max(SLOWEST, wordsPerMinute / STEP));
  }

  /** A step faster, as far as it goes. */
  public Pace faster() {
    return new Pace(Math.min(FASTEST, wordsPerMinute * STEP));
  }
}
