package rigspeak.app;

import java.util.List;
import java.util.Random;
import rigspeak.audio.LostDevice;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.Sound;

/**
 * A headset of a crew on a working day, in compressed time: for some minutes the tool is talked to,
 * then people climb, with quiet, saws and other talk on the line, and it sleeps until a key is
 * pressed; once in a while the plug is pulled. What is played on it takes its time on this line's
 * clock and none on the wall's. Nothing is kept.
 */
final class SoakLine implements Microphone, Loudspeaker {
  /** After a recording, so that it is heard to its end. */
  private static final double PAUSE_SECONDS = 1;

  /** So many recordings, then nobody talks to the tool. */
  private static final int IN_A_ROW = 12;

  /** So many recordings, then its plug is pulled. */
  private static final int UNTIL_PULLED = 100;

  private static final int NOISE = 1_500;

  /** A saw whose engine is blipped is an utterance for as long as one may last. */
  private static final double SAW_SECONDS = 25;

  private static final double BLIP_SECONDS = 1;
  private static final double BLIP_LOUD_SECONDS = 0.7;
  private static final int BETWEEN_BLIPS = 50;

  private final List<Sound> recordings;
  private final Key key;
  private final long endsAtSample;
  private final double restSeconds;
  private final Random random = new Random(0);
  private Sound now = Sound.silence(PAUSE_SECONDS);
  private int at;
  private int said;
  private int somethings;
  private long samples;
  private boolean resting;
  private double restLeft;
  private boolean saw;
  private boolean pulled;

  /**
   * A line that has not been used.
   *
   * @param key is pressed when the crew turns to the tool again
   * @param seconds by this line's clock, after which nothing more comes
   * @param restSeconds for so long, on average, nobody talks to the tool after some recordings
   */
  SoakLine(List<Sound> recordings, Key key, double seconds, double restSeconds) {
    this.recordings = List.copyOf(recordings);
    this.key = key;
    this.endsAtSample = Math.round(seconds * Sound.RATE);
    this.restSeconds = restSeconds;
  }

  @Override
  public String name() {
    return "simulated headset";
  }

  /** How much time has gone by on this line's clock. */
  double seconds() {
    return samples / (double) Sound.RATE;
  }

  /** For how long the saw goes on that is on the line now; 0 if there is none. */
  double sawSeconds() {
    return saw ? at / (double) Sound.RATE : 0;
  }

  /** How many recordings have been said. */
  int said() {
    return said;
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
    saw = false;
    if (!resting && said > 0 && said % IN_A_ROW == 0) {
      resting = true;
      restLeft = restSeconds * (0.5 + random.nextDouble());
    }
    if (resting && restLeft > 0) {
      Sound something = something();
      restLeft -= something.seconds();
      return something;
    }
    if (resting && restLeft > Double.NEGATIVE_INFINITY) {
      key.press();
      restLeft = Double.NEGATIVE_INFINITY;
      return Sound.silence(PAUSE_SECONDS);
    }
    resting = false;
    pulled = said > 0 && said % UNTIL_PULLED == 0;
    Sound recording = recordings.get(said++ % recordings.size());
    return Sound.joined(List.of(recording, Sound.silence(PAUSE_SECONDS)));
  }

  /**
   * What a tool must not take for words: by turns a saw, noise, speech played backward, quiet
   * between.
   */
  private Sound something() {
    double seconds = 5 + 20 * random.nextDouble();
    return switch (somethings++ % 6) {
      case 0 -> noise(SAW_SECONDS, BLIP_LOUD_SECONDS);
      case 2 -> noise(seconds, seconds);
      case 4 -> backward(recordings.get(random.nextInt(recordings.size())));
      default -> Sound.silence(seconds);
    };
  }

  /** Loud for so long, then softer for the rest of a second, and so on. */
  private Sound noise(double seconds, double loudSeconds) {
    saw = loudSeconds < seconds;
    double period = Math.max(BLIP_SECONDS, loudSeconds);
    short[] noise = new short[(int) (seconds * Sound.RATE)];
    for (int i = 0; i < noise.length; i++) {
      boolean loud = i / (double) Sound.RATE % period < loudSeconds;
      noise[i] = (short) Math.round((loud ? NOISE : BETWEEN_BLIPS) * random.nextGaussian());
    }
    return Sound.joined(List.of(Sound.of(noise), Sound.silence(PAUSE_SECONDS)));
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
