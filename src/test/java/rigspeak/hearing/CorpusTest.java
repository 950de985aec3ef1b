package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;

/** The texts of the corpus: what is to be understood can be, and what is to be refused cannot. */
class CorpusTest {
  private static final Path TEXTS = Path.of("src/test/resources/corpus");
  private static final Grammar GRAMMAR = Grammar.bundled();

  private static List<String> lines(String name) throws IOException {
    return Files.readAllLines(TEXTS.resolve(name)).stream()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }

  private static List<List<String>> commands() throws IOException {
    List<List<String>> all = new ArrayList<>();
    for (String line : lines("commands.txt")) {
      all.add(CorpusMeasurement.normalised(line.replace("*", "")));
    }
    for (String line : lines("wider-commands.txt")) {
      all.add(CorpusMeasurement.normalised(line));
    }
    pairs().forEach(all::addAll);
    return all;
  }

  private static List<List<List<String>>> pairs() throws IOException {
    return lines("pairs.txt").stream()
        .map(line -> line.substring(line.indexOf(':') + 1).split("\\|", -1))
        .map(halves -> Arrays.stream(halves).map(CorpusMeasurement::normalised).toList())
        .toList();
  }

  @Test
  void everyCommandHasOneMeaning() throws IOException {
    List<List<String>> faults =
        commands().stream()
            .filter(words -> GRAMMAR.match(words, Expected.anything()).size() != 1)
            .toList();
    assertEquals(List.of(), faults);
  }

  @Test
  void everyBareAnswerHasOneMeaningOnceItIsAskedFor() throws IOException {
    Understanding understanding = new Understanding(GRAMMAR);
    List<String> faults =
        lines("answers.txt").stream()
            .filter(
                line -> {
                  String[] halves = line.split(":", -1);
                  Slot asked = Slot.of(halves[0]).orElseThrow();
                  return understanding.understand(halves[1], Optional.of(asked))
                      instanceof Meaning.NotUnderstood;
                })
            .toList();
    assertEquals(List.of(), faults);
  }

  @Test
  void noTalkHasAMeaning() throws IOException {
    List<String> talk =
        Stream.concat(lines("talk.txt").stream(), lines("wider-talk.txt").stream()).toList();
    List<String> faults =
        talk.stream()
            .filter(
                line ->
                    !GRAMMAR
                        .match(CorpusMeasurement.normalised(line), Expected.anything())
                        .isEmpty())
            .toList();
    assertEquals(List.of(), faults);
    assertTrue(new TreeSet<>(talk).size() >= 300, "sentences of talk: " + talk.size());
  }

  @Test
  void everyWordOfTheGrammarIsSaidInTheCorpus() throws IOException {
    Set<String> unsaid = new TreeSet<>(WordGraph.of(GRAMMAR, Expected.anything()).words());
    commands().forEach(unsaid::removeAll);
    assertEquals(Set.of(), unsaid);
  }

  @Test
  void thereAreEnoughDifferentCommands() throws IOException {
    int count = new LinkedHashSet<>(commands()).size();
    assertTrue(count >= 400, "different commands: " + count);
  }

  @Test
  void theHalvesOfAPairMeanDifferentThings() throws IOException {
    for (List<List<String>> pair : pairs()) {
      assertEquals(2, pair.size(), pair::toString);
      assertEquals(
          2,
          pair.stream().map(words -> GRAMMAR.match(words, Expected.anything())).distinct().count(),
          pair::toString);
    }
  }
}
