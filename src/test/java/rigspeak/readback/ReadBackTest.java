package rigspeak.readback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.answer.RadioAnswers;
import rigspeak.answer.Utterance;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.Procedure;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.meaning.Meaning.Trouble;
import rigspeak.meaning.Understanding;
import rigspeak.readback.Readback.Outcome;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;

/** Read-backs as they would be held, from read-backs.txt, and every slot read back wrong. */
class ReadBackTest {
  private static final Understanding UNDERSTANDING = new Understanding(DifferencesTest.GRAMMAR);
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));
  private static final Confirming CONFIRMING = new Confirming(DIALOGUE);
  private static final RadioAnswers ANSWERS = new RadioAnswers("climber");
  private static final Map<Slot, List<Said>> PLAUSIBLE = new EnumMap<>(Slot.class);
  private static final TimeOfDay NOW = new TimeOfDay(14, 5);
  private static final String HEARD = "(heard) ";
  private static final List<String> LINES = lines();
  private static final RopePath PLAN = plan();

  /** What may be said at random; the last of it leads far from the plan. */
  private static final List<String> TALK =
      List.of(
          "affirm",
          "affirm",
          "affirm",
          "negative",
          "roger",
          "over",
          "say again",
          "correction two wraps",
          "go to redirect one",
          "mumble",
          "read back",
          "two wraps",
          "bark rough",
          "out four feet",
          "sling choked",
          "over ring",
          "live wood",
          "limb one four inches by tape",
          "all up two hundred ten pounds by tape",
          "species northern red oak",
          "scrap that",
          "correction",
          "one wrap",
          "bark wet",
          "cavity one third",
          "no cavity",
          "rope angle sixty",
          "limb eight inches limb nine inches",
          "next redirect");

  private static final int MISLEADING = 9;

  record Situation(String title, List<String> lines) {
    @Override
    public String toString() {
      return title;
    }
  }

  private static List<String> lines() {
    try (var in = ReadBackTest.class.getResourceAsStream("read-backs.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> planned() {
    return LINES.stream()
        .filter(line -> line.startsWith("plan: "))
        .map(line -> line.substring("plan: ".length()))
        .toList();
  }

  private static RopePath plan() {
    Conversation talk = Conversation.begin();
    for (String line : planned()) {
      talk = DIALOGUE.step(talk, UNDERSTANDING.understand(line, talk.asked())).next();
    }
    return Differences.asSaid(talk.rope());
  }

  static Stream<Situation> situations() {
    List<Situation> all = new ArrayList<>();
    for (String line : LINES) {
      if (line.startsWith("# ")) {
        all.add(new Situation(line.substring(2), new ArrayList<>()));
      } else if (!line.isBlank() && !all.isEmpty()) {
        all.get(all.size() - 1).lines().add(line);
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("situations")
  void goesAsWritten(Situation situation) {
    Readback now = Readback.of(PLAN);
    List<String> spoken = new ArrayList<>();
    List<String> expected = new ArrayList<>();
    for (String line : situation.lines()) {
      if (line.equals("(say the rest)")) {
        now = sayTheRest(now);
      } else if (line.startsWith("> ")) {
        spoken.add(line);
        expected.add(line);
        Confirming.Result result = CONFIRMING.step(now, meaning(line.substring(2)), NOW);
        now = result.next();
        texts(result).forEach(text -> spoken.add("< " + text));
      } else if (line.startsWith("= ")) {
        assertEquals(
            line.substring(2), now.outcome().name().toLowerCase(Locale.ROOT), situation.title());
      } else {
        expected.add(line);
      }
    }
    assertEquals(String.join("\n", expected), String.join("\n", spoken));
  }

  /** Every line of the plan but the wraps, as planned, whatever is spoken to it. */
  private static Readback sayTheRest(Readback before) {
    Readback now = before;
    for (String line : planned()) {
      if (!line.startsWith("go to")) {
        now = CONFIRMING.step(now, meaning(line.replace("two wraps ", "")), NOW).next();
      }
    }
    return now;
  }

  private static Meaning meaning(String said) {
    if (said.equals("(too noisy)")) {
      return new Meaning.CannotHear(Trouble.TOO_NOISY);
    }
    return said.startsWith(HEARD)
        ? UNDERSTANDING.hearRadio(said.substring(HEARD.length()))
        : UNDERSTANDING.understandRadio(said);
  }

  private static List<String> texts(Confirming.Result result) {
    return ANSWERS.transmissions(result.replies()).stream().map(Utterance::text).toList();
  }

  @Test
  void everyReplyIsSpokenInSomeSituation() {
    Set<Class<?>> spoken = new HashSet<>();
    for (Situation situation : situations().toList()) {
      Readback now = Readback.of(PLAN);
      for (String line : situation.lines()) {
        if (line.equals("(say the rest)")) {
          now = sayTheRest(now);
        } else if (line.startsWith("> ")) {
          Confirming.Result result = CONFIRMING.step(now, meaning(line.substring(2)), NOW);
          result.replies().forEach(reply -> spoken.add(reply.getClass()));
          now = result.next();
        }
      }
    }
    Set<Class<?>> all =
        new LinkedHashSet<>(Arrays.asList(RadioReply.class.getPermittedSubclasses()));
    all.removeAll(spoken);
    assertEquals(Set.of(), all, "never spoken");
  }

  // ---- every slot, read back wrong ----

  private static RopePath whole(Slot slot, Said value) {
    Rig rig = Rig.empty();
    for (Slot other : Slot.values()) {
      rig = rig.with(other, other == slot ? value : plausible(other).get(0));
    }
    return RopePath.alone(rig);
  }

  /** Values that are taken without a word, of a slot. */
  private static List<Said> plausible(Slot slot) {
    return PLAUSIBLE.computeIfAbsent(slot, ReadBackTest::withoutOffence);
  }

  private static List<Said> withoutOffence(Slot slot) {
    return DifferencesTest.values(slot).stream()
        .filter(said -> CATALOGUE.offence(slot, said.value()).isEmpty())
        .toList();
  }

  private static Confirming.Result say(Readback now, Slot slot, Said said) {
    Meaning value = new Meaning.Values(List.of(new Statement.Value(slot, said)));
    return CONFIRMING.step(now, value, NOW);
  }

  /** Everything is said as planned but one slot; affirm whatever is asked. */
  @ParameterizedTest
  @EnumSource(Slot.class)
  void aWrongItemIsAlwaysCaughtAndNeverEndsInConfirmed(Slot wrong) {
    List<Said> values = plausible(wrong);
    assertTrue(values.size() >= 2, () -> wrong + " has too few plausible values: " + values);
    // Each as planned once, and as said in place of the first.
    for (Said planned : values) {
      for (Said said : List.of(planned, values.get(0), values.get(1))) {
        Readback now = Readback.of(whole(wrong, planned));
        boolean named = false;
        for (Slot slot : Slot.values()) {
          Said value = slot == wrong ? said : plausible(slot).get(0);
          Confirming.Result result = say(now, slot, value);
          now = result.next();
          named |= names(result, wrong, planned, said);
        }
        assertEquals(!planned.equals(said), named, () -> planned + " and " + said);
        for (int i = 0; i < 4; i++) {
          now = CONFIRMING.step(now, Command.AFFIRM, NOW).next();
        }
        assertEquals(
            planned.equals(said) ? Outcome.CONFIRMED : Outcome.DIFFERS,
            now.outcome(),
            () -> planned + " and " + said);
      }
    }
  }

  private static boolean names(Confirming.Result result, Slot slot, Said planned, Said said) {
    return result.replies().stream()
        .anyMatch(
            reply ->
                reply instanceof RadioReply.Differ differ
                    && differ.items().stream()
                        .anyMatch(
                            each ->
                                each instanceof Difference.Other other
                                    && other.slot() == slot
                                    && other.planned().equals(planned)
                                    && other.said().equals(said)));
  }

  /** Everything is said but one slot; nothing that is said then ends it. */
  @ParameterizedTest
  @EnumSource(Slot.class)
  void anUnsaidItemIsNamedAndNothingIsConfirmed(Slot unsaid) {
    Readback now = Readback.of(whole(unsaid, plausible(unsaid).get(0)));
    for (Slot slot : Slot.values()) {
      if (slot != unsaid) {
        now = say(now, slot, plausible(slot).get(0)).next();
      }
    }
    for (Meaning meaning :
        List.of(Command.AFFIRM, Procedure.ROGER, Procedure.OVER, Command.READ_BACK)) {
      Confirming.Result result = CONFIRMING.step(now, meaning, NOW);
      now = result.next();
      assertEquals(Outcome.OPEN, now.outcome());
    }
    RadioReply.NotSaidYet named =
        assertInstanceOf(
            RadioReply.NotSaidYet.class,
            CONFIRMING.step(now, Procedure.OVER, NOW).replies().get(0));
    assertEquals(List.of(unsaid), named.first().stream().map(Difference::slot).toList());
  }

  @ParameterizedTest
  @EnumSource(Slot.class)
  void anItemThatThePlanDoesNotHaveIsNamed(Slot extra) {
    Rig plan = whole(extra, plausible(extra).get(0)).at(rigspeak.rig.Place.redirectNumber(1));
    Confirming.Result result =
        say(Readback.of(RopePath.alone(plan.without(extra))), extra, plausible(extra).get(0));
    assertTrue(
        result.replies().stream()
            .anyMatch(
                reply ->
                    reply instanceof RadioReply.Differ differ
                        && differ.items().get(0).slot() == extra),
        () -> result.replies().toString());
  }

  // ---- whatever is said ----

  /** Only an affirm to the question about the whole ends it, and only with all of it as planned. */
  @Test
  void whateverIsSaidNothingButTheWholePlanIsConfirmed() {
    List<Meaning> talk = new ArrayList<>();
    for (String line : TALK) {
      talk.add(UNDERSTANDING.hearRadio(line));
    }
    int confirmed = 0;
    for (int seed = 0; seed < 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Readback now = Readback.of(PLAN);
      for (int i = 0; i < 300; i++) {
        Meaning meaning = talk.get(random.nextInt(talk.size() - (seed % 2) * MISLEADING));
        Readback before = now;
        Confirming.Result result = CONFIRMING.step(now, meaning, NOW);
        now = result.next();
        for (String text : texts(result)) {
          assertTrue(text.endsWith(" Over."), text);
        }
        if (now.outcome() == Outcome.CONFIRMED && before.outcome() != Outcome.CONFIRMED) {
          confirmed++;
          assertEquals(Command.AFFIRM, meaning);
          assertEquals(List.of(), now.differences());
          assertEquals(Optional.empty(), now.talk().floor().pending());
        }
        if (!now.differences().isEmpty()) {
          assertNotEquals(Outcome.CONFIRMED, now.outcome());
        }
      }
    }
    assertFalse(confirmed == 0, "the talk never came to an end, so nothing was tried");
  }
}
