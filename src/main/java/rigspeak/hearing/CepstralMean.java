package rigspeak.hearing;

import edu.cmu.sphinx.frontend.BaseDataProcessor;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.DataStartSignal;
import edu.cmu.sphinx.frontend.DoubleData;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4Integer;
import java.util.ArrayDeque;
import java.util.Queue;

/**
 * Takes the microphone's and the voice's mean out of the cepstrum while the utterance is still
 * being said.
 *
 * <p>Sphinx4's own live mean is that of earlier utterances alone, which is another voice's if the
 * recording has changed, and it fails on a stream without speech. Here the first part of each
 * utterance is held back, its mean is mixed with what is known from before, and the mean follows
 * the utterance from there on.
 */
public final class CepstralMean extends BaseDataProcessor {
  /** Frames of each utterance that are held back for its first mean. */
  @S4Integer(defaultValue = 100)
  public static final String PROP_HELD_FRAMES = "heldFrames";

  /** How many frames the mean of earlier utterances counts for. */
  @S4Integer(defaultValue = 50)
  public static final String PROP_EARLIER_FRAMES = "earlierFrames";

  private int heldFrames;
  private int earlierFrames;
  private final Queue<Data> waiting = new ArrayDeque<>();
  private double[] earlierMean = new double[0];
  private double[] sum = new double[0];
  private int count;
  private boolean holding;

  /** For Sphinx4's configuration. */
  public CepstralMean() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    super.newProperties(sheet);
    heldFrames = sheet.getInt(PROP_HELD_FRAMES);
    earlierFrames = sheet.getInt(PROP_EARLIER_FRAMES);
  }

  /** Forgets the voices heard so far. */
  void forget() {
    earlierMean = new double[0];
  }

  @Override
  public Data getData() {
    if (!waiting.isEmpty()) {
      return passed(waiting.remove());
    }
    Data data = getPredecessor().getData();
    if (data instanceof DataStartSignal) {
      begin();
    } else if (data instanceof DoubleData frame) {
      if (holding) {
        holdFrom(data);
        return passed(waiting.remove());
      }
      count(frame.getValues());
    }
    return passed(data);
  }

  private void begin() {
    sum = new double[0];
    count = 0;
    holding = true;
  }

  private void holdFrom(Data first) {
    Data data = first;
    while (data != null) {
      waiting.add(data);
      if (data instanceof DoubleData frame) {
        count(frame.getValues());
      }
      if (waiting.size() >= heldFrames || data instanceof SpeechEndSignal) {
        break;
      }
      data = getPredecessor().getData();
    }
    holding = false;
  }

  private void count(double[] cepstrum) {
    if (sum.length == 0) {
      sum = new double[cepstrum.length];
    }
    // Frames without any energy say nothing about the voice.
    if (cepstrum[0] >= 0) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += cepstrum[i];
      }
      count++;
    }
  }

  private Data passed(Data data) {
    if (data instanceof SpeechEndSignal && count > 0) {
      earlierMean = mean();
    }
    if (data instanceof DoubleData frame) {
      double[] cepstrum = frame.getValues();
      double[] mean = mean();
      for (int i = 0; i < mean.length; i++) {
        cepstrum[i] -= mean[i];
      }
    }
    return data;
  }

  private double[] mean() {
    double[] mean = new double[sum.length];
    int earlier = earlierMean.length == sum.length ? earlierFrames : 0;
    for (int i = 0; i < mean.length && count + earlier > 0; i++) {
      mean[i] = (sum[i] + (earlier > 0 ? earlier * earlierMean[i] : 0)) / (count + earlier);
    }
    return mean;
  }
}
