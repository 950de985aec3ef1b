package rigspeak.plan;

import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.meaning.Meaning;

/**
 * One line of a plan and what came of it.
 *
 * @param meaning what was meant by it
 * @param turn the conversation after it, and what was replied
 */
public record Told(Plan.Line line, Meaning meaning, Turn turn) {

  /** Whether something in it was not taken or not done. */
  public boolean isRefused() {
    return isRefused(meaning) || turn.replies().stream().anyMatch(Told::isRefusal);
  }

  /** Whether nothing can be taken from words with this meaning. */
  public static boolean isRefused(Meaning meaning) {
    return meaning instanceof Meaning.NotUnderstood || meaning instanceof Meaning.CannotHear;
  }

  /** Whether this reply says that something was not taken or not done. */
  public static boolean isRefusal(Reply reply) {
    boolean notTaken =
        reply instanceof Reply.Implausible
            || reply instanceof Reply.WhichAngle
            || reply instanceof Reply.SaidTwice
            || reply instanceof Reply.AffirmFirst;
    return notTaken || reply instanceof Reply.NoSuchRedirect || isLoadedWithoutLanyard(reply);
  }

  /** A rope was loaded, and nobody was clipped in. */
  static boolean isLoadedWithoutLanyard(Reply reply) {
    return reply instanceof Reply.LanyardFirst first && first.change().isEmpty();
  }
}
