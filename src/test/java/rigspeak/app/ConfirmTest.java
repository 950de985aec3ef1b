package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;

/** The command from the outside: a plan and a read-back in, who confirmed what out. */
class ConfirmTest {
  private static final String PLAN =
      """
      # two values of one support
      limb eight inches by tape
      sling choked
      """;

  @TempDir Path folder;

  private Path plan(String text) throws IOException {
    return Files.writeString(folder.resolve("over the path.txt"), text);
  }

  private Cli confirm(String readBack, Object... options) throws IOException {
    Object[] arguments = new Object[options.length + 4];
    arguments[0] = "confirm";
    arguments[1] = plan(PLAN);
    arguments[2] = "--type";
    arguments[3] = Files.writeString(folder.resolve("read-back.txt"), readBack);
    System.arraycopy(options, 0, arguments, 4, options.length);
    return Cli.run(arguments);
  }

  @Test
  void theEndSaysWhoConfirmedWhat() throws IOException {
    Cli cli =
        confirm(
            "limb eight inches over\nsling choked over\naffirm over\n",
            "--by",
            "climber one",
            "--to",
            "ground");
    assertEquals(0, cli.exitCode(), cli.err());
    String end = cli.out().substring(cli.out().indexOf("CONFIRMED"));
    assertTrue(end.startsWith("CONFIRMED AS PLANNED  over the path"), end);
    assertTrue(end.contains("by        climber one\n"), end);
    assertTrue(end.contains("to        ground\n"), end);
    assertTrue(end.contains("items     2\n"), end);
    assertTrue(cli.out().contains("spoken    Confirmed, climber one, "), cli.out());
  }

  @Test
  void theEndIsThereAsJson() throws IOException {
    List<JsonNode> lines =
        confirm("limb nine inches over\naffirm\nsling choked over\naffirm\n", "--json").json();
    assertEquals("values", lines.get(0).at("/meaning/kind").asText());
    assertEquals(
        "Plan, limb, eight inches, by tape. Heard, limb, nine inches. Affirm or negative. Over.",
        lines.get(0).at("/transmissions/0").asText());
    JsonNode end = lines.get(lines.size() - 1);
    assertEquals("differs", end.get("outcome").asText());
    assertEquals("climber", end.get("by").asText());
    assertEquals("ground worker", end.get("to").asText());
    assertEquals("limb_diameter", end.at("/differences/0/slot").asText());
    assertEquals("other", end.at("/differences/0/difference").asText());
    assertTrue(end.at("/differences/0/affirmed").asBoolean());
    assertFalse(
        OffsetDateTime.parse(end.get("at").asText()).isAfter(OffsetDateTime.now(ZoneOffset.UTC)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "limb eight inches | not_said",
        "limb eight inches;sling choked | ",
        "limb eight inches;sling choked;roger | ",
        "limb eight inches;sling choked;mumble | ",
        "affirm | not_said",
      })
  void whatIsNotAffirmedToTheEndIsOpen(String readBack, String difference) throws IOException {
    List<JsonNode> lines = confirm(readBack.replace(';', '\n'), "--json").json();
    JsonNode end = lines.get(lines.size() - 1);
    assertEquals("open", end.get("outcome").asText());
    assertTrue(end.get("at").isNull());
    assertEquals(difference == null ? 0 : 1, Math.min(1, end.get("differences").size()));
  }

  @Test
  void aReadBackIsHeardFromRecordings() throws Exception {
    FreeTtsVoice voice = FreeTtsVoice.load();
    Path recordings = Files.createDirectories(folder.resolve("recordings"));
    List<String> said =
        List.of("limb eight inches by tape over", "sling choked over", "affirm over");
    for (int i = 0; i < said.size(); i++) {
      Sound sound =
          Sound.joined(
              List.of(
                  Sound.silence(0.5), voice.speak(said.get(i), Pace.ORDINARY), Sound.silence(1)));
      WavFile.write(recordings.resolve(i + ".wav"), sound);
    }
    Cli cli = Cli.run("confirm", plan(PLAN), "--from", recordings, "--json");
    List<JsonNode> lines = cli.json();
    assertEquals(
        said, lines.subList(0, 3).stream().map(line -> line.get("said").asText()).toList());
    assertEquals("confirmed", lines.get(lines.size() - 1).get("outcome").asText());
  }

  @Test
  void aPlanThatIsNotUnderstoodIsRefusedWithItsLine() throws IOException {
    Cli cli = Cli.run("confirm", plan("limb eight inches\nlimb eighty\n"), "--type", plan("x"));
    assertEquals(Fault.BAD_INPUT, cli.exitCode());
    assertFalse(cli.hasStackTrace());
    Cli missing = Cli.run("confirm", folder.resolve("none.txt"), "--type", plan("x"));
    assertEquals(Fault.BAD_INPUT, missing.exitCode());
    assertTrue(missing.err().startsWith("There is no file"), missing.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--by=<b>", "--to=a b c d", "--busy-above=0", "--busy-above=-90"})
  void badOptionsGetOneSentence(String option) throws IOException {
    Cli cli = confirm("over\n", option);
    assertEquals(2, cli.exitCode());
    assertFalse(cli.hasStackTrace());
  }
}
