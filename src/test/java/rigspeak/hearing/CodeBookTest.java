package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.tiedmixture.MixtureComponentSet;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.tiedmixture.PrunableMixtureComponent;
import edu.cmu.sphinx.util.LogMath;
import java.util.ArrayList;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Second opinion: Sphinx4's own search for the best densities, which the code book stands for. */
class CodeBookTest {
  private static final int STREAMS = 3;
  private static final int COUNT = 128;
  private static final int SIZE = 13;
  private static final int FRAMES = 200;
  private static final float LEAST_VARIANCE = 1e-4f;

  /** Numbers of 32 bits of up to 2^14 have steps of 1/1024 in a natural logarithm. */
  private static final double STEP = 1.0 / 1024;

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 8})
  void theBestDensitiesAndWhatTheyAreWorthAreTheSame(int top) {
    SplittableRandom dice = new SplittableRandom(top);
    float[][][] means = new float[STREAMS][COUNT][];
    float[][][] variances = new float[STREAMS][COUNT][];
    ArrayList<PrunableMixtureComponent[]> components = new ArrayList<>();
    for (int stream = 0; stream < STREAMS; stream++) {
      PrunableMixtureComponent[] ofStream = new PrunableMixtureComponent[COUNT];
      for (int k = 0; k < COUNT; k++) {
        means[stream][k] = numbers(dice, SIZE, -2, 2);
        // Some are below the floor.
        variances[stream][k] = numbers(dice, SIZE, 0, k % 10 == 0 ? 2e-4 : 2);
        ofStream[k] =
            new PrunableMixtureComponent(
                means[stream][k],
                null,
                null,
                variances[stream][k],
                null,
                null,
                0,
                LEAST_VARIANCE,
                k);
      }
      components.add(ofStream);
    }
    MixtureComponentSet theirs = new MixtureComponentSet(components, top);
    CodeBook ours = new CodeBook(3, means, variances, LEAST_VARIANCE, top);
    for (int i = 0; i < FRAMES; i++) {
      FloatData frame = new FloatData(numbers(dice, STREAMS * SIZE, -3, 3), 16_000, 160L * (i + 1));
      theirs.updateTopScores(frame);
      // Every other one is a frame that remembers, and is asked twice.
      Data heard = i % 2 == 0 ? frame : HeardFrame.of(frame);
      ours.best(heard);
      CodeBook.Best best = ours.best(heard);
      double peaks = 0;
      for (int stream = 0; stream < STREAMS; stream++) {
        double peak = ln(theirs.getTopGauScore(stream, top - 1));
        peaks += peak;
        for (int place = 0; place < top; place++) {
          assertEquals(theirs.getTopGauId(stream, place), best.number(stream, place));
          double share = Math.exp(ln(theirs.getTopGauScore(stream, place)) - peak);
          assertEquals(share, best.share(stream, place), STEP * share);
        }
      }
      assertEquals(peaks, best.peak(), STREAMS * STEP);
    }
  }

  private static double ln(float score) {
    return LogMath.getLogMath().logToLn(score);
  }

  private static float[] numbers(SplittableRandom dice, int count, double low, double high) {
    float[] numbers = new float[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = (float) dice.nextDouble(low, high);
    }
    return numbers;
  }
}
