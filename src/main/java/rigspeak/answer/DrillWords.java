package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigspeak.drill.Answered;
import rigspeak.drill.Line;
import rigspeak.drill.Question;
import rigspeak.drill.Response;
import rigspeak.drill.Skill;

/** Puts what a drill has to say into the words that are spoken and printed. */
public final class DrillWords {
  private static final Cases<Line, String> WORDS =
      Cases.<Line, String>of(Line.class)
          .on(Line.Opening.class, opening -> opening(opening.questions()))
          .on(
              Line.Ask.class,
              ask ->
                  text(
                      sentence("question " + Numbers.whole(ask.number())),
                      DrillQuestions.of(ask.question())))
          .on(Line.AskSure.class, ask -> "How sure?")
          .on(Line.AskDigits.class, ask -> "Say it again, digit by digit.")
          .on(Line.Marked.class, DrillWords::marked)
          .on(Line.Explained.class, explained -> explained(explained.last()))
          .on(Line.Slower.class, slower -> "Slower.")
          .on(Line.Again.class, again -> again(again.question()))
          .on(
              Line.AgainSure.class,
              again ->
                  "Say how sure, sure, nearly sure, only a guess, or for example seventy percent.")
          .on(Line.Closing.class, DrillWords::closing)
          .all();

  private DrillWords() {}

  /** What is said, one after the other. */
  public static List<Utterance> say(List<Line> lines) {
    return lines.stream().map(WORDS::make).map(Utterance::calm).toList();
  }

  /** What a skill is called in the middle of a sentence. */
  public static String name(Skill skill) {
    return switch (skill) {
      case TEENS_AND_TENS -> "teens and tens";
      case INSIDE_ANGLE -> "the inside angle";
      case BEND_OR_INSIDE -> "bend against inside angle";
      case ANGLE_FACTOR -> "the angle's factor";
      case WHERE_IT_GOES -> "where the load goes";
      case READ_BACK -> "the read back";
      case CHANGE_OVER -> "the change over";
      case WHICH_UNION -> "which union";
      case INCH_OR_FOOT -> "an inch more or a foot less";
      case WILL_IT_SLIDE -> "whether the sling slides";
      case HOW_MANY_WRAPS -> "how many wraps";
      case IF_IT_LETS_GO -> "what if it lets go";
      case TOO_LITTLE_KNOWN -> "too little known";
      case REFUSE_OR_GO -> "refuse or go";
    };
  }

  /** The cautions come once, before anything else. */
  private static String opening(int questions) {
    return text(
        "This is practice, eyes shut, feet on the ground.",
        "Nothing in it is a licence to load. Local rules and your crew stand above it.",
        "Answer, then say how sure you are, for example, lever, ninety percent.",
        "What I do not name is as usual, say explain to hear it.",
        sentence("there are " + Numbers.whole(questions) + " questions"));
  }

  private static String marked(Line.Marked marked) {
    Question question = marked.question();
    Answered answered = marked.answered();
    return text(
        answered.isRight() ? "Right." : wrong(question, answered.response()),
        DrillReasons.truth(question),
        DrillReasons.reason(question));
  }

  /** What was heard is said back, so that somebody misheard knows; who said nothing knows. */
  private static String wrong(Question question, Response response) {
    if (response instanceof Response.Amount amount) {
      String number = DrillReasons.number(question.asking(), amount.value());
      return text("Wrong.", sentence("you said " + number));
    }
    if (response instanceof Response.Named named) {
      return text("Wrong.", sentence("you said " + DrillReasons.choice(named.choice())));
    }
    return "";
  }

  private static String explained(Optional<Line.Marked> last) {
    return last.map(marked -> DrillReasons.explanation(marked.question().asking()))
        .orElse(
            text(
                "As usual you weigh two hundred pounds, on a stationary rope with a canopy anchor.",
                "The tree is a live red oak, the bark rough, the main point stout and sound.",
                "The limb is eight inches, level, on a stem of one eight inches, the union sound.",
                "The sling is choked with three wraps, two feet out, on a stub, over a ring.",
                "The anchor leg goes up six zero degrees toward the stem, the working leg straight"
                    + " down.",
                "All by tape."));
  }

  private static String again(Question question) {
    return sentence("say for example " + DrillQuestions.example(question.asking()));
  }

  private static String closing(Line.Closing closing) {
    if (closing.answered() == 0) {
      return "Nothing was answered. Come back soon.";
    }
    List<String> due =
        closing.due().stream().limit(Sentences.MOST_ITEMS).map(DrillWords::name).toList();
    return text(
        "The drill is over.",
        sentence(Numbers.whole(closing.right()) + " right of " + Numbers.whole(closing.answered())),
        brier(closing.brier()),
        due.isEmpty()
            ? "Nothing is due before tomorrow."
            : sentence("due by tomorrow, " + list(due)));
  }

  private static String brier(OptionalDouble brier) {
    if (brier.isEmpty()) {
      return "";
    }
    double rounded = Math.rint(brier.getAsDouble() * 100) / 100;
    return sentence(
        "Your certainty scores " + Numbers.exact(rounded),
        "zero is best, a guesser gets zero point two five");
  }
}
