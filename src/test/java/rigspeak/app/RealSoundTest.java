package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.audio.Sound;

/** The live conversation through the sound devices of a real sound server, in real time. */
class RealSoundTest {
  private static final Path DAY = Path.of("demo-data/one-day");

  /** An answer is over when it has been quiet for so long: longer than any pause within one. */
  private static final double ANSWER_OVER_SECONDS = 0.8;

  private static final int ENOUGH_WORDS = 4;

  /** Nothing here takes so long on a machine that is not stuck. */
  private static final double PATIENCE_SECONDS = 120;

  @TempDir Path folder;

  private SoundLoop loop;

  @BeforeEach
  void open() throws IOException {
    assumeTrue(
        System.getenv("CI") != null || (SoundLoop.isPossible() && SecondEar.isPossible()),
        "PulseAudio or pocketsphinx is not installed");
    loop = SoundLoop.open();
  }

  @AfterEach
  void close() throws IOException {
    if (loop != null) {
      loop.close();
    }
  }

  @Test
  void theConversationToTheFirstVerdictIsHeardAndSpokenAloud() throws Exception {
    List<Path> said = toTheFirstVerdict();
    List<Sound> answers = new ArrayList<>();
    List<JsonNode> exchanges = new ArrayList<>();
    try (RunningTool tool =
            new RunningTool(
                loop.rigspeak("listen", "--always-open", "--json", "--mic", "default"));
        Tap tap = loop.tap(SoundLoop.ANSWERED)) {
      tool.awaitRemark("Listening on default [default], speaking on default [default]");
      int at = heardOut(tap, 0);
      for (Path wav : said) {
        loop.say(wav);
        int begin = tap.awaitSound(at, PATIENCE_SECONDS);
        at = tap.awaitQuiet(begin, ANSWER_OVER_SECONDS, PATIENCE_SECONDS);
        answers.add(tap.part(begin, at));
        exchanges.add(new ObjectMapper().readTree(tool.awaitLine()));
      }
    }

    // The same words typed.
    List<String> words = new ArrayList<>();
    for (Path wav : said) {
      words.add(Yardstick.wordsBeside(wav));
    }
    Path text = Files.write(folder.resolve("words.txt"), words);
    assertEquals(Cli.run("type", "--json", text).json(), exchanges);

    spokenAloud(exchanges.stream().map(RealSoundTest::text).toList(), answers);
  }

  /** Another recogniser, which knows all of English and nothing of this tool, hears the answers. */
  private void spokenAloud(List<String> texts, List<Sound> answers) throws IOException {
    List<String> heard = SecondEar.transcribe(folder, answers);
    for (int i = 0; i < texts.size(); i++) {
      // Of two words it makes anything.
      if (SecondEar.words(texts.get(i)).size() >= ENOUGH_WORDS) {
        assertEquals(texts.get(i), SecondEar.nearest(heard.get(i), texts));
      }
    }
    int verdict = texts.size() - 1;
    assertTrue(texts.get(verdict).startsWith("Good to load, redirect one"), texts.get(verdict));
    for (int i = 0; i < texts.size(); i++) {
      assertEquals(i == verdict, heard.get(i).contains("good to load"), heard.get(i));
    }
  }

  private static String text(JsonNode exchange) {
    StringBuilder text = new StringBuilder();
    exchange.get("answers").forEach(answer -> text.append(answer.get("text").asText()).append(' '));
    return text.toString();
  }

  private static int heardOut(Tap tap, int from) throws IOException {
    return tap.awaitQuiet(
        tap.awaitSound(from, PATIENCE_SECONDS), ANSWER_OVER_SECONDS, PATIENCE_SECONDS);
  }

  private static List<Path> toTheFirstVerdict() throws IOException {
    try (Stream<Path> files = Files.list(DAY)) {
      List<Path> wavs = files.filter(file -> file.toString().endsWith(".wav")).sorted().toList();
      return wavs.subList(0, wavs.indexOf(DAY.resolve("14-climber-check.wav")) + 1);
    }
  }
}
