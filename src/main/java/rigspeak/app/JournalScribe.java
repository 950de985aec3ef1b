package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Entry;
import rigspeak.journal.Event;
import rigspeak.journal.Journal;
import rigspeak.journal.Journal.Kept;
import rigspeak.journal.NotKept;

/** Writes a conversation into a crew's journal, which is opened as soon as it can be. */
final class JournalScribe implements Scribe {
  private final CrewFolder crew;
  private final Clock clock;
  private final PrintWriter remarks;
  private Optional<Journal> journal = Optional.empty();
  private Event beginning = new Event.Began(Main.version());
  private boolean begun;
  private String lastRemark = "";

  /**
   * @param remarks is told in full what is only named when it is spoken
   */
  JournalScribe(CrewFolder crew, Clock clock, PrintWriter remarks) {
    this.crew = crew;
    this.clock = clock;
    this.remarks = remarks;
  }

  /**
   * The last conversation of this crew, once nobody else can write to it.
   *
   * @throws NotKept if the journal cannot be opened, or a line in it has been changed
   */
  List<Entry> lastConversation() throws NotKept {
    return open().lastConversation();
  }

  /** That conversation goes on, instead of a new one. */
  void goesOn(int exchanges) {
    beginning = new Event.Resumed(Main.version(), exchanges);
  }

  private Journal open() throws NotKept {
    if (journal.isEmpty()) {
      journal = Optional.of(Journal.open(crew, clock));
    }
    return journal.get();
  }

  @Override
  public Kept begin() throws NotKept {
    Kept kept = Kept.IN_ORDER;
    if (!begun) {
      kept = append(beginning);
      begun = true;
    }
    return kept;
  }

  private Kept append(Event event) throws NotKept {
    try {
      return open().append(event);
    } catch (NotKept e) {
      remark(e.getMessage());
      throw e;
    }
  }

  /** Each once, however often it stands in the way. */
  private void remark(String message) {
    if (!message.equals(lastRemark)) {
      remarks.println("The journal: " + message);
      lastRemark = message;
    }
  }

  @Override
  public Kept write(Input input, Exchange exchange) throws NotKept {
    Kept beginning = begin();
    Kept kept = append(KeptExchange.of(input, exchange));
    return beginning == Kept.CLOCK_SET_BACK ? beginning : kept;
  }

  @Override
  public void failed(String what, Throwable fault) {
    try {
      append(new Event.Failed(what, String.valueOf(fault)));
    } catch (NotKept e) {
      // The conversation is told of it all the same, and of the record with its next line.
    }
  }

  @Override
  public void close() throws IOException {
    if (journal.isPresent()) {
      journal.get().close();
    }
  }
}
