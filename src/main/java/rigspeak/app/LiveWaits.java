package rigspeak.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import rigspeak.audio.Sound;

/**
 * How long one waits for an answer, as one hears it: from the last loud sample of what is said into
 * the microphone's line to the first sample on the loudspeaker's. Both lines are recorded alike, so
 * that what the recorders add cancels.
 */
final class LiveWaits {
  /** Longer than any pause in an answer. */
  private static final double ANSWER_OVER_SECONDS = 0.8;

  private static final double PATIENCE_SECONDS = 120;

  /**
   * A sink of PulseAudio that leads nowhere makes its first two seconds at once, and what is played
   * meanwhile comes after them.
   */
  private static final double FIRST_BLOCK_SECONDS = 2.5;

  private final double start;
  private final double[] seconds;

  private LiveWaits(double start, double[] seconds) {
    this.start = start;
    this.seconds = seconds;
  }

  /** From the start of the tool to its first sound, which says that it listens; seconds. */
  double start() {
    return start;
  }

  /** The wait after each recording, seconds. */
  double[] seconds() {
    return seconds.clone();
  }

  /** Times them; each recording is said when the answer to the one before has ended. */
  static LiveWaits of(List<Path> recordings) throws IOException {
    try (SoundLoop loop = SoundLoop.open();
        Tap said = loop.tap(SoundLoop.SAID);
        Tap answered = loop.tap(SoundLoop.ANSWERED)) {
      answered.awaitLength((int) (FIRST_BLOCK_SECONDS * Sound.RATE), PATIENCE_SECONDS);
      long began = System.nanoTime();
      Process tool =
          loop.rigspeak("listen", "--always-open")
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      try {
        int at = answered.awaitSound(0, PATIENCE_SECONDS);
        double start = (answered.arrivedNanos(at) - began) / 1e9;
        double[] waits = new double[recordings.size()];
        for (int i = 0; i < waits.length; i++) {
          at = answered.awaitQuiet(at, ANSWER_OVER_SECONDS, PATIENCE_SECONDS);
          int before = said.length();
          loop.say(recordings.get(i));
          at = answered.awaitSound(at, PATIENCE_SECONDS);
          Sound recording = said.part(before, said.length());
          int lastLoud = before + RealTime.lastLoud(recording);
          waits[i] = (answered.arrivedNanos(at) - said.arrivedNanos(lastLoud)) / 1e9;
        }
        return new LiveWaits(start, waits);
      } finally {
        tool.destroy();
      }
    }
  }
}
