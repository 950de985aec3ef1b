package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/** Rows laid along recordings of which it is known what is said in them. */
class LineUpTest {
  private static final Path CORPUS = Path.of("src/test/resources/corpus");

  private static Ear ear;

  @BeforeAll
  static void open() {
    ear = Ear.open(Grammar.bundled());
  }

  private static List<String> words(String text) {
    return List.of(text.split(" ", -1));
  }

  /** The likelihood of each row, when the recording has just been heard. */
  private static double[] along(String recording, String... rows) throws IOException {
    List<double[]> likelihoods = new ArrayList<>();
    List<List<String>> all = Arrays.stream(rows).map(LineUpTest::words).toList();
    whenHeard(recording, evidence -> likelihoods.add(ear.likelihoods(all)));
    return likelihoods.get(0);
  }

  /** Shows what speaks for the one row that is found in a recording. */
  private static void whenHeard(String recording, Consumer<Acceptance.Evidence> watcher)
      throws IOException {
    List<List<String>> found = new ArrayList<>();
    ear.watch(
        (words, evidence) -> {
          found.add(words);
          watcher.accept(evidence);
        });
    CorpusMeasurement.heard(ear, CORPUS.resolve(recording), Expected.anything());
    ear.watch((words, evidence) -> {});
    assertEquals(1, found.size(), found.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "festival-slt/130.wav, limb rises fifteen, limb rises fifty",
    "festival-ked/131.wav, limb rises fifty, limb rises fifteen",
    "flite-awb/017.wav, limb eight inches by tape, limb nine inches by tape",
    "flite-awb/017.wav, limb eight inches by tape, limb eight inches by eye",
    "flite-awb/017.wav, limb eight inches by tape, limb eight inches",
    "flite-rms/018.wav, limb nine inches by eye, limb five inches by eye",
    "flite-slt/094.wav, correction stem fifteen inches, correction stem fifty inches"
  })
  void whatIsSaidFitsBetterThanWhatIsNot(String recording, String said, String not)
      throws IOException {
    double[] both = along(recording, said, not);
    assertTrue(both[0] > both[1], Arrays.toString(both));
  }

  /**
   * Each row is looked at by itself: neither its place nor its neighbours change what it comes to.
   */
  @Test
  void rowsDoNotDisturbEachOther() throws IOException {
    List<String> one = words("limb eight inches by tape");
    List<String> two = words("limb nine inches by tape");
    whenHeard(
        "flite-awb/017.wav",
        evidence -> {
          double[] both = ear.likelihoods(List.of(one, two));
          double[] turned = ear.likelihoods(List.of(two, one, one));
          assertArrayEquals(new double[] {both[1], both[0], both[0]}, turned);
        });
  }

  /** More words than there is sound for: three states a phone, a frame a state at the least. */
  @Test
  void aRowThatIsTooLongCannotBe() throws IOException {
    String[] many = new String[40];
    Arrays.fill(many, "correction");
    double[] likelihoods = along("flite-awb/017.wav", String.join(" ", many));
    assertEquals(Double.NEGATIVE_INFINITY, likelihoods[0]);
  }

  /** What is taken is ahead of all that it may have been taken for. */
  @ParameterizedTest
  @CsvSource({"festival-slt/130.wav, limb rises fifteen", "festival-ked/131.wav, limb rises fifty"})
  void theLeadOverTheNearestRival(String recording, String said) throws IOException {
    List<List<String>> both = new ArrayList<>(List.of(words(said)));
    both.add(words(said.endsWith("fifty") ? "limb rises fifteen" : "limb rises fifty"));
    whenHeard(
        recording,
        evidence -> {
          double[] likelihoods = ear.likelihoods(both);
          double lead = evidence.overRival();
          assertTrue(lead > 0 && lead <= likelihoods[0] - likelihoods[1], evidence::toString);
        });
  }
}
