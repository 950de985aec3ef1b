package rigspeak.app;

import java.util.concurrent.locks.LockSupport;
import rigspeak.audio.Sound;
import rigspeak.audio.SoundStream;

/** A recording that arrives as slowly as it was spoken, with silence after it. */
final class RealTime implements SoundStream {
  private static final double SILENCE_AFTER_SECONDS = 2;
  private static final double QUIET_SHARE = 0.05;

  private final Sound sound;
  private final int lastLoud;
  private final long beganNanos = System.nanoTime();
  private int next;

  RealTime(Sound recording) {
    this.lastLoud = lastLoud(recording);
    this.sound = Sound.joined(java.util.List.of(recording, Sound.silence(SILENCE_AFTER_SECONDS)));
  }

  @Override
  public int read(short[] into, int from, int most) {
    if (next >= sound.length()) {
      return END;
    }
    int count = Math.min(Math.min(most, Sound.RATE / 100), sound.length() - next);
    for (int i = 0; i < count; i++) {
      into[from + i] = sound.sample(next + i);
    }
    next += count;
    long due = beganNanos + Math.round(next * 1e9 / Sound.RATE);
    while (System.nanoTime() < due) {
      LockSupport.parkNanos(due - System.nanoTime());
    }
    return count;
  }

  /** Seconds since the last loud sample was due. */
  double secondsSinceLastWord() {
    return (System.nanoTime() - beganNanos) / 1e9 - lastLoud / (double) Sound.RATE;
  }

  /** Where the last word ends: the last sample that is not quiet beside the loudest. */
  static int lastLoud(Sound sound) {
    int loudest = 0;
    for (int i = 0; i < sound.length(); i++) {
      loudest = Math.max(loudest, Math.abs(sound.sample(i)));
    }
    int last = sound.length() - 1;
    while (last > 0 && Math.abs(sound.sample(last)) < QUIET_SHARE * loudest) {
      last--;
    }
    return last;
  }

  @Override
  public void close() {
    next = sound.length();
  }
}
