package rigspeak.app;

import java.util.List;
import java.util.Random;
import rigspeak.audio.LostDevice;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.Sound;

/**
 * A headset of a crew that never stops, in compressed time: the recordings of a day over and over,
 * between them talk, noise and quiet, and once in a while its plug is pulled. What is played on it
 * takes its time on this line's clock and none on the wall's. Nothing is kept.
 */
final class SoakLine implements Microphone, Loudspeaker {
  /** After a recording, so that it is heard to its end. */
  private static final double PAUSE_SECONDS = 1;

  /** So many recordings, then something else. */
  private static final int IN_A_ROW = 12;

  /** So many recordings, then its plug is pulled. */
  private static final int UNTIL_PULLED = 100;

  private static final int NOISE = 1_500;

  private final List<Sound> recordings;
  private final Key key;
  private final long endsAtSample;
  private final Random random = new Random(0);
  private Sound now = Sound.silence(PAUSE_SECONDS);
  private int at;
  private int said;
  private long samples;
  private boolean between;
  private boolean pulled;

  /**
   * A line that has not been used.
   *
   * @param key is pressed when the crew turns to the tool again
   * @param seconds by this line's clock, after which nothing more comes
   */
  SoakLine(List<Sound> recordings, Key key, double seconds) {
    this.recordings = List.copyOf(recordings);
    this.key = key;
    this.endsAtSample = Math.round(seconds * Sound.RATE);
  }

  @Override
  public String name() {
    return "simulated headset";
  }

  /** How much time has gone by on this line's clock. */
  double seconds() {
    return samples / (double) Sound.RATE;
  }

  @Override
  public int read(short[] into, int from, int most) throws LostDevice {
    if (samples >= endsAtSample) {
      return END;
    }
    if (at == now.length()) {
      now = next();
      at = 0;
    }
    if (pulled) {
      pulled = false;
      throw new LostDevice("The microphone " + name() + " is gone.");
    }
    int count = Math.min(most, now.length() - at);
    for (int i = 0; i < count; i++) {
      into[from + i] = now.sample(at + i);
    }
    at += count;
    samples += count;
    return count;
  }

  private Sound next() {
    if (!between && said > 0 && said % IN_A_ROW == 0) {
      between = true;
      return something();
    }
    if (between) {
      key.press();
    }
    between = false;
    pulled = said > 0 && said % UNTIL_PULLED == 0;
    Sound recording = recordings.get(said++ % recordings.size());
    return Sound.joined(List.of(recording, Sound.silence(PAUSE_SECONDS)));
  }

  /** What a tool must not take for words: noise, quiet, or speech played backward. */
  private Sound something() {
    double seconds = 5 + 20 * random.nextDouble();
    return switch (random.nextInt(3)) {
      case 0 -> noise(seconds);
      case 1 -> Sound.silence(seconds);
      default -> backward(recordings.get(random.nextInt(recordings.size())));
    };
  }

  private Sound noise(double seconds) {
    short[] noise = new short[(int) (seconds * Sound.RATE)];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (short) Math.round(NOISE * random.nextGaussian());
    }
    return Sound.of(noise);
  }

  private static Sound backward(Sound sound) {
    short[] backward = new short[sound.length()];
    for (int i = 0; i < backward.length; i++) {
      backward[i] = sound.sample(backward.length - 1 - i);
    }
    return Sound.joined(List.of(Sound.of(backward), Sound.silence(PAUSE_SECONDS)));
  }

  @Override
  public long play(Iterable<Sound> parts) {
    parts.forEach(part -> samples += part.length());
    return System.nanoTime();
  }

  @Override
  public void shut() {
    // What is being said goes by unheard.
    at = now.length();
  }

  @Override
  public void reopen(long playedNanos) {
    // The next thing is said when it is listened to.
  }

  @Override
  public void hush() {
    // What is played here takes no time.
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
