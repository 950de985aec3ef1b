package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rigspeak.answer.SoundCheckWords;
import rigspeak.audio.Devices;
import rigspeak.audio.LostDevice;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.VirtualLine;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.hearing.SoundCheck;
import rigspeak.speaking.EarSound;

/** A headset is tried by voice, on lines without a device. */
class HeadsetTrialTest {
  private static final Path VOICE = Path.of("src/test/resources/corpus/flite-slt/017.wav");
  private static final Path OTHER = Path.of("demo-data/one-day/03-ground-stem.wav");

  private static Ear ear;
  private static Mouth mouth;

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final VirtualLine loudspeaker = new VirtualLine("Headset [hw:1,0]");

  @BeforeAll
  static void open() {
    ear = Ear.open(Grammar.bundled());
    mouth = new Mouth();
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "sound-checks.csv")
  void itEndsWithReadyOrWithWhatToChange(String place, String said, String told, String end)
      throws Exception {
    List<Sound> sounds = new ArrayList<>();
    for (String name : (place + " " + said).split(" ", -1)) {
      sounds.add(sound(name));
    }

    boolean ready = trial().run(with(new PlayedMicrophone(sounds)));

    List<String> lines = out.toString().lines().toList();
    assertTrue(lines.contains(told), out.toString());
    assertEquals(end, lines.get(lines.size() - 1));
    assertEquals(end.startsWith("Ready."), ready);
  }

  @Test
  void itNamesTheDevicesAndPlaysEachOfItsSoundsAfterItsMeaning() throws Exception {
    trial().run(with(new PlayedMicrophone(List.of())));

    List<String> lines = out.toString().lines().toList();
    assertEquals(
        List.of(
            "Microphone   recordings",
            "Loudspeaker  Headset [hw:1,0]",
            "Sound check. Microphone, recordings. Loudspeaker, headset.",
            "This means, I listen."),
        lines.subList(0, 4));
    List<Sound> played = loudspeaker.played();
    List<String> after = List.of("LISTENING", "TAKEN", "NOT_UNDERSTOOD", "DANGER", "ASLEEP");
    for (int i = 0; i < after.size(); i++) {
      Sound sound = EarSound.valueOf(after.get(i)).sound();
      // The devices first, then words and sound by turns.
      assertEquals(Sound.joined(List.of(sound, Sound.silence(0.3))), played.get(2 * i + 2));
    }
  }

  @Test
  void everySoundHasItsWords() {
    assertEquals(
        Arrays.stream(EarSound.values()).map(Enum::name).sorted().toList(),
        Arrays.stream(SoundCheckWords.Signal.values()).map(Enum::name).sorted().toList());
  }

  /** No more than three times, however often it fails. */
  @Test
  void itAsksThreeTimes() throws Exception {
    assertFalse(trial().run(with(new PlayedMicrophone(List.of()))));

    assertEquals(
        3, out.toString().lines().filter(line -> line.startsWith("After the tone say.")).count());
  }

  @Test
  void withoutAMicrophoneTheLoudspeakerSaysSo() {
    LiveConversation.Lines none =
        new Lines() {
          @Override
          public Microphone microphone() throws NoSuchDevice {
            return Devices.microphone(List.of("no such headset 7351"));
          }
        };

    NoSuchDevice fault = assertThrows(NoSuchDevice.class, () -> trial().run(none));

    assertEquals(4, Fault.exitCode(fault));
    assertEquals("Not ready. There is no microphone that I can use.", out.toString().strip());
    assertEquals(1, loudspeaker.played().size());
  }

  @Test
  void aMicrophoneThatIsLostMeanwhileIsNotReady() {
    VirtualLine pulled = new VirtualLine("headset");
    pulled.lose();

    LostDevice fault = assertThrows(LostDevice.class, () -> trial().run(with(pulled)));

    assertEquals("The microphone headset is gone.", Fault.sentence(fault));
    assertEquals(4, Fault.exitCode(fault));
    assertFalse(out.toString().contains("Ready."), out.toString());
  }

  @Test
  void theCommandTakesRecordingsAndItsExitCodeTells() throws IOException {
    Path place = folder.resolve("1.wav");
    WavFile.write(place, Sound.silence(3));
    Path said = folder.resolve("2.wav");
    WavFile.write(said, sound("fine"));

    Cli ready = Cli.run("sound-check", "--from", folder);
    Cli not = Cli.run("sound-check", "--from", place);
    Cli missing = Cli.run("sound-check", "--from", folder.resolve("3.wav"));

    assertTrue(ready.out().endsWith("Ready. I hear you well.\n"), ready.out() + ready.err());
    assertEquals(List.of(0, 1, 3), Stream.of(ready, not, missing).map(Cli::exitCode).toList());
    assertTrue(not.out().contains("Not ready."), not.out());
    assertFalse(missing.hasStackTrace(), missing.err());
  }

  private HeadsetTrial trial() {
    return new HeadsetTrial(() -> ear, mouth, ClosingPause.ORDINARY, new PrintWriter(out, true));
  }

  private LiveConversation.Lines with(Microphone microphone) {
    return new Lines() {
      @Override
      public Microphone microphone() {
        return microphone;
      }
    };
  }

  private abstract class Lines implements LiveConversation.Lines {
    @Override
    public Loudspeaker loudspeaker() {
      return loudspeaker;
    }

    @Override
    public void beforeNext(int attempt) throws IOException {
      throw new IOException("nothing is looked for again");
    }
  }

  /** By the names of sound-checks.csv. */
  private static Sound sound(String name) throws IOException {
    Random random = new Random(0);
    Sound voice = padded(WavFile.read(VOICE));
    return switch (name) {
      case "silence" -> Sound.silence(3);
      case "hiss" -> changed(Sound.silence(4), sample -> 8 * random.nextGaussian());
      case "engine" -> changed(Sound.silence(4), sample -> 250 * random.nextGaussian());
      case "roar" -> changed(Sound.silence(12), sample -> 2_000 * random.nextGaussian());
      case "fine" -> voice;
      case "hissing" -> changed(voice, sample -> sample + 8 * random.nextGaussian());
      case "faint" -> {
        // Above silence, and yet below the -60 dB that reach the ear.
        double loudest = SoundCheck.of(voice.stream(), voice.seconds()).voiceDecibels();
        double gain = Math.pow(10, (-61 - loudest) / 20);
        yield changed(voice, sample -> gain * sample);
      }
      case "overdriven" -> changed(voice, sample -> 30 * sample);
      case "other" -> padded(WavFile.read(OTHER));
      case "nothing" -> Sound.silence(0);
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static Sound padded(Sound sound) {
    return Sound.joined(List.of(Sound.silence(0.5), sound, Sound.silence(1.5)));
  }

  private static Sound changed(Sound sound, DoubleUnaryOperator change) {
    short[] samples = new short[sound.length()];
    for (int i = 0; i < samples.length; i++) {
      double value = change.applyAsDouble(sound.sample(i));
      samples[i] = (short) Math.round(Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, value)));
    }
    return Sound.of(samples);
  }
}
