package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.logging.Level;
import java.util.logging.LogManager;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.audio.Sound;
import rigspeak.audio.SoundStream;
import rigspeak.audio.VirtualLine;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;
import rigspeak.speaking.Voice;

final class EarTest {
  private static final Path CORPUS = Path.of("src/test/resources/corpus");

  private static final Sound QUIET = Sound.silence(1);

  private static Ear ear;
  private static Sound clip;
  private static List<String> clipWords;

  @TempDir Path folder;

  @BeforeAll
  static void open() throws IOException {
    ear = Ear.open(Grammar.bundled());
    Path wav =
        CorpusMeasurement.Recording.all(CORPUS).stream()
            .filter(r -> r.voice().equals("flite-slt") && !r.talk())
            .findFirst()
            .orElseThrow()
            .file();
    clip = WavFile.read(wav);
    clipWords = CorpusMeasurement.wordsBeside(wav);
  }

  @Test
  void severalUtterancesOfOneStreamAreHeardOneByOne() throws IOException {
    Sound pause = Sound.silence(0.8);
    List<Heard> heard =
        hear(Sound.joined(List.of(clip, pause, clip, pause)).stream(), Expected.anything());

    assertEquals(2, heard.size(), heard::toString);
    for (Heard one : heard) {
      assertEquals(clipWords, assertInstanceOf(Heard.Words.class, one).words());
    }
    Heard.Stretch first = heard.get(0).when();
    Heard.Stretch second = heard.get(1).when();
    assertTrue(first.endSeconds() <= second.startSeconds(), "one after the other");
    assertTrue(second.startSeconds() > clip.seconds(), "where it was said");
  }

  /** Made out or not: it is the noise that keeps them from standing. */
  @Test
  void wordsThatTheNoiseNearlyDrownsAreAskedBackOrTheNoiseIsTold() throws IOException {
    List<Heard> made = new ArrayList<>();
    for (int decibels = 8; decibels <= 11; decibels++) {
      Condition noise = new Condition.Noisy(Noise.PINK, decibels);
      hear(noise.heard(clip, decibels).stream(), Expected.anything()).stream()
          .filter(heard -> !(heard instanceof Heard.Silence))
          .forEach(made::add);
    }
    for (Heard heard : made) {
      Heard told = heard instanceof Heard.Doubtful doubtful ? doubtful.otherwise() : heard;
      assertInstanceOf(Heard.TooNoisy.class, told, heard::toString);
    }
    assertTrue(made.stream().anyMatch(Heard.Doubtful.class::isInstance), made::toString);
  }

  /** Of a value without its name more is asked before it stands. */
  @Test
  void theEarKnowsABareAnswerFromAValueWithItsName() throws IOException {
    Voice voice = FreeTtsVoice.load();
    for (String words : List.of("ring", "sling choked")) {
      List<Boolean> bare = new ArrayList<>();
      ear.watch((found, evidence) -> bare.add(evidence.bare()));
      Sound said = Sound.joined(List.of(QUIET, voice.speak(words, Pace.ORDINARY), QUIET));
      hear(said.stream(), Expected.answerFor("running_over"));
      ear.watch((found, evidence) -> {});
      assertEquals(List.of(words.equals("ring")), bare, words);
    }
  }

  @ParameterizedTest(name = "in blocks of {0} samples")
  @ValueSource(ints = {1, 77, 160, 4_000})
  void soundThatComesInPiecesIsHeardAsTheWholeIs(int block) throws IOException {
    List<Heard> heard =
        hear(
            new SoundStream() {
              private final SoundStream whole = clip.stream();

              @Override
              public int read(short[] into, int from, int most) throws IOException {
                return whole.read(into, from, Math.min(most, block));
              }

              @Override
              public void close() {}
            },
            Expected.anything());

    assertEquals(clipWords, assertInstanceOf(Heard.Words.class, heard.get(0)).words());
  }

