package rigspeak.app;

import java.io.IOException;
import rigspeak.journal.Journal.Kept;
import rigspeak.journal.NotKept;

/** Who writes down what is said, before it is taken and answered. */
interface Scribe extends AutoCloseable {
  /**
   * Opens the book and writes that a conversation begins or goes on.
   *
   * @throws NotKept if it cannot be written; it is tried again before the next line
   */
  Kept begin() throws NotKept;

  /**
   * Writes one exchange down.
   *
   * @throws NotKept if it is not kept; then nothing of it may be taken
   */
  Kept write(Input input, Exchange exchange) throws NotKept;

  /** Writes down what failed in the machine, if anything can be written at all. */
  void failed(String what, Throwable fault);

  @Override
  void close() throws IOException;

  /** Nobody writes. */
  static Scribe none() {
    return new Scribe() {
      @Override
      public Kept begin() {
        return Kept.IN_ORDER;
      }

      @Override
      public Kept write(Input input, Exchange exchange) {
        return Kept.IN_ORDER;
      }

      @Override
      public void failed(String what, Throwable fault) {
        // Who keeps no journal keeps no faults either; they are spoken and printed.
      }

      @Override
      public void close() {
        // Nothing is open.
      }
    };
  }
}
