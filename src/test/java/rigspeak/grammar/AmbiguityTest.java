package rigspeak.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.net.URL;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.NotUnderstood;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;

/**
 * Words that could mean two things are refused: here with grammars that are ambiguous on purpose.
 */
class AmbiguityTest {
  private static final Grammar TWO_READINGS = grammar("two-readings.jsgf");

  @Test
  void bothReadingsAreFound() {
    assertEquals(
        Set.of(
            List.of("slot limb_diameter", "add 20", "add 1", "unit inches"),
            List.of("slot limb_diameter", "add 20", "unit inches", "slot wraps", "add 1")),
        TWO_READINGS.match(List.of("limb", "twenty", "one"), Expected.anything()));
  }

  @Test
  void wordsWithTwoMeaningsAreRefused() {
    assertRefused(TWO_READINGS, "limb twenty one", Optional.empty());
  }

  @Test
  void wordsWithOneMeaningAreTakenFromTheSameGrammar() {
    Meaning meaning = new Understanding(TWO_READINGS).understand("limb twenty", Optional.empty());
    assertEquals(1, assertInstanceOf(Meaning.Values.class, meaning).statements().size());
  }

  /** Two ways through the grammar that earn the same tags are one reading. */
  @Test
  void twoWaysToTheSameTagsAreOneReading() {
    assertEquals(
        Set.of(List.of("do help")), TWO_READINGS.match(List.of("help", "me"), Expected.anything()));
    assertEquals(
        Meaning.Command.HELP,
        new Understanding(TWO_READINGS).understand("help me", Optional.empty()));
  }

  /** A bare answer that is also a sentence of its own, with another meaning. */
  @Test
  void anAnswerThatIsAlsoACommandIsRefused() {
    Understanding understanding = new Understanding(TWO_READINGS);
    assertRefused(TWO_READINGS, "negative", Optional.of(Slot.WOOD));
    assertEquals(Meaning.Command.NEGATIVE, understanding.understand("negative", Optional.empty()));
  }

  @Test
  void noReadingIsFoundForWordsThatOnlyBeginASentence() {
    assertEquals(Set.of(), TWO_READINGS.match(List.of("limb"), Expected.anything()));
    assertEquals(
        Set.of(), TWO_READINGS.match(List.of("limb", "twenty", "two"), Expected.anything()));
    assertEquals(Set.of(), TWO_READINGS.match(List.of(), Expected.anything()));
  }

  private static void assertRefused(Grammar grammar, String words, Optional<Slot> asked) {
    Meaning meaning = new Understanding(grammar).understand(words, asked);
    NotUnderstood missed = assertInstanceOf(NotUnderstood.class, meaning);
    assertEquals(Reason.TWO_MEANINGS, missed.reason());
    assertEquals(words, missed.words());
  }

  private static Grammar grammar(String name) {
    URL file = AmbiguityTest.class.getResource(name);
    return Grammar.read(file);
  }
}
