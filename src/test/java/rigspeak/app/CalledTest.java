package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;

/** The call, from recordings: what is heard before it, after it, and when it has closed again. */
class CalledTest {
  private static final Path DAY = Path.of("demo-data/one-day");

  @TempDir Path folder;

  @Test
  void onlyTheCallOpensTheEarAndSilenceClosesIt() throws IOException {
    Path wav =
        wav(
            recording("02-climber-limb"),
            recording("16-climber-set"),
            recording("21-climber-change"),
            recording("02-climber-limb"),
            Sound.silence(9),
            recording("64-climber-what-holds"),
            recording("37-climber-next"));

    assertEquals(
        List.of(
            "copper lantern change redirect",
            "limb ten inches by tape limb level by eye",
            "asleep",
            "copper lantern next redirect"),
        heard(Cli.run("hear", "--json", "--asleep", wav)));
  }

  @Test
  void aLongerWindowIsOpenLonger() throws IOException {
    Path wav =
        wav(recording("21-climber-change"), Sound.silence(9), recording("64-climber-what-holds"));

    assertEquals(
        List.of("copper lantern change redirect", "what holds me"),
        heard(Cli.run("hear", "--json", "--asleep", "--window", "12", wav)));
  }

  /** What waits is said again before anything is affirmed, even by the breath of the call. */
  @Test
  void whatWaitedThroughSleepIsSaidAgain() throws IOException {
    Path wav =
        wav(
            recording("21-climber-change"),
            recording("22-climber-clipped"),
            Sound.silence(25),
            recording("63-climber-affirm"),
            recording("37-climber-next"),
            recording("63-climber-affirm"));
    List<JsonNode> exchanges = Cli.run("hear", "--json", "--asleep", wav).json();

    assertEquals("copper lantern next redirect", said(exchanges.get(exchanges.size() - 2)));
    assertEquals(
        "Clipped in. Look at it, then say affirm or negative.",
        exchanges.get(exchanges.size() - 2).at("/answers/0/text").asText());
    String last = exchanges.get(exchanges.size() - 1).at("/answers/0/text").asText();
    assertTrue(last.startsWith("Lanyard clipped in."), last);
    assertEquals(
        1,
        exchanges.stream().filter(exchange -> said(exchange).equals("affirm")).count(),
        "asleep, affirm is not heard");
  }

  @Test
  void standByIsSleep() throws IOException {
    Path wav =
        wav(
            recording("21-climber-change"),
            recording("65-climber-stand-by"),
            recording("02-climber-limb"));
    List<JsonNode> exchanges = Cli.run("hear", "--json", "--asleep", wav).json();

    assertEquals(
        List.of("copper lantern change redirect", "stand by"),
        exchanges.stream().map(CalledTest::said).toList());
    assertEquals("asleep", exchanges.get(1).path("attention").asText());
  }

  /** The rim keeps the conversation of several recordings in one time. */
  @Test
  void theWindowGoesOnFromRecordingToRecording() {
    List<String> heard =
        heard(
            Cli.run(
                "hear",
                "--json",
                "--asleep",
                DAY.resolve("02-climber-limb.wav"),
                DAY.resolve("21-climber-change.wav"),
                DAY.resolve("02-climber-limb.wav")));

    assertEquals(
        List.of("copper lantern change redirect", "limb ten inches by tape limb level by eye"),
        heard);
  }

  @Test
  void aWindowThatIsNoTimeIsUsage() {
    Path any = DAY.resolve("02-climber-limb.wav");
    for (String window : List.of("0", "-3", "NaN", "601", "long")) {
      assertEquals(2, Cli.run("hear", "--asleep", "--window=" + window, any).exitCode(), window);
    }
  }

  private static List<String> heard(Cli cli) {
    assertEquals(0, cli.exitCode(), cli.err());
    return cli.json().stream().map(CalledTest::told).toList();
  }

  private static String told(JsonNode exchange) {
    String said = said(exchange);
    return said.isEmpty() ? exchange.path("attention").asText() : said;
  }

  private static String said(JsonNode exchange) {
    return exchange.get("said").asText();
  }

  private static Sound recording(String name) throws IOException {
    return WavFile.read(DAY.resolve(name + ".wav"));
  }

  private Path wav(Sound... parts) throws IOException {
    List<Sound> all = new ArrayList<>();
    for (Sound part : parts) {
      all.add(part);
      all.add(Sound.silence(0.5));
    }
    Path file = folder.resolve("talk.wav");
    WavFile.write(file, Sound.joined(all));
    return file;
  }
}
