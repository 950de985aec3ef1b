package rigspeak.readback;

import java.util.List;
import java.util.Set;
import rigspeak.dialogue.Conversation;
import rigspeak.rig.RopePath;

/**
 * Everything a read-back has come to; every step makes a new one.
 *
 * @param plan what the rig should be
 * @param talk what was said of it so far
 * @param accepted differences that were affirmed: so it is, though it was planned otherwise
 * @param stand what is waited for
 * @param spoken the replies of the last step that had any, for saying them again
 */
public record Readback(
    RopePath plan,
    Conversation talk,
    Set<Difference> accepted,
    Stand stand,
    List<RadioReply> spoken) {

  public Readback {
    accepted = Set.copyOf(accepted);
    spoken = List.copyOf(spoken);
  }

  /** Where a read-back stands. */
  public sealed interface Stand {
    /** Values are waited for. */
    record Hearing() implements Stand {}

    /**
     * Differences were named; they are to be affirmed, denied or corrected.
     *
     * @param items no more than a listener keeps in mind
     */
    record AskingAbout(List<Difference> items) implements Stand {
      public AskingAbout {
        items = List.copyOf(items);
      }
    }

    /** Everything was said; the whole of it is to be affirmed. */
    record AskingAll() implements Stand {}

    /** It is over. */
    record Ended(Outcome outcome, TimeOfDay at) implements Stand {}
  }

  /** What comes of a read-back. */
  public enum Outcome {
    /** Every item of the plan was said as planned, and the whole was affirmed. */
    CONFIRMED,
    /** Every item was said and the whole was affirmed, but not all of it is as planned. */
    DIFFERS,
    /** Not all was said, or not all was settled. */
    OPEN
  }

  /** Nothing said yet. */
  public static Readback of(RopePath plan) {
    return new Readback(plan, Conversation.begin(), Set.of(), new Stand.Hearing(), List.of());
  }

  public Outcome outcome() {
    return stand instanceof Stand.Ended ended ? ended.outcome() : Outcome.OPEN;
  }

  /** Everything that is not as planned, affirmed or not. */
  public List<Difference> differences() {
    return Differences.between(plan, Differences.asSaid(talk.rope()));
  }

  /** What was said otherwise than planned, and has not been affirmed. */
  List<Difference> unsettled() {
    return differences().stream()
        .filter(each -> !(each instanceof Difference.NotSaid) && !accepted.contains(each))
        .toList();
  }

  /** What has not been said. */
  List<Difference.NotSaid> notSaid() {
    return differences().stream()
        .filter(Difference.NotSaid.class::isInstance)
        .map(Difference.NotSaid.class::cast)
        .toList();
  }

  Readback with(Conversation changed) {
    return new Readback(plan, changed, accepted, stand, spoken);
  }

  Readback with(Stand changed) {
    return new Readback(plan, talk, accepted, changed, spoken);
  }

  Readback accepting(Set<Difference> all) {
    return new Readback(plan, talk, all, stand, spoken);
  }

  Readback speaking(List<RadioReply> replies) {
    return new Readback(plan, talk, accepted, stand, replies);
  }
}
