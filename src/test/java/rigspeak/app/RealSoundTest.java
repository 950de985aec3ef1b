package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.answer.LineNotice;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.dialogue.Pace;
import rigspeak.grammar.Grammar;

/** The live conversation through the sound devices of a real sound server, in real time. */
@Tag("long")
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
                loop.rigspeak("listen", "--always-open", "--json", "--mic", "default").start());
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

  /** Who speaks at the very end of an answer is heard from the first sound on. */
  @Test
  void theFirstWordAfterAnAnswerIsWhole() throws Exception {
    Sound stem = WavFile.read(DAY.resolve("03-ground-stem.wav"));
    byte[] word = bytes(stem.part(firstLoud(stem), stem.length()));
    Session twin = new Session(Grammar.bundled());
    int answerLength =
        new Mouth()
            .whole(twin.said("limb ten inches by tape limb level by eye"), Pace.NORMAL)
            .length();
    Process speaker = loop.speaker();
    try (RunningTool tool =
            new RunningTool(loop.rigspeak("listen", "--always-open", "--json").start());
        Tap said = loop.tap(SoundLoop.SAID);
        Tap answered = loop.tap(SoundLoop.ANSWERED)) {
      int at = heardOut(answered, 0);
      loop.say(DAY.resolve("02-climber-limb.wav"));
      int end = answered.awaitSound(at, PATIENCE_SECONDS) + answerLength;
      answered.awaitLength(end, PATIENCE_SECONDS);
      int before = said.length();
      speaker.getOutputStream().write(word);
      speaker.getOutputStream().close();
      tool.awaitLine();
      JsonNode exchange = new ObjectMapper().readTree(tool.awaitLine());
      int first = said.awaitSound(before, PATIENCE_SECONDS);
      double seconds = (said.arrivedNanos(first) - answered.arrivedNanos(end - 1)) / 1e9;

      assertTrue(seconds >= 0 && seconds < 0.15, "spoken " + seconds + " s after the answer");
      assertEquals("stem one eight inches by tape", exchange.get("said").asText());
    } finally {
      speaker.destroy();
    }
  }

  /** The loudspeaker lies beside the microphone and is as loud as the voice. */
  @Test
  void itDoesNotHearItself() throws Exception {
    List<Path> recordings =
        List.of(
            DAY.resolve("02-climber-limb.wav"),
            DAY.resolve("03-ground-stem.wav"),
            DAY.resolve("12-ground-read-back.wav"),
            DAY.resolve("13-ground-affirm.wav"));
    List<String> heard = new ArrayList<>();
    List<String> words = new ArrayList<>();
    try (SoundLoop beside = SoundLoop.openBesideItself();
        RunningTool tool =
            new RunningTool(beside.rigspeak("listen", "--always-open", "--json").start());
        Tap tap = beside.tap(SoundLoop.SAID)) {
      heardOut(tap, 0);
      for (Path wav : recordings) {
        beside.say(wav);
        heardOut(tap, tap.length());
        heard.add(said(tool.awaitLine()));
        words.add(Yardstick.wordsBeside(wav));
      }
    }
    assertEquals(words, heard);
  }

  @Test
  void aHeadsetThatIsPulledAndPluggedInAgainGoesOnWithTheSameRig() throws Exception {
    try (RunningTool tool =
        new RunningTool(loop.rigspeak("listen", "--always-open", "--json").start())) {
      try (Tap tap = loop.tap(SoundLoop.ANSWERED)) {
        tool.awaitRemark("Listening on default [default], speaking on default [default]");
        int at = heardOut(tap, 0);
        loop.say(DAY.resolve("02-climber-limb.wav"));
        heardOut(tap, at);
      }
      loop.unplug(SoundLoop.ANSWERED);
      loop.unplug(SoundLoop.SAID);
      tool.awaitRemark("The microphone default [default] is gone.");
      tool.awaitRemark("The loudspeaker default [default] is gone.");
      loop.plug(SoundLoop.SAID);
      loop.plug(SoundLoop.ANSWERED);
      try (Tap tap = loop.tap(SoundLoop.ANSWERED)) {
        tool.awaitRemark("Speaking on default [default] again.");
        tool.awaitRemark("Listening on default [default] again.");
        int at = heardOut(tap, tap.length());
        loop.say(DAY.resolve("12-ground-read-back.wav"));
        heardOut(tap, at);
      }
      assertEquals("limb ten inches by tape limb level by eye", said(tool.awaitLine()));
      JsonNode readBack = new ObjectMapper().readTree(tool.awaitLine());
      assertEquals("read back", readBack.get("said").asText(), readBack.toString());
      assertTrue(text(readBack).contains("Limb, ten inches, by tape."), text(readBack));
    }
  }

  @Test
  void aMicrophoneThatHangsIsToldAndWaitedFor() throws Exception {
    try (RunningTool tool =
            new RunningTool(loop.rigspeak("listen", "--always-open", "--json").start());
        Tap tap = loop.tap(SoundLoop.ANSWERED)) {
      tool.awaitRemark("Listening on default [default], speaking on default [default]");
      int at = heardOut(tap, 0);
      loop.hang(SoundLoop.SAID);
      tool.awaitRemark("The microphone default [default] is gone.");
      int notice = tap.awaitSound(at, PATIENCE_SECONDS);
      at = tap.awaitQuiet(notice, ANSWER_OVER_SECONDS, PATIENCE_SECONDS);
      Sound gone = tap.part(notice, at);
      loop.resume(SoundLoop.SAID);
      tool.awaitRemark("Listening on default [default] again.");
      at = heardOut(tap, tap.length());
      loop.say(DAY.resolve("02-climber-limb.wav"));
      heardOut(tap, at);

      assertEquals("limb ten inches by tape limb level by eye", said(tool.awaitLine()));
      assertSpoken(LineNotice.MICROPHONE_GONE.text(), gone);
    }
  }

  @Test
  void anAnswerInWhichTheLoudspeakerHungIsSpokenAgain() throws Exception {
    try (RunningTool tool =
            new RunningTool(loop.rigspeak("listen", "--always-open", "--json").start());
        Tap tap = loop.tap(SoundLoop.ANSWERED)) {
      tool.awaitRemark("Listening on default [default], speaking on default [default]");
      int at = heardOut(tap, 0);
      loop.say(DAY.resolve("02-climber-limb.wav"));
      int cut = tap.awaitSound(at, PATIENCE_SECONDS);
      loop.hang(SoundLoop.ANSWERED);
      tool.awaitRemark("The loudspeaker default [default] is gone.");
      loop.resume(SoundLoop.ANSWERED);
      tool.awaitRemark("Speaking on default [default] again.");
      int notice = tap.awaitSound(tap.awaitQuiet(cut, 0.1, PATIENCE_SECONDS), PATIENCE_SECONDS);
      at = tap.awaitQuiet(notice, ANSWER_OVER_SECONDS, PATIENCE_SECONDS);
      JsonNode exchange = new ObjectMapper().readTree(tool.awaitLine());
      assertSpoken(LineNotice.LOUDSPEAKER_BACK.text() + " " + text(exchange), tap.part(notice, at));
      loop.say(DAY.resolve("12-ground-read-back.wav"));
      heardOut(tap, at);
      assertEquals("read back", said(tool.awaitLine()));
    }
  }

  @Test
  void aMicrophoneFromWhichNothingComesIsNoMicrophoneAndNoToneSaysSo() throws Exception {
    loop.hang(SoundLoop.SAID);
    try (Tap tap = loop.tap(SoundLoop.ANSWERED)) {
      tap.awaitLength(1, PATIENCE_SECONDS);
      Process tool = loop.rigspeak("listen", "--always-open").start();
      String remarks = new String(tool.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(4, tool.onExit().join().exitValue());
      assertEquals(
          "The microphone cannot be opened; another program may be using it: default [default].",
          remarks.strip());
      assertEquals(Meter.NO_SOUND, Meter.of(tap.part(0, tap.length())).peakDecibels());
    }
  }

  private static String said(String line) throws IOException {
    return new ObjectMapper().readTree(line).get("said").asText();
  }

  /** Nearer to these words than to anything else that is said of devices. */
  private void assertSpoken(String words, Sound sound) throws IOException {
    List<String> others = new ArrayList<>();
    others.add(words);
    for (LineNotice notice : LineNotice.values()) {
      others.add(notice.text());
    }
    String heard = SecondEar.transcribe(folder, List.of(sound)).get(0);
    assertEquals(words, SecondEar.nearest(heard, others), heard);
  }

  private static int firstLoud(Sound sound) {
    int at = 0;
    while (Math.abs(sound.sample(at)) < 328) {
      at++;
    }
    return at;
  }

  private static byte[] bytes(Sound sound) {
    byte[] bytes = new byte[2 * sound.length()];
    for (int i = 0; i < sound.length(); i++) {
      bytes[2 * i] = (byte) sound.sample(i);
      bytes[2 * i + 1] = (byte) (sound.sample(i) >> 8);
    }
    return bytes;
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
