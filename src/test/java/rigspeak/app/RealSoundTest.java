package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import rigspeak.answer.LineNotice;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.dialogue.Pace;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.SoundCheck;

/** The live conversation through the sound devices of a real sound server, in real time. */
@Tag("real-time")
class RealSoundTest {
  private static final Path DAY = Path.of("demo-data/one-day");
  private static final Path LIMB = DAY.resolve("02-climber-limb.wav");
  private static final Path STEM = DAY.resolve("03-ground-stem.wav");
  private static final Path READ_BACK = DAY.resolve("12-ground-read-back.wav");

  private static final int ENOUGH_WORDS = 4;

  /** Of the last answer so much is heard: the verdict. The rest takes half a minute. */
  private static final double VERDICT_SECONDS = 5;

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

  /** The shortest of the day's words that end in a verdict: the main point by itself. */
  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void aConversationFromTheCallToAVerdictIsHeardAndSpokenAloud() throws Exception {
    isHeardAndSpokenAloud(
        Stream.of(
                "01-climber-weight-and-tree",
                "07-climber-rope",
                "10a-climber-go-to-main-point",
                "10b-climber-main-limb",
                "10c-climber-main-sling",
                "10-climber-working-leg",
                "14-climber-check")
            .map(name -> DAY.resolve(name + ".wav"))
            .toList(),
        "Good to load, main point");
  }

  @Test
  @Tag("long")
  void theWholeConversationToTheFirstVerdictIsHeardAndSpokenAloud() throws Exception {
    try (Stream<Path> files = Files.list(DAY)) {
      List<Path> wavs = files.filter(file -> file.toString().endsWith(".wav")).sorted().toList();
      isHeardAndSpokenAloud(
          wavs.subList(0, wavs.indexOf(DAY.resolve("14-climber-check.wav")) + 1),
          "Good to load, redirect one");
    }
  }

  private void isHeardAndSpokenAloud(List<Path> said, String verdict) throws Exception {
    List<Talk.Answered> answered = new ArrayList<>();
    try (Talk talk = Talk.asleep(loop)) {
      // Before the call nothing comes of it.
      loop.say(READ_BACK);
      for (Path wav : said.subList(0, said.size() - 1)) {
        answered.add(talk.say(wav));
      }
      answered.add(talk.sayAndHearBeginning(said.get(said.size() - 1), VERDICT_SECONDS));
    }

    // The same words typed.
    List<String> words = new ArrayList<>();
    for (Path wav : said) {
      words.add(Yardstick.wordsBeside(wav));
    }
    Path text = Files.write(folder.resolve("words.txt"), words);
    assertEquals(
        Cli.run("type", "--json", text).json(),
        answered.stream().map(Talk.Answered::exchange).toList());
    spokenAloud(answered, verdict);
  }

  /** Another recogniser, which knows all of English and nothing of this tool, hears the answers. */
  private void spokenAloud(List<Talk.Answered> answered, String verdict) throws IOException {
    List<String> texts = answered.stream().map(Talk.Answered::text).toList();
    List<String> heard =
        SecondEar.transcribe(folder, answered.stream().map(Talk.Answered::answer).toList());
    int last = texts.size() - 1;
    for (int i = 0; i < last; i++) {
      // Of two words it makes anything.
      if (SecondEar.words(texts.get(i)).size() >= ENOUGH_WORDS) {
        assertEquals(texts.get(i), SecondEar.nearest(heard.get(i), texts));
      }
    }
    assertTrue(texts.get(last).startsWith(verdict), texts.get(last));
    for (int i = 0; i < texts.size(); i++) {
      assertEquals(i == last, heard.get(i).contains("good to load"), heard.get(i));
    }
  }

