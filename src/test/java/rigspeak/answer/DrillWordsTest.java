package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.Choice;
import rigspeak.drill.Course;
import rigspeak.drill.Drill;
import rigspeak.drill.Generator;
import rigspeak.drill.Input;
import rigspeak.drill.Input.Wish;
import rigspeak.drill.Line;
import rigspeak.drill.Progress;
import rigspeak.drill.Response;
import rigspeak.drill.Skill;

/** What a drill says can be spoken, and says what a drill must say. */
class DrillWordsTest {
  /** More than that nobody keeps in mind with eyes shut. */
  private static final int MOST_WORDS = 45;

  private static final Generator GENERATOR = new Generator(Catalogue.bundled());

  @ParameterizedTest
  @EnumSource(Skill.class)
  void everythingCanBeSpoken(Skill skill) {
    Course course = new Course.Spaced(GENERATOR, List.of(skill), 30, 4);
    Drill.Turn turn = Drill.begin(course, Progress.none(), 0);
    for (int i = 0; i < 30; i++) {
      assertSpeakable(turn.lines());
      assertSpeakable(turn.next().step(Wish.EXPLAIN, i).lines());
      assertSpeakable(turn.next().step(new Input.NotUnderstood(), i).lines());
      Response response = i % 2 == 0 ? new Response.Amount(1.37) : new Response.Named(Choice.GO);
      Drill.Turn asked = turn.next().step(new Input.Answer(response, OptionalDouble.empty(), 3), i);
      assertEquals(List.of(new Line.AskSure()), asked.lines());
      turn = asked.next().step(new Input.Sure(0.5), i);
    }
    assertTrue(turn.next().isOver());
    assertSpeakable(turn.lines());
  }

  private static void assertSpeakable(List<Line> lines) {
    List<Utterance> said = DrillWords.say(lines);
    for (int i = 0; i < said.size(); i++) {
      String text = said.get(i).text();
      assertTrue(text.matches("[A-Z][A-Za-z',.? ]*[.?]"), text);
      assertFalse(text.contains("  ") || text.contains(" ,") || text.contains(".."), text);
      if (lines.get(i) instanceof Line.Ask) {
        int words = text.split(" ", -1).length;
        assertTrue(words <= MOST_WORDS, () -> words + " words: " + text);
      }
    }
  }

  @Test
  void theCautionsComeBeforeTheFirstQuestionAndNeverAgain() {
    Course course = new Course.Spaced(GENERATOR, List.of(Skill.values()), 5, 1);
    Drill.Turn turn = Drill.begin(course, Progress.none(), 0);
    assertTrue(cautions(turn));
    while (!turn.next().isOver()) {
      turn = turn.next().step(noIdea(), 0);
      assertFalse(cautions(turn));
    }
  }

  private static Input noIdea() {
    return new Input.Answer(new Response.NoIdea(), OptionalDouble.empty(), 1);
  }

  private static boolean cautions(Drill.Turn turn) {
    return DrillWords.say(turn.lines()).stream()
        .anyMatch(said -> said.text().contains("licence to load"));
  }

  @Test
  void explainTellsWhatIsAsUsualBeforeTheFirstAnswer() {
    String text = DrillWords.say(List.of(new Line.Explained(Optional.empty()))).get(0).text();
    assertTrue(text.contains("two hundred pounds") && text.contains("three wraps"), text);
  }
}
