package rigspeak.app;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A key that is as good as the call: anything that arrives on standard input. A terminal hands it
 * over with Enter; a program that watches a headset's button writes a line.
 */
final class Key {
  private final AtomicBoolean pressed = new AtomicBoolean();

  /** Watches a stream until it ends. */
  static Key on(InputStream in) {
    Key key = new Key();
    Thread watch = new Thread(() -> key.watch(in), "key");
    watch.setDaemon(true);
    watch.start();
    return key;
  }

  void press() {
    pressed.set(true);
  }

  /** Whether it has been pressed since this was asked last. */
  boolean wasPressed() {
    return pressed.getAndSet(false);
  }

  private void watch(InputStream in) {
    try {
      while (in.read() >= 0) {
        press();
      }
    } catch (IOException e) {
      // Without a keyboard there is still the call.
    }
  }
}