  /** Who speaks at the very end of an answer is heard from the first sound on. */
  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void theFirstWordAfterAnAnswerIsWhole() throws Exception {
    Sound stem = WavFile.read(STEM);
    byte[] word = bytes(stem.part(firstLoud(stem), stem.length()));
    Session twin = new Session(Grammar.bundled());
    int answerLength =
        new Mouth()
            .whole(twin.said("limb ten inches by tape limb level by eye"), Pace.NORMAL)
            .length();
    Process speaker = loop.speaker();
    try (Talk talk = Talk.open(loop);
        Tap said = loop.tap(SoundLoop.SAID)) {
      loop.say(LIMB);
      int end = talk.awaitSound() + answerLength;
      talk.tap().awaitLength(end, Talk.PATIENCE_SECONDS);
      int before = said.length();
      speaker.getOutputStream().write(word);
      speaker.getOutputStream().close();
      talk.awaitExchange();
      JsonNode exchange = talk.awaitExchange();
      int first = said.awaitSound(before, Talk.PATIENCE_SECONDS);
      double seconds = (said.arrivedNanos(first) - talk.tap().arrivedNanos(end - 1)) / 1e9;

      assertTrue(seconds >= 0, "spoken " + seconds + " s after the answer");
      assertEquals("stem one eight inches by tape", exchange.get("said").asText());
    } finally {
      speaker.destroy();
    }
  }

