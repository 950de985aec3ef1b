package rigspeak.grammar;

import java.io.Serial;

/** A grammar file that cannot be used; the message is one sentence for a person. */
public final class GrammarFault extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  GrammarFault(String message, Throwable cause) {
    super(message, cause);
  }
}
