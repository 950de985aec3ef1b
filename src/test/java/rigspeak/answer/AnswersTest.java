package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.catalogue.Conflict;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Lanyard;
import rigspeak.dialogue.Reply;
import rigspeak.meaning.Meaning;
import rigspeak.mechanics.LoadClass;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.HowGot;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Loss;
import rigspeak.verdict.Obstacle;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Refusal;
import rigspeak.verdict.Remedy;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Swing;
import rigspeak.verdict.Verdict;
import rigspeak.verdict.Verdict.Rating;

/** Everything that can be uttered, held against how it must sound. */
class AnswersTest {
  /** About ten seconds of speech. */
  private static final int LONGEST_SENTENCE = 30;

  /** Words of a message that is not a whole read-back; 150 are spoken in a minute. */
  private static final int LONGEST_FULL = 125;

  private static final int LONGEST_BRIEF = 70;

  /** Who asks why is owed every assumption, and can say "stop talking". */
  private static final int LONGEST_WHY = 160;

  private static final Pattern WORD = Pattern.compile("[A-Za-z]+('[a-z]+)?");

  private static final Set<String> NUMBERS =
      Set.of(
          ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
                  + " fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty"
                  + " seventy eighty ninety hundred thousand million half")
              .split(" "));

  /** What a number may be a number of. */
  private static final Set<String> UNITS =
      Set.of(
          ("foot feet inch inches meter meters centimeter centimeters millimeter millimeters pound pounds kilogram"
                  + " kilograms newton newtons kilonewton kilonewtons megapascal megapascals degree"
                  + " degrees percent times wrap wraps o'clock quarter quarters third thirds value"
                  + " values more things")
              .split(" "));

  private static final List<Reply> REPLIES = Situations.replies();

  private static List<String> texts(Reply reply, Detail detail) {
    return Answers.say(List.of(reply), detail).stream().map(Utterance::text).toList();
  }

  private static String text(Reply reply, Detail detail) {
    return String.join(" ", texts(reply, detail));
  }

  private static void eachAnswer(Consumer<String> check) {
    for (Detail detail : Detail.values()) {
      for (Reply reply : REPLIES) {
        texts(reply, detail).forEach(check);
      }
    }
  }

  // ---- that nothing is left out of the walk ----

  @Test
  void theWalkHasEveryCase() {
    assertEveryCase(Reply.class, REPLIES);
    assertEveryCase(Conflict.class, Situations.conflicts());
    assertEveryCase(Remedy.class, Situations.remedies());
    List<Verdict> verdicts = new ArrayList<>(Situations.judgedByHand());
    verdicts.addAll(Situations.otherVerdicts());
    assertEveryCase(Verdict.class, verdicts);
    assertEveryCase(Loss.class, Situations.losses());
    List<Obstacle> obstacles = new ArrayList<>();
    Situations.swings().forEach(swing -> obstacles.add(swing.obstacle()));
    assertEveryCase(Obstacle.class, obstacles);
  }

  /** These two are told by an ear-sound alone. */
  private static boolean isEarSound(Reply reply) {
    return reply instanceof Reply.Listening || reply instanceof Reply.FallenAsleep;
  }

  private static void assertEveryCase(Class<?> type, List<?> walked) {
    Set<Class<?>> left = new HashSet<>(Arrays.asList(type.getPermittedSubclasses()));
    walked.forEach(each -> left.remove(each.getClass()));
    assertEquals(Set.of(), left);
  }

  @Test
  void everyReplyIsAnsweredInEitherForm() {
    for (Detail detail : Detail.values()) {
      for (Reply reply : REPLIES) {
        assertEquals(isEarSound(reply), texts(reply, detail).isEmpty(), reply::toString);
      }
    }
  }

  // ---- how it must sound ----

  @Test
  void answersAreWordsCommasAndFullStops() {
    eachAnswer(AnswersTest::assertPlain);
  }

  private static void assertPlain(String text) {
    assertTrue(text.endsWith("."), text);
    for (String sentence : sentences(text)) {
      assertTrue(Character.isUpperCase(sentence.charAt(0)), text);
      for (String part : sentence.split(", ", -1)) {
        for (String word : part.split(" ", -1)) {
          assertTrue(WORD.matcher(word).matches(), () -> "\"" + word + "\" in: " + text);
        }
      }
    }
  }

  private static List<String> sentences(String text) {
    assertTrue(text.endsWith("."), text);
    return List.of(text.substring(0, text.length() - 1).split("\\. ", -1));
  }

  private static List<String> words(String text) {
    return List.of(text.toLowerCase(Locale.ROOT).replaceAll("[.,]", "").split(" ", -1));
  }

  @Test
  void noWordIsAnAbbreviation() {
    eachAnswer(
        text -> {
          for (String word : text.replaceAll("[.,]", "").split(" ", -1)) {
            assertTrue(word.matches("(?i).*[aeiouy].*"), () -> word + " in: " + text);
            assertFalse(word.matches("[A-Z']{2,}"), () -> word + " in: " + text);
          }
        });
  }

  @Test
  void nothingIsEverCalledSafe() {
    eachAnswer(
        text -> assertFalse(text.toLowerCase(Locale.ROOT).matches(".*\\b(un)?safe.*"), text));
  }

  @Test
  void everyNumberHasItsUnit() {
    eachAnswer(AnswersTest::assertUnits);
  }

  private static void assertUnits(String text) {
    List<String> words = words(text);
    int i = 0;
    while (i < words.size()) {
      if (!NUMBERS.contains(words.get(i))) {
        i++;
        continue;
      }
      String before = i == 0 ? "" : words.get(i - 1);
      while (i < words.size() && (NUMBERS.contains(words.get(i)) || joins(words, i))) {
        i++;
      }
      boolean named = before.equals("redirect");
      boolean counted = i < words.size() && UNITS.contains(words.get(i));
      boolean oneHalf = before.equals("cavity") && words.get(i - 1).equals("half");
      assertTrue(named || counted || oneHalf, () -> "a number without unit in: " + text);
    }
  }

  /** Whether a word stands between the words of one number: "eight and a half", "half an inch". */
  private static boolean joins(List<String> words, int i) {
    String before = words.get(i - 1);
    return switch (words.get(i)) {
      case "point" -> NUMBERS.contains(before);
      case "and" -> i + 2 < words.size() && words.get(i + 2).equals("half");
      case "a" -> before.equals("and");
      case "an" -> before.equals("half");
      default -> false;
    };
  }

  @Test
  void noSentenceIsTooLongToKeepInMind() {
    eachAnswer(
        text -> {
          for (String sentence : sentences(text)) {
            int length = words(sentence).size();
            assertTrue(length <= LONGEST_SENTENCE, () -> length + " words: " + sentence);
          }
        });
  }

  @ParameterizedTest
  @EnumSource
  void noMessageIsTooLong(Detail detail) {
    int whole = detail == Detail.FULL ? LONGEST_FULL : LONGEST_BRIEF;
    for (Reply reply : REPLIES) {
      boolean why = detail == Detail.FULL && reply instanceof Reply.Why;
      int most = why ? LONGEST_WHY : whole;
      if (!(reply instanceof Reply.ReadBack)) {
        String text = text(reply, detail);
        int length = words(text).size();
        assertTrue(length <= most, () -> length + " words: " + text);
      }
    }
  }

  @Test
  void aReadBackTakesNoMoreThanADozenWordsAValue() {
    for (UnitSystem units : UnitSystem.values()) {
      List<Reply.Item> items = Situations.items(Situations.known(units));
      String text = text(new Reply.ReadBack(Place.MAIN_POINT, items), Detail.FULL);
      assertTrue(words(text).size() <= 12 * items.size(), text);
    }
  }

  @Test
  void theFirstStepOfEitherLadderIsOneSentence() {
    for (Detail detail : Detail.values()) {
      for (Reply reply : REPLIES) {
        boolean first = isFirstStep(reply);
        if (first) {
          assertEquals(1, sentences(text(reply, detail)).size());
        }
      }
    }
  }

  private static boolean isFirstStep(Reply reply) {
    if (reply instanceof Reply.Again again) {
      return again.rung() == Reply.Rung.SAY_AGAIN;
    }
    return reply instanceof Reply.Silent silent && silent.rung() == Reply.Rung.SAY_AGAIN;
  }

  @Test
  void helpIsThreeSentencesAtMost() {
    for (Detail detail : Detail.values()) {
      assertTrue(sentences(text(new Reply.Help(), detail)).size() <= 3);
    }
  }

  // ---- what must be said, and what must not ----

  @ParameterizedTest
  @EnumSource
  void theLanyardGateSpeaksWordForWord(Detail detail) {
    for (Reply.Change change : Reply.Change.values()) {
      assertEquals(
          "Lanyard first. Say clipped in.",
          text(new Reply.LanyardFirst(Optional.of(change)), detail));
    }
  }

  @Test
  void everyVerdictComesFirstAndEndsWithTheLanyard() {
    for (Detail detail : Detail.values()) {
      for (Reply reply : REPLIES) {
        if (reply instanceof Reply.Judged judged) {
          assertVerdict(judged, detail);
        }
      }
    }
  }

  @Test
  @Tag("long")
  void sampledRigsSoundAsTheyMust() {
    sampledRigs(1000);
  }

  @Test
  void someSampledRigsSoundAsTheyMust() {
    sampledRigs(48);
  }

  private static void sampledRigs(int samples) {
    Set<String> outcomes = new LinkedHashSet<>();
    Speech.evenly(
        Situations.RIG_DIMENSIONS,
        samples,
        at -> {
          PathVerdict verdict = Situations.judged(Situations.sampled(at));
          outcomes.add(outcome(verdict));
          for (Detail detail : Detail.values()) {
            assertVerdict(new Reply.Judged(verdict, List.of()), detail);
            for (Reply reply : List.of(new Reply.Why(verdict), new Reply.WouldHelp(verdict))) {
              String text = text(reply, detail);
              assertPlain(text);
              assertUnits(text);
            }
          }
        });
    assertEquals(Set.of("good", "marginal", "do not load", "cannot say"), outcomes);
  }

  private static void assertVerdict(Reply.Judged judged, Detail detail) {
    List<Utterance> said = Answers.say(List.of(judged), detail);
    String text = said.stream().map(Utterance::text).collect(Collectors.joining(" "));
    String lower = text.toLowerCase(Locale.ROOT);
    String outcome = outcome(judged.verdict());
    assertPlain(text);
    assertUnits(text);
    assertTrue(lower.startsWith(outcome), text);
    assertEquals(outcome.equals("good"), lower.contains("good to load"), text);
    assertEquals(!outcome.equals("good"), lower.contains("do not load"), text);
    assertEquals(outcome.equals("do not load"), said.get(0).danger(), text);
    assertTrue(said.stream().skip(1).noneMatch(Utterance::danger), text);
    assertTrue(lower.contains("clip in "), text);
    assertEquals(outcome.equals("good"), lower.contains("by the numbers you gave"), text);
    assertEquals(outcome.equals("good"), lower.contains("load test"), text);
  }

  /** The words that a verdict must begin with. */
  private static String outcome(PathVerdict verdict) {
    return switch (verdict.outcome()) {
      case GOOD -> "good";
      case MARGINAL -> "marginal";
      case CANNOT_SAY -> "cannot say";
      case REFUSE -> "do not load";
    };
  }

  /** Only a good verdict that stands may be called good, whatever the reply. */
  @Test
  void nothingButAGoodVerdictIsCalledGood() {
    for (Detail detail : Detail.values()) {
      for (Reply reply : REPLIES) {
        String text = text(reply, detail);
        boolean good =
            text.matches("(?s).*(Good to load|It is good|check is good).*")
                || text.contains("Now set");
        if (good) {
          assertTrue(isOfGood(reply), text);
          assertTrue(text.contains("by the numbers you gave"), text);
        }
      }
    }
  }

  private static boolean isOfGood(Reply reply) {
    Optional<PathVerdict> verdict = Optional.empty();
    if (reply instanceof Reply.Judged judged) {
      verdict = Optional.of(judged.verdict());
    } else if (reply instanceof Reply.ClippedIn clipped) {
      verdict = clipped.standing();
    } else if (reply instanceof Reply.LoadHeard heard) {
      verdict = heard.standing();
    } else if (reply instanceof Reply.WouldHelp help) {
      verdict = Optional.of(help.verdict());
    }
    return verdict.filter(each -> outcome(each).equals("good")).isPresent();
  }

  @Test
  void holdsAndRefusalsAreTheOnlyDangers() {
    for (Detail detail : Detail.values()) {
      for (Reply reply : REPLIES) {
        for (Utterance utterance : Answers.say(List.of(reply), detail)) {
          boolean hold = utterance.text().contains("the lanyard stays");
          boolean lanyardStays = utterance.text().startsWith("The lanyard stays");
          boolean refusal = utterance.text().startsWith("Do not load");
          assertEquals(hold || lanyardStays || refusal, utterance.danger(), utterance.text());
        }
      }
    }
  }

  @Test
  void atMostThreeThingsAreAskedForAtOnce() {
    String text = text(new Reply.Missing(List.of(Slot.values())), Detail.FULL);
    assertEquals(
        "I still need your all up weight, the species and moving or stationary rope, and twenty"
            + " nine more.",
        text);
  }

  @Test
  void aSlingThatPointsElsewhereIsSaidWithBothDirections() {
    Conflict conflict =
        Situations.conflicts().stream()
            .filter(Conflict.SlingElsewhere.class::isInstance)
            .findFirst()
            .orElseThrow();
    String text = ConflictWords.of(conflict);
    assertTrue(text.matches("The sling should point .*, you said .*, .* degrees away\\."), text);
  }

  // ---- what is offered can be said ----

  @ParameterizedTest
  @EnumSource
  void everyExampleIsUnderstoodAsAValueOfItsSlot(Slot slot) {
    Speech.statement(slot, SlotWords.example(slot));
    SlotWords.inDigits(slot).ifPresent(example -> Speech.statement(slot, example));
  }

  @Test
  void bothWaysToSayARopeAngleAreUnderstood() {
    String text = text(new Reply.WhichAngle(Angle.ofDegrees(60)), Detail.BRIEF);
    String[] ways = text.replaceAll("^Say |\\.$", "").split(", or ", -1);
    assertEquals(2, ways.length, text);
    Speech.statement(Slot.INSIDE_ANGLE, ways[0]);
    Speech.statement(Slot.BEND, ways[1]);
  }

  /** Every command that an answer tells somebody to say. */
  @Test
  void everyCommandThatIsOfferedIsUnderstood() {
    for (String command :
        List.of(
            "clipped in",
            "affirm",
            "negative",
            "check redirect",
            "what is missing",
            "read back",
            "scrap that",
            "tell me why",
            "what would help",
            "what if it lets go",
            "go to the main point",
            "go to redirect one")) {
      Meaning meaning = Speech.understood(command);
      assertTrue(meaning instanceof Meaning.Command || meaning instanceof Meaning.GoTo, command);
      assertTrue(isOffered(command), () -> "no answer offers: " + command);
    }
    assertTrue(Speech.understood("correction") instanceof Meaning.Correction);
  }

  private static boolean isOffered(String command) {
    return REPLIES.stream()
        .filter(reply -> !(reply instanceof Reply.Judged || reply instanceof Reply.Why))
        .map(reply -> text(reply, Detail.FULL).toLowerCase(Locale.ROOT))
        .anyMatch(text -> text.matches(".*\\bsay\\b[^.]*\\b" + command + "\\b.*"));
  }

  // ---- numbers on their cautious side ----

  @ParameterizedTest
  @EnumSource
  void remediesAreSaidOnTheirCautiousSide(UnitSystem units) {
    Verdict.Judged real = Situations.judgedKnown(units);
    Speech.evenly(
        2,
        256,
        at -> {
          double out = 0.03 + 3 * at[0];
          double diameter = 0.05 + at[1];
          PathVerdict verdict =
              refused(
                  real,
                  List.of(
                      new Remedy.NearerTheUnion(Length.ofMetres(out)),
                      new Remedy.ThickerLimb(Length.ofMetres(diameter))));
          String text = text(new Reply.WouldHelp(verdict), Detail.FULL);
          double saidOut = metres(Slot.OUT, "out " + between(text, "sling in to ", " or less"));
          double saidThick =
              metres(Slot.LIMB_DIAMETER, "limb " + between(text, "limb of ", " or more"));
          assertTrue(saidOut <= out + 1e-6, () -> text + out);
          assertTrue(saidThick >= diameter - 1e-6, () -> text + diameter);
        });
  }

  private static PathVerdict refused(Verdict.Judged real, List<Remedy> remedies) {
    return Situations.alone(Situations.refused(real, remedies));
  }

  private static double metres(Slot slot, String text) {
    return Speech.value(slot, Value.Distance.class, text).length().metres();
  }

  private static String between(String text, String before, String after) {
    int start = text.indexOf(before) + before.length();
    assertTrue(start >= before.length(), text);
    return text.substring(start, text.indexOf(after, start));
  }

  @Test
  void aDemandIsSaidNoSmallerAndACapacityNoLargerThanItIs() {
    Verdict.Judged real = Situations.judgedKnown(UnitSystem.METRIC);
    Speech.evenly(
        2,
        256,
        at -> {
          double demand = 1500 + 40_000 * at[0];
          double capacity = 1500 + 40_000 * at[1];
          PathVerdict verdict = Situations.alone(Situations.onRope(real, demand, capacity));
          String text = text(new Reply.Why(verdict), Detail.FULL);
          assertTrue(newtons(between(text, "rope takes ", " as you said")) >= demand - 1e-3, text);
          assertTrue(newtons(between(text, "I count on ", ".")) <= capacity + 1e-3, text);
        });
  }

  private static double newtons(String words) {
    return Speech.value(Slot.SLING_RATING, Value.Rating.class, "sling rated " + words)
        .force()
        .newtons();
  }

  /** A refused rig is refused as it was said; any other is told its worst. */
  @ParameterizedTest
  @EnumSource
  void theReasonIsSaidWithTheUseThatDecides(Detail detail) {
    int read = 0;
    for (Verdict.Judged judged : Situations.judgedByHand()) {
      Spread use = judged.governing().utilisation();
      double decides = judged.rating() == Rating.REFUSE ? use.nominal() : use.high();
      String text = text(new Reply.Judged(Situations.alone(judged), List.of()), detail);
      if (decides <= 3) {
        String before = text.substring(0, text.indexOf(" percent of what I count on"));
        String percent = before.replaceAll(".*( takes |, at worst |, )", "");
        String degrees = percent.equals("one") ? " degree" : " degrees";
        double said =
            Speech.value(Slot.BEND, Value.Turned.class, "bend " + percent + degrees)
                .angle()
                .degrees();
        assertTrue(said >= 100 * decides - 1e-4 && said < 100 * decides + 1, text);
        read++;
      } else {
        assertTrue(text.contains("more than "), text);
      }
    }
    assertTrue(read > 100, "only " + read + " shares were read");
  }

  @ParameterizedTest
  @CsvSource({
    "INTO_UNION, -900, -30, 20, into the union",
    "PULL, 900, -30, 20, away from the union",
    "LEVER, 30, -900, 20, levers the limb down",
    "LIFT, 30, 900, 20, lifts the limb",
    "SIDE, 30, 20, 900, to its left",
    "SIDE, 30, 20, -900, to its right",
    "NONE, 0, 0, 0, nothing pulls on the sling"
  })
  void theLoadIsSaidByWhatItDoesToTheLimb(
      LoadClass loadClass, double along, double top, double side, String words) {
    Verdict.Judged real = Situations.judgedKnown(UnitSystem.METRIC);
    PathVerdict verdict = Situations.alone(Situations.loaded(real, loadClass, along, top, side));
    String text = text(new Reply.Judged(verdict, List.of()), Detail.FULL);
    assertTrue(text.contains(words), text);
  }

  @ParameterizedTest
  @CsvSource({
    "400, 300, 210, newtons outward, newtons up, newtons to the left",
    "-400, -300, -210, newtons into the union, newtons down, newtons to the right",
    "400, 1, 0, newtons outward, nothing, nothing"
  })
  void theWhyTakesTheLoadApartWithEachPartsDirection(
      double along, double top, double side, String first, String second, String third) {
    Verdict.Judged real = Situations.judgedKnown(UnitSystem.METRIC);
    PathVerdict verdict =
        Situations.alone(Situations.loaded(real, LoadClass.PULL, along, top, side));
    String text = text(new Reply.Why(verdict), Detail.FULL);
    assertTrue(between(text, "Along the limb, ", ".").endsWith(first), text);
    assertTrue(between(text, "Across it, ", ".").endsWith(second), text);
    assertTrue(between(text, "Sideways, ", ".").endsWith(third), text);
  }

  @Test
  void everyAssumptionIsOwnedUpTo() {
    Rig rig = Situations.known(UnitSystem.METRIC);
    Rig bare =
        rig.without(Slot.BARK)
            .without(Slot.SEAT)
            .with(Slot.SPECIES, new Said(Value.Species.unknown(), HowGot.BY_EYE));
    for (Detail detail : Detail.values()) {
      String text = text(new Reply.Why(Situations.judged(bare)), detail);
      for (String taken :
          List.of(
              "the weakest wood",
              "wet bark",
              "a sling that hangs free",
              "the least sling rating",
              "choke angle one two zero degrees",
              "a sling two centimeters thick",
              "a limb without weight",
              "no slack")) {
        assertTrue(text.contains(taken), text);
      }
    }
  }

  /** A basket has an angle of its own; one that is not said is owned up to as well. */
  @Test
  void theAngleOfABasketIsOwnedUpTo() {
    Rig basket =
        Situations.known(UnitSystem.METRIC)
            .without(Slot.WRAPS)
            .with(Slot.HITCH, new Said(Value.Hitch.BASKET, HowGot.BY_EYE));
    String text = text(new Reply.Why(Situations.judged(basket)), Detail.BRIEF);
    assertTrue(text.contains("basket angle six zero degrees"), text);
    assertFalse(text.contains("choke"), text);
  }

  // ---- a rope of several supports ----

  @Test
  void theSupportThatDecidesIsNamedInTheHead() {
    int elsewhere = 0;
    for (Detail detail : Detail.values()) {
      for (PathVerdict verdict : Situations.ropes()) {
        String head = sentences(text(new Reply.Judged(verdict, List.of()), detail)).get(0);
        boolean other = !verdict.governing().equals(verdict.asked()) && !verdict.isGood();
        assertTrue(head.contains(Places.title(verdict.asked())), head);
        assertEquals(other, head.contains("because of " + Places.name(verdict.governing())), head);
        assertEquals(other, head.contains("because"), head);
        elsewhere += other ? 1 : 0;
      }
    }
    assertTrue(elsewhere > 50, "only " + elsewhere + " verdicts come from elsewhere");
  }

  /** Who is told that something is missing at another support is told how to get there. */
  @Test
  void whatIsMissingElsewhereComesWithTheWayThere() {
    for (PathVerdict verdict : Situations.ropes()) {
      boolean there =
          verdict.outcome() == PathVerdict.Outcome.CANNOT_SAY
              && !verdict.governing().equals(verdict.asked());
      String text = text(new Reply.Judged(verdict, List.of()), Detail.BRIEF);
      String way = "Say go to " + Places.name(verdict.governing()) + ".";
      assertEquals(there, text.contains(way), text);
    }
  }

  /** From its far end a leg has a slope, but nobody has said to which side it goes. */
  @ParameterizedTest
  @EnumSource
  void noSideIsNamedOfALegThatWasOnlySaidFromItsOtherEnd(UnitSystem units) {
    Place main = Place.MAIN_POINT;
    PathVerdict whole = Situations.judged(Situations.wholeRope(units), main);
    PathVerdict verdict = Situations.rope(main, Map.of(main, whole.ofAsked()));
    for (Detail detail : Detail.values()) {
      String text =
          text(new Reply.Judged(verdict, List.of()), detail) + text(new Reply.Why(verdict), detail);
      assertTrue(text.contains("off plumb"), text);
      assertFalse(text.matches(".*(toward the|to the (left|right)|o'clock|side load).*"), text);
    }
  }

  // ---- unions ----

  @ParameterizedTest
  @CsvSource({
    "SOUND, 0.25, LIMB_AT_UNION, false",
    "SOUND, 0.35, LIMB_AT_UNION, true",
    "CODOMINANT, 0.25, LIMB_AT_UNION, true",
    "INCLUDED_BARK, 0.25, LIMB_AT_UNION, true",
    "INCLUDED_BARK, 0.25, SHEAR_AT_UNION, true",
    "INCLUDED_BARK, 0.25, SLING, false",
    "INCLUDED_BARK, 0.25, LIMB_AT_SLING, false"
  })
  void figuresForWeakUnionsAreOwnedUpToAsThoseOfYoungWood(
      Value.UnionCondition condition, double limb, CheckKind kind, boolean owned) {
    Rig rig =
        Situations.known(UnitSystem.METRIC)
            .with(Slot.UNION, new Said(Value.Union.of(condition), HowGot.BY_EYE))
            .with(Slot.CAVITY, new Said(new Value.Share(0), HowGot.BY_EYE))
            .with(
                Slot.LIMB_DIAMETER,
                new Said(
                    new Value.Distance(Length.ofMetres(limb), UnitSystem.METRIC), HowGot.BY_TAPE));
    Verdict.Judged real = (Verdict.Judged) Situations.judged(rig).ofAsked();
    PathVerdict verdict = Situations.alone(Situations.governedBy(real, kind));
    for (Detail detail : Detail.values()) {
      String text = text(new Reply.Why(verdict), detail);
      assertEquals(owned, text.contains("small, young wood"), text);
    }
  }

  @Test
  void aConnectorOverAnEdgeIsTurnedAndNoLimbIsBlamed() {
    PathVerdict verdict =
        Situations.alone(new Verdict.RefusedOutright(List.of(Refusal.CONNECTOR_OVER_EDGE)));
    for (Reply reply :
        List.of(new Reply.Judged(verdict, List.of()), new Reply.WouldHelp(verdict))) {
      String text = text(reply, Detail.FULL);
      assertTrue(text.contains("in line"), text);
      assertFalse(text.contains("another limb"), text);
    }
  }

  // ---- falls ----

  @ParameterizedTest
  @EnumSource
  void aFallIsSaidNoShorterAndNoSofterThanItMayBe(UnitSystem units) {
    for (Loss loss : Situations.losses()) {
      if (loss instanceof Loss.Falls falls && falls.dropM().high() > 0.05) {
        String text =
            text(
                new Reply.LetsGo(Place.redirectNumber(2), loss, units, Lanyard.UNKNOWN),
                Detail.FULL);
        double drop = metres(Slot.OUT, "out " + between(text, "you drop up to ", "."));
        assertTrue(drop >= falls.dropM().high() - 1e-9, text);
        if (units == UnitSystem.METRIC && falls.peakN().high() >= 1000) {
          double peak = newtons(between(text, "with up to ", " in the rope"));
          assertTrue(peak >= falls.peakN().high() - 1e-3, text);
        }
        if (text.contains("as hard as")) {
          Obstacle.Reached reached = (Obstacle.Reached) falls.obstacle();
          double fall = metres(Slot.OUT, "out " + between(text, "a fall of up to ", "."));
          assertTrue(fall >= reached.equivalentFallM() - 1e-9, text);
          assertEquals(reached.asSaid(), text.contains("You hit the stem"), text);
          assertEquals(!reached.asSaid(), text.contains("You may hit the stem"), text);
        }
      }
    }
  }

  /** Only what is within its limit whatever may be true is called so. */
  @Test
  void whatCatchesIsHeldAgainstWhatIsCountedOn() {
    for (Detail detail : Detail.values()) {
      for (Loss loss : Situations.losses()) {
        String text =
            text(
                new Reply.LetsGo(Place.redirectNumber(2), loss, UnitSystem.METRIC, Lanyard.UNKNOWN),
                detail);
        assertTrue(text.endsWith("Clip in first."), text);
        boolean within =
            loss instanceof Loss.Falls falls && falls.left().filter(Loss.Left::holds).isPresent();
        boolean beyond =
            loss instanceof Loss.Falls falls && falls.left().filter(l -> !l.holds()).isPresent();
        boolean unknown = loss instanceof Loss.Falls falls && falls.left().isEmpty();
        assertEquals(within, text.contains("catches you") && text.contains("within what"), text);
        assertEquals(beyond, text.contains(" takes at worst "), text);
        assertEquals(unknown, text.contains("If it holds I cannot say."), text);
      }
    }
  }

  @Test
  void aSecondAttachmentIsPromptedAsPracticeAndOnlyWhereItIs() {
    for (Detail detail : Detail.values()) {
      for (Swing swing : Situations.swings()) {
        String text = text(new Reply.WouldSwing(swing, UnitSystem.INCH_POUND), detail);
        assertEquals(
            swing.callsForSecondAttachment(),
            text.endsWith("Common practice here is a second attachment."),
            text);
        assertEquals(swing.callsForSecondAttachment(), text.contains("second"), text);
      }
    }
  }
}
