package rigspeak.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A grammar that cannot be used is refused with one sentence that says where and why. */
class GrammarFaultTest {
  private static final String HEADER = "#JSGF V1.0 UTF-8 en;\ngrammar broken;\n";

  @TempDir Path folder;

  @Test
  void aMissingFileIsRefused() throws MalformedURLException {
    Path missing = folder.resolve("nowhere.jsgf");
    assertOneSentence(
        assertThrows(GrammarFault.class, () -> Grammar.read(missing.toUri().toURL())),
        "nowhere.jsgf");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      value = {
        "public <utterance> = limb <size>; @ <size>",
        "public <utterance> = limb [<size>]; @ <size>",
        "public <utterance> = limb (a | <size>+); @ <size>",
        "public <utterance> = limb; <spare> = <size> {add 1}; @ <size>",
      })
  void aNameThatIsNotDefinedIsRefused(String rules, String named) throws IOException {
    assertOneSentence(faultOf(rules), named);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      value = {
        "public <utterance> = <utterance> limb | limb; @ <utterance>",
        "public <utterance> = <a>; <a> = <b> x | x; <b> = <a> y | y; @ <a>",
        "public <utterance> = [<call>] <utterance> | limb; <call> = hello; @ <utterance>",
        "public <utterance> = <NULL> {slot x} <utterance> | limb; @ <utterance>",
        "public <utterance> = <maybe> <utterance> | limb; <maybe> = [so]; @ <utterance>",
        "public <utterance> = (<utterance>)+ limb | limb; @ <utterance>",
      })
  void aRuleThatBeginsWithItselfIsRefused(String rules, String named) throws IOException {
    assertOneSentence(faultOf(rules), named);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "public <utterance> = limb",
        "public <utterance> = (limb;",
        "public <utterance> = limb | ;;",
        "public utterance = limb;",
        "public <utterance> = limb {add 1;",
        "public <utterance> = limb \u0001;",
        "public <utterance> = \"limb;",
        "/* never closed",
        "public <utterance>",
        "public <utterance> = limb \\udone;",
      })
  void aFileThatIsNoGrammarIsRefused(String rules) throws IOException {
    assertOneSentence(faultOf(rules), "broken.jsgf");
  }

  @Test
  void anEmptyFileIsRefused() throws IOException {
    assertOneSentence(faultOfText(""), "broken.jsgf");
  }

  @Test
  void aFileOfSoundIsRefused() throws IOException {
    Path file = folder.resolve("broken.jsgf");
    byte[] noise = new byte[4096];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (byte) (i * 37 % 251);
    }
    Files.write(file, noise);
    assertOneSentence(
        assertThrows(GrammarFault.class, () -> Grammar.read(file.toUri().toURL())), "broken.jsgf");
  }

  @Test
  void aRuleMayEndWithItself() throws IOException {
    Grammar grammar =
        Grammar.read(
            write(HEADER + "public <utterance> = limb {t} [<utterance>];").toUri().toURL());
    assertEquals(
        Set.of(List.of("t", "t", "t")),
        grammar.match(List.of("limb", "limb", "limb"), Expected.anything()));
  }

  @Test
  void aRuleThatIsNotThereIsAMistakeOfTheCaller() {
    assertThrows(IllegalArgumentException.class, () -> Grammar.bundled().phrase("no_such_rule"));
    assertThrows(
        IllegalArgumentException.class,
        () -> Grammar.bundled().match(List.of("limb"), new Expected(List.of("no_such_rule"))));
    assertThrows(IllegalArgumentException.class, () -> new Expected(List.of()));
  }

  private GrammarFault faultOf(String rules) throws IOException {
    return faultOfText(HEADER + rules + "\n");
  }

  private GrammarFault faultOfText(String text) throws IOException {
    URL file = write(text).toUri().toURL();
    return assertThrows(GrammarFault.class, () -> Grammar.read(file));
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("broken.jsgf"), text, StandardCharsets.UTF_8);
  }

  /** One line for a person: it names the place and ends where a sentence ends. */
  private static void assertOneSentence(GrammarFault fault, String named) {
    String message = fault.getMessage();
    assertTrue(message.startsWith("The grammar "), message);
    assertTrue(message.contains(named), message);
    assertTrue(message.endsWith("."), message);
    assertTrue(!message.contains("\n"), message);
    assertTrue(!message.contains("Exception"), message);
    assertTrue(!message.contains("null"), message);
  }
}
