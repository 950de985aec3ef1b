package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class KeyTest {
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** Tells when it has been read to its end. */
  private static final class Keyboard extends FilterInputStream {
    private final CountDownLatch over = new CountDownLatch(1);

    Keyboard(String typed) {
      super(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public int read() throws IOException {
      return noted(super.read());
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      return noted(super.read(into, from, most));
    }

    private int noted(int got) {
      if (got < 0) {
        over.countDown();
      }
      return got;
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
