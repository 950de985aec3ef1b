package rigspeak.audio;

import java.io.IOException;
import java.io.Serial;

/** A line that broke off while it was in use; the message is one sentence for a person. */
public final class LostDevice extends IOException {
  @Serial private static final long serialVersionUID = 1L;

  public LostDevice(String message) {
    super(message);
  }
}
