package rigspeak.hearing;

import java.io.IOException;
import java.util.Arrays;
import rigspeak.audio.Meter;
import rigspeak.audio.SoundStream;

/**
 * How well a voice reaches the ear. Levels are in decibels below full scale, after a first
 * difference, in the {@link Bands} of the voice; the peak is that of the samples.
 *
 * @param finding what stands in the way, if anything does
 * @param voiceDecibels level of the loudest frame
 * @param backgroundDecibels level that a tenth of the frames are below: the pauses
 * @param peakDecibels level of the largest sample
 * @param clippedShare share of the samples whose tops are cut off, 0 to 1
 */
public record SoundCheck(
    Finding finding,
    double voiceDecibels,
    double backgroundDecibels,
    double peakDecibels,
    double clippedShare) {

  /** A voice less than this above the background is hardly made out, dB. */
  static final double LEAST_DISTANCE = 11;

  /** A larger share of clipped samples spoils the words. */
  private static final double MOST_CLIPPED = 0.02;

  /** Fewer voiced frames than this are no word: the shortest utterances of the corpus have 21. */
  private static final int LEAST_VOICED = 8;

  private static final double PAUSES = 0.1;

  /** What stands in the way of hearing, the first that does. */
  public enum Finding {
    FINE,
    /** The microphone is overdriven. */
    CLIPPED,
    /** The voice hardly reaches the microphone. */
    TOO_QUIET,
    /** The noise is nearly as loud as the voice. */
    TOO_NOISY,
    /** Nobody speaks. */
    NO_VOICE
  }

  /**
   * Listens for a while.
   *
   * @throws IOException if the sound broke off; the message is one sentence for a person
   */
  public static SoundCheck of(SoundStream stream, double seconds) throws IOException {
    Endpointer levels =
        new Endpointer(Utterances.ends(ClosingPause.ORDINARY), Levels.unknown().firstGuess());
    VoiceDetector voice = new VoiceDetector();
    Meter meter = new Meter();
    double[] frames = new double[(int) Math.round(100 * seconds)];
    short[] frame = new short[Endpointer.FRAME];
    int count = 0;
    while (count < frames.length && fill(frame, stream)) {
      levels.take(frame);
      voice.take(frame);
      meter.add(frame, 0, frame.length);
      frames[count++] = levels.lastLevel();
    }
    if (count == 0) {
      frames = new double[] {Meter.NO_SOUND};
      count = 1;
    }
    Arrays.sort(frames, 0, count);
    double loudest = frames[count - 1];
    double background = frames[(int) (PAUSES * count)];
    Meter.Level level = meter.level();
    return new SoundCheck(
        finding(level.clippedShare(), loudest, background, voice, Levels.unknown().leastLevel()),
        loudest,
        background,
        level.peakDecibels(),
        level.clippedShare());
  }

  static Finding finding(
      double clippedShare,
      double loudest,
      double background,
      VoiceDetector voice,
      double leastLevel) {
    if (clippedShare > MOST_CLIPPED) {
      return Finding.CLIPPED;
    }
    if (loudest < leastLevel) {
      return Finding.TOO_QUIET;
    }
    if (voice.voicedFrames() < LEAST_VOICED) {
      return Finding.NO_VOICE;
    }
    return loudest - background < LEAST_DISTANCE ? Finding.TOO_NOISY : Finding.FINE;
  }

  private static boolean fill(short[] frame, SoundStream stream) throws IOException {
    int length = 0;
    while (length < frame.length) {
      int read = stream.read(frame, length, frame.length - length);
      if (read == SoundStream.END) {
        return false;
      }
      length += read;
    }
    return true;
  }
}
