package rigspeak.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;

/**
 * A plan gone through line by line, as if it were said.
 *
 * @param told every line with what came of it
 */
public record Walk(List<Told> told) {
  public Walk {
    told = List.copyOf(told);
  }

  public static Walk through(Plan plan, Understanding understanding, Dialogue dialogue) {
    List<Told> told = new ArrayList<>();
    Conversation now = Conversation.begin();
    for (Plan.Line line : plan.lines()) {
      Meaning meaning = understanding.understand(line.said(), now.asked());
      Turn turn = dialogue.step(now, meaning);
      now = turn.next();
      told.add(new Told(line, meaning, turn));
    }
    return new Walk(told);
  }

  /** Where the conversation stands after the last line. */
  public Conversation end() {
    return told.isEmpty() ? Conversation.begin() : told.get(told.size() - 1).turn().next();
  }

  /** The lines of which something was not taken or not done. */
  public List<Told> refused() {
    return told.stream().filter(Told::isRefused).toList();
  }

  /** The line that still waits for the lanyard where the plan ends. */
  public Optional<Told> waiting() {
    Optional<Told> waiting = Optional.empty();
    for (Told each : told) {
      if (has(each, Reply.LanyardFirst.class)) {
        waiting = Optional.of(each);
      } else if (has(each, Reply.ClippedIn.class)) {
        waiting = Optional.empty();
      }
    }
    return waiting;
  }

  private static boolean has(Told told, Class<? extends Reply> type) {
    return told.turn().replies().stream().anyMatch(type::isInstance);
  }
}
