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
   * Lets sound in again as soon as what the loudspeaker played until this moment has died away;
   * nothing from before is heard.
   */
  void reopen();
}
