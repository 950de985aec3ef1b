package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.dictionary.Pronunciation;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigspeak.audio.Sound;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;
import rigspeak.speaking.Voice;

/** A voice that the ear hears badly reads the sentences. */
final class EnrolmentTest {
  private static final List<String> OTHERS =
      List.of(
          "limb nine inches by eye",
          "out six feet eight inches by tape",
          "stem twenty inches union sound sling choked two wraps",
          "working leg down seventy at four o'clock eighteen feet",
          "bend one hundred twenty",
          "union codominant with included bark");

  private static Ear ear;
  private static Voice voice;

  @BeforeAll
  static void open() {
    ear = Ear.open(Grammar.bundled());
    voice = FreeTtsVoice.load();
  }

  /** As by a mouth that is smaller by this factor: pitch and formants go up by it. */
  private static Sound said(String words, double smaller) {
    short[] samples = voice.speak(words, Pace.ORDINARY.slower()).samples();
    short[] changed = new short[(int) (samples.length / smaller)];
    for (int i = 0; i < changed.length; i++) {
      double at = i * smaller;
      int before = Math.min(samples.length - 2, (int) at);
      double share = at - before;
      changed[i] = (short) ((1 - share) * samples[before] + share * samples[before + 1]);
    }
    Sound quiet = Sound.silence(0.5);
    return Sound.joined(List.of(quiet, Sound.of(changed), quiet, quiet));
  }

  @Test
  void aVoiceThatIsHeardBadlyIsHeardBetterAfterwards() throws IOException {
    double smaller = 1.25;
    Enrolment enrolment = new Enrolment(ear);
    List<String> sentences = Enrolment.sentences();
    for (int i = 0; i < sentences.size(); i++) {
      enrolment.read(i, said(sentences.get(i), smaller).stream());
    }
    Enrolment.Enrolled enrolled = enrolment.finish("wren").orElseThrow();

    long before = heard(smaller);
    assertTrue(ear.use(enrolled.profile()));
    long with = heard(smaller);
    ear.useNone();

    assertTrue(enrolled.understoodWith() > enrolled.understoodBefore(), enrolled::toString);
    assertTrue(with > before, with + " of the other sentences, before " + before);
    assertEquals(before, heard(smaller), "without the profile all is as it was");
  }

  private static long heard(double smaller) {
    ear.forgetVoices();
    return OTHERS.stream()
        .filter(words -> ear.hears(List.of(words.split(" ", -1)), said(words, smaller)))
        .count();
  }

  @Test
  void whatCannotBeKeptIsTold() throws IOException {
    Enrolment enrolment = new Enrolment(ear);

    assertEquals(Enrolment.Reading.NOTHING, enrolment.read(0, Sound.silence(2).stream()));
    assertEquals(
        Enrolment.Reading.OTHER_WORDS,
        enrolment.read(0, said(Enrolment.sentences().get(2), 1).stream()));
    assertEquals(0, enrolment.taken());
    assertEquals(
        Enrolment.Reading.TAKEN, enrolment.read(0, said(Enrolment.sentences().get(0), 1).stream()));
    assertEquals(1, enrolment.taken());
    assertEquals(Optional.empty(), enrolment.finish("wren"), "one sentence is too little");
  }

  @Test
  void aProfileOfAnotherModelIsRefused() {
    Profile other = new Profile("wren", "00000000", 30, new Levels(-20, -60), CepstrumMap.none());

    assertFalse(ear.use(other));
    assertEquals(Levels.unknown(), ear.levels());
  }

  @Test
  void everySentenceIsInTheGrammar() {
    Grammar grammar = Grammar.bundled();

    assertEquals(30, Enrolment.sentences().size());
    for (String sentence : Enrolment.sentences()) {
      assertFalse(
          grammar.match(List.of(sentence.split(" ", -1)), Expected.anything()).isEmpty(), sentence);
    }
  }

  /** Each sound that a word of the grammar has, in any of its pronunciations, is read. */
  @Test
  void theSentencesHaveEverySoundOfTheGrammar() throws IOException {
    Set<String> words = Ear.allWords(Grammar.bundled());
    KeptDictionary dictionary =
        new ConfigurationManager(Ear.resource("ear.xml")).lookup("dictionary");
    dictionary.keep(words);
    dictionary.allocate();
    Set<String> unread = new TreeSet<>();
    words.forEach(word -> unread.addAll(phones(dictionary, word)));
    for (String sentence : Enrolment.sentences()) {
      for (String word : sentence.split(" ", -1)) {
        unread.removeAll(phones(dictionary, word));
      }
    }

    assertEquals(Set.of(), unread);
  }

  private static Set<String> phones(KeptDictionary dictionary, String word) {
    Set<String> phones = new TreeSet<>();
    for (Pronunciation way : dictionary.getWord(word).getPronunciations()) {
      for (Unit unit : way.getUnits()) {
        phones.add(unit.getName());
      }
    }
    return phones;
  }
}
