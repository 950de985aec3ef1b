package rigspeak.drill;

/**
 * One question with its right answer.
 *
 * @param matter what it is about
 * @param asking what is wanted
 * @param grounds the numbers that the reason is told with
 */
public record Question(
    Skill skill, Level level, Matter matter, Asking asking, Truth truth, Grounds grounds) {}