  /** The loudspeaker lies beside the microphone and is as loud as the voice. */
  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void itDoesNotHearItself() throws Exception {
    List<String> heard = new ArrayList<>();
    List<String> words = new ArrayList<>();
    try (SoundLoop beside = SoundLoop.openBesideItself();
        Talk talk = Talk.open(beside)) {
      for (Path wav : List.of(LIMB, STEM, READ_BACK)) {
        beside.say(wav);
        heard.add(talk.awaitExchange().get("said").asText());
        // The tap has heard what was said as well.
        talk.fromNow();
        talk.hearOut();
        words.add(Yardstick.wordsBeside(wav));
      }
    }
    assertEquals(words, heard);
  }

  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void aHeadsetThatIsPulledAndPluggedInAgainGoesOnWithTheSameRig() throws Exception {
    try (Talk talk = Talk.open(loop)) {
      assertEquals("limb ten inches by tape limb level by eye", talk.say(LIMB).said());
      talk.takeTapOff();
      loop.unplug(SoundLoop.ANSWERED);
      loop.unplug(SoundLoop.SAID);
      talk.awaitRemark("The microphone default [default] is gone.");
      talk.awaitRemark("The loudspeaker default [default] is gone.");
      loop.plug(SoundLoop.SAID);
      loop.plug(SoundLoop.ANSWERED);
      talk.putTapOn();
      talk.awaitRemark("Speaking on default [default] again.");
      talk.awaitRemark("Listening on default [default] again.");
      talk.fromNow();
      Talk.Answered readBack = talk.say(READ_BACK);
      assertEquals("read back", readBack.said());
      assertTrue(readBack.text().contains("Limb, ten inches, by tape."), readBack.text());
    }
  }

  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void aMicrophoneThatHangsIsToldAndWaitedFor() throws Exception {
    try (Talk talk = Talk.open(loop)) {
      loop.hang(SoundLoop.SAID);
      talk.awaitRemark("The microphone default [default] is gone.");
      assertSpoken(LineNotice.MICROPHONE_GONE.text(), talk.hearOut(), notices());
      loop.resume(SoundLoop.SAID);
      talk.awaitRemark("Listening on default [default] again.");
      talk.fromNow();
      assertEquals("limb ten inches by tape limb level by eye", talk.say(LIMB).said());
    }
  }

  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void anAnswerInWhichTheLoudspeakerHungIsSpokenAgain() throws Exception {
    try (Talk talk = Talk.open(loop)) {
      loop.say(LIMB);
      talk.awaitSound();
      loop.hang(SoundLoop.ANSWERED);
      talk.awaitRemark("The loudspeaker default [default] is gone.");
      loop.resume(SoundLoop.ANSWERED);
      talk.awaitRemark("Speaking on default [default] again.");
      talk.awaitPause();
      String text = new Talk.Answered(talk.awaitExchange(), Sound.silence(0)).text();
      String again = LineNotice.LOUDSPEAKER_BACK.text() + " " + text;
      assertSpoken(again, talk.hearOut(), notices());
      assertEquals("read back", talk.say(READ_BACK).said());
    }
  }

  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void aMicrophoneFromWhichNothingComesIsNoMicrophoneAndNoToneSaysSo() throws Exception {
    loop.hang(SoundLoop.SAID);
    try (Tap tap = loop.tap(SoundLoop.ANSWERED)) {
      tap.awaitLength(1, Talk.PATIENCE_SECONDS);
      Process tool = loop.rigspeak("listen", "--always-open").start();
      String remarks = new String(tool.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(4, tool.onExit().join().exitValue());
      assertEquals(
          "The microphone cannot be opened; another program may be using it: default [default].",
          remarks.strip());
      assertEquals(Meter.NO_SOUND, Meter.of(tap.part(0, tap.length())).peakDecibels());
    }
  }

  @Test
  @Execution(ExecutionMode.CONCURRENT)
  void aVoiceThatIsTooQuietOrTooLoudAndAPlaceThatIsTooNoisyAreToldApart() throws Exception {
    Sound voice = WavFile.read(READ_BACK);
    double loudest = SoundCheck.of(voice.stream(), voice.seconds()).voiceDecibels();
    // Above silence, and yet below the -60 dB that reach the ear.
    double quiet = Math.pow(10, (-61 - loudest) / 20);
    // Nearly as loud as the voice. Backward it is a voice and no words.
    double hiss = 32_768 * Math.pow(10, (loudest - 7) / 20);
    Sound backward = Sound.joined(List.of(Sound.silence(4), reversed(voice), Sound.silence(2)));
    Random random = new Random(0);
    List<Path> said =
        List.of(
            file("quiet", changed(voice, sample -> quiet * sample)),
            file("clipped", changed(voice, sample -> 20 * sample)),
            file("noisy", changed(backward, sample -> sample + hiss * random.nextGaussian())));
    List<Talk.Answered> answered = new ArrayList<>();
    try (Talk talk = Talk.open(loop)) {
      for (Path wav : said) {
        answered.add(talk.say(wav));
      }
    }
    assertEquals(
        List.of("too_quiet", "clipped", "too_noisy"),
        answered.stream().map(told -> told.exchange().at("/meaning/reason").asText()).toList());
    List<String> texts = answered.stream().map(Talk.Answered::text).toList();
    for (Talk.Answered told : answered) {
      assertSpoken(told.text(), told.answer(), texts);
    }
  }

  private Path file(String name, Sound sound) throws IOException {
    Path file = folder.resolve(name + ".wav");
    WavFile.write(file, sound);
    return file;
  }

  private static Sound reversed(Sound sound) {
    short[] samples = new short[sound.length()];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = sound.sample(samples.length - 1 - i);
    }
    return Sound.of(samples);
  }

  private static Sound changed(Sound sound, DoubleUnaryOperator change) {
    short[] samples = new short[sound.length()];
    for (int i = 0; i < samples.length; i++) {
      double value = change.applyAsDouble(sound.sample(i));
      samples[i] = (short) Math.round(Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, value)));
    }
    return Sound.of(samples);
  }

  private static List<String> notices() {
    return Stream.of(LineNotice.values()).map(LineNotice::text).toList();
  }

  /** Nearer to these words than to any of the others. */
  private void assertSpoken(String words, Sound sound, List<String> others) throws IOException {
    List<String> all = new ArrayList<>(others);
    all.add(words);
    String heard = SecondEar.transcribe(folder, List.of(sound)).get(0);
    assertEquals(words, SecondEar.nearest(heard, all), heard);
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
}