  @Test
  void theResultIsThereBeforeTheLineEnds() throws IOException {
    VirtualLine line = new VirtualLine("headset");
    line.say(clip);
    line.say(Sound.silence(1));
    try (Listening listening = ear.listen(line)) {
      Optional<Heard> heard = listening.next(Expected.anything());

      assertEquals(clipWords, assertInstanceOf(Heard.Words.class, heard.orElseThrow()).words());
    }
  }

  /** "Limb eight inches" of "limb eight inches by tape", if the file ends there, is no sentence. */
  @Test
  void whatBreaksOffInTheMidstIsNotTaken() throws IOException {
    Sound whole = WavFile.read(corpusFile("flite-awb", "limb eight inches by tape"));
    double quiet = 0.5;
    int cuts = 0;
    for (double at = 0.8; at < whole.seconds() - quiet; at += 0.05) {
      int samples = (int) (at * Sound.RATE);
      Sound cut = Sound.of(Arrays.copyOf(whole.samples(), samples));
      List<Heard> heard = hear(cut.stream(), Expected.anything());
      assertTrue(heard.stream().noneMatch(Heard.Words.class::isInstance), at + ": " + heard);
      cuts++;
    }
    assertTrue(cuts > 10, "cut " + cuts + " times");
  }

  @Test
  void aBareValueIsHeardOnlyWhereItIsExpected() throws IOException {
    Path wav = corpusFile("flite-awb", "limb eight inches by tape");
    List<String> words = CorpusMeasurement.wordsBeside(wav);
    assertEquals(List.of("limb", "eight", "inches", "by", "tape"), words);

    assertInstanceOf(Heard.Words.class, hear(wav, Expected.anything()));
    assertInstanceOf(Heard.Words.class, hear(wav, Expected.answerFor("limb_diameter")));
    Heard only = hear(wav, Expected.only("limb_diameter"));
    if (only instanceof Heard.Words taken) {
      assertFalse(taken.words().contains("limb"), "it is not open: " + taken);
    }
  }

  @Test
  void whatWasGotReadyBesideSomethingElseIsHeardAlike() throws IOException {
    Expected answer = Expected.answerFor("limb_diameter");
    for (Expected soon : List.of(answer, Expected.answerFor("out"), Expected.call())) {
      try (Listening listening = ear.listen(Sound.joined(List.of(clip, QUIET)).stream())) {
        listening.expectSoon(soon);
        Heard heard = listening.next(answer).orElseThrow();

        assertEquals(clipWords, assertInstanceOf(Heard.Words.class, heard).words());
      }
    }
  }

  @Test
  void whoeverWaitsForWhatCouldNotBeGotReadyIsTold() throws IOException {
    try (Listening listening = ear.listen(Sound.joined(List.of(clip, QUIET)).stream())) {
      listening.expectSoon(Expected.only("no_such_slot"));

      IllegalArgumentException fault =
          assertThrows(IllegalArgumentException.class, () -> listening.next(Expected.anything()));
      assertEquals("the grammar has no rule named no_such_slot_value", fault.getMessage());

      // It is told once, and what can be heard is heard.
      Heard heard = listening.next(Expected.anything()).orElseThrow();
      assertEquals(clipWords, assertInstanceOf(Heard.Words.class, heard).words());
    }
  }

  @Test
  void silenceIsSilence() throws IOException {
    List<Heard> heard = hear(Sound.silence(3).stream(), Expected.anything());

    assertEquals(1, heard.size());
    assertInstanceOf(Heard.Silence.class, heard.get(0));
  }

  @Test
  void noiseThatAStreamBeginsWithIsNoUtterance() throws IOException {
    Random dice = new Random(4);
    short[] noise = new short[5 * Sound.RATE];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (short) (dice.nextGaussian() * 2_000);
    }
    List<Heard> heard = hear(Sound.of(noise).stream(), Expected.anything());

