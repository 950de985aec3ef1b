package rigspeak.audio;

import java.io.Serial;

/** No microphone or loudspeaker that was asked for; the message is one sentence for a person. */
public final class NoSuchDevice extends Exception {
  @Serial private static final long serialVersionUID = 1L;

  NoSuchDevice(String message) {
    super(message);
  }

  NoSuchDevice(String message, Throwable cause) {
    super(message, cause);
  }
}
