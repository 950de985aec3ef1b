package rigspeak.page;

import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Cuts off whoever does not take what is sent within some seconds. */
final class SlowClients implements AutoCloseable {
  static final long PATIENCE_MILLIS = 5_000;

  private final long patienceMillis;

  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "slow clients");
            thread.setDaemon(true);
            return thread;
          });

  SlowClients(long patienceMillis) {
    this.patienceMillis = patienceMillis;
  }

  /** Cuts off after some seconds, unless that is cancelled before. */
  Future<?> cutOffLater(Runnable cutOff) {
    return timer.schedule(cutOff, patienceMillis, TimeUnit.MILLISECONDS);
  }

  @Override
  public void close() {
    timer.shutdownNow();
  }
}
