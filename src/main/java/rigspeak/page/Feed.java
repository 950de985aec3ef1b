package rigspeak.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rigspeak.quantity.UnitSystem;

/**
 * The latest board, in both systems of units, ready to be sent. Whoever looks waits here for a
 * newer one; it is made once, however many look.
 */
public final class Feed {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().setPropertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE);

  private final UnitSystem usual;
  private Map<UnitSystem, ByteBuffer> events = Map.of();
  private long version;
  private boolean closed;

  /**
   * One without a board yet.
   *
   * @param usual the units for whoever does not ask for others
   */
  public Feed(UnitSystem usual) {
    this.usual = usual;
  }

  UnitSystem usual() {
    return usual;
  }

  /**
   * Puts a new board in the place of the last one.
   *
   * @param board the same moment in either system of units
   */
  public void publish(Function<UnitSystem, Board> board) {
    Map<UnitSystem, ByteBuffer> made = new EnumMap<>(UnitSystem.class);
    for (UnitSystem units : UnitSystem.values()) {
      made.put(units, event(board.apply(units)));
    }
    synchronized (this) {
      events = Collections.unmodifiableMap(made);
      version++;
      notifyAll();
    }
  }

  private static ByteBuffer event(Board board) {
    try {
      // JSON of one line has no line break in it, so it is one line of the event too.
      String data = MAPPER.writeValueAsString(board);
      String event = "event: board\ndata: " + data + "\n\n";
      return ByteBuffer.wrap(event.getBytes(StandardCharsets.UTF_8)).asReadOnlyBuffer();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a board can always be written", e);
    }
  }

  /** A board and how many came before it. */
  record Numbered(long version, ByteBuffer event) {}

  /**
   * Waits for a board newer than the one of this version, for some time.
   *
   * @return nothing if none came
   */
  synchronized Optional<Numbered> after(long seen, UnitSystem units, long patienceMillis)
      throws InterruptedException {
    long end = System.nanoTime() + 1_000_000 * patienceMillis;
    while (version <= seen && !closed) {
      long left = (end - System.nanoTime()) / 1_000_000;
      if (left <= 0) {
        return Optional.empty();
      }
      wait(left);
    }
    return closed ? Optional.empty() : Optional.of(new Numbered(version, events.get(units)));
  }

  synchronized boolean isClosed() {
    return closed;
  }

  /** Lets everybody go. */
  synchronized void close() {
    closed = true;
    notifyAll();
  }
}
