package rigspeak.dialogue;

import java.util.List;
import java.util.Optional;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;

/**
 * Everything a conversation has come to; every step makes a new one.
 *
 * @param rope what was said of each support, and the verdicts on them
 * @param gate the lanyard gate
 * @param floor what the next thing said may refer to
 * @param ladder how often nothing was understood
 * @param manner how answers are given
 * @param said the replies of the last step that had any, for saying them again
 */
public record Conversation(
    Rope rope, Gate gate, Floor floor, Ladder ladder, Manner manner, List<Reply> said) {

  public Conversation {
    said = List.copyOf(said);
  }

  /** Nothing said yet. */
  public static Conversation begin() {
    return new Conversation(
        Rope.begin(), Gate.unknown(), Floor.open(), Ladder.foot(), Manner.usual(), List.of());
  }

  /** The rig that the talk is about. */
  public Rig rig() {
    return rope.support().said();
  }

  /** The slot whose bare value would be understood now. */
  public Optional<Slot> asked() {
    return floor.asked();
  }

  /** Whether something was asked, or read back for an affirm, and has not been answered. */
  public boolean waitsForAnswer() {
    return floor.asked().isPresent() || floor.pending().isPresent();
  }

  /** As it is when the value of a slot was called wrong; it has to be said again. */
  public Conversation withdrawing(Place place, Slot slot) {
    Rope there = slot.scope() == Slot.Scope.CLIMB ? rope : rope.turnedTo(place);
    Support support = there.support();
    Rope changed = there.with(support.with(support.said().withdrawing(slot)));
    return with(changed.turnedTo(rope.present())).with(floor.askingNothing().after(List.of()));
  }

  Conversation with(Rope changed) {
    return new Conversation(changed, gate, floor, ladder, manner, said);
  }

  Conversation with(Support changed) {
    return with(rope.with(changed));
  }

  Conversation with(Gate changed) {
    return new Conversation(rope, changed, floor, ladder, manner, said);
  }

  Conversation with(Floor changed) {
    return new Conversation(rope, gate, changed, ladder, manner, said);
  }

  Conversation with(Ladder changed) {
    return new Conversation(rope, gate, floor, changed, manner, said);
  }

  Conversation with(Manner changed) {
    return new Conversation(rope, gate, floor, ladder, changed, said);
  }

  Conversation saying(List<Reply> replies) {
    return new Conversation(rope, gate, floor, ladder, manner, replies);
  }
}
