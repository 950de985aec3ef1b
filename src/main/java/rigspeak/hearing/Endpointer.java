package rigspeak.hearing;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import rigspeak.audio.Sound;

/**
 * Tells, frame by frame, where an utterance begins and ends.
 *
 * <p>Model: a frame is speech-like if, in one of four {@link Bands} of the voice at least, it is
 * louder than the background by a threshold. The background of a band is what the quietest {@value
 * #STRETCH} frames of the last {@value #BACKGROUND_SECONDS} seconds never exceed, so it follows
 * gusts and noise that sets in, and an utterance also closes in noise that never ends; whoever
 * speaks leaves each band alone for so long again and again.
 *
 * <p>Sphinx4's own detector opens at a fixed distance from a background that creeps up while one
 * speaks; measured, it loses whole sentences in noise. One level for the whole voice loses the soft
 * half of every fourth sentence in broadband noise of 20 dB, and hears gusts as speech.
 */
final class Endpointer {
  /** Samples in a frame: 10 ms. */
  static final int FRAME = Sound.RATE / 100;

  private static final int BACKGROUND_SECONDS = 2;

  /** After so long the background is that of the stream, and no guess any more. */
  private static final int KNOWN_FRAMES = 300;

  /** A stream that does not rise and fall by so much in its first second, dB, begins in noise. */
  private static final double STEADY = 9;

  private static final int FIRST_FRAMES = 100;

  /** An idling saw is silent between two strokes, rain between two drops. */
  private static final int STRETCH = 20;

  /** How much of the level before stays in that of a frame. */
  private static final double SMOOTHING = 0.8;

  /** Nothing below this is called background: a silent line is not infinitely quiet. */
  private static final double QUIETEST = -78;

  /** Of the frames that close an utterance so many, as a share, may be louder: a drop, a stroke. */
  private static final double LOUDER_AT_ITS_END = 0.1;

  private final Settings settings;
  private final double firstGuess;
  private final Bands bands = new Bands();
  private final double[] level = new double[Bands.COUNT];
  private final Background[] backgrounds = new Background[Bands.COUNT];
  private final Deque<Boolean> recent = new ArrayDeque<>();
  private int recentSpeech;
  private long framesHeard;
  private boolean guessing = true;
  private int quietFrames;
  private int framesInUtterance;
  private boolean inUtterance;

  /**
   * When an utterance begins and ends.
   *
   * @param thresholdDecibels how much louder than the background speech is, dB
   * @param onsetFrames speech-like frames among the last {@code onsetWindow} that open an utterance
   * @param onsetWindow in frames of 10 ms
   * @param endFrames frames with hardly any speech that close it
   * @param longestFrames frames after which it is cut off
   */
  record Settings(
      double thresholdDecibels,
      int onsetFrames,
      int onsetWindow,
      int endFrames,
      int longestFrames) {
    int louderAtItsEnd() {
      return (int) (LOUDER_AT_ITS_END * endFrames);
    }
  }

  /** What a frame does to the utterance. */
  enum Turn {
    QUIET,
    BEGINS,
    GOES_ON,
    ENDS,
    TOO_LONG,
    /** What had begun was the noise that the stream begins with. */
    WAS_NOISE
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
    this.firstGuess = firstGuess - 10 * Math.log10(Bands.COUNT);
    Arrays.setAll(backgrounds, band -> new Background());
    Arrays.fill(level, Double.NaN);
  }

  /** Takes the next frame. */
  Turn take(short[] frame) {
    double[] now = bands.take(frame);
    for (int band = 0; band < Bands.COUNT; band++) {
      level[band] =
          framesHeard == 0 ? now[band] : SMOOTHING * level[band] + (1 - SMOOTHING) * now[band];
      backgrounds[band].take(level[band]);
    }
    framesHeard++;
    if (framesHeard == KNOWN_FRAMES) {
      guessing = false;
    }
    if (framesHeard == FIRST_FRAMES && isSteady()) {
      guessing = false;
      if (inUtterance) {
        return over(Turn.WAS_NOISE);
      }
    }
    // A click that is smoothed out in time would begin an utterance.
    return inUtterance ? goOn(isSpeech(level)) : await(isSpeech(now));
  }

  /** The level of the background, dB below full scale after the first difference. */
  double background() {
    double[] levels = new double[Bands.COUNT];
    Arrays.setAll(levels, this::background);
    return Bands.together(levels);
  }

  /** The level of the last frame, dB below full scale after the first difference. */
  double lastLevel() {
    return Bands.together(level);
  }

  /** For how many frames nobody has spoken within the utterance. */
  int quietFrames() {
    return quietFrames;
  }

  private double background(int band) {
    double quietest = backgrounds[band].level();
    return Math.max(QUIETEST, guessing ? Math.min(firstGuess, quietest) : quietest);
  }

  private boolean isSpeech(double[] levels) {
    for (int band = 0; band < Bands.COUNT; band++) {
      if (levels[band] > background(band) + settings.thresholdDecibels()) {
        return true;
      }
    }
    return false;
  }

  private boolean isSteady() {
    for (Background background : backgrounds) {
      if (background.loudest - background.level() >= STEADY) {
        return false;
      }
    }
    return true;
  }

  private Turn await(boolean speech) {
    note(speech, settings.onsetWindow());
    if (recentSpeech < settings.onsetFrames()) {
      return Turn.QUIET;
    }
    begin();
    return Turn.BEGINS;
  }

  private void begin() {
    recent.clear();
    recentSpeech = 0;
    quietFrames = 0;
    framesInUtterance = 0;
    inUtterance = true;
  }

  private Turn goOn(boolean speech) {
    note(speech, settings.endFrames());
    framesInUtterance++;
    quietFrames = speech ? 0 : quietFrames + 1;
    if (recent.size() == settings.endFrames() && recentSpeech <= settings.louderAtItsEnd()) {
      return over(Turn.ENDS);
    }
    return framesInUtterance >= settings.longestFrames() ? over(Turn.TOO_LONG) : Turn.GOES_ON;
  }

  private Turn over(Turn turn) {
    recent.clear();
    recentSpeech = 0;
    inUtterance = false;
    return turn;
  }

  private void note(boolean speech, int most) {
    recent.add(speech);
    recentSpeech += speech ? 1 : 0;
    if (recent.size() > most && recent.remove()) {
      recentSpeech--;
    }
  }

  /** The background of a band. */
  private static final class Background {
    private static final int SLICES = 4;
    private static final int SLICE_FRAMES = BACKGROUND_SECONDS * 100 / SLICES;

    private final double[] stretch = new double[STRETCH];
    private final double[] slices = new double[SLICES];
    private long framesTaken;
    private double loudest = Double.NEGATIVE_INFINITY;

    Background() {
      Arrays.fill(slices, Double.POSITIVE_INFINITY);
    }

    void take(double level) {
      loudest = Math.max(loudest, level);
      stretch[(int) (framesTaken % STRETCH)] = level;
      framesTaken++;
      if (framesTaken >= STRETCH) {
        int slice = (int) (framesTaken / SLICE_FRAMES % SLICES);
        double never = loudestOfTheStretch();
        boolean isNew = framesTaken % SLICE_FRAMES == 0;
        slices[slice] = isNew ? never : Math.min(slices[slice], never);
      }
    }

    /** What the quietest stretch never exceeds; without end before there was any. */
    double level() {
      double lowest = Double.POSITIVE_INFINITY;
      for (double slice : slices) {
        lowest = Math.min(lowest, slice);
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
  }
}
