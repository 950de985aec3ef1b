package rigspeak.hearing;

import edu.cmu.sphinx.frontend.BaseDataProcessor;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.DataStartSignal;
import edu.cmu.sphinx.frontend.DoubleData;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import java.util.Arrays;
import java.util.Random;
import rigspeak.audio.Sound;

/**
 * Hands one utterance to Sphinx4 while it is still being said. Sphinx4 pulls; each pull waits until
 * the next frame has arrived.
 */
public final class UtteranceSource extends BaseDataProcessor {
  /** Where the frames of one utterance come from. */
  interface Frames {
    /** The next frame, or null when the utterance is over. */
    short[] next();

    /** Whether nobody has spoken for a moment, so that it may be over soon. */
    default boolean isPausing() {
      return false;
    }
  }

  /**
   * Half the range of the hiss that is added, in sample steps: 74 dB below full scale. The model
   * has never heard the digital silence that made sounds have; after it even clear words do not
   * fit.
   */
  private static final int HISS = 10;

  private final Random hiss = new Random();
  private Frames frames = () -> null;
  private boolean begun;
  private long samples;

  /** For Sphinx4's configuration. */
  public UtteranceSource() {}

  /** The frames of a sound; what is left over at its end is passed over. */
  static Frames framesOf(Sound sound) {
    short[] samples = sound.samples();
    int[] at = {0};
    return () -> {
      int from = at[0];
      at[0] += Endpointer.FRAME;
      return at[0] > samples.length ? null : Arrays.copyOfRange(samples, from, at[0]);
    };
  }

  /** Begins the next utterance. */
  void begin(Frames utterance) {
    frames = utterance;
    begun = false;
    samples = 0;
    // The same sound is heard the same way every time.
    hiss.setSeed(0);
  }

  /** Whether whoever speaks has paused by the frame that was handed on last. */
  boolean isPausing() {
    return frames.isPausing();
  }

  @Override
  public Data getData() {
    if (!begun) {
      begun = true;
      return new DataStartSignal(Sound.RATE, samples);
    }
    short[] frame = frames.next();
    if (frame == null) {
      return new SpeechEndSignal();
    }
    double[] values = new double[frame.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = frame[i] + hiss.nextInt(2 * HISS + 1) - HISS;
    }
    DoubleData data = new DoubleData(values, Sound.RATE, samples);
    samples += values.length;
    return data;
  }
}
