package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.audio.WavFile;

/** Recordings through the real recogniser to the real verdict. */
class RecordedTest {
  private static final Path DAY = Path.of("demo-data/one-day");

  @TempDir Path folder;

  @Test
  void theRecordedDayEndsAsTheTypedDayDoes() throws IOException {
    Cli heard = Cli.run("hear", "--json", "--out", folder, DAY);
    Cli typed = Cli.run("type", "--json", "demo-data/one-day.txt");
    assertEquals(0, heard.exitCode(), heard.err());
    assertEquals(words(typed), words(heard));
    assertEquals(typed.json(), heard.json());
    try (Stream<Path> answers = Files.list(folder)) {
      assertEquals(heard.json().size(), answers.count());
    }
    assertTrue(WavFile.read(folder.resolve("001.wav")).seconds() > 1);
  }

  private static List<String> words(Cli cli) {
    return cli.json().stream().map(exchange -> exchange.get("said").asText()).toList();
  }

  @Test
  void aBadRecordingIsToldAndNothingIsLost() throws IOException {
    Path first = DAY.resolve("02-climber-limb.wav");
    Path empty = Files.createFile(folder.resolve("empty.wav"));
    Path text = Files.writeString(folder.resolve("text.wav"), "this is no sound");
    Path missing = folder.resolve("missing.wav");
    Path last = DAY.resolve("12-ground-read-back.wav");
    Cli cli = Cli.run("hear", first, empty, text, missing, last);
    assertEquals(3, cli.exitCode());
    assertEquals(3, cli.err().lines().count(), cli.err());
    assertFalse(cli.hasStackTrace(), cli.err());
    assertTrue(
        cli.out().contains("Redirect one. Limb, ten inches, by tape. Limb level, by eye."),
        cli.out());
  }

  @Test
  void theRecogniserAloneTellsWordsAndMeaning() {
    JsonNode line =
        Cli.run("transcribe", "--json", DAY.resolve("03-ground-stem.wav")).json().get(0);
    assertTrue(line.get("accepted").asBoolean());
    assertEquals("stem one eight inches by tape", line.get("words").asText());
    assertEquals("stem_diameter", line.at("/meaning/statements/0/slot").asText());
    assertEquals(18 * 0.0254, line.at("/meaning/statements/0/length_m").asDouble(), 1e-12);
    assertEquals("by_tape", line.at("/meaning/statements/0/how").asText());
  }

  @Test
  void anUnknownSlotIsUsage() {
    Cli cli = Cli.run("transcribe", "--expect", "colour", DAY.resolve("03-ground-stem.wav"));
    assertEquals(2, cli.exitCode());
  }

  @Test
  void whatIsSaidCanBeWritten() throws IOException {
    Path file = folder.resolve("said.wav");
    assertEquals(0, Cli.run("say", "--out", file, "Lanyard first. Say clipped in.").exitCode());
    double seconds = WavFile.read(file).seconds();
    // Five words at about 150 a minute are two seconds, and a pause between the sentences.
    assertTrue(seconds > 1.2 && seconds < 4, "spoken in " + seconds + " s");
  }
}
