package rigspeak.app;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import rigspeak.audio.Sound;

/**
 * Hears and keeps what a loudspeaker of the {@link SoundLoop} plays, with the time of each piece.
 */
final class Tap implements AutoCloseable {
  /** 10 ms. */
  private static final int PIECE = Sound.RATE / 100;

  /** A sample this large, 1 % of full scale, is sound. */
  private static final int LOUD = 328;

  private final Process recorder;
  private short[] samples = new short[60 * Sound.RATE];
  private long[] arrivals = new long[60 * 100];
  private int length;
  private boolean ended;

  /**
   * A tap.
   *
   * @param recorder writes samples of a {@link Sound} to its standard output, low byte first
   */
  Tap(Process recorder) {
    this.recorder = recorder;
    Thread reader = new Thread(this::read, "tap");
    reader.setDaemon(true);
    reader.start();
  }

  private void read() {
    byte[] bytes = new byte[2 * PIECE];
    try (InputStream in = recorder.getInputStream()) {
      while (in.readNBytes(bytes, 0, bytes.length) == bytes.length) {
        keep(bytes, System.nanoTime());
      }
    } catch (IOException e) {
      // The recorder is gone; whoever waits is told so below.
    } finally {
      end();
    }
  }

  private synchronized void keep(byte[] bytes, long nowNanos) {
    if (length == samples.length) {
      samples = Arrays.copyOf(samples, 2 * length);
      arrivals = Arrays.copyOf(arrivals, 2 * arrivals.length);
    }
    arrivals[length / PIECE] = nowNanos;
    for (int i = 0; i < PIECE; i++) {
      samples[length++] = (short) ((bytes[2 * i] & 0xff) | (bytes[2 * i + 1] << 8));
    }
    notifyAll();
  }

  private synchronized void end() {
    ended = true;
    notifyAll();
  }

  /** How many samples have come so far. */
  synchronized int length() {
    return length;
  }

  /** Waits until so many samples have come. */
  synchronized void awaitLength(int wanted, double patienceSeconds) throws IOException {
    Patience patience = new Patience(patienceSeconds, "the recorder is stuck");
    while (length < wanted) {
      patience.awaitMore();
    }
  }

  /** Waits until there is sound, and gives the place of its first sample. */
  synchronized int awaitSound(int from, double patienceSeconds) throws IOException {
    int at = from;
    Patience patience = new Patience(patienceSeconds, "no sound came");
    while (true) {
      for (; at < length; at++) {
        if (isLoud(at)) {
          return at;
        }
      }
      patience.awaitMore();
    }
  }

  /** Waits until it has been quiet for so long, and gives the place behind the last loud sample. */
  synchronized int awaitQuiet(int from, double seconds, double patienceSeconds) throws IOException {
    int wanted = (int) Math.round(seconds * Sound.RATE);
    int at = from;
    int quietFrom = from;
    Patience patience = new Patience(patienceSeconds, "it did not become quiet");
    while (true) {
      for (; at < length; at++) {
        if (isLoud(at)) {
          quietFrom = at + 1;
        } else if (at - quietFrom >= wanted) {
          return quietFrom;
        }
      }
      patience.awaitMore();
    }
  }

  private boolean isLoud(int at) {
    return Math.abs((int) samples[at]) >= LOUD;
  }

  /** What was heard between two places. */
  synchronized Sound part(int from, int to) {
    return Sound.of(Arrays.copyOfRange(samples, from, Math.min(to, length)));
  }

  /** When a sample arrived, by the clock of {@link System#nanoTime}. */
  synchronized long arrivedNanos(int at) {
    long toEndOfPiece = (PIECE - 1 - at % PIECE) * 1_000_000_000L / Sound.RATE;
    return arrivals[at / PIECE] - toEndOfPiece;
  }

  @Override
  public void close() {
    recorder.destroy();
  }

  private final class Patience {
    private final long endNanos;
    private final String inVain;

    Patience(double seconds, String inVain) {
      this.endNanos = System.nanoTime() + (long) (seconds * 1e9);
      this.inVain = inVain;
    }

    /** Waits for the next piece; whoever calls holds the tap's lock. */
    void awaitMore() throws IOException {
      int before = length;
      while (length == before) {
        long leftMillis = (endNanos - System.nanoTime()) / 1_000_000;
        if (ended || leftMillis <= 0) {
          throw new IOException(ended ? "the recorder has ended" : inVain);
        }
        try {
          Tap.this.wait(leftMillis);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          throw new IOException("interrupted", e);
        }
      }
    }
  }
}
