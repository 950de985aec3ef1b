package rigspeak.audio;

/**
 * Sound from a line that is live. It is shut while the tool speaks, so that the tool does not hear
 * itself; what was said into a shut microphone is lost, and {@link #read} waits meanwhile.
 */
public interface Microphone extends SoundStream {
  /** What the line is called. */
  String name();

  /** Lets no sound in from now on. */
  void shut();

  /**
   * Lets sound in again, from when what the loudspeaker played has died away: nothing from before
   * is heard, and everything from then on, also if this is called a little late.
   *
   * @param playedNanos when the loudspeaker ended, by the clock of {@link System#nanoTime}
   */
  void reopen(long playedNanos);
}
