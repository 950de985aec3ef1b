package rigspeak.app;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import rigspeak.dialogue.Reply;
import rigspeak.journal.Entry;
import rigspeak.journal.Event;
import rigspeak.journal.NotKept;

/**
 * A conversation that was broken off, played again from its journal. What was said is said once
 * more to the same steps; it goes on only if every answer is the one that was written.
 */
final class Resumption {
  /** What is older was another day's climb. A judgement: no working day is longer. */
  private static final Duration LONGEST = Duration.ofHours(12);

  private Resumption() {}

  /** An answer that is another now than it was when it was written. */
  static final class AnswersDiffer extends Exception {
    private static final long serialVersionUID = 1L;

    AnswersDiffer(Entry entry) {
      super("This version answers line " + entry.number() + " otherwise.");
    }
  }

  /**
   * Brings a session, of which nothing was said yet, to where the last conversation of its journal
   * was broken off. If there is none, or it cannot go on, a new one begins, which knows nothing.
   *
   * @return what is said before anything else
   */
  static List<Exchange> begin(Session session, JournalScribe scribe, Clock clock) {
    try {
      List<Entry> kept = scribe.lastConversation();
      if (kept.isEmpty() || isTooOld(kept, clock)) {
        return written(session, session.beginsAnew(Reply.BeginsAnew.Why.NONE_BEFORE));
      }
      Played played = play(session, kept);
      scribe.goesOn(played.exchanges());
      return written(session, session.goesOn(played.lastWords()));
    } catch (AnswersDiffer e) {
      return written(session, session.beginsAnew(Reply.BeginsAnew.Why.ANSWERS_DIFFER));
    } catch (NotKept e) {
      return session.begin().stream().toList();
    }
  }

  /** What is said stands only once it is written that it goes on. */
  private static List<Exchange> written(Session session, Exchange said) {
    Optional<Exchange> remark = session.begin();
    if (remark.isEmpty()) {
      return List.of(said);
    }
    return remark.get().mishap().isPresent() ? List.of(remark.get()) : List.of(said, remark.get());
  }

  private static boolean isTooOld(List<Entry> kept, Clock clock) {
    Entry last = kept.get(kept.size() - 1);
    return Duration.between(last.at(), clock.instant()).compareTo(LONGEST) > 0;
  }

  /**
   * What was played again.
   *
   * @param lastWords the last ones of which something came
   */
  record Played(int exchanges, String lastWords) {}

  /** Hands each exchange on as it is played again. */
  interface Watcher {
    void played(Entry entry, Exchange exchange);
  }

  static Played play(Session session, List<Entry> kept) throws AnswersDiffer {
    return play(session, kept, (entry, exchange) -> {});
  }

  static Played play(Session session, List<Entry> kept, Watcher watcher) throws AnswersDiffer {
    int exchanges = 0;
    String lastWords = "";
    for (Entry entry : kept) {
      if (entry.event() instanceof Event.Said said) {
        Exchange exchange = again(session, entry, said);
        exchanges++;
        if (exchange.understood() && !exchange.said().isEmpty()) {
          lastWords = exchange.said();
        }
        watcher.played(entry, exchange);
      }
    }
    return new Played(exchanges, lastWords);
  }

  private static Exchange again(Session session, Entry entry, Event.Said said)
      throws AnswersDiffer {
    try {
      Exchange exchange = session.again(KeptExchange.input(said));
      if (KeptExchange.answers(exchange).equals(said.answers())) {
        return exchange;
      }
    } catch (IllegalArgumentException otherVersion) {
      // Something that only another version knows.
    }
    throw new AnswersDiffer(entry);
  }
}
