package rigspeak.readback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Sentences;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;

/** What is found of every slot, and what is none. */
class DifferencesTest {
  static final Grammar GRAMMAR = Grammar.bundled();
  private static final Sentences SENTENCES = new Sentences(GRAMMAR);
  private static final Understanding UNDERSTANDING = new Understanding(GRAMMAR);
  private static final Map<Slot, List<Said>> VALUES = new EnumMap<>(Slot.class);
  private static final Place ONE = Place.redirectNumber(1);

  /** Every value of a slot that the sentences of its rule have, in each way of the rule once. */
  static List<Said> values(Slot slot) {
    return VALUES.computeIfAbsent(slot, DifferencesTest::covering);
  }

  private static List<Said> covering(Slot slot) {
    List<Said> values = new ArrayList<>();
    for (Sentences.Sentence sentence : SENTENCES.covering(GRAMMAR.phrase(slot.key()))) {
      said(slot, sentence.text())
          .filter(
              said ->
                  values.stream().noneMatch(other -> Differences.same(other.value(), said.value())))
          .ifPresent(values::add);
    }
    return values;
  }

  private static Optional<Said> said(Slot slot, String words) {
    Meaning meaning = UNDERSTANDING.understand(words, Optional.empty());
    return meaning instanceof Meaning.Values all
            && all.statements().get(0) instanceof Statement.Value value
            && value.slot() == slot
        ? Optional.of(value.said())
        : Optional.empty();
  }

  /** A rig in which every slot but one has been said. */
  private static Rig allBut(Slot open) {
    Rig rig = Rig.empty();
    for (Slot slot : Slot.values()) {
      if (slot != open) {
        rig = rig.with(slot, values(slot).get(0));
      }
    }
    return rig;
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void anotherValueOfASlotIsFoundAndNothingElse(Slot slot) {
    Rig rest = allBut(slot);
    List<Said> values = values(slot);
    assertTrue(values.size() >= 2, () -> slot + " has one value: " + values);
    for (int i = 0; i < values.size(); i++) {
      Said planned = values.get(i);
      for (Said said : List.of(planned, values.get((i + 1) % values.size()), values.get(0))) {
        List<Difference> found =
            Differences.between(
                RopePath.alone(rest.with(slot, planned)), RopePath.alone(rest.with(slot, said)));
        assertEquals(
            planned.equals(said)
                ? List.of()
                : List.of(new Difference.Other(ONE, slot, planned, said)),
            found);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void aSlotThatIsNotSaidIsNamed(Slot slot) {
    Rig rest = allBut(slot);
    Said planned = values(slot).get(0);
    List<Difference> notSaid = List.of(new Difference.NotSaid(ONE, slot));
    RopePath plan = RopePath.alone(rest.with(slot, planned));
    assertEquals(notSaid, Differences.between(plan, RopePath.alone(rest)));
    assertEquals(
        notSaid,
        Differences.between(plan, RopePath.alone(rest.with(slot, planned).withdrawing(slot))));
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void aSlotThatThePlanDoesNotHaveIsNamed(Slot slot) {
    Rig rest = allBut(slot);
    for (Said said : values(slot)) {
      assertEquals(
          List.of(new Difference.NotPlanned(ONE, slot, said)),
          Differences.between(RopePath.alone(rest), RopePath.alone(rest.with(slot, said))));
    }
  }

  record Alike(String one, String other) {}

  static Stream<Alike> alike() throws IOException {
    try (var in = DifferencesTest.class.getResourceAsStream("equal-values.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> line.contains(" | "))
              .map(line -> new Alike(line.split(" \\| ", 2)[0], line.split(" \\| ", 2)[1]))
              .toList()
              .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("alike")
  void theSameInOtherWordsOrUnitsIsNoDifference(Alike alike) {
    RopePath one = RopePath.alone(rig(alike.one()));
    RopePath other = RopePath.alone(rig(alike.other()));
    assertEquals(List.of(), Differences.between(one, other));
    assertEquals(List.of(), Differences.between(other, one));
  }

  /** The last digit that is said is a difference. */
  @Test
  void theSmallestStepThatIsSaidIsADifference() {
    for (String[] pair :
        List.of(
            new String[] {"limb ten inches", "limb twenty five point three centimeters"},
            new String[] {"limb eight inches", "limb twenty centimeters"},
            new String[] {"out ten feet", "out ten feet one inch"},
            new String[] {"inside angle one two zero", "bend six one"},
            new String[] {
              "anchor leg up sixty toward the stem", "anchor leg up sixty one toward the stem"
            },
            new String[] {
              "anchor leg up sixty toward the stem", "anchor leg up sixty toward the stem one foot"
            })) {
      assertFalse(
          Differences.between(RopePath.alone(rig(pair[0])), RopePath.alone(rig(pair[1]))).isEmpty(),
          () -> String.join(", ", pair));
    }
  }

  private static Rig rig(String words) {
    Rig rig = Rig.empty();
    Meaning.Values values = (Meaning.Values) UNDERSTANDING.understand(words, Optional.empty());
    for (Statement statement : values.statements()) {
      Statement.Value value = (Statement.Value) statement;
      rig = rig.with(value.slot(), value.said());
    }
    return rig;
  }

  @Test
  void aSupportThatIsMissingOrTooManyIsNamedSlotBySlot() {
    Rig limb = rig("limb ten inches");
    RopePath two = RopePath.alone(limb).with(Place.redirectNumber(2), limb);
    Place second = Place.redirectNumber(2);
    assertEquals(
        List.of(new Difference.NotSaid(second, Slot.LIMB_DIAMETER)),
        Differences.between(two, RopePath.alone(limb)));
    assertEquals(
        List.of(
            new Difference.NotPlanned(
                second, Slot.LIMB_DIAMETER, limb.said(Slot.LIMB_DIAMETER).orElseThrow())),
        Differences.between(RopePath.alone(limb), two));
  }

  /** What belongs to the climb is one item, however many supports know it. */
  @Test
  void whatBelongsToTheClimbIsToldOnce() {
    Rig limb = rig("all up two hundred pounds limb ten inches");
    Rig heavier = rig("all up two hundred ten pounds limb ten inches");
    RopePath planned = RopePath.alone(limb).with(Place.MAIN_POINT, limb);
    RopePath said = RopePath.alone(heavier).with(Place.MAIN_POINT, heavier);
    List<Difference> found = Differences.between(planned, said);
    assertEquals(1, found.size(), found::toString);
    assertEquals(Slot.ALL_UP, found.get(0).slot());
    assertEquals(3, Differences.size(planned));
  }
}
