package rigspeak.app;

import java.time.Clock;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigspeak.page.Board;
import rigspeak.page.Boards;
import rigspeak.page.Feed;

/** Puts a conversation on the page: a new board after each exchange. */
final class Stage implements ExchangeListener {
  /** Older entries leave the page; nothing else is lost with them. */
  private static final int MOST_ENTRIES = 100;

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Session session;
  private final Boards boards;
  private final Feed feed;
  private final Clock clock;
  private final List<Board.Entry> journal = new ArrayList<>();
  private long version;

  /** Shows a conversation of which nothing has been said yet. */
  Stage(Session session, Boards boards, Feed feed, Clock clock) {
    this.session = session;
    this.boards = boards;
    this.feed = feed;
    this.clock = clock;
    publish(clock.millis());
  }

  /** Takes typed words, and shows what comes of them. */
  Exchange said(String words) {
    long at = clock.millis();
    Exchange exchange = session.said(words);
    show(exchange, at);
    return exchange;
  }

  @Override
  public void exchange(String verb, Exchange exchange) {
    show(exchange, clock.millis());
  }

  private void show(Exchange exchange, long at) {
    List<Board.Answer> answers =
        exchange.answers().stream()
            .map(answer -> new Board.Answer(answer.text(), answer.danger()))
            .toList();
    journal.add(new Board.Entry(LocalTime.now(clock).format(TIME), exchange.said(), answers));
    if (journal.size() > MOST_ENTRIES) {
      journal.remove(0);
    }
    publish(at);
  }

  private void publish(long at) {
    version++;
    feed.publish(units -> boards.of(session.conversation(), journal, units, version, at));
  }
}
