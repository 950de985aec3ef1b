package rigspeak.hearing;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;

/**
 * Tells, frame by frame, where an utterance begins and ends.
 *
 * <p>Model: a frame is speech-like if it is louder than the background by a threshold. The
 * background is the quietest tenth of a second of the last {@value #BACKGROUND_SECONDS} seconds, by
 * its loudest moment, so it follows noise that sets in within that time, and an utterance also
 * closes in noise that never ends. Levels are taken after a first difference, which makes
 * consonants count and the rumble of wind not.
 *
 * <p>Sphinx4's own detector opens at a fixed distance from a background that creeps up while one
 * speaks; measured, it loses whole sentences in noise.
 */
final class Endpointer {
  /** Samples in a frame: 10 ms. */
  static final int FRAME = Sound.RATE / 100;

  private static final double BACKGROUND_SECONDS = 6;
  private static final int SLICES = 12;
  private static final int SLICE_FRAMES = (int) (BACKGROUND_SECONDS * 100 / SLICES);

  /** A stream that does not rise and fall by so much in its first second, dB, begins in noise. */
  private static final double STEADY = 9;

  private static final int FIRST_FRAMES = 100;

  /**
   * The background is what a stretch of so many frames never exceeds: an idling saw is silent
   * between two strokes.
   */
  private static final int STRETCH = 10;

  private static final double EMPHASIS = 0.97;

  /** Nothing below this is called background: a silent line is not infinitely quiet. */
  private static final double QUIETEST = -72;

  private final Settings settings;
  private final double firstGuess;
  private final double[] slices = new double[SLICES];
  private final double[] stretch = new double[STRETCH];
  private final Deque<Boolean> recent = new ArrayDeque<>();
  private int slice;
  private long framesHeard;
  private double loudest = Double.NEGATIVE_INFINITY;
  private boolean guessing = true;
  private int framesInSlice;
  private double smoothed = Double.NaN;
  private double previousSample;
  private int recentSpeech;
  private int quietFrames;
  private int framesInUtterance;
  private boolean inUtterance;

  /**
   * When an utterance begins and ends.
   *
   * @param thresholdDecibels how much louder than the background speech is, dB
   * @param onsetFrames speech-like frames among the last {@code onsetWindow} that open an utterance
   * @param onsetWindow in frames of 10 ms
   * @param endFrames frames without speech that close it
   * @param longestFrames frames after which it is cut off
   */
  record Settings(
      double thresholdDecibels,
      int onsetFrames,
      int onsetWindow,
      int endFrames,
      int longestFrames) {}

  /** What a frame does to the utterance. */
  enum Turn {
    QUIET,
    BEGINS,
    GOES_ON,
    ENDS,
    TOO_LONG
  }

  Endpointer(Settings settings) {
    this(settings, Levels.unknown().firstGuess());
  }

  /**
   * Begins with a guess.
   *
   * @param firstGuess what the background is until something quieter has been heard or the stream
   *     is known, dB
   */
  Endpointer(Settings settings, double firstGuess) {
    this.settings = settings;
    this.firstGuess = firstGuess;
    Arrays.fill(slices, Double.POSITIVE_INFINITY);
  }

  /** Takes the next frame. */
  Turn take(short[] frame) {
    double level = level(frame);
    smoothed = Double.isNaN(smoothed) ? level : 0.5 * smoothed + 0.5 * level;
    stretch[(int) (framesHeard % STRETCH)] = smoothed;
    framesHeard++;
    if (framesHeard >= STRETCH) {
      follow(loudestOfTheStretch());
    }
    guessNoLonger();
    boolean speech = smoothed > background() + settings.thresholdDecibels();
    return inUtterance ? goOn(speech) : wait(speech);
  }

  /** The level of the background, dB below full scale after the first difference. */
  double background() {
    return Math.max(QUIETEST, guessing ? Math.min(firstGuess, quietest()) : quietest());
  }

  private double quietest() {
    double lowest = Double.POSITIVE_INFINITY;
    for (double level : slices) {
      lowest = Math.min(lowest, level);
    }
    return lowest;
  }

  private double loudestOfTheStretch() {
    double highest = Double.NEGATIVE_INFINITY;
    for (double level : stretch) {
      highest = Math.max(highest, level);
    }
    return highest;
  }

  /** The level of the last frame, dB below full scale after the first difference. */
  double lastLevel() {
    return smoothed;
  }

  /** For how many frames nobody has spoken within the utterance. */
  int quietFrames() {
    return quietFrames;
  }

  private Turn wait(boolean speech) {
    recent.add(speech);
    if (speech) {
      recentSpeech++;
    }
    if (recent.size() > settings.onsetWindow() && recent.remove()) {
      recentSpeech--;
    }
    if (recentSpeech < settings.onsetFrames()) {
      return Turn.QUIET;
    }
    recent.clear();
    recentSpeech = 0;
    quietFrames = 0;
    framesInUtterance = 0;
    inUtterance = true;
    return Turn.BEGINS;
  }

  private Turn goOn(boolean speech) {
    framesInUtterance++;
    quietFrames = speech ? 0 : quietFrames + 1;
    if (quietFrames >= settings.endFrames()) {
      inUtterance = false;
      return Turn.ENDS;
    }
    if (framesInUtterance >= settings.longestFrames()) {
      inUtterance = false;
      return Turn.TOO_LONG;
    }
    return Turn.GOES_ON;
  }

  /** Until a stream is known, the background may be as quiet as was guessed. */
  private void guessNoLonger() {
    loudest = Math.max(loudest, smoothed);
    boolean beginsInNoise = framesHeard == FIRST_FRAMES && loudest - quietest() < STEADY;
    boolean isKnown = framesHeard == SLICES * SLICE_FRAMES;
    guessing &= !beginsInNoise && !isKnown;
  }

  private void follow(double level) {
    if (framesInSlice == 0) {
      slices[slice] = level;
    }
    slices[slice] = Math.min(slices[slice], level);
    framesInSlice++;
    if (framesInSlice == SLICE_FRAMES) {
      framesInSlice = 0;
      slice = (slice + 1) % SLICES;
    }
  }

  private double level(short[] frame) {
    double squares = 0;
    for (short sample : frame) {
      double difference = sample - EMPHASIS * previousSample;
      previousSample = sample;
      squares += difference * difference;
    }
    return Meter.decibels(Math.sqrt(squares / frame.length));
  }
}
