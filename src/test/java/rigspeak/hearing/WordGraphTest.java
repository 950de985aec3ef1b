package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

final class WordGraphTest {
  private static final Grammar GRAMMAR = Grammar.bundled();

  @TempDir Path folder;

  private static List<Expected> expectations() {
    return List.of(
        Expected.anything(), Expected.answerFor("limb_diameter"), Expected.only("working_leg"));
  }

  @Test
  void whatTheGraphAllowsTheMatcherReads() {
    Random dice = new Random(11);
    for (Expected expected : expectations()) {
      WordGraph graph = WordGraph.of(GRAMMAR, expected);
      for (int i = 0; i < 2_000; i++) {
        List<String> words = stroll(graph, dice);
        assertFalse(GRAMMAR.match(words, expected).isEmpty(), () -> "not read: " + words);
      }
    }
  }

  @Test
  void theGraphAndTheMatcherAgreeAboutSpoiltRows() {
    Random dice = new Random(12);
    for (Expected expected : expectations()) {
      WordGraph graph = WordGraph.of(GRAMMAR, expected);
      List<String> all = List.copyOf(graph.words());
      int allowed = 0;
      for (int i = 0; i < 2_000; i++) {
        List<String> words = new ArrayList<>(stroll(graph, dice));
        int at = dice.nextInt(words.size());
        switch (dice.nextInt(3)) {
          case 0 -> words.remove(at);
          case 1 -> words.add(at, all.get(dice.nextInt(all.size())));
          default -> words.set(at, all.get(dice.nextInt(all.size())));
        }
        boolean read = !GRAMMAR.match(words, expected).isEmpty();
        assertEquals(read, graph.allows(words), words::toString);
        allowed += read ? 1 : 0;
      }
      assertTrue(allowed > 0 && allowed < 2_000, "both kinds were among them: " + allowed);
    }
  }

  @Test
  void everyWayIsMergedThatCanBe() throws IOException {
    WordGraph graph =
        WordGraph.of(
            grammar("public <utterance> = a c | b c | (a | b) [d] c;"), Expected.anything());

    // By hand: start; after a or b; after d; the end.
    assertEquals(4, graph.next().size());
    assertTrue(graph.allows(List.of("b", "d", "c")));
    assertFalse(graph.allows(List.of("b", "d")));
    assertFalse(graph.allows(List.of("d", "c")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a a", "a a a a b", "a b a b", "b"})
  void repetitionIsUnderstood(String text) throws IOException {
    WordGraph graph =
        WordGraph.of(grammar("public <utterance> = (a+ [b])+ | b;"), Expected.anything());

    assertTrue(graph.allows(List.of(text.split(" ", -1))));
    assertFalse(graph.allows(List.of()));
    assertFalse(graph.allows(List.of("b", "a")));
  }

  @Test
  void aRuleThatContainsItselfIsRefused() throws IOException {
    Grammar endless = grammar("public <utterance> = a [<utterance>] b;");

    HearingFault fault =
        assertThrows(HearingFault.class, () -> WordGraph.of(endless, Expected.anything()));
    assertTrue(fault.getMessage().startsWith("The grammar has a rule that contains itself"));
  }

  private Grammar grammar(String rules) throws IOException {
    Path file = folder.resolve("g.jsgf");
    Files.writeString(file, "#JSGF V1.0;\ngrammar g;\n" + rules + "\n");
    return Grammar.read(file.toUri().toURL());
  }

  /** A row of words found by walking at random, ended at the first chance after some words. */
  private static List<String> stroll(WordGraph graph, Random dice) {
    List<String> words = new ArrayList<>();
    int place = 0;
    int enough = dice.nextInt(12);
    while (words.isEmpty() || words.size() < enough || !graph.mayEnd().get(place)) {
      List<String> ways = List.copyOf(graph.next().get(place).keySet());
      if (ways.isEmpty()) {
        break;
      }
      String word = ways.get(dice.nextInt(ways.size()));
      words.add(word);
      place = graph.next().get(place).get(word);
    }
    return words;
  }
}
