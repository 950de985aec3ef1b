package rigspeak.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigspeak.drill.Input.Wish;

/**
 * A drill as it stands; every step makes a new one. It states a situation, waits, takes the answer
 * and how sure it is, and tells what is right and why before it goes on.
 *
 * @param course where its questions come from
 * @param progress all that was answered, in this drill and before
 * @param before how many answers there were before this drill
 * @param present the question that waits
 * @param given the answer that waits for how sure it is
 * @param marked the last that was marked
 */
public record Drill(
    Course course,
    Progress progress,
    int before,
    Optional<Question> present,
    Optional<Input.Answer> given,
    Optional<Line.Marked> marked) {

  /** The drill after a step, and what is said to it. */
  public record Turn(Drill next, List<Line> lines) {
    public Turn {
      lines = List.copyOf(lines);
    }
  }

  /** Begins one. */
  public static Turn begin(Course course, Progress progress, long nowSeconds) {
    Drill drill =
        new Drill(
            course,
            progress,
            progress.answers().size(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    List<Line> lines = new ArrayList<>();
    lines.add(new Line.Opening(course.questions()));
    return drill.goOn(lines, nowSeconds);
  }

  public boolean isOver() {
    return present.isEmpty();
  }

  /** Whether it is how sure somebody is that is waited for. */
  public boolean waitsForSure() {
    return given.isPresent();
  }

  /** Answers of this drill, the first of them first. */
  public List<Answered> answered() {
    return progress.answers().subList(before, progress.answers().size());
  }

  /**
   * Takes one step.
   *
   * @throws IllegalStateException if it is over
   */
  public Turn step(Input input, long nowSeconds) {
    Question question = present.orElseThrow(() -> new IllegalStateException("this drill is over"));
    if (input instanceof Input.Answer answer) {
      return take(question, answer, nowSeconds);
    }
    if (input instanceof Input.Sure sure && given.isPresent()) {
      Input.Answer answer = given.get();
      return take(
          question,
          new Input.Answer(
              answer.response(), OptionalDouble.of(sure.share()), answer.tookSeconds()),
          nowSeconds);
    }
    if (input instanceof Input.Doubtful) {
      return say(new Line.AskDigits());
    }
    if (input instanceof Wish wish) {
      return wish(wish, question, nowSeconds);
    }
    return say(waitsForSure() ? new Line.AgainSure() : new Line.Again(question));
  }

  private Turn wish(Wish wish, Question question, long nowSeconds) {
    return switch (wish) {
      case AGAIN -> say(waiting(question));
      case SLOWER -> say(new Line.Slower(), waiting(question));
      case EXPLAIN -> say(new Line.Explained(marked), waiting(question));
      case STOP -> over(new ArrayList<>(), nowSeconds);
    };
  }

  private Line waiting(Question question) {
    return waitsForSure() ? new Line.AskSure() : new Line.Ask(answered().size() + 1, question);
  }

  private Turn say(Line... lines) {
    return new Turn(this, List.of(lines));
  }

  private Turn take(Question question, Input.Answer answer, long nowSeconds) {
    boolean noIdea = answer.response() instanceof Response.NoIdea;
    if (answer.sure().isEmpty() && !noIdea) {
      return new Turn(
          new Drill(course, progress, before, present, Optional.of(answer), marked),
          List.of(new Line.AskSure()));
    }
    Answered answered =
        Answered.of(question, answer.response(), answer.sure(), answer.tookSeconds(), nowSeconds);
    Line.Marked mark = new Line.Marked(question, answered);
    Drill next =
        new Drill(
            course, progress.with(answered), before, present, Optional.empty(), Optional.of(mark));
    List<Line> lines = new ArrayList<>();
    lines.add(mark);
    return next.goOn(lines, nowSeconds);
  }

  private Turn goOn(List<Line> lines, long nowSeconds) {
    int asked = answered().size();
    Optional<Question> question =
        course.next(progress, asked, present.map(Question::skill), nowSeconds);
    if (question.isEmpty()) {
      return over(lines, nowSeconds);
    }
    lines.add(new Line.Ask(asked + 1, question.get()));
    return new Turn(new Drill(course, progress, before, question, Optional.empty(), marked), lines);
  }

  private Turn over(List<Line> lines, long nowSeconds) {
    Results results = new Results(answered());
    Optional<Results.Tally> tally = results.all();
    lines.add(
        new Line.Closing(
            tally.map(Results.Tally::right).orElse(0),
            answered().size(),
            tally.map(Results.Tally::brier).orElse(OptionalDouble.empty()),
            progress.due(nowSeconds + Schedule.DAY)));
    return new Turn(
        new Drill(course, progress, before, Optional.empty(), Optional.empty(), marked), lines);
  }
}
