package rigspeak.app;

import java.util.List;
import java.util.Optional;
import rigspeak.answer.Utterance;
import rigspeak.dialogue.Reply;
import rigspeak.meaning.Meaning;
import rigspeak.rig.Slot;
import rigspeak.verdict.PathVerdict;

/**
 * One thing said and all that came of it.
 *
 * @param said the words, empty if there were none
 * @param meaning what was meant by them
 * @param replies what the dialogue had to say
 * @param answers the same in sentences
 * @param asked the slot whose bare value is waited for now
 */
record Exchange(
    String said,
    Meaning meaning,
    List<Reply> replies,
    List<Utterance> answers,
    Optional<Slot> asked) {

  /** Whether it began to listen at this. */
  boolean called() {
    return replies.stream().anyMatch(Reply.Listening.class::isInstance);
  }

  /** Whether from now on it waits for the call. */
  boolean fellAsleep() {
    return replies.stream().anyMatch(Reply.FallenAsleep.class::isInstance);
  }

  boolean understood() {
    return !(meaning instanceof Meaning.NotUnderstood || meaning instanceof Meaning.CannotHear);
  }

  /** The slots that hold a new value after this. */
  List<Slot> taken() {
    return replies.stream()
        .filter(Reply.Taken.class::isInstance)
        .map(Reply.Taken.class::cast)
        .flatMap(taken -> taken.items().stream())
        .map(Reply.Item::slot)
        .toList();
  }

  /** Whether something in it was not taken or not done. */
  boolean refusedSomething() {
    return !understood() || replies.stream().anyMatch(Exchange::refuses);
  }

  private static boolean refuses(Reply reply) {
    boolean notTaken =
        reply instanceof Reply.Implausible
            || reply instanceof Reply.WhichAngle
            || reply instanceof Reply.SaidTwice
            || reply instanceof Reply.AffirmFirst;
    boolean notDone =
        reply instanceof Reply.NoSuchRedirect
            || (reply instanceof Reply.LanyardFirst first && first.change().isEmpty());
    return notTaken || notDone;
  }

  /** Whether a change has to wait until the lanyard is clipped in. */
  boolean waitsForLanyard() {
    return replies.stream().anyMatch(Reply.LanyardFirst.class::isInstance);
  }

  boolean clippedIn() {
    return replies.stream().anyMatch(Reply.ClippedIn.class::isInstance);
  }

  Optional<PathVerdict> verdict() {
    return replies.stream()
        .filter(Reply.Judged.class::isInstance)
        .map(reply -> ((Reply.Judged) reply).verdict())
        .findFirst();
  }
}
