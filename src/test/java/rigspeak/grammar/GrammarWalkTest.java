package rigspeak.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Resolution;
import rigspeak.drill.Asking;
import rigspeak.grammar.Sentences.Sentence;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.NotUnderstood;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** Walks the grammar sentence by sentence: each has exactly one reading and one meaning. */
class GrammarWalkTest {
  /** More ways than this through one rule are not walked one by one. */
  private static final int SMALL = 20_000;

  private static final int LONGEST_BREATH = 80;

  private static final Grammar GRAMMAR = Grammar.bundled();
  private static final Sentences SENTENCES = new Sentences(GRAMMAR);
  private static final Understanding UNDERSTANDING = new Understanding(GRAMMAR);

  static Stream<String> smallRules() {
    return GRAMMAR.ruleNames().stream()
        .filter(rule -> SENTENCES.ways(GRAMMAR.phrase(rule)) <= SMALL);
  }

  @ParameterizedTest
  @MethodSource("smallRules")
  void everySentenceOfASmallRuleHasOneReading(String rule) {
    for (Sentence sentence : SENTENCES.all(GRAMMAR.phrase(rule))) {
      assertOneReading(sentence, rule);
    }
  }

  @Test
  void everyRuleWithoutANumberIsSmallEnoughToWalkWholly() {
    Set<String> large = new LinkedHashSet<>(GRAMMAR.ruleNames());
    large.removeAll(smallRules().toList());
    large.removeIf(rule -> SENTENCES.rulesBelow(new Phrase.Rule(rule)).contains("some"));
    assertEquals(Set.of(), large, "large rules without a number");
    assertTrue(smallRules().count() >= 45, () -> smallRules().count() + " small rules");
  }

  /** The rules that whole sentences are made of are walked with the utterance. */
  static Stream<String> partsOfStatements() {
    return GRAMMAR.ruleNames().stream()
        .filter(rule -> !rule.equals("statement"))
        .filter(rule -> !SENTENCES.rulesBelow(GRAMMAR.phrase(rule)).contains("statement"));
  }

  @ParameterizedTest
  @MethodSource("partsOfStatements")
  void everyAlternativeAndEveryOptionOfARuleHasOneReading(String rule) {
    for (Sentence sentence : SENTENCES.covering(GRAMMAR.phrase(rule))) {
      assertOneReading(sentence, rule);
    }
  }

  @Test
  void everyAlternativeAndEveryOptionOfAnUtteranceHasOneMeaning() {
    for (Sentence sentence : SENTENCES.covering(GRAMMAR.phrase("utterance"))) {
      assertOneMeaning(sentence);
    }
  }

  @Test
  void randomSentencesHaveOneMeaning() {
    assertRandomSentencesHaveOneMeaning(20_000, 1);
  }

  @Test
  @Tag("long")
  void manyMoreRandomSentencesHaveOneMeaning() {
    assertRandomSentencesHaveOneMeaning(1_000_000, 2);
  }

  private static void assertRandomSentencesHaveOneMeaning(int howMany, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Phrase utterance = GRAMMAR.phrase("utterance");
    int walked = 0;
    while (walked < howMany) {
      Sentence sentence = SENTENCES.any(utterance, random::nextInt);
      if (sentence.words().size() <= LONGEST_BREATH) {
        assertOneMeaning(sentence);
        walked++;
      }
    }
  }

  /** The reading is the very way in which the sentence was made. */
  private static void assertOneReading(Sentence sentence, String rule) {
    if (sentence.words().isEmpty()) {
      return;
    }
    Set<List<String>> readings = GRAMMAR.match(sentence.words(), new Expected(List.of(rule)));
    assertEquals(Set.of(sentence.tags()), readings, sentence::text);
  }

  private static void assertOneMeaning(Sentence sentence) {
    assertOneReading(sentence, "utterance");
    Meaning meaning = UNDERSTANDING.understand(sentence.text(), Optional.empty());
    if (meaning instanceof NotUnderstood missed) {
      // The one thing that can be said and is refused: a slope beyond plumb.
      assertEquals(Reason.BEYOND_PLUMB, missed.reason(), sentence::toString);
      assertTrue(
          sentence.tags().contains("is up") || sentence.tags().contains("is down"),
          sentence::toString);
      return;
    }
    long slots = sentence.tags().stream().filter(tag -> tag.startsWith("slot ")).count();
    if (meaning instanceof Meaning.Values values) {
      assertEquals(slots, values.statements().size(), sentence::toString);
    } else if (meaning instanceof Meaning.Correction correction) {
      assertEquals(slots, correction.statements().size(), sentence::toString);
    } else {
      assertEquals(0, slots, sentence::toString);
    }
  }

  // ---- everything can be said ----

