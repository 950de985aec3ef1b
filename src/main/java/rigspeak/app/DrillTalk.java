package rigspeak.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigspeak.answer.DrillWords;
import rigspeak.answer.Utterance;
import rigspeak.dialogue.Pace;
import rigspeak.drill.Answered;
import rigspeak.drill.Choice;
import rigspeak.drill.Course;
import rigspeak.drill.Drill;
import rigspeak.drill.Input;
import rigspeak.drill.Line;
import rigspeak.drill.Progress;
import rigspeak.drill.Response;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Heard;
import rigspeak.meaning.DrillMeaning;
import rigspeak.meaning.DrillUnderstanding;

/**
 * One drill of one trainee; typed, recorded and live answers all take this path. Each answer is on
 * the disk before anything is said to it.
 */
final class DrillTalk {
  private final DrillUnderstanding understanding;
  private final Clock clock;
  private final Path file;
  private final String name;
  private Drill drill;
  private Pace pace = Pace.NORMAL;
  private List<Line> lines;

  /**
   * One that has begun.
   *
   * @throws IOException if what was answered before cannot be read
   */
  DrillTalk(Grammar grammar, Course course, String name, Path file, Clock clock)
      throws IOException {
    this.understanding = new DrillUnderstanding(grammar);
    this.clock = clock;
    this.file = file;
    this.name = name;
    Drill.Turn turn = Drill.begin(course, Progress.of(TraineeFiles.read(file)), now());
    this.drill = turn.next();
    this.lines = turn.lines();
  }

  private long now() {
    return clock.instant().getEpochSecond();
  }

  /** What is to be said now. */
  List<Utterance> toSay() {
    return DrillWords.say(lines);
  }

  /** Whether nothing was understood of what was said last. */
  boolean missed() {
    return lines.stream()
        .anyMatch(
            line ->
                line instanceof Line.Again
                    || line instanceof Line.AgainSure
                    || line instanceof Line.AskDigits);
  }

  boolean isOver() {
    return drill.isOver();
  }

  Pace pace() {
    return pace;
  }

  List<Answered> answered() {
    return drill.answered();
  }

  /** What may be said next. */
  Expected expected() {
    return Expected.inDrill(
        drill.waitsForSure() ? "sure" : drill.present().orElseThrow().asking().rule());
  }

  /**
   * Takes typed words.
   *
   * @param tookSeconds since the end of the question
   */
  void said(String words, double tookSeconds) throws IOException {
    take(understanding.understand(words, expected()), tookSeconds);
  }

  /** Takes what the ear made of an utterance. */
  void heard(Heard heard, double tookSeconds) throws IOException {
    take(
        heard instanceof Heard.Words words
            ? understanding.hear(words.text(), expected())
            : new DrillMeaning.NotUnderstood(),
        tookSeconds);
  }

  private void take(DrillMeaning meaning, double tookSeconds) throws IOException {
    Drill.Turn turn = drill.step(input(meaning, tookSeconds), now());
    List<Answered> all = turn.next().progress().answers();
    if (all.size() > drill.progress().answers().size()) {
      TraineeFiles.write(file, name, new ArrayList<>(all));
    }
    drill = turn.next();
    lines = turn.lines();
    if (lines.stream().anyMatch(Line.Slower.class::isInstance)) {
      pace = Pace.SLOW;
    }
  }

  private static Input input(DrillMeaning meaning, double tookSeconds) {
    if (meaning instanceof DrillMeaning.Amount number) {
      return number.doubtful()
          ? new Input.Doubtful()
          : answer(new Response.Amount(number.number()), number.surePercent(), tookSeconds);
    }
    if (meaning instanceof DrillMeaning.Word word) {
      Choice choice = Choice.of(word.word()).orElseThrow();
      return answer(new Response.Named(choice), word.surePercent(), tookSeconds);
    }
    if (meaning instanceof DrillMeaning.Sure sure) {
      return new Input.Sure(share(sure.percent()));
    }
    if (meaning instanceof DrillMeaning.Wish wish) {
      return switch (wish) {
        case AGAIN -> Input.Wish.AGAIN;
        case SLOWER -> Input.Wish.SLOWER;
        case EXPLAIN -> Input.Wish.EXPLAIN;
        case STOP -> Input.Wish.STOP;
        case NO_IDEA ->
            new Input.Answer(new Response.NoIdea(), OptionalDouble.empty(), tookSeconds);
      };
    }
    return new Input.NotUnderstood();
  }

  private static Input answer(Response response, OptionalInt percent, double tookSeconds) {
    OptionalDouble sure =
        percent.isPresent() ? OptionalDouble.of(share(percent.getAsInt())) : OptionalDouble.empty();
    return new Input.Answer(response, sure, tookSeconds);
  }

  private static double share(int percent) {
    return percent / 100.0;
  }
}
