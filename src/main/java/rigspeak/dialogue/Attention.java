package rigspeak.dialogue;

import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;

/**
 * Whether anything but the call is listened for. Asleep, nothing else is; called, everything that
 * can be said is taken until a moment of the sound stream, and each exchange puts that moment off.
 *
 * <p>Times are seconds of sound since the stream began, never the clock's: a recording is heard as
 * the live line was.
 *
 * @param windowSeconds how long it listens after an exchange; infinite if it never sleeps
 * @param untilSeconds until when it listens; {@link #ASLEEP} while it does not
 */
public record Attention(double windowSeconds, double untilSeconds) {
  /** So much longer is an answer waited for. */
  private static final double FOR_AN_ANSWER = 3;

  private static final double ASLEEP = Double.NEGATIVE_INFINITY;

  public Attention {
    if (!(windowSeconds > 0) || Double.isNaN(untilSeconds)) {
      throw new IllegalArgumentException("no time to be heard in: " + windowSeconds);
    }
  }

  /** Everything is heard at any time; no call is needed. */
  public static Attention alwaysOpen() {
    return new Attention(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** Waits for the call. */
  public static Attention asleep(double windowSeconds) {
    return new Attention(windowSeconds, ASLEEP);
  }

  /** Whether it ever does; then silence is nothing to remark on unless an answer is waited for. */
  public boolean sleeps() {
    return !Double.isInfinite(windowSeconds);
  }

  public boolean isAsleep() {
    return untilSeconds == ASLEEP;
  }

  /** How long somebody may still begin to speak, seconds; none while it sleeps. */
  public double leftSeconds(double now) {
    return Math.max(0, untilSeconds - now);
  }

  /**
   * As it is after an exchange.
   *
   * <p>What was understood opens the window anew, and longer where an answer is waited for. So does
   * what was not, since it is asked for again; the ladder of those questions ends in standing by.
   * Silence and noise open nothing, or it would never close.
   *
   * @param meaning what was said
   * @param turn what came of it
   * @param now when that was
   */
  public Attention after(Meaning meaning, Turn turn, double now) {
    if (isStandingBy(meaning, turn)) {
      return asleepUnlessAlwaysOpen();
    }
    return opensAnew(meaning) ? openAt(now, turn.next()) : at(now);
  }

  /** As it is when the time has come this far. */
  public Attention at(double now) {
    return now >= untilSeconds ? asleepUnlessAlwaysOpen() : this;
  }

  /**
   * The same in a stream that follows, whose time begins again.
   *
   * @param pastSeconds how long the stream was that has ended
   */
  public Attention afterStream(double pastSeconds) {
    return new Attention(windowSeconds, untilSeconds - pastSeconds);
  }

  private Attention openAt(double now, Conversation next) {
    double window = next.waitsForAnswer() ? FOR_AN_ANSWER * windowSeconds : windowSeconds;
    return new Attention(windowSeconds, now + window);
  }

  private Attention asleepUnlessAlwaysOpen() {
    return sleeps() ? asleep(windowSeconds) : this;
  }

  private static boolean opensAnew(Meaning meaning) {
    if (meaning instanceof Meaning.NotUnderstood missed) {
      return missed.reason() != Meaning.Reason.NOTHING_SAID;
    }
    return !(meaning instanceof Meaning.CannotHear);
  }

  private static boolean isStandingBy(Meaning meaning, Turn turn) {
    return meaning == Command.STAND_BY
        || turn.replies().stream()
            .anyMatch(
                reply ->
                    (reply instanceof Reply.Again again && again.rung() == Reply.Rung.STAND_BY)
                        || (reply instanceof Reply.Silent silent
                            && silent.rung() == Reply.Rung.STAND_BY));
  }
}
