package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Sentences;
import rigspeak.hearing.CallMeasurement.Wake;

/** An ear that is asleep, and what wakes it. CallMeasurement does the same by the hour. */
class CallTest {
  private static final Path CORPUS = Path.of("src/test/resources/corpus");
  private static final Path DAY = Path.of("demo-data/one-day");
  private static final Path LIKE = Path.of("src/test/resources/rigspeak/hearing/like-the-call");

  private static final Grammar GRAMMAR = Grammar.bundled();
  private static Ear ear;

  @BeforeAll
  static void open() {
    ear = Ear.open(GRAMMAR);
  }

  private static List<String> wakes(List<Path> recordings) throws IOException {
    List<String> woken = new ArrayList<>();
    for (Path wav : recordings) {
      for (Wake wake : CallMeasurement.wakes(ear, WavFile.open(wav))) {
        woken.add(wav + ": " + wake.words());
      }
    }
    return woken;
  }

  private static boolean isCalled(Path wav) {
    try {
      List<String> words = CorpusMeasurement.wordsBeside(wav);
      return !GRAMMAR.match(words, Expected.call()).isEmpty();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void itIsWokenByTheCallAndHearsTheBreath() throws IOException {
    List<Path> called =
        CallMeasurement.recordings(DAY).stream().filter(CallTest::isCalled).toList();
    assertEquals(5, called.size());
    for (Path wav : called) {
      List<Wake> wakes = CallMeasurement.wakes(ear, WavFile.open(wav));
      assertEquals(1, wakes.size(), wav::toString);
      assertEquals(String.join(" ", CorpusMeasurement.wordsBeside(wav)), wakes.get(0).words());
    }
  }

  /** What is not sure enough to be done is not done, but the call counts; awake there is none. */
  @Test
  void theCallCountsByItselfWhereTheRestIsNotSure() {
    Acceptance.Evidence sure = new Acceptance.Evidence(70, 60, -10, -2, -1, 4, false, 30);
    Acceptance.Evidence hardly = new Acceptance.Evidence(5, 10, -10, -5, -1, 4, false, 30);
    List<String> row = List.of("copper", "lantern", "check", "redirect");
    ear.expect(Expected.call());
    assertTrue(ear.against(row, sure).isPresent(), "as sure as " + ear.surety(sure));
    assertEquals(Optional.of(List.of("copper", "lantern")), ear.callAlone(sure));
    assertEquals(Optional.empty(), ear.callAlone(hardly));
    ear.expect(Expected.anything());
    assertEquals(Optional.empty(), ear.callAlone(sure));
  }

  @Test
  void talkDoesNotWakeIt() throws IOException {
    List<Path> talk = CallMeasurement.recordings(CORPUS.resolve("talk"));
    assertTrue(talk.size() >= 60, () -> talk.size() + " recordings");
    assertEquals(List.of(), wakes(talk));
  }

  /** What would be taken if it were awake. */
  @Test
  void commandsWithoutTheCallDoNotWakeIt() throws IOException {
    List<Path> commands =
        CallMeasurement.recordings(CORPUS.resolve("flite-rms")).stream()
            .filter(wav -> !isCalled(wav))
            .toList();
    assertTrue(commands.size() >= 25, () -> commands.size() + " recordings");
    assertEquals(List.of(), wakes(commands));
  }

  @Test
  void wordsLikeTheCallDoNotWakeIt() throws IOException {
    List<Path> like = CallMeasurement.recordings(LIKE);
    assertEquals(11, like.size());
    assertEquals(List.of(), wakes(like));
  }

  /** The bar: no more than once an hour of talk. Here it is the corpus without its calls. */
  @Test
  @Tag("long")
  void anHourOfTalkDoesNotWakeItTwice() throws IOException {
    List<Path> all =
        CallMeasurement.recordings(CORPUS).stream().filter(wav -> !isCalled(wav)).toList();
    List<Wake> wakes =
        CallMeasurement.wakes(ear, new CallMeasurement.Hours(CallMeasurement.talk(all), 3600));
    assertTrue(wakes.size() <= 1, wakes::toString);
  }

  /** The list of like words begins each line with the call's own. */
  @Test
  void theCallIsTheGrammars() {
    List<String> said =
        new Sentences(GRAMMAR)
            .all(GRAMMAR.phrase("call")).stream().map(sentence -> sentence.text()).toList();
    CallCheck check = CallCheck.read(Ear.class.getResource("/rigspeak/hearing/like-the-call.txt"));
    assertEquals(List.of(String.join(" ", check.call())), said);
  }

  /** A row is the call's if no word like one of the call's own makes it likelier by a lead. */
  @Test
  void theLeadIsOverTheNearestOfAllThatAreLike() {
    CallCheck check = CallCheck.read(Ear.class.getResource("/rigspeak/hearing/like-the-call.txt"));
    List<String> row = List.of("copper", "lantern", "help");
    assertEquals(5, check.lead(row, rows -> likelihoods(rows, 10, 5, "hopper")));
    assertTrue(check.isCall(row, rows -> likelihoods(rows, 10, 5, "hopper")));
    assertTrue(!check.isCall(row, rows -> likelihoods(rows, 10, 40, "lanyard")));
    assertTrue(!check.isCall(List.of("help"), rows -> likelihoods(rows, 10, 5, "hopper")));
    assertTrue(!check.isCall(List.of("copper"), rows -> likelihoods(rows, 10, 5, "hopper")));
  }

  /** A command after the call speaks for it too; alone it has to be nearer. */
  @Test
  void moreIsAskedOfTheBareCall() {
    CallCheck check = CallCheck.read(Ear.class.getResource("/rigspeak/hearing/like-the-call.txt"));
    assertTrue(check.isCall(List.of("copper", "lantern", "help"), rows -> behind(rows, 12)));
    assertTrue(!check.isCall(List.of("copper", "lantern"), rows -> behind(rows, 12)));
    assertTrue(check.isCall(List.of("copper", "lantern"), rows -> behind(rows, 8)));
    assertTrue(!check.isCall(List.of("copper", "lantern", "help"), rows -> behind(rows, 20)));
  }

  /** A phrase that contains the call is compared too, with the rest of the breath after it. */
  @Test
  void aPhraseThatContainsTheCallIsLikeIt() {
    CallCheck check = CallCheck.read(Ear.class.getResource("/rigspeak/hearing/like-the-call.txt"));
    List<String> row = List.of("copper", "lantern", "help");
    List<String> phrase = List.of("copper", "and", "lantern", "help");
    assertEquals(
        -30,
        check.lead(
            row,
            rows ->
                rows.stream()
                    .mapToDouble(r -> r.equals(phrase) ? 30 : r.equals(row) ? 0 : -99)
                    .toArray()));
  }

  /** The first row, which is so much worse than the second; all others are hopeless. */
  private static double[] behind(List<List<String>> rows, double by) {
    double[] all = new double[rows.size()];
    java.util.Arrays.fill(all, -1_000);
    all[0] = 0;
    all[1] = by;
    return all;
  }

  /** The first row as told, the rows with a certain word as told, all others hopeless. */
  private static double[] likelihoods(
      List<List<String>> rows, double first, double special, String word) {
    double[] all = new double[rows.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = rows.get(i).contains(word) ? special : -1_000;
      List<String> row = rows.get(i);
      assertEquals("help", row.get(row.size() - 1), "the rest of the breath stays");
    }
    all[0] = first;
    return all;
  }
}
