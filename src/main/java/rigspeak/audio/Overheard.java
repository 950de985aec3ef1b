package rigspeak.audio;

import java.io.IOException;
import java.util.Arrays;

/**
 * A stream of which everything that was read is kept, for minutes at most. To close it leaves the
 * stream itself open: that belongs to whoever handed it in.
 */
public final class Overheard implements SoundStream {
  private final SoundStream stream;
  private short[] kept = new short[Sound.RATE];
  private int length;

  public Overheard(SoundStream stream) {
    this.stream = stream;
  }

  @Override
  public int read(short[] into, int from, int most) throws IOException {
    int read = stream.read(into, from, most);
    if (read > 0) {
      if (length + read > kept.length) {
        kept = Arrays.copyOf(kept, 2 * (length + read));
      }
      System.arraycopy(into, from, kept, length, read);
      length += read;
    }
    return read;
  }

  /**
   * A part of what was read.
   *
   * @param fromSeconds since the first sample that was read, not negative
   * @param toSeconds the same, not before it; what was not read is left out
   */
  public Sound part(double fromSeconds, double toSeconds) {
    int from = (int) Math.round(fromSeconds * Sound.RATE);
    int to = Math.min((int) Math.round(toSeconds * Sound.RATE), length);
    return Sound.of(Arrays.copyOfRange(kept, Math.min(from, to), to));
  }

  @Override
  public void close() {
    // See above.
  }
}
