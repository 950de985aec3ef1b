package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class AheadTest {
  @Test
  void itIsLoadedOnceBesideWhoeverWaitsAndAnewIfAskedAgain() {
    List<Thread> loaders = Collections.synchronizedList(new ArrayList<>());
    Supplier<Integer> ahead =
        new Ahead<>(
            () -> {
              loaders.add(Thread.currentThread());
              return loaders.size();
            });

    assertEquals(1, ahead.get());
    assertNotEquals(Thread.currentThread(), loaders.get(0));
    assertEquals(2, ahead.get());
  }

  @Test
  void whoeverWaitsIsToldThatItFailed() {
    Supplier<String> refused =
        new Ahead<>(
            () -> {
              throw new IllegalStateException("no such file");
            });
    assertEquals(
        "no such file", assertThrows(IllegalStateException.class, refused::get).getMessage());

    Supplier<String> tooLarge =
        new Ahead<>(
            () -> {
              throw new OutOfMemoryError("heap");
            });
    assertThrows(OutOfMemoryError.class, tooLarge::get);
  }
}
