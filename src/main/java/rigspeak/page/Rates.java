package rigspeak.page;

import java.net.InetAddress;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * How often somebody may ask. From each address so many requests in a burst, and so many a second
 * after it; who guesses at the token has fewer.
 */
final class Rates {
  /** A page asks for three files and a stream; fifty pages of one machine may open at once. */
  private static final double BURST = 400;

  private static final double A_SECOND = 50;

  /** What a wrong token costs: a dozen in a row, then one in two seconds. */
  static final double WRONG_TOKEN = 100 / 3.0;

  /** The address that asked longest ago is forgotten; it had all it may again. */
  private static final int MOST_ADDRESSES = 1_000;

  private final LongSupplier nanos;
  private final Map<InetAddress, Purse> purses =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<InetAddress, Purse> eldest) {
          return size() > MOST_ADDRESSES;
        }
      };

  private record Purse(double left, long at) {}

  /**
   * @param nanos a clock that only goes on, nanoseconds
   */
  Rates(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /** Whether this address may ask once more; it is counted. */
  synchronized boolean allows(InetAddress address) {
    Purse purse = now(address);
    boolean enough = purse.left() >= 1;
    purses.put(address, enough ? new Purse(purse.left() - 1, purse.at()) : purse);
    return enough;
  }

  /** Somebody there guessed. */
  synchronized void guessed(InetAddress address) {
    Purse purse = now(address);
    purses.put(address, new Purse(Math.max(0, purse.left() - WRONG_TOKEN), purse.at()));
  }

  private Purse now(InetAddress address) {
    long at = nanos.getAsLong();
    Purse before = purses.getOrDefault(address, new Purse(BURST, at));
    return new Purse(Math.min(BURST, before.left() + A_SECOND * (at - before.at()) / 1e9), at);
  }
}
