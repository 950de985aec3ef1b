package rigspeak.audio;

/**
 * Measures the level of a sound, block by block.
 *
 * <p>Levels are in decibels below full scale (a square wave at 32768 is 0 dB, so a full-scale sine
 * is -3.01 dB); digital silence is {@link #NO_SOUND}.
 */
public final class Meter {
  /** The level of digital silence: half of the smallest step that 16 bits have. */
  public static final double NO_SOUND = decibels(0.5);

  /**
   * A sample this near to full scale (1 %) counts as clipped: eight-bit recordings and resampled
   * ones clip a little below the last step. A judgement.
   */
  private static final int CLIPPED = 32_440;

  private double squares;
  private long count;
  private long clipped;
  private int peak;

  /** The level of a whole sound. */
  public static Level of(Sound sound) {
    Meter meter = new Meter();
    short[] samples = sound.samples();
    meter.add(samples, 0, samples.length);
    return meter.level();
  }

  /** Takes some samples. */
  public void add(short[] samples, int from, int length) {
    for (int i = from; i < from + length; i++) {
      int size = Math.abs((int) samples[i]);
      squares += (double) size * size;
      peak = Math.max(peak, size);
      if (size >= CLIPPED) {
        clipped++;
      }
    }
    count += length;
  }

  /** The level of everything taken so far; digital silence if nothing was. */
  public Level level() {
    if (count == 0) {
      return new Level(NO_SOUND, NO_SOUND, 0);
    }
    return new Level(
        decibels(Math.sqrt(squares / count)), decibels(peak), clipped / (double) count);
  }

  /** An amplitude in steps of 16 bits, in decibels below full scale. */
  public static double decibels(double amplitude) {
    return 20 * Math.log10(Math.max(amplitude, 0.5) / 32_768);
  }

  /**
   * How loud a sound is.
   *
   * @param meanDecibels level of its root mean square, dB below full scale (negative)
   * @param peakDecibels level of its largest sample, dB below full scale (negative or 0)
   * @param clippedShare share of its samples that are within 1 % of full scale, 0 to 1
   */
  public record Level(double meanDecibels, double peakDecibels, double clippedShare) {}
}