  @ParameterizedTest
  @EnumSource(Slot.class)
  void aSlotCanBeSaidWithItsName(Slot slot) {
    List<Sentence> named = SENTENCES.covering(GRAMMAR.phrase(slot.key()));
    for (Sentence sentence : named) {
      assertTaken(slot, UNDERSTANDING.understand(sentence.text(), Optional.empty()), sentence);
    }
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void aSlotCanBeSaidAsABareAnswer(Slot slot) {
    List<Sentence> bare = SENTENCES.covering(GRAMMAR.phrase(slot.key() + "_value"));
    for (Sentence sentence : bare) {
      assertTaken(slot, UNDERSTANDING.understand(sentence.text(), Optional.of(slot)), sentence);
    }
  }

  /** Whatever is asked for, everything else can still be said, and means the same. */
  @ParameterizedTest
  @EnumSource(Slot.class)
  void aQuestionNeverChangesWhatANamedValueMeans(Slot asked) {
    SplittableRandom random = new SplittableRandom(asked.name().hashCode());
    Phrase utterance = GRAMMAR.phrase("utterance");
    for (int i = 0; i < 300; i++) {
      Sentence sentence = SENTENCES.any(utterance, random::nextInt);
      assertEquals(
          UNDERSTANDING.understand(sentence.text(), Optional.empty()),
          UNDERSTANDING.understand(sentence.text(), Optional.of(asked)),
          sentence::text);
    }
  }

  private static void assertTaken(Slot slot, Meaning meaning, Sentence sentence) {
    if (meaning instanceof NotUnderstood missed && missed.reason() == Reason.BEYOND_PLUMB) {
      return;
    }
    Meaning.Values values = assertInstanceOf(Meaning.Values.class, meaning, sentence::text);
    assertEquals(1, values.statements().size(), sentence::text);
    Statement.Value value =
        assertInstanceOf(Statement.Value.class, values.statements().get(0), sentence::text);
    assertEquals(slot, value.slot(), sentence::text);
    assertTrue(slot.valueType().isInstance(value.said().value()), sentence::text);
  }

  @Test
  void everyCommandCanBeSaidAndNothingElseIsACommand() {
    Set<Command> said = EnumSet.noneOf(Command.class);
    Set<Place> places = new LinkedHashSet<>();
    for (Sentence sentence : SENTENCES.all(GRAMMAR.phrase("command"))) {
      Meaning meaning = UNDERSTANDING.understand(sentence.text(), Optional.empty());
      if (meaning instanceof Meaning.GoTo goTo) {
        places.add(goTo.place());
      } else {
        assertTrue(said.add(assertInstanceOf(Command.class, meaning)), sentence::text);
      }
    }
    // The call has a rule of its own.
    said.add(
        assertInstanceOf(
            Command.class,
            UNDERSTANDING.understand(
                SENTENCES.all(GRAMMAR.phrase("call")).get(0).text(), Optional.empty())));
    assertEquals(EnumSet.allOf(Command.class), said);
    assertEquals(
        IntStream.rangeClosed(0, 9).mapToObj(Place::new).collect(Collectors.toSet()), places);
  }

  static Stream<String> speciesNames() {
    return SENTENCES.all(GRAMMAR.phrase("species_value")).stream().map(Sentence::text);
  }

  /** Whoever can say a species can have it judged. */
  @ParameterizedTest
  @MethodSource("speciesNames")
  void everySpeciesThatCanBeSaidHasItsWood(String name) {
    String rig =
        "all up two hundred pounds live wood limb ten inches limb level out one foot"
            + " stem twenty inches union sound stationary rope over ring sling basket"
            + " inside angle ninety sling points down toward the stem";
    Rig said = with(with(Rig.empty(), rig), "species " + name);
    assertInstanceOf(
        Resolution.Known.class,
        Catalogue.bundled().resolve(RopePath.alone(said), Place.redirectNumber(1)));
    Value.Species species = said.value(Slot.SPECIES, Value.Species.class).orElseThrow();
    assertEquals(name.equals("unknown"), species.isUnknown());
  }

  private static Rig with(Rig rig, String text) {
    Meaning.Values values =
        assertInstanceOf(
            Meaning.Values.class, UNDERSTANDING.understand(text, Optional.empty()), text);
    Rig longer = rig;
    for (Statement statement : values.statements()) {
      Statement.Value value = (Statement.Value) statement;
      longer = longer.with(value.slot(), value.said());
    }
    return longer;
  }

  // ---- words ----

  @Test
  void everyWordIsInADictionary() {
    Pronunciations known = Pronunciations.all();
    List<String> unknown = SENTENCES.words().stream().filter(word -> !known.has(word)).toList();
    assertEquals(List.of(), unknown);
  }

  @Test
  void ourOwnDictionaryHasOnlyWordsThatAreNeededAndPhonesThatTheModelKnows() {
    Pronunciations general = Pronunciations.general();
    Set<String> phones =
        general.byWord().values().stream()
            .flatMap(List::stream)
            .flatMap(List::stream)
            .collect(Collectors.toSet());
    Set<String> words = SENTENCES.words();
    List<String> faults = new ArrayList<>();
    Pronunciations.own()
        .byWord()
        .forEach(
            (word, ways) -> {
              if (!words.contains(word)) {
                faults.add(word + " is in no sentence");
              }
              ways.stream()
                  .flatMap(List::stream)
                  .filter(phone -> !phones.contains(phone))
                  .forEach(phone -> faults.add(word + " has the unknown phone " + phone));
            });
    assertEquals(List.of(), faults);
  }

  @Test
  void everyRuleIsUsedByAnUtteranceOrByAnAnswer() {
    Set<String> used = SENTENCES.rulesBelow(new Phrase.Rule("utterance"));
    used.addAll(SENTENCES.rulesBelow(new Phrase.Rule("radio")));
    for (Slot slot : Slot.values()) {
      used.addAll(SENTENCES.rulesBelow(new Phrase.Rule(slot.key() + "_value")));
    }
    for (Asking asking : Asking.values()) {
      used.addAll(SENTENCES.rulesBelow(new Phrase.Rule("drill_" + asking.rule())));
    }
    used.addAll(SENTENCES.rulesBelow(new Phrase.Rule("drill_sure")));
    assertEquals(new LinkedHashSet<>(GRAMMAR.ruleNames()), used, "unused rules");
  }

  @Test
  void wordsAreWrittenAsTheyAreHeard() {
    List<String> odd =
        SENTENCES.words().stream().filter(word -> !word.matches("[a-z]+('[a-z]+)?")).toList();
    assertEquals(List.of(), odd);
  }
}
