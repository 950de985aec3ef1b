package rigspeak.hearing;

import edu.cmu.sphinx.frontend.BaseDataProcessor;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.DoubleData;

/**
 * Maps each cepstrum as the profile of the person says; without a profile it hands on what comes.
 *
 * <p>It stands before the differences over time are taken, so that these are mapped too.
 */
public final class SpeakerTransform extends BaseDataProcessor {
  private double[][] rows = new double[0][];

  /** For Sphinx4's configuration. */
  public SpeakerTransform() {}

  /** Takes this map from the next utterance on. */
  void use(CepstrumMap map) {
    rows = map.equals(CepstrumMap.none()) ? new double[0][] : map.toArray();
  }

  @Override
  public Data getData() {
    Data data = getPredecessor().getData();
    if (rows.length > 0 && data instanceof DoubleData frame) {
      return new DoubleData(
          mapped(frame.getValues()), frame.getSampleRate(), frame.getFirstSampleNumber());
    }
    return data;
  }

  private double[] mapped(double[] cepstrum) {
    double[] mapped = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      double sum = rows[i][cepstrum.length];
      for (int k = 0; k < cepstrum.length; k++) {
        sum += rows[i][k] * cepstrum[k];
      }
      mapped[i] = sum;
    }
    return mapped;
  }
}
