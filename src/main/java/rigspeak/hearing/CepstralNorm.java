package rigspeak.hearing;

import edu.cmu.sphinx.frontend.BaseDataProcessor;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.DataStartSignal;
import edu.cmu.sphinx.frontend.DoubleData;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4Component;
import edu.cmu.sphinx.util.props.S4Double;
import edu.cmu.sphinx.util.props.S4Integer;
import edu.cmu.sphinx.util.props.S4String;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Optional;
import java.util.Queue;

/**
 * Takes the mean of microphone and voice out of the cepstrum, and brings its spread to that of
 * voices the model hears well, while the utterance is still being said.
 *
 * <p>Model: cepstral mean and variance normalisation (O. Viikki and K. Laurila, "Cepstral domain
 * segmental feature vector normalization for noise robust speech recognition", Speech Communication
 * 25 (1998) 133-147). Noise squeezes the cepstrum together, and a voice that buzzes spreads it out.
 * Here the spread is not made one but that which the acoustic model was trained with; of little
 * speech it is not known, and nothing is drawn out far.
 *
 * <p>Sphinx4's own live mean is that of earlier utterances alone, which is another voice's if the
 * recording has changed, and it fails on a stream without speech. Here the first part of each
 * utterance is held back until the speaker pauses, its mean and spread are mixed with what is known
 * from before, and both follow the utterance from there on.
 */
public final class CepstralNorm extends BaseDataProcessor {
  /** Knows when the speaker pauses. */
  @S4Component(type = UtteranceSource.class)
  public static final String PROP_SOURCE = "source";

  /** Frames of each utterance that are held back at most. */
  @S4Integer(defaultValue = 300)
  public static final String PROP_HELD_FRAMES = "heldFrames";

  /** How many frames the mean of earlier utterances counts for. */
  @S4Integer(defaultValue = 50)
  public static final String PROP_EARLIER_FRAMES = "earlierFrames";

  /** How many frames the spread of earlier utterances counts for. */
  @S4Integer(defaultValue = 600)
  public static final String PROP_SPREAD_FRAMES = "spreadFrames";

  /** So many frames are thought to have been heard whose spread was as it should be. */
  @S4Integer(defaultValue = 200)
  public static final String PROP_USUAL_FRAMES = "usualFrames";

  /** The spread that each number is to have: standard deviations, with blanks between. */
  @S4String public static final String PROP_SPREAD = "spread";

  /** How far a number may be squeezed together at most, as a factor. */
  @S4Double(defaultValue = 0.6)
  public static final String PROP_LEAST_FACTOR = "leastFactor";

  /** How far it may be drawn out: what is drawn out of noise is noise. */
  @S4Double(defaultValue = 1.25)
  public static final String PROP_MOST_FACTOR = "mostFactor";

  private UtteranceSource source;
  private int heldFrames;
  private int earlierFrames;
  private int spreadFrames;
  private int usualFrames;
  private double leastFactor;
  private double mostFactor;
  private double[] spread;

  private final Queue<Data> waiting = new ArrayDeque<>();
  private Sums sums = new Sums(0);
  private Optional<Earlier> earlier = Optional.empty();
  private boolean holding;

  /** For Sphinx4's configuration. */
  public CepstralNorm() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    super.newProperties(sheet);
    source = (UtteranceSource) sheet.getComponent(PROP_SOURCE);
    heldFrames = sheet.getInt(PROP_HELD_FRAMES);
    earlierFrames = sheet.getInt(PROP_EARLIER_FRAMES);
    spreadFrames = sheet.getInt(PROP_SPREAD_FRAMES);
    usualFrames = sheet.getInt(PROP_USUAL_FRAMES);
    leastFactor = sheet.getDouble(PROP_LEAST_FACTOR);
    mostFactor = sheet.getDouble(PROP_MOST_FACTOR);
    spread =
        Arrays.stream(sheet.getString(PROP_SPREAD).strip().split("\\s+", -1))
            .mapToDouble(Double::parseDouble)
            .toArray();
  }

  /** Forgets the voices heard so far. */
  void forget() {
    earlier = Optional.empty();
  }

  @Override
  public Data getData() {
    if (!waiting.isEmpty()) {
      return passed(waiting.remove());
    }
    Data data = getPredecessor().getData();
    if (data instanceof DataStartSignal) {
      sums = new Sums(spread.length);
      holding = true;
    } else if (data instanceof DoubleData frame) {
      if (holding) {
        holdFrom(data);
        return passed(waiting.remove());
      }
      sums.add(frame.getValues());
    }
    return passed(data);
  }

  private void holdFrom(Data first) {
    Data data = first;
    while (data != null) {
      waiting.add(data);
      if (data instanceof DoubleData frame) {
        sums.add(frame.getValues());
      }
      if (waiting.size() >= heldFrames || source.isPausing() || data instanceof SpeechEndSignal) {
        break;
      }
      data = getPredecessor().getData();
    }
    holding = false;
  }

  private Data passed(Data data) {
    if (data instanceof SpeechEndSignal && sums.count > 0) {
      earlier = Optional.of(remembered());
    }
    if (data instanceof DoubleData frame) {
      double[] cepstrum = frame.getValues();
      for (int i = 0; i < cepstrum.length; i++) {
        cepstrum[i] = factor(i) * (cepstrum[i] - mean(i));
      }
    }
    return data;
  }

  private double mean(int i) {
    double before = earlier.isPresent() ? earlierFrames : 0;
    double sum = before == 0 ? 0 : before * earlier.get().mean[i];
    double count = sums.count + before;
    return count == 0 ? 0 : (sums.sum[i] + sum) / count;
  }

  private double factor(int i) {
    double usual = usualFrames * spread[i] * spread[i];
    double variance = variance(i, usual, usualFrames);
    return Math.max(leastFactor, Math.min(mostFactor, spread[i] / Math.sqrt(variance)));
  }

  /** With what else is thought to have been heard: the sum of so many squares. */
  private double variance(int i, double moreSquares, int moreFrames) {
    double before = earlier.map(e -> Math.min(spreadFrames, e.frames)).orElse(0L);
    double squares = before == 0 ? 0 : before * earlier.get().variance[i];
    return (sums.squares(i) + squares + moreSquares) / (sums.count + before + moreFrames);
  }

  private Earlier remembered() {
    double[] means = new double[spread.length];
    double[] variances = new double[spread.length];
    for (int i = 0; i < spread.length; i++) {
      means[i] = mean(i);
      variances[i] = variance(i, 0, 0);
    }
    return new Earlier(means, variances, earlier.map(e -> e.frames).orElse(0L) + sums.count);
  }

  /** What was heard before: as a class, for a record would show its arrays. */
  private static final class Earlier {
    private final double[] mean;
    private final double[] variance;
    private final long frames;

    Earlier(double[] mean, double[] variance, long frames) {
      this.mean = mean;
      this.variance = variance;
      this.frames = frames;
    }
  }

  /** Of the utterance so far. */
  private static final class Sums {
    private final double[] sum;
    private final double[] square;
    private long count;

    Sums(int size) {
      sum = new double[size];
      square = new double[size];
    }

    void add(double[] cepstrum) {
      // Frames without any energy say nothing about the voice.
      if (cepstrum[0] < 0) {
        return;
      }
      for (int i = 0; i < sum.length; i++) {
        sum[i] += cepstrum[i];
        square[i] += cepstrum[i] * cepstrum[i];
      }
      count++;
    }

    /** Squared distances from their mean. */
    double squares(int i) {
      return count == 0 ? 0 : Math.max(0, square[i] - sum[i] * sum[i] / count);
    }
  }
}
