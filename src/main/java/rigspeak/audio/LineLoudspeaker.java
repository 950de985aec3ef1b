package rigspeak.audio;

import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.SourceDataLine;

/**
 * A loudspeaker of this machine.
 *
 * <p>Only as much is handed to the line as it has room for: its own write waits without end if the
 * device is dead.
 */
final class LineLoudspeaker implements Loudspeaker {
  /** The line's own buffer: what is played on while this machine is busy with something else. */
  private static final float BUFFER_SECONDS = 0.2f;

  /** How often the line is asked for room. */
  private static final long POLL_NANOS = 5_000_000;

  /** A line that has taken nothing for so long is lost. */
  private static final long LONGEST_GAP_NANOS = 3_000_000_000L;

  private final String name;
  private final SourceDataLine line;
  private volatile boolean hushed;

  LineLoudspeaker(String name, SourceDataLine openLine) {
    this.name = name;
    this.line = openLine;
    line.start();
    begin();
  }

  /**
   * Lets the device begin with silence. A sound server drops what comes first to a line that was
   * started long ago and has had nothing to play, and a tone is over before it is missed.
   */
  private void begin() {
    byte[] silence = new byte[line.available()];
    line.write(silence, 0, silence.length);
  }

  /** The size of buffer that the line should be opened with. */
  static int bufferBytes(AudioFormat form) {
    return Math.round(BUFFER_SECONDS * form.getFrameRate()) * form.getFrameSize();
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public long play(Iterable<Sound> parts) throws LostDevice {
    hushed = false;
    long endNanos = System.nanoTime();
    for (Sound part : parts) {
      byte[] bytes = bytes(part);
      endNanos = Math.max(endNanos, System.nanoTime()) + nanos(bytes.length);
      write(bytes);
    }
    if (!hushed) {
      awaitRoom(line.getBufferSize() / 2);
      // The rest is foretold: the line's own drain tells up to 50 ms late that it is empty.
      long restNanos = nanos(line.getBufferSize() - line.available());
      endNanos = Math.max(endNanos, System.nanoTime() + restNanos);
      waitUntil(endNanos);
    }
    if (hushed) {
      line.flush();
      return System.nanoTime();
    }
    return endNanos;
  }

  private void write(byte[] bytes) throws LostDevice {
    for (int at = 0; at < bytes.length && !hushed; ) {
      int count = Math.min(awaitRoom(line.getFormat().getFrameSize()), bytes.length - at);
      if (count > 0 && line.write(bytes, at, count) < count && !hushed) {
        throw lost();
      }
      at += count;
    }
  }

  private void waitUntil(long nanos) {
    while (!hushed && System.nanoTime() < nanos) {
      LockSupport.parkNanos(Math.min(POLL_NANOS, nanos - System.nanoTime()));
    }
  }

  private long nanos(int byteCount) {
    double frames = byteCount / (double) line.getFormat().getFrameSize();
    return (long) (frames / line.getFormat().getFrameRate() * 1e9);
  }

  /** Waits until the line has room for so many bytes, and says for how many; 0 if hushed. */
  private int awaitRoom(int wanted) throws LostDevice {
    long began = System.nanoTime();
    while (!hushed) {
      int room = line.available();
      if (room >= wanted) {
        return room - Math.floorMod(room, line.getFormat().getFrameSize());
      }
      if (System.nanoTime() - began > LONGEST_GAP_NANOS) {
        throw lost();
      }
      LockSupport.parkNanos(POLL_NANOS);
    }
    return 0;
  }

  private LostDevice lost() {
    return new LostDevice("The loudspeaker " + name + " is gone.");
  }

  @Override
  public void hush() {
    hushed = true;
  }

  @Override
  public void close() {
    hush();
    line.stop();
    line.close();
  }

  /** The sound at the line's own rate, the same on every channel, low byte first. */
  private byte[] bytes(Sound sound) {
    double[] values = new double[sound.length()];
    for (int i = 0; i < values.length; i++) {
      values[i] = sound.sample(i);
    }
    int rate = (int) line.getFormat().getSampleRate();
    Resampler resampler = Resampler.between(Sound.RATE, rate);
    double[] first = resampler.push(values, values.length);
    double[] last = resampler.flush();
    int channels = line.getFormat().getChannels();
    byte[] bytes = new byte[2 * channels * (first.length + last.length)];
    int at = 0;
    for (double[] part : new double[][] {first, last}) {
      for (double value : part) {
        int step = (int) Math.round(Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, value)));
        for (int channel = 0; channel < channels; channel++) {
          bytes[at++] = (byte) step;
          bytes[at++] = (byte) (step >> 8);
        }
      }
    }
    return bytes;
  }
}
