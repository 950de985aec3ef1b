package rigspeak.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.GrammarFault;

/** A crew's own grammar: what is refused, by which line and why, and what is taken. */
class SuppliedGrammarTest {
  private static final String FILE = "crew/own.jsgf";
  private static final String OWN = read(Path.of("grammars", "rigspeak.jsgf"));
  private static final Grammar BUNDLED = Grammar.bundled();

  record Change(String out, String in, String because) {
    String applied() {
      assertTrue(OWN.contains(out), out);
      return OWN.replace(out, in);
    }

    @Override
    public String toString() {
      return in + " " + because;
    }
  }

  static Stream<Change> refused() throws IOException {
    List<Change> changes = new ArrayList<>();
    try (InputStream in =
        SuppliedGrammarTest.class.getResourceAsStream("/rigspeak/meaning/refused-grammars.txt")) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#") && !line.isBlank())
              .toList();
      for (int i = 0; i < lines.size(); i += 3) {
        changes.add(
            new Change(
                lines.get(i).substring(2),
                lines.get(i + 1).substring(2),
                lines.get(i + 2).substring(3)));
      }
    }
    return changes.stream();
  }

  @ParameterizedTest
  @MethodSource("refused")
  void aGrammarThatIsNotAsItShouldBeIsRefusedWithFileLineAndReason(Change change) {
    String message = refusal(change.applied());
    assertTrue(message.matches("The grammar crew/own.jsgf, line [0-9]+, .*"), message);
    assertEquals(change.because(), message.replaceFirst("^.*?, line [0-9]+, ", ""));
  }

  @Test
  void theLineIsTheOneThatIsAtFault() {
    int line = (int) OWN.substring(0, OWN.indexOf("<seat_value> =")).lines().count() + 1;
    assertEquals(
        "The grammar crew/own.jsgf, line " + line + ", defines <spare>, which nothing leads to.",
        refusal(OWN.replace("<seat_value> =", "<spare> = so; <seat_value> =")));
  }

  @Test
  void theToolsOwnGrammarWouldBeTaken() {
    assertEquals(BUNDLED.ruleNames(), Understandable.read(FILE, OWN, BUNDLED).ruleNames());
  }

  @Test
  void moreWordsForAValueAreTaken() {
    Grammar more =
        Understandable.read(
            FILE, OWN.replace("rough {is rough}", "(rough | coarse) {is rough}"), BUNDLED);
    assertEquals(
        new Understanding(BUNDLED).understand("bark rough", Optional.empty()),
        new Understanding(more).understand("bark coarse", Optional.empty()));
  }

  /** Each of these would keep a careless reader busy for hours, or need all memory there is. */
  @Test
  void whatCannotBeSearchedIsRefused() {
    String doubling =
        IntStream.range(0, 40)
            .mapToObj(i -> "<d%d> = <d%d> <d%d>;\n".formatted(i, i + 1, i + 1))
            .reduce("<d40> = so;\n", String::concat);
    String chain =
        IntStream.range(0, 800)
            .mapToObj(i -> "<d%d> = so <d%d>;\n".formatted(i, i + 1))
            .reduce("<d800> = so;\n", String::concat);
    for (String rules : List.of(doubling, chain)) {
      String message =
          refusal(OWN.replace("<said> = <command>", "<said> = <d0> | <command>") + rules);
      assertTrue(message.contains(" than can be searched"), message);
    }
    String crowd =
        IntStream.range(0, 1_100)
            .mapToObj(i -> "<d%d> = so;\n".formatted(i))
            .reduce("", String::concat);
    assertEquals("The grammar crew/own.jsgf has more than 1000 rules.", refusal(OWN + crowd));
    assertEquals(
        "The grammar crew/own.jsgf is longer than 200000 characters.",
        refusal(OWN + "\n".repeat(200_000)));
  }

  @Test
  void aRowWithTooManyReadingsIsNotUnderstood() {
    Grammar grammar =
        Grammar.read(
            FILE,
            "#JSGF V1.0;\ngrammar g;\npublic <utterance> = (so {slot wood} | so {slot bark})+;\n");
    Understanding understanding = new Understanding(grammar);
    String many = "so ".repeat(80);
    assertEquals(
        new Meaning.NotUnderstood(Meaning.Reason.NO_SUCH_SENTENCE, many.strip()),
        understanding.understand(many, Optional.empty()));
  }

  private static String refusal(String text) {
    return assertThrows(GrammarFault.class, () -> Understandable.read(FILE, text, BUNDLED))
        .getMessage();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
