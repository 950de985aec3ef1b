package rigspeak.audio;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.TargetDataLine;

/**
 * A microphone of this machine.
 *
 * <p>A thread of its own reads the line all the time, also while the microphone is shut and what
 * comes is thrown away: to stop a line and start it again takes long enough to lose the first sound
 * of whoever speaks next. It asks every few milliseconds what has arrived, rather than wait in the
 * line's own read, which wakes only at a quarter of its buffer and never if the device is dead.
 */
final class LineMicrophone implements Microphone {
  /** The line's own buffer: what may pile up while this machine is busy with something else. */
  private static final float BUFFER_SECONDS = 1;

  /** How often the line is asked. */
  private static final long POLL_NANOS = 5_000_000;

  /** A line from which nothing has come for so long is lost. */
  private static final long LONGEST_GAP_NANOS = 3_000_000_000L;

  /**
   * What arrives so soon after the loudspeaker has ended may still be the tool's own voice. No more
   * than that: somebody who answers at once begins by then. A tail that is longer than this, by a
   * far loudspeaker or a slow radio link, opens no utterance before it lasts for some 0.1 s.
   */
  private static final long TAIL_NANOS = 20_000_000;

  /** So much of what comes while it is shut is kept: it may be opened that late. */
  private static final long LATEST_NANOS = 500_000_000;

  /**
   * If nobody has taken so many pieces, half a minute at least, the conversation has broken off.
   */
  private static final int MOST_HELD = 6000;

  /** Stands behind the last piece. */
  private static final short[] NO_MORE = new short[0];

  private final String name;
  private final TargetDataLine line;
  private final WavForm form;
  private final byte[] bytes;
  private final Resampler resampler;
  private final BlockingQueue<short[]> held = new LinkedBlockingQueue<>();
  private final Deque<Piece> whileShut = new ArrayDeque<>();
  private final CountDownLatch soundOrEnd = new CountDownLatch(1);
  private short[] first = NO_MORE;
  private int takenOfFirst;
  private volatile boolean soundCame;
  private volatile boolean closed;
  private boolean shut;
  private long opensAtNanos = System.nanoTime();

  private LineMicrophone(String name, TargetDataLine openLine) {
    this.name = name;
    this.line = openLine;
    int rate = (int) openLine.getFormat().getSampleRate();
    this.form = new WavForm(rate, openLine.getFormat().getChannels(), 16, false);
    this.bytes = new byte[openLine.getBufferSize()];
    this.resampler = Resampler.between(rate, Sound.RATE);
  }

  /**
   * A microphone from which sound comes.
   *
   * @param openLine has been opened and not been started
   * @throws LostDevice if nothing comes from it
   */
  static LineMicrophone reading(String name, TargetDataLine openLine) throws LostDevice {
    LineMicrophone microphone = new LineMicrophone(name, openLine);
    openLine.start();
    Thread reader = new Thread(microphone::readLine, "microphone");
    reader.setDaemon(true);
    reader.start();
    try {
      microphone.soundOrEnd.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    if (!microphone.soundCame) {
      microphone.closed = true;
      throw microphone.lost();
    }
    return microphone;
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
  public int read(short[] into, int from, int most) throws LostDevice {
    if (takenOfFirst == first.length) {
      try {
        first = held.take();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return END;
      }
      takenOfFirst = 0;
      if (first == NO_MORE) {
        held.add(NO_MORE);
        if (closed) {
          return END;
        }
        throw lost();
      }
    }
    int count = Math.min(most, first.length - takenOfFirst);
    System.arraycopy(first, takenOfFirst, into, from, count);
    takenOfFirst += count;
    return count;
  }

  @Override
  public synchronized void shut() {
    shut = true;
  }

  @Override
  public synchronized void reopen(long playedNanos) {
    held.removeIf(piece -> piece != NO_MORE);
    takenOfFirst = first.length;
    opensAtNanos = playedNanos + TAIL_NANOS;
    shut = false;
    whileShut.forEach(this::hold);
    whileShut.clear();
  }

  @Override
  public void close() {
    closed = true;
    line.stop();
    line.close();
  }

  private LostDevice lost() {
    return new LostDevice("The microphone " + name + " is gone.");
  }

  // ---- the reader's thread ----

  private void readLine() {
    try {
      long lastSound = System.nanoTime();
      while (!closed
          && held.size() < MOST_HELD
          && System.nanoTime() - lastSound < LONGEST_GAP_NANOS) {
        int arrived = Math.min(line.available(), bytes.length);
        int whole = arrived - Math.floorMod(arrived, form.bytesPerFrame());
        if (whole <= 0) {
          LockSupport.parkNanos(POLL_NANOS);
          continue;
        }
        int got = line.read(bytes, 0, whole);
        if (got <= 0) {
          // It says that there is sound and gives none: the device has been pulled.
          return;
        }
        lastSound = System.nanoTime();
        keep(new Piece(Sound.of(resampled(got)), lastSound));
      }
    } finally {
      held.add(NO_MORE);
      soundOrEnd.countDown();
    }
  }

  private short[] resampled(int byteCount) {
    int frames = byteCount / form.bytesPerFrame();
    double[] values = new double[frames];
    for (int i = 0; i < frames; i++) {
      values[i] = form.frame(bytes, i * form.bytesPerFrame());
    }
    double[] ready = resampler.push(values, frames);
    short[] samples = new short[ready.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] =
          (short) Math.round(Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, ready[i])));
    }
    return samples;
  }

  private synchronized void keep(Piece piece) {
    soundCame = true;
    soundOrEnd.countDown();
    if (!shut) {
      hold(piece);
      return;
    }
    whileShut.add(piece);
    while (piece.arrivedNanos() - whileShut.element().arrivedNanos() > LATEST_NANOS) {
      whileShut.remove();
    }
  }

  /** Keeps of it what arrived after the microphone was opened. */
  private void hold(Piece piece) {
    int length = piece.sound().length();
    double openSeconds = (piece.arrivedNanos() - opensAtNanos) / 1e9;
    int kept = (int) Math.max(0, Math.min(length, openSeconds * Sound.RATE));
    if (kept > 0) {
      held.add(piece.sound().part(length - kept, length).samples());
    }
  }

  /** Some sound, and when the last of it arrived. */
  private record Piece(Sound sound, long arrivedNanos) {}
}
