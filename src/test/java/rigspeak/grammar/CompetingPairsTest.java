package rigspeak.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.grammar.CompetingPairs.Pair;
import rigspeak.grammar.Sentences.Sentence;

/**
 * Phrases that compete in one place must sound unlike, or be guarded by how they are read back.
 *
 * <p>Near means that no more than one phone in three, or a single phone, tells two phrases apart: a
 * recogniser that takes one phone for another is common, and then nothing is left to choose by. The
 * list of all pairs with their distances is written to target/competing-pairs.txt.
 */
class CompetingPairsTest {
  private static final double NEAR_SHARE = 0.34;
  private static final int NEAR_PHONES = 1;

  /** Opposites that matter keep at least half of their phones, and three of them, apart. */
  private static final double OPPOSITE_SHARE = 0.5;

  private static final int OPPOSITE_PHONES = 3;

  private static final CompetingPairs COMPETING = new CompetingPairs(Grammar.bundled());

  @Test
  void everyNearPairIsGuardedAndEveryGuardIsNeeded() throws IOException {
    List<Pair> pairs = COMPETING.all();
    write(pairs);
    Set<String> near =
        pairs.stream()
            .filter(CompetingPairsTest::isNear)
            .map(Pair::key)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> guarded = guarded();
    Set<String> unguarded = new TreeSet<>(near);
    unguarded.removeAll(guarded);
    Set<String> needless = new TreeSet<>(guarded);
    needless.removeAll(near);
    assertEquals(Set.of(), unguarded, "near pairs without a guard");
    assertEquals(Set.of(), needless, "guards of pairs that are not near");
  }

  private static boolean isNear(Pair pair) {
    return pair.share() < NEAR_SHARE || pair.phones() <= NEAR_PHONES;
  }

  private static Set<String> guarded() throws IOException {
    try (var in = CompetingPairsTest.class.getResourceAsStream("guarded-pairs.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", 3))
          .peek(cells -> assertFalse(cells[2].isBlank(), cells[0] + " has no reason"))
          .map(cells -> CompetingPairs.key(cells[0], cells[1]))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static void write(List<Pair> pairs) throws IOException {
    Path folder = Files.createDirectories(Path.of("target"));
    List<String> lines =
        pairs.stream().sorted(Comparator.comparingDouble(Pair::share)).map(Pair::toString).toList();
    Files.write(folder.resolve("competing-pairs.txt"), lines, StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "opposites.csv", numLinesToSkip = 1)
  void oppositesThatMatterAreFarApart(String one, String other) {
    Pair pair = COMPETING.between(one, other);
    assertTrue(pair.share() >= OPPOSITE_SHARE, pair::toString);
    assertTrue(pair.phones() >= OPPOSITE_PHONES, pair::toString);
  }

  /** The opposites are words of the grammar, not words that it once had. */
  @ParameterizedTest
  @CsvFileSource(resources = "opposites.csv", numLinesToSkip = 1)
  void oppositesThatMatterCanBeSaid(String one, String other) {
    Set<String> words = new Sentences(Grammar.bundled()).words();
    assertTrue(words.containsAll(List.of(one.split(" ", -1))), one);
    assertTrue(words.containsAll(List.of(other.split(" ", -1))), other);
  }

  @Test
  void everyPlaceOfWordsIsCompared() {
    Set<String> places = COMPETING.places().keySet();
    assertTrue(
        places.containsAll(
            Set.of(
                "opening",
                "command",
                "species_value",
                "union_condition",
                "hitch_value",
                "bark_value",
                "running_over_value",
                "direction",
                "bearing",
                "hour",
                "limb_rise_value",
                "how",
                "distance",
                "diameter",
                "all_up_value",
                "below_hundred",
                "digit",
                "more_wraps")),
        places::toString);
  }

  @Test
  void everySlotAndCommandCompetesAtTheOpening() {
    String opening =
        COMPETING.places().get("opening").stream()
            .map(Sentence::text)
            .collect(Collectors.joining("|", "|", "|"));
    for (String phrase :
        List.of(
            "all up",
            "limb",
            "out",
            "anchor leg",
            "bend",
            "dead wood",
            "two wraps",
            "clipped in",
            "lanyard released",
            "correction",
            "copper lantern",
            "moving rope")) {
      assertTrue(opening.contains("|" + phrase + "|"), phrase + " is not in " + opening);
    }
  }

  // ---- the ruler itself, by pairs counted by hand ----

  @ParameterizedTest
  @CsvSource({
    // F IH F T IY N, F IH F T IY
    "fifteen, fifty, 1",
    // B IY CH, B ER CH
    "beech, birch, 1",
    // L EH F T, R AY T: two exchanged, one left out
    "left, right, 3",
    // the frame tells nothing: W AH N, N AY N
    "at one o'clock, at nine o'clock, 2",
    // two words against none, in the shorter way to say them: N AO DH AH N, R EH D
    "oak, northern red oak, 8",
  })
  void phonesAreCounted(String one, String other, int phones) {
    assertEquals(phones, COMPETING.between(one, other).phones());
    assertEquals(phones, COMPETING.between(other, one).phones());
  }

  @Test
  void sharedWordsAreLeftOutInTheirOrder() {
    assertEquals(
        List.of("up"),
        COMPETING.withoutShared(
            List.of("up", "toward", "the", "stem"), List.of("down", "toward", "the", "stem")));
    assertEquals(List.of("b"), COMPETING.withoutShared(List.of("a", "b"), List.of("b", "a")));
  }
}
