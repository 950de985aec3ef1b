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
   * @param said the words; empty if they were talk that is none of the tool's business
   * @param heard the words that they were taken for
   * @param doubtful whether the ear was not sure of them
   */
  static Consequence of(String said, String heard, boolean doubtful) {
    Meaning meaning =
        doubtful
            ? UNDERSTANDING.hearDoubtful(heard, Optional.empty())
            : UNDERSTANDING.hear(heard, Optional.empty());
    if (doubtful && meaning instanceof Meaning.NotUnderstood) {
      return ASKED_AGAIN;
    }
    Turn turn = DIALOGUE.step(Conversation.begin(), meaning);
    Optional<Pending> pending = turn.next().floor().pending();
    boolean ofValues = meaning instanceof Meaning.Values || meaning instanceof Meaning.Correction;
    if ((!ofValues && pending.isEmpty()) || !taken(said).containsAll(taken(turn))) {
      return STANDS;
    }
    return pending.isPresent() ? WAITS : ASKED_AGAIN;
  }

  /** Whether anything comes of words that the ear is not sure of: it is asked back then. */
  static boolean isAskedBack(String heard) {
    return !(UNDERSTANDING.hearDoubtful(heard, Optional.empty()) instanceof Meaning.NotUnderstood);
  }

  /** Whether words, heard as they were said, stand only when they have been affirmed. */
  static boolean isAffirmedFirst(String said, boolean doubtful) {
    Meaning meaning =
        doubtful
            ? UNDERSTANDING.hearDoubtful(said, Optional.empty())
            : UNDERSTANDING.hear(said, Optional.empty());
    return DIALOGUE.step(Conversation.begin(), meaning).next().floor().pending().isPresent();
  }

  private static Set<Reply.Item> taken(String said) {
    return taken(DIALOGUE.step(Conversation.begin(), UNDERSTANDING.hear(said, Optional.empty())));
  }

  private static Set<Reply.Item> taken(Turn turn) {
    return turn.replies().stream()
        .filter(Reply.Taken.class::isInstance)
        .map(reply -> ((Reply.Taken) reply).items())
        .flatMap(List::stream)
        .collect(Collectors.toSet());
  }
}
