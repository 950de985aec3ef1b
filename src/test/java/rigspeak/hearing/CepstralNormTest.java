package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import edu.cmu.sphinx.frontend.BaseDataProcessor;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.DataStartSignal;
import edu.cmu.sphinx.frontend.DoubleData;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cepstra are drawn by chance with a known mean and spread: what comes out follows from these. */
class CepstralNormTest {
  private static final int SIZE = CepstrumMap.SIZE;

  private final Random dice = new Random(11);
  private CepstralNorm norm;
  private UtteranceSource source;
  private double[] spread;

  @BeforeEach
  void setUp() {
    ConfigurationManager manager = new ConfigurationManager(Ear.resource("ear.xml"));
    norm = manager.lookup("norm");
    source = manager.lookup("source");
    spread =
        Arrays.stream(
                manager
                    .getPropertySheet("norm")
                    .getString(CepstralNorm.PROP_SPREAD)
                    .split("\\s+", -1))
            .mapToDouble(Double::parseDouble)
            .toArray();
  }

  /** A voice whose sounds lie too far apart, one that is right, and one that noise squeezes. */
  @ParameterizedTest
  @CsvSource({"1.4, 1.00", "1.0, 1.00", "0.9, 1.00", "0.5, 0.625"})
  void theSpreadIsBroughtToTheModelsAndNoiseIsNotDrawnOutFar(double wide, double expected) {
    utterance(2_000, wide, 40);
    List<double[]> out = utterance(2_000, wide, 40);
    for (int i = 0; i < SIZE; i++) {
      double[] numbers = numbers(out, i);
      // Those frames that are thought to have been right pull by a tenth at most.
      assertEquals(
          expected, Math.sqrt(StatUtils.variance(numbers)) / spread[i], 0.1, "number " + i);
      assertEquals(0, StatUtils.mean(numbers) / spread[i], 0.1, "number " + i);
    }
  }

  /**
   * Of a single short word the spread is that of its few sounds, and says little of the voice. By
   * hand: 30 frames so wide and 200 as they should be, the root of 230 over their squares; the
   * spread of so few frames is uncertain by an eighth.
   */
  @ParameterizedTest
  @CsvSource({"0.3, 1.065", "2, 0.848"})
  void aShortWordIsHardlyChanged(double wide, double expected) {
    List<double[]> in = drawn(30, wide, 40, new Random(5));
    List<double[]> out = passed(in, 0);
    double before = in.get(3)[1] - in.get(17)[1];
    double after = out.get(3)[1] - out.get(17)[1];
    assertEquals(expected, after / before, 0.08);
  }

  /** What was heard before helps a short word; another voice begins anew. */
  @Test
  void theVoiceIsRememberedUntilItIsForgotten() {
    for (int i = 0; i < 5; i++) {
      utterance(300, 1.4, 40);
    }
    double remembered = factorOfAShortWord();
    assertEquals(1 / 1.4, remembered, 0.1);
    norm.forget();
    assertTrue(factorOfAShortWord() > remembered + 0.1);
  }

  private double factorOfAShortWord() {
    List<double[]> in = drawn(20, 1.4, 40, new Random(3));
    List<double[]> out = passed(in, 0);
    return (out.get(4)[2] - out.get(12)[2]) / (in.get(4)[2] - in.get(12)[2]);
  }

  /** The search may begin before the utterance is over: at the first pause. */
  @Test
  void nothingIsHeldLongerThanToThePause() {
    Stub in = new Stub(drawn(250, 1, 40, dice), 120);
    norm.setPredecessor(in);
    source.begin(in);
    while (!(norm.getData() instanceof DoubleData)) {
      // The signal that it begins.
    }
    assertEquals(120, in.given, 1);
  }

  private List<double[]> utterance(int frames, double wide, double mean) {
    return passed(drawn(frames, wide, mean, dice), 0);
  }

  private List<double[]> drawn(int frames, double wide, double mean, Random random) {
    List<double[]> drawn = new ArrayList<>();
    for (int n = 0; n < frames; n++) {
      double[] cepstrum = new double[SIZE];
      for (int i = 0; i < SIZE; i++) {
        cepstrum[i] = (i == 0 ? 200 : mean) + wide * spread[i] * random.nextGaussian();
      }
      drawn.add(cepstrum);
    }
    return drawn;
  }

  private List<double[]> passed(List<double[]> cepstra, int pauseAt) {
    Stub in = new Stub(cepstra, pauseAt);
    norm.setPredecessor(in);
    source.begin(in);
    List<double[]> out = new ArrayList<>();
    for (Data data = norm.getData(); !(data instanceof SpeechEndSignal); data = norm.getData()) {
      if (data instanceof DoubleData frame) {
        out.add(frame.getValues());
      }
    }
    return out;
  }

  private static double[] numbers(List<double[]> cepstra, int i) {
    return cepstra.stream().mapToDouble(cepstrum -> cepstrum[i]).toArray();
  }

  /** Hands on cepstra, and knows of a pause at one of them. */
  private static final class Stub extends BaseDataProcessor implements UtteranceSource.Frames {
    private final List<double[]> cepstra;
    private final int pauseAt;
    private boolean begun;
    private int given;

    Stub(List<double[]> cepstra, int pauseAt) {
      this.cepstra = cepstra;
      this.pauseAt = pauseAt;
    }

    @Override
    public Data getData() {
      if (!begun) {
        begun = true;
        return new DataStartSignal(16_000);
      }
      return given < cepstra.size()
          ? new DoubleData(cepstra.get(given++).clone(), 16_000, 160L * given)
          : new SpeechEndSignal();
    }

    @Override
    public short[] next() {
      return null;
    }

    @Override
    public boolean isPausing() {
      return given == pauseAt;
    }
  }
}
