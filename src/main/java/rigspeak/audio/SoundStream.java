package rigspeak.audio;

import java.io.IOException;

/**
 * Sound as it arrives, {@value Sound#RATE} samples a second, one channel, signed 16-bit. It may be
 * hours long; whoever reads it holds no more than the block just read.
 */
public interface SoundStream extends AutoCloseable {
  /** What {@link #read} gives when no more will come. */
  int END = -1;

  /**
   * Waits for sound and copies some of it.
   *
   * @param into where to put the samples
   * @param from index of the first sample to be put
   * @param most how many samples there is room for, at least 1
   * @return how many samples were put, at least 1, or {@link #END}
   * @throws IOException if the sound broke off; the message is one sentence for a person
   */
  int read(short[] into, int from, int most) throws IOException;

  @Override
  void close();
}
