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

  /** Lets sound in again; nothing from before this moment is heard. */
  void reopen();
}
