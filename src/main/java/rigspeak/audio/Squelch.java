package rigspeak.audio;

import java.util.Optional;

/**
 * Tells from the level of a line whether somebody is on the air. It opens after a few loud frames,
 * so that a click does not open it, and closes after a longer quiet, so that a pause between two
 * words does not close it.
 */
public final class Squelch {
  /** Samples in a frame: 10 ms. */
  public static final int FRAME = Sound.RATE / 100;

  private static final int FRAMES_TO_OPEN = 3;
  private static final int FRAMES_TO_CLOSE = 25;

  /** So far below the level that opens it must the line fall. */
  private static final double HYSTERESIS_DECIBELS = 6;

  private final double openDecibels;
  private boolean open;
  private int inARow;

  /** Which way it went. */
  public enum Change {
    BECAME_BUSY,
    BECAME_CLEAR
  }

  /**
   * One that is closed.
   *
   * @param openDecibels the level above which somebody speaks, dB below full scale (negative)
   */
  public Squelch(double openDecibels) {
    if (!(openDecibels > Meter.NO_SOUND && openDecibels < 0)) {
      throw new IllegalArgumentException("no level of a voice: " + openDecibels);
    }
    this.openDecibels = openDecibels;
  }

  /** Takes the next frame. */
  public Optional<Change> take(short[] frame) {
    Meter meter = new Meter();
    meter.add(frame, 0, frame.length);
    double level = meter.level().meanDecibels();
    boolean against = open ? level < openDecibels - HYSTERESIS_DECIBELS : level >= openDecibels;
    inARow = against ? inARow + 1 : 0;
    if (inARow < (open ? FRAMES_TO_CLOSE : FRAMES_TO_OPEN)) {
      return Optional.empty();
    }
    inARow = 0;
    open = !open;
    return Optional.of(open ? Change.BECAME_BUSY : Change.BECAME_CLEAR);
  }

  public boolean isOpen() {
    return open;
  }
}
