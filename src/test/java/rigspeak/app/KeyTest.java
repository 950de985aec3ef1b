package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class KeyTest {
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** Tells when it has been read to its end. */
  private static final class Keyboard extends InputStream {
    private final InputStream typed;
    private final CountDownLatch over = new CountDownLatch(1);

    Keyboard(String typed) {
      this.typed = new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public int read() throws IOException {
      int next = typed.read();
      if (next < 0) {
        over.countDown();
      }
      return next;
    }
  }

  private static Key after(String typed) {
    Keyboard keyboard = new Keyboard(typed);
    Key key = Key.on(keyboard);
    assertTimeoutPreemptively(PATIENCE, () -> keyboard.over.await());
    return key;
  }

  @Test
  void anythingTypedIsTheKeyAndCountsOnce() {
    Key key = after("\n");
    assertTrue(key.wasPressed());
    assertFalse(key.wasPressed());
    assertTrue(after(" ").wasPressed());
  }

  @Test
  void withoutAKeyboardItIsNeverPressed() {
    assertFalse(after("").wasPressed());
  }
}
