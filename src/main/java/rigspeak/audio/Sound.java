package rigspeak.audio;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/**
 * A finished piece of sound in the one form that every room of the tool uses: {@value #RATE}
 * samples a second, one channel, signed 16-bit.
 */
public final class Sound {
  /** Samples a second. */
  public static final int RATE = 16_000;

  private static final int BLOCK = 4096;

  private final short[] samples;

  private Sound(short[] samples) {
    this.samples = samples;
  }

  /** A copy of these samples as a sound. */
  public static Sound of(short[] samples) {
    return new Sound(samples.clone());
  }

  /**
   * Silence.
   *
   * @param seconds not negative
   */
  public static Sound silence(double seconds) {
    if (!(seconds >= 0 && seconds < 3600)) {
      throw new IllegalArgumentException("no silence lasts " + seconds + " seconds");
    }
    return new Sound(new short[(int) Math.round(seconds * RATE)]);
  }

  /** One after the other. */
  public static Sound joined(List<Sound> parts) {
    short[] all = new short[parts.stream().mapToInt(Sound::length).sum()];
    int at = 0;
    for (Sound part : parts) {
      System.arraycopy(part.samples, 0, all, at, part.samples.length);
      at += part.samples.length;
    }
    return new Sound(all);
  }

  /**
   * Everything that is left of a stream. For short sounds only: the whole of it is held in memory.
   */
  public static Sound readAll(SoundStream stream) throws IOException {
    short[] all = new short[BLOCK];
    int length = 0;
    int read = stream.read(all, 0, BLOCK);
    while (read >= 0) {
      length += read;
      if (all.length - length < BLOCK) {
        all = Arrays.copyOf(all, 2 * all.length);
      }
      read = stream.read(all, length, BLOCK);
    }
    return new Sound(Arrays.copyOf(all, length));
  }

  /** Number of samples. */
  public int length() {
    return samples.length;
  }

  /** How long it lasts. */
  public double seconds() {
    return samples.length / (double) RATE;
  }

  /** One sample, -32768 to 32767. */
  public short sample(int index) {
    return samples[index];
  }

  /** A copy of the samples. */
  public short[] samples() {
    return samples.clone();
  }

  /** The part from one sample (included) to another (left out). */
  public Sound part(int from, int to) {
    return new Sound(Arrays.copyOfRange(samples, from, Math.min(to, samples.length)));
  }

  /** The same sound as a stream. */
  public SoundStream stream() {
    return new SoundStream() {
      private int at;

      @Override
      public int read(short[] into, int from, int most) {
        if (at == samples.length) {
          return END;
        }
        int count = Math.min(most, samples.length - at);
        System.arraycopy(samples, at, into, from, count);
        at += count;
        return count;
      }

      @Override
      public void close() {}
    };
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sound sound && Arrays.equals(samples, sound.samples);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(samples);
  }

  @Override
  public String toString() {
    return "Sound of " + seconds() + " s";
  }
}
