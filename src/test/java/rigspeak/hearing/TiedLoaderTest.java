package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.HMMPosition;
import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Senone;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.SenoneHMM;
import edu.cmu.sphinx.linguist.acoustic.tiedstate.Sphinx3Loader;
import edu.cmu.sphinx.util.LogMath;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Second opinion: Sphinx4's own loader. */
class TiedLoaderTest {
  private static TiedLoader ours;
  private static Sphinx3Loader theirs;

  @BeforeAll
  static void load() throws Exception {
    ours = new ConfigurationManager(Ear.resource("ear.xml")).lookup("modelLoader");
    ours.load();
    theirs =
        new Sphinx3Loader(
            "resource:/edu/cmu/sphinx/models/en-us/en-us",
            new UnitManager(),
            0,
            1e-7f,
            1e-4f,
            8,
            true);
    theirs.load();
  }

  @Test
  void everySoundIsMadeOfTheSameStates() {
    int count = 0;
    for (HMM hmm : theirs.getHMMManager()) {
      SenoneHMM expected = (SenoneHMM) hmm;
      SenoneHMM found =
          (SenoneHMM) ours.getHMMManager().get(expected.getPosition(), expected.getUnit());

      assertEquals(states(expected), states(found), expected::toString);
      assertEquals(expected.getUnit(), found.getUnit());
      assertEquals(expected.getPosition(), found.getPosition());
      assertTrue(
          Arrays.deepEquals(expected.getTransitionMatrix(), found.getTransitionMatrix()),
          expected::toString);
      count++;
    }
    assertEquals(137_095, count);
  }

  private static List<Long> states(SenoneHMM hmm) {
    return Arrays.stream(hmm.getSenoneSequence().getSenones()).map(Senone::getID).toList();
  }

  @Test
  void whatTheModelDoesNotHaveIsNotThere() {
    for (Unit phone : theirs.getContextIndependentUnits().values()) {
      for (HMMPosition position : HMMPosition.values()) {
        assertEquals(
            theirs.getHMMManager().get(position, phone) == null,
            ours.getHMMManager().get(position, phone) == null,
            position + " " + phone);
      }
    }
  }

  @Test
  void phonesCodeBooksAndWeightsAreTheSame() {
    assertEquals(
        new ArrayList<>(theirs.getContextIndependentUnits().entrySet()),
        new ArrayList<>(ours.getContextIndependentUnits().entrySet()));
    assertArrayEquals(theirs.getSenone2Ci(), ours.getSenone2Ci());
    for (int state = 0; state < theirs.getSenone2Ci().length; state++) {
      for (int stream = 0; stream < theirs.getNumStreams(); stream++) {
        for (int k = 0; k < theirs.getNumGaussiansPerState(); k++) {
          double expected =
              LogMath.getLogMath().logToLinear(theirs.getMixtureWeights().get(state, stream, k));
          // Their logarithms, up to 1.6e5 steps of 0.0001, are kept to 1/64 of a step.
          assertEquals(expected, ours.weights().of(state, stream, k), 4e-6 * expected);
        }
      }
    }
  }

  @Test
  void aFrameIsAsLikelyInEveryState() {
    SplittableRandom dice = new SplittableRandom(1);
    int size = 13;
    for (int i = 0; i < 20; i++) {
      float[] values = new float[3 * size];
      for (int k = 0; k < values.length; k++) {
        values[k] = (float) dice.nextDouble(-10, 10);
      }
      FloatData frame = new FloatData(values, 16_000, 160L * (i + 1));
      for (int state = 0; state < theirs.getSenone2Ci().length; state += 7) {
        double expected = theirs.getSenonePool().get(state).getScore(frame);
        double found = ours.getSenonePool().get(state).getScore(frame);
        // They add up 24 logarithms from a table, each to the nearest whole one.
        assertEquals(expected, found, 24, "state " + state);
      }
    }
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(strings = {"", "s3\n", "endhdr\n", "s3\nendhdr\n\1\2\3"})
  void aFileOfNumbersThatIsCutOffIsRefused(String file) {
    byte[] bytes = file.getBytes(StandardCharsets.US_ASCII);

    assertThrows(IOException.class, () -> NumberFile.read(new ByteArrayInputStream(bytes)));
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(strings = {"", "0.3 1", "0.2\n1 n_base", "0.3\n1 n_tri", "0.3\nx n_base"})
  void aListOfSoundsInAnotherFormIsRefused(String file) {
    Tokens tokens = new Tokens(new ByteArrayInputStream(file.getBytes(StandardCharsets.US_ASCII)));

    assertThrows(IOException.class, () -> new SoundTable(tokens, new UnitManager()));
  }
}
