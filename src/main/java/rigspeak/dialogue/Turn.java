package rigspeak.dialogue;

import java.util.List;

/**
 * What comes of one step.
 *
 * @param next the conversation to go on with
 * @param replies what is said to it, in order; empty for silence
 */
public record Turn(Conversation next, List<Reply> replies) {
  public Turn {
    replies = List.copyOf(replies);
  }
}
