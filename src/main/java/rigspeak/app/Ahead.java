package rigspeak.app;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Something that takes long to load: begun at once, in a thread of its own, and waited for when it
 * is asked for. Whoever asks is told if it failed.
 */
final class Ahead<T> implements Supplier<T> {
  private final CompletableFuture<T> loading;

  Ahead(Supplier<T> loading) {
    this.loading =
        CompletableFuture.supplyAsync(
            loading,
            work -> {
              Thread thread = new Thread(work, "loading");
              thread.setDaemon(true);
              thread.start();
            });
  }

  @Override
  public T get() {
    try {
      return loading.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }
}
