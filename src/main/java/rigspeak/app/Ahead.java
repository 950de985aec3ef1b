package rigspeak.app;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Something that takes long to load: begun at once, in a thread of its own, and waited for when it
 * is first asked for. Whoever asks is told if it failed. Asked again, it is loaded again.
 */
final class Ahead<T> implements Supplier<T> {
  private final Supplier<T> loading;
  private Optional<CompletableFuture<T>> begun;

  Ahead(Supplier<T> loading) {
    this.loading = loading;
    this.begun =
        Optional.of(
            CompletableFuture.supplyAsync(
                loading,
                work -> {
                  Thread thread = new Thread(work, "loading");
                  thread.setDaemon(true);
                  thread.start();
                }));
  }

  @Override
  public T get() {
    Optional<CompletableFuture<T>> first = begun;
    begun = Optional.empty();
    return first.map(Ahead::awaited).orElseGet(loading);
  }

  private static <T> T awaited(CompletableFuture<T> first) {
    try {
      return first.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }
}
