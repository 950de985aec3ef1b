package rigspeak.hearing;

import java.io.Serial;

/** The recogniser cannot be set up; the message is one sentence for a person. */
public final class HearingFault extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  HearingFault(String message) {
    super(message);
  }

  HearingFault(String message, Throwable cause) {
    super(message, cause);
  }
}
