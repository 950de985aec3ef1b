package rigspeak.hearing;

import java.io.IOException;
import java.util.Optional;
import rigspeak.grammar.Expected;

/** One stream of sound, heard utterance by utterance. */
public interface Listening extends AutoCloseable {
  /**
   * Waits for the next utterance.
   *
   * @param expected what may be said now
   * @return what was heard, or nothing if the stream has ended
   * @throws IOException if the sound broke off; the message is one sentence for a person
   */
  Optional<Heard> next(Expected expected) throws IOException;

  @Override
  void close();
}
