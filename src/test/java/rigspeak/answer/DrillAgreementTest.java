package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.drill.Asking;
import rigspeak.drill.Change;
import rigspeak.drill.Choice;
import rigspeak.drill.Generator;
import rigspeak.drill.Level;
import rigspeak.drill.Matter;
import rigspeak.drill.Question;
import rigspeak.drill.Skill;
import rigspeak.drill.Step;
import rigspeak.drill.Truth;
import rigspeak.drill.UsualRig;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.quantity.Length;
import rigspeak.rig.HowGot;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Check;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Judge;
import rigspeak.verdict.Loss;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.PathVerdict.Outcome;
import rigspeak.verdict.Verdict;

/**
 * The answer of a drill is what the tool says of the same rig: every rig of a question is said in
 * words, understood, and checked as anybody's would be, with all its samples.
 */
class DrillAgreementTest {
  private static final int QUESTIONS_A_SKILL = 16;
  private static final double SAME = 1e-6;

  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));
  private static final Generator GENERATOR = new Generator(CATALOGUE);
  private static final SaidBack SAID_BACK = new SaidBack(Detail.FULL);

  @ParameterizedTest
  @EnumSource(Skill.class)
  void theAnswerIsWhatTheCheckSays(Skill skill) {
    for (int i = 0; i < QUESTIONS_A_SKILL; i++) {
      Question question = GENERATOR.question(skill, Level.of(1 + i % 3), 10_000 + i);
      String what = DrillQuestions.of(question) + " " + question.truth();
      if (question.matter() instanceof Matter.OneRig rig && question.asking() != Asking.DIGITS) {
        assertAgrees(question, UsualRig.with(rig.told(), rig.beside()), what);
      } else if (question.matter() instanceof Matter.TwoRigs rigs
          && question.asking() != Asking.READ_BACK) {
        assertAgrees(
            question,
            checked(UsualRig.with(rigs.first(), rigs.beside())),
            checked(UsualRig.with(rigs.second(), rigs.beside())),
            what);
      }
    }
  }

  private static void assertAgrees(Question question, RopePath path, String what) {
    PathVerdict verdict = checked(path);
    Verdict here = verdict.ofAsked();
    if (named(question) == Choice.NOBODY_CAN_SAY) {
      assertEquals(Outcome.CANNOT_SAY, verdict.outcome(), what);
      assertTrue(here instanceof Verdict.CannotSay cannot && !cannot.missing().isEmpty(), what);
      return;
    }
    switch (question.asking()) {
      case WHERE ->
          assertEquals(named(question).name(), judged(verdict).load().loadClass().name(), what);
      case INSIDE, INSIDE_OF_BEND ->
          assertEquals(
              judged(verdict).load().insideDeg().orElseThrow().nominal(), value(question), SAME);
      case BEND ->
          assertEquals(
              180 - judged(verdict).load().insideDeg().orElseThrow().nominal(),
              value(question),
              SAME,
              what);
      case FACTOR ->
          assertEquals(
              judged(verdict).load().angleFactor().orElseThrow().nominal(),
              value(question),
              SAME,
              what);
      case SLIDE -> {
        Check slip = check(verdict, CheckKind.SLIP);
        assertEquals(named(question) == Choice.SLIDES, slip.utilisation().nominal() > 1, what);
        assertEquals(named(question) == Choice.HOLDS, slip.staysWithin(), what);
      }
      case WRAPS -> {
        int turns = (int) value(question);
        assertTrue(check(checked(wrapped(path, turns)), CheckKind.SLIP).staysWithin(), what);
        if (turns > 1) {
          assertFalse(check(checked(wrapped(path, turns - 1)), CheckKind.SLIP).staysWithin(), what);
        }
      }
      case DROP ->
          assertEquals(feet(falls(verdict).dropM().nominal()), value(question), SAME, what);
      case HARD -> {
        double speed = falls(verdict).lowestSpeedMS().nominal();
        assertEquals(feet(speed * speed / 2 / 9.80665), value(question), SAME, what);
      }
      case WAY -> assertWay(falls(verdict).bearingDeg().nominal(), named(question), what);
      case GO_OR_REFUSE ->
          assertEquals(
              named(question) == Choice.GO ? Outcome.GOOD : Outcome.REFUSE,
              verdict.outcome(),
              what);
      default -> throw new AssertionError("not looked at: " + what);
    }
  }

  private static void assertWay(double bearingDeg, Choice way, String what) {
    double middle =
        Map.of(
                Choice.TOWARD_TIP, 0.0,
                Choice.LEFT, 90.0,
                Choice.TOWARD_STEM, 180.0,
                Choice.RIGHT, -90.0)
            .get(way);
    assertTrue(Math.abs(Math.IEEEremainder(bearingDeg - middle, 360)) < 45, what);
  }

  private static void assertAgrees(
      Question question, PathVerdict first, PathVerdict second, String what) {
    switch (question.asking()) {
      case PULLS_MORE ->
          assertEquals(
              named(question) == Choice.FIRST,
              judged(first).load().resultantN().nominal()
                  > judged(second).load().resultantN().nominal(),
              what);
      case STRONGER ->
          assertEquals(named(question) == Choice.FIRST, atUnion(first) < atUnion(second), what);
      case MORE -> assertEquals(atUnion(first) / atUnion(second), value(question), SAME, what);
      default -> throw new AssertionError("not looked at: " + what);
    }
  }

  private static double atUnion(PathVerdict verdict) {
    return check(verdict, CheckKind.LIMB_AT_UNION).utilisation().nominal();
  }

  private static Check check(PathVerdict verdict, CheckKind kind) {
    return judged(verdict).checks().stream()
        .filter(check -> check.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static Verdict.Judged judged(PathVerdict verdict) {
    return (Verdict.Judged) verdict.supports().get(UsualRig.PLACE);
  }

  private static Loss.Falls falls(PathVerdict verdict) {
    return (Loss.Falls) verdict.losses().get(UsualRig.PLACE);
  }

  private static RopePath wrapped(RopePath path, int turns) {
    Said wraps = new Said(new Value.Wraps(turns), HowGot.BY_EYE);
    return path.with(UsualRig.PLACE, path.at(UsualRig.PLACE).with(Slot.WRAPS, wraps));
  }

  private static double feet(double metres) {
    return Length.ofMetres(metres).feet();
  }

  private static Choice named(Question question) {
    return question.truth() instanceof Truth.Named named ? named.choice() : null;
  }

  private static double value(Question question) {
    return ((Truth.Figure) question.truth()).value();
  }

  // ---- the same rig, said and checked ----

  private static PathVerdict checked(RopePath path) {
    Conversation talk = Conversation.begin();
    for (String line : lines(path)) {
      Meaning meaning = UNDERSTANDING.understand(line, talk.asked());
      Turn turn = DIALOGUE.step(talk, meaning);
      assertTrue(
          turn.replies().stream()
              .allMatch(r -> r instanceof Reply.Taken || r instanceof Reply.Turned),
          () -> line + ": " + turn.replies());
      talk = turn.next();
    }
    return DIALOGUE.step(talk, Meaning.Command.CHECK).replies().stream()
        .filter(Reply.Judged.class::isInstance)
        .map(reply -> ((Reply.Judged) reply).verdict())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> lines(RopePath path) {
    List<String> lines = new ArrayList<>();
    lines.add("go to the main point");
    lines.addAll(lines(path.at(Place.MAIN_POINT)));
    lines.add("go to redirect one");
    lines.addAll(lines(path.at(UsualRig.PLACE)));
    return lines;
  }

  private static List<String> lines(Rig rig) {
    return rig.said().entrySet().stream()
        .map(entry -> SAID_BACK.phrase(entry.getKey(), entry.getValue()))
        .toList();
  }

  // ---- what needs no rig ----

  /** What the lanyard gate lets through only after something else is what has to come before. */
  @ParameterizedTest
  @EnumSource(Step.class)
  void theGateKeepsTheOrder(Step step) {
    for (Step before : Step.values()) {
      if (before != step && step.needs(before)) {
        assertFalse(letsThrough(step, before), () -> step + " without " + before);
      }
    }
    assertTrue(letsThrough(step, step), () -> step + " after all that it needs");
  }

  /** Whether a step is let through after all that it needs but one. */
  private static boolean letsThrough(Step step, Step leftOut) {
    Conversation talk = Conversation.begin();
    for (String line : lines(UsualRig.path())) {
      talk = DIALOGUE.step(talk, UNDERSTANDING.understand(line, talk.asked())).next();
    }
    for (Step before : List.of(Step.CHECK, Step.CLIP_IN, Step.LOAD)) {
      boolean needed = step.needs(before);
      if (needed && before != leftOut) {
        talk = done(talk, before).next();
      }
    }
    return done(talk, step).replies().stream()
        .noneMatch(r -> r instanceof Reply.LanyardFirst || r instanceof Reply.HoldLanyard);
  }

  private static Turn done(Conversation talk, Step step) {
    return switch (step) {
      case CLIP_IN ->
          DIALOGUE.step(
              DIALOGUE.step(talk, Meaning.Command.CLIPPED_IN).next(), Meaning.Command.AFFIRM);
      case CHECK -> DIALOGUE.step(talk, Meaning.Command.CHECK);
      case SET -> DIALOGUE.step(talk, Meaning.Command.SET);
      case MOVE -> DIALOGUE.step(talk, Meaning.Command.CHANGE);
      case TAKE_OFF -> DIALOGUE.step(talk, Meaning.Command.TAKE_OFF);
      case LOAD -> DIALOGUE.step(talk, Meaning.Command.LOADED);
      case RELEASE -> DIALOGUE.step(talk, Meaning.Command.LANYARD_RELEASED);
    };
  }

  /** The usual rig is a good one, so what a question changes is what matters. */
  @Test
  void theUsualRigIsGood() {
    assertEquals(Outcome.GOOD, checked(UsualRig.path()).outcome());
  }

  /** "Good to load" is said of no rig; only of a check that a question tells of. */
  @ParameterizedTest
  @EnumSource(Skill.class)
  void aDrillNeverCallsARigGoodToLoad(Skill skill) {
    for (int i = 0; i < 40; i++) {
      Question question = GENERATOR.question(skill, Level.of(1 + i % 3), 50_000 + i);
      String said = DrillReasons.truth(question);
      assertFalse(said.contains("good to load"), said);
      if (question.asking() != Asking.LANYARD) {
        assertFalse(DrillReasons.reason(question).contains("good to load"), said);
        assertFalse(DrillQuestions.of(question).contains("good to load"), said);
      }
    }
  }

  /** Where a change tells that nobody has said something, the rig does not have it. */
  @Test
  void whatNobodyHasSaidIsNotInTheRig() {
    Change unsaid = new Change(Slot.UNION, Optional.empty());
    RopePath path = UsualRig.with(List.of(unsaid), List.of());
    assertFalse(path.at(UsualRig.PLACE).has(Slot.UNION));
    assertEquals(Outcome.CANNOT_SAY, checked(path).outcome());
  }
}
