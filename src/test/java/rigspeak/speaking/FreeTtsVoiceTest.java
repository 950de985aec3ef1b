package rigspeak.speaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class FreeTtsVoiceTest {
  /** What the tool says, with its near neighbours, so that hearing one of them means something. */
  private static final String ANSWERS =
      """
      #JSGF V1.0;
      grammar answers;
      public <utterance> = good to load | do not load | marginal | cannot say
        | lanyard first say clipped in | lanyard released | clipped in
        | (limb | stem) <n> inches (by eye | by tape) | union (sound | codominant | cracked)
        | over (carabiner | ring | pulley) | the (union | sling | limb) (governs | slips)
        | <n> <n> degrees (up | down) | <n> kilonewtons | say again | correction
        | redirect <n> (loaded | released);
      <n> = zero | one | two | three | four | five | six | seven | eight | nine | ten | fifteen | fifty;
      """;

  private final Voice voice = FreeTtsVoice.load();
  private Ear ear;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("answers.jsgf");
    Files.writeString(file, ANSWERS);
    ear = Ear.open(Grammar.read(file.toUri().toURL()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Good to load.",
        "Do not load.",
        "Marginal.",
        "Cannot say.",
        "Lanyard first. Say clipped in.",
        "Lanyard released.",
        "Clipped in.",
        "Limb, eight inches, by eye.",
        "Limb, nine inches, by tape.",
        "Stem, fifteen inches, by tape.",
        "Union codominant.",
        "Union cracked.",
        "Over carabiner.",
        "Over pulley.",
        "The sling slips.",
        "The union governs.",
        "Six zero degrees up.",
        "Five zero degrees down.",
        "Nine kilonewtons.",
        "Redirect two released.",
        "Redirect one loaded.",
      })
  void whatTheToolSaysCanBeUnderstood(String answer) throws IOException {
    Sound said =
        Sound.joined(
            List.of(Sound.silence(0.3), voice.speak(answer, Pace.ORDINARY), Sound.silence(0.8)));
    try (Listening listening = ear.listen(said.stream())) {
      Optional<Heard> heard = listening.next(Expected.anything());

      Heard.Words words = assertInstanceOf(Heard.Words.class, heard.orElseThrow());
      assertEquals(answer.toLowerCase(java.util.Locale.ROOT).replaceAll("[.,]", ""), words.text());
    }
  }

  @Test
  void thePaceIsWhatItSays() {
    // Ordinary answers of the tool, long and short.
    List<String> answers =
        List.of(
            "All up, two hundred ten pounds. Species, northern red oak. Live wood.",
            "Anchor leg, up six zero degrees toward the stem, twelve feet, by eye.",
            "Good to load, redirect one, by the numbers you gave. The load points down one five"
                + " degrees toward the stem, about one hundred ten pounds, mostly into the union.",
            "Clip in before you set, move or take off a redirect.",
            "Lanyard first. Say clipped in.",
            "I still need the anchor leg and the working leg.");

    double ordinary = wordsPerMinute(answers, Pace.ORDINARY);
    // Answers differ in their words and pauses: within a tenth.
    assertEquals(150, ordinary, 15);
    double slower = wordsPerMinute(answers, Pace.ORDINARY.slower());
    double faster = wordsPerMinute(answers, Pace.ORDINARY.faster());
    assertEquals(1 / 1.2, slower / ordinary, 0.02);
    assertEquals(1.2, faster / ordinary, 0.02);
  }

  private double wordsPerMinute(List<String> answers, Pace pace) {
    double seconds = 0;
    int words = 0;
    for (String answer : answers) {
      seconds += voice.speak(answer, pace).seconds();
      words += answer.split(" ", -1).length;
    }
    return 60 * words / seconds;
  }

  @Test
  void marksMakePauses() {
    double none = voice.speak("limb eight inches", Pace.ORDINARY).seconds();
    double comma = voice.speak("limb, eight inches", Pace.ORDINARY).seconds();
    double stop = voice.speak("limb. eight inches", Pace.ORDINARY).seconds();

    assertTrue(comma > none + 0.1, "a comma: " + (comma - none));
    assertEquals(0.20, stop - comma, 0.02, "a full stop is longer");
  }

  @Test
  void theSameWordsSoundTheSameEveryTime() {
    assertEquals(
        voice.speak("Do not load.", Pace.ORDINARY), voice.speak("do not load", Pace.ORDINARY));
  }

  @Test
  void theSoundIsLoudEnoughAndNotClipped() {
    Meter.Level level = Meter.of(voice.speak("Do not load.", Pace.ORDINARY));

    assertEquals(0, level.clippedShare());
    assertTrue(level.meanDecibels() > -30, level::toString);
  }

  @Test
  void noWordsAreNoSound() {
    assertEquals(0, voice.speak("", Pace.ORDINARY).length());
    assertEquals(0, voice.speak(" ., ", Pace.ORDINARY).length());
  }

  @Test
  void aPaceHasLimits() {
    Pace pace = Pace.ORDINARY;
    for (int i = 0; i < 10; i++) {
      pace = pace.faster();
    }
    assertEquals(Pace.FASTEST, pace.wordsPerMinute());
    for (int i = 0; i < 10; i++) {
      pace = pace.slower();
    }
    assertEquals(Pace.SLOWEST, pace.wordsPerMinute());
    assertThrows(IllegalArgumentException.class, () -> new Pace(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Pace(500));
  }
}
