package rigspeak.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.Truth.Named;

/**
 * Questions without end. What the answer shall be is drawn first, so that each one comes in its
 * share; then rigs are drawn until one has that answer.
 */
public final class Generator {
  /** So many rigs are drawn before another answer is drawn. */
  private static final int TRIES = 400;

  private final AnswerKey key;
  private final Situations situations = new Situations();

  public Generator(Catalogue catalogue) {
    this.key = new AnswerKey(catalogue);
  }

  /** The question of this number; the same number always gives the same question. */
  public Question question(Skill skill, Level level, long number) {
    Lots lots = new Lots(number);
    while (true) {
      Wanted wanted = lots.of(wanted(skill));
      for (int i = 0; i < TRIES; i++) {
        Matter matter = situations.matter(skill, level, wanted, lots);
        Optional<Question> question = key.question(skill, level, wanted.asking(), matter);
        if (question.filter(found -> wanted.isMet(found.truth())).isPresent()) {
          return question.get();
        }
      }
    }
  }

  /**
   * What is asked, and what the answer shall be.
   *
   * @param choice nothing where any number will do
   */
  record Wanted(Asking asking, Optional<Choice> choice) {
    boolean isMet(Truth truth) {
      return choice
          .map(wanted -> truth.equals(new Named(wanted)))
          .orElse(truth instanceof Truth.Figure);
    }

    boolean is(Choice other) {
      return choice.filter(wanted -> wanted == other).isPresent();
    }
  }

  /** All that a skill asks and all answers, each as often as its share. */
  static List<Wanted> wanted(Skill skill) {
    List<Wanted> all = new ArrayList<>();
    switch (skill) {
      case TEENS_AND_TENS -> number(all, 1, Asking.DIGITS);
      case INSIDE_ANGLE -> {
        number(all, 9, Asking.INSIDE);
        choices(all, 1, Asking.INSIDE, Choice.NOBODY_CAN_SAY);
      }
      case BEND_OR_INSIDE -> {
        number(all, 2, Asking.BEND);
        number(all, 2, Asking.INSIDE_OF_BEND);
        choices(all, 1, Asking.PULLS_MORE, Choice.FIRST, Choice.SECOND);
      }
      case ANGLE_FACTOR -> number(all, 1, Asking.FACTOR);
      case WHERE_IT_GOES -> {
        choices(all, 2, Asking.WHERE, Asking.WHERE.choices().toArray(Choice[]::new));
        choices(all, 1, Asking.WHERE, Choice.NOBODY_CAN_SAY);
      }
      case READ_BACK ->
          choices(all, 1, Asking.READ_BACK, Asking.READ_BACK.choices().toArray(Choice[]::new));
      case CHANGE_OVER -> {
        choices(all, 2, Asking.COMES_FIRST, Choice.FIRST, Choice.SECOND, Choice.THIRD);
        choices(all, 2, Asking.LANYARD, Choice.KEEP);
        choices(all, 1, Asking.LANYARD, Choice.RELEASE);
      }
      case WHICH_UNION -> choices(all, 1, Asking.STRONGER, Choice.FIRST, Choice.SECOND);
      case INCH_OR_FOOT -> number(all, 1, Asking.MORE);
      case WILL_IT_SLIDE -> choices(all, 1, Asking.SLIDE, Choice.SLIDES, Choice.HOLDS);
      case HOW_MANY_WRAPS -> number(all, 1, Asking.WRAPS);
      case IF_IT_LETS_GO -> {
        number(all, 4, Asking.DROP);
        choices(all, 1, Asking.WAY, Asking.WAY.choices().toArray(Choice[]::new));
        number(all, 4, Asking.HARD);
      }
      case TOO_LITTLE_KNOWN -> {
        choices(all, 2, Asking.GO_OR_REFUSE, Choice.NOBODY_CAN_SAY);
        choices(all, 1, Asking.GO_OR_REFUSE, Choice.GO, Choice.REFUSE);
      }
      case REFUSE_OR_GO -> {
        choices(all, 2, Asking.GO_OR_REFUSE, Choice.GO, Choice.REFUSE);
        choices(all, 1, Asking.GO_OR_REFUSE, Choice.NOBODY_CAN_SAY);
      }
    }
    return List.copyOf(all);
  }

  private static void number(List<Wanted> all, int share, Asking asking) {
    for (int i = 0; i < share; i++) {
      all.add(new Wanted(asking, Optional.empty()));
    }
  }

  private static void choices(List<Wanted> all, int share, Asking asking, Choice... choices) {
    for (Choice choice : choices) {
      for (int i = 0; i < share; i++) {
        all.add(new Wanted(asking, Optional.of(choice)));
      }
    }
  }
}
