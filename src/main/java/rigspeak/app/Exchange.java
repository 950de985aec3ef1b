package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.answer.Answers;
import rigspeak.answer.Mishap;
import rigspeak.answer.Utterance;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Reply;
import rigspeak.meaning.Meaning;
import rigspeak.plan.Told;
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
 * @param mishap what went wrong in the machine; then nothing was taken
 */
record Exchange(
    String said,
    Meaning meaning,
    List<Reply> replies,
    List<Utterance> answers,
    Optional<Slot> asked,
    Optional<Mishap> mishap) {

  /** A line of a plan and what came of it. */
  static Exchange of(Told told) {
    Conversation next = told.turn().next();
    List<Reply> replies = told.turn().replies();
    return new Exchange(
        told.line().said(),
        told.meaning(),
        replies,
        Answers.say(replies, next.manner().detail()),
        next.asked(),
        Optional.empty());
  }

  /** One more reply, which needs no words. */
  Exchange with(Reply silent) {
    List<Reply> more = new ArrayList<>(replies);
    more.add(silent);
    return new Exchange(said, meaning, more, answers, asked, mishap);
  }

  /** One more sentence. */
  Exchange with(Utterance answer) {
    List<Utterance> more = new ArrayList<>(answers);
    more.add(answer);
    return new Exchange(said, meaning, replies, more, asked, mishap);
  }

  /** Whether it began to listen at this. */
  boolean called() {
    return replies.stream().anyMatch(Reply.Listening.class::isInstance);
  }

  /** Whether from now on it waits for the call. */
  boolean fellAsleep() {
    return replies.stream().anyMatch(Reply.FallenAsleep.class::isInstance);
  }

  boolean understood() {
    return !Told.isRefused(meaning);
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

  Optional<PathVerdict> verdict() {
    return replies.stream()
        .filter(Reply.Judged.class::isInstance)
        .map(reply -> ((Reply.Judged) reply).verdict())
        .findFirst();
  }
}