    assertEquals(1, heard.size(), heard::toString);
    assertInstanceOf(Heard.Silence.class, heard.get(0));
  }

  @Test
  void anEmptyStreamIsSilenceToo() throws IOException {
    List<Heard> heard = hear(Sound.silence(0).stream(), Expected.anything());

    assertInstanceOf(Heard.Silence.class, heard.get(0));
  }

  @Test
  void noiseIsNeverWords() throws IOException {
    Random dice = new Random(4);
    short[] noise = new short[12 * Sound.RATE];
    for (int i = 0; i < noise.length; i++) {
      boolean on = i / Sound.RATE % 4 >= 2;
      noise[i] = (short) (dice.nextGaussian() * (on ? 3_000 : 20));
    }

    for (Heard heard : hear(Sound.of(noise).stream(), Expected.anything())) {
      assertFalse(heard instanceof Heard.Words, heard::toString);
    }
  }

  @Test
  void anOverdrivenMicrophoneIsTold() throws IOException {
    short[] samples = clip.samples();
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) Math.max(-32_768, Math.min(32_767, samples[i] * 30));
    }

    List<Heard> heard = hear(Sound.of(samples).stream(), Expected.anything());

    assertTrue(heard.stream().anyMatch(h -> h instanceof Heard.Clipped), heard::toString);
    assertTrue(heard.stream().noneMatch(h -> h instanceof Heard.Words), heard::toString);
  }

  @Test
  void aVoiceThatHardlyReachesTheMicrophoneIsTold() throws IOException {
    short[] samples = clip.samples();
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) (samples[i] / 250);
    }

    for (Heard heard : hear(Sound.of(samples).stream(), Expected.anything())) {
      assertTrue(
          heard instanceof Heard.TooQuiet || heard instanceof Heard.Silence, heard::toString);
    }
  }

  /** A level is forgotten with its logger, where nobody holds it. */
  @Test
  void theRecogniserKeepsItsLifeStoryToItself() {
    System.gc();
    for (String name : List.of("edu.cmu.sphinx", "ear")) {
      assertEquals(Level.SEVERE, LogManager.getLogManager().getLogger(name).getLevel(), name);
    }
  }

  @Test
  void aWordThatNoDictionaryHasIsNamed() throws IOException {
    Path file = folder.resolve("g.jsgf");
    Files.writeString(
        file, "#JSGF V1.0;\ngrammar g;\npublic <utterance> = check redirekt | xyzzyq;\n");
    Grammar grammar = Grammar.read(file.toUri().toURL());

    HearingFault fault = assertThrows(HearingFault.class, () -> Ear.open(grammar));

    assertEquals(
        "No dictionary says how to pronounce redirekt, xyzzyq; add a line for it to rigspeak.dict"
            + " or take it out of the grammar.",
        fault.getMessage());
  }

  @Test
  void aLineThatBreaksOffIsAnErrorAndNotAGuess() {
    SoundStream broken =
        new SoundStream() {
          private final SoundStream beginning = clip.part(0, clip.length() / 2).stream();

          @Override
          public int read(short[] into, int from, int most) throws IOException {
            int read = beginning.read(into, from, most);
            if (read == END) {
              throw new IOException("The microphone is gone.");
            }
            return read;
          }

          @Override
          public void close() {}
        };

    IOException error = assertThrows(IOException.class, () -> hear(broken, Expected.anything()));
    assertEquals("The microphone is gone.", error.getMessage());
  }

  private static List<Heard> hear(SoundStream stream, Expected expected) throws IOException {
    List<Heard> all = new ArrayList<>();
    try (Listening listening = ear.listen(stream)) {
      Optional<Heard> next = listening.next(expected);
      while (next.isPresent()) {
        all.add(next.get());
        next = listening.next(expected);
      }
    }
    return all;
  }

  private static Heard hear(Path wav, Expected expected) throws IOException {
    List<Heard> heard = CorpusMeasurement.heard(ear, wav, expected);
    assertEquals(1, heard.size(), heard::toString);
    return heard.get(0);
  }

  private static Path corpusFile(String voice, String text) throws IOException {
    for (CorpusMeasurement.Recording r : CorpusMeasurement.Recording.all(CORPUS)) {
      if (r.voice().equals(voice) && String.join(" ", r.words()).equals(text)) {
        return r.file();
      }
    }
    throw new IllegalArgumentException(voice + " does not say " + text);
  }
}
