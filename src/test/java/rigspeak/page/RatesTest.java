package rigspeak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.UnknownHostException;
import org.junit.jupiter.api.Test;

/** How often somebody may ask; the clock stands still unless it is told. */
class RatesTest {
  private long seconds;
  private final Rates rates = new Rates(() -> seconds * 1_000_000_000L);

  private static InetAddress address(int last) throws UnknownHostException {
    return InetAddress.getByAddress(new byte[] {(byte) 192, 0, (byte) (last >> 8), (byte) last});
  }

  private int allowed(int address) throws UnknownHostException {
    int allowed = 0;
    while (allowed < 10_000 && rates.allows(address(address))) {
      allowed++;
    }
    return allowed;
  }

  @Test
  void fourHundredAtOnceThenFiftyASecond() throws UnknownHostException {
    assertEquals(400, allowed(1));
    seconds = 2;
    assertEquals(100, allowed(1));
    seconds = 1_000;
    assertEquals(400, allowed(1));
  }

  @Test
  void oneThatAsksTooOftenTakesNothingFromAnother() throws UnknownHostException {
    allowed(1);
    assertTrue(rates.allows(address(2)));
  }

  @Test
  void whoGuessesAtTheTokenMaySoonAskNothing() throws UnknownHostException {
    int guesses = 0;
    while (rates.allows(address(1))) {
      rates.guessed(address(1));
      guesses++;
    }
    assertTrue(guesses <= 12, guesses + " guesses");
    seconds = 60;
    assertTrue(rates.allows(address(1)));
  }

  /** However many addresses ask, no more than a thousand are remembered. */
  @Test
  void manyAddressesNeedNoMoreMemory() throws UnknownHostException {
    allowed(0);
    for (int i = 1; i <= 1_000; i++) {
      assertTrue(rates.allows(address(i)));
    }
    assertTrue(rates.allows(address(0)), "forgotten");
    assertFalse(allowed(1_000) > 400);
  }
}
