package rigspeak.hearing;

import java.io.IOException;
import java.util.Optional;
import rigspeak.grammar.Expected;

/** One stream of sound, heard utterance by utterance. */
public interface Listening extends AutoCloseable {
  /**
   * How long somebody may say nothing before that is told, seconds, where nothing else is asked.
   */
  double PATIENCE_SECONDS = 10;

  /**
   * Begins to get ready for what may be said after what is going on now, for example while a
   * question is spoken: its answer's network takes some time to build.
   *
   * @param expected what {@link #next} will be asked for; anything else costs that time again
   */
  void expectSoon(Expected expected);

  /** Waits for the next utterance with the usual patience. */
  default Optional<Heard> next(Expected expected) throws IOException {
    return next(expected, PATIENCE_SECONDS);
  }

  /**
   * Waits for the next utterance.
   *
   * @param expected what may be said now
   * @param patienceSeconds after so much sound in which nobody began to speak, it is silence
   * @return what was heard, or nothing if the stream has ended
   * @throws IOException if the sound broke off; the message is one sentence for a person
   */
  Optional<Heard> next(Expected expected, double patienceSeconds) throws IOException;

  @Override
  void close();
}
