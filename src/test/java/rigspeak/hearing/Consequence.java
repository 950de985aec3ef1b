package rigspeak.hearing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Pending;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;

/** What comes of words that were heard in place of others, at the beginning of a conversation. */
enum Consequence {
  /** A value that was not said stands, or something is done that nobody asked for. */
  STANDS,

  /** Nothing stands that was not said; the rest is read back and waits to be affirmed. */
  WAITS,

  /** Nothing stands that was not said; the rest cannot be, and is asked again. */
  ASKED_AGAIN;

  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Dialogue DIALOGUE =
      new Dialogue(Catalogue.bundled(), new Judge(Catalogue.bundled()));

  /**
   * What comes of it.
   *
   * @param asked the slot that had been asked for, whose bare value may be said
   * @param said the words; empty if they were talk that is none of the tool's business
   * @param heard the words that they were taken for
   * @param doubtful whether the ear was not sure of them
   */
  static Consequence of(Optional<Slot> asked, String said, String heard, boolean doubtful) {
    Meaning meaning = meaning(asked, heard, doubtful);
    if (doubtful && meaning instanceof Meaning.NotUnderstood) {
      return ASKED_AGAIN;
    }
    Turn turn = DIALOGUE.step(Conversation.begin(), meaning);
    Optional<Pending> pending = turn.next().floor().pending();
    boolean ofValues = meaning instanceof Meaning.Values || meaning instanceof Meaning.Correction;
    if ((!ofValues && pending.isEmpty()) || !taken(asked, said).containsAll(taken(turn))) {
      return STANDS;
    }
    return pending.isPresent() ? WAITS : ASKED_AGAIN;
  }

  /** Whether anything comes of words that the ear is not sure of: it is asked back then. */
  static boolean isAskedBack(Optional<Slot> asked, String heard) {
    return !(UNDERSTANDING.hearDoubtful(heard, asked) instanceof Meaning.NotUnderstood);
  }

  /** Whether words, heard as they were said, stand only when they have been affirmed. */
  static boolean isAffirmedFirst(Optional<Slot> asked, String said, boolean doubtful) {
    Turn turn = DIALOGUE.step(Conversation.begin(), meaning(asked, said, doubtful));
    return turn.next().floor().pending().isPresent();
  }

  private static Meaning meaning(Optional<Slot> asked, String heard, boolean doubtful) {
    return doubtful ? UNDERSTANDING.hearDoubtful(heard, asked) : UNDERSTANDING.hear(heard, asked);
  }

  private static Set<Reply.Item> taken(Optional<Slot> asked, String said) {
    return taken(DIALOGUE.step(Conversation.begin(), UNDERSTANDING.hear(said, asked)));
  }

  private static Set<Reply.Item> taken(Turn turn) {
    return turn.replies().stream()
        .filter(Reply.Taken.class::isInstance)
        .map(reply -> ((Reply.Taken) reply).items())
        .flatMap(List::stream)
        .collect(Collectors.toSet());
  }
}
