package rigspeak.audio;

import java.io.IOException;
import java.io.Serial;

/** A sound file that cannot be heard; the message is one sentence for a person. */
public final class UnreadableSound extends IOException {
  @Serial private static final long serialVersionUID = 1L;

  UnreadableSound(String message) {
    super(message);
  }

  UnreadableSound(String message, Throwable cause) {
    super(message, cause);
  }
}
