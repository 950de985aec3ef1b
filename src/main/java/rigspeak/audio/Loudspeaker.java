package rigspeak.audio;

/** Where the tool's voice goes. */
public interface Loudspeaker extends AutoCloseable {
  /** What the line is called. */
  String name();

  /**
   * Plays a sound and waits until it has been played or {@link #hush} is called.
   *
   * @throws LostDevice if the line broke off; part of the sound may have been heard
   */
  void play(Sound sound) throws LostDevice;

  /** Breaks off what is being played. May be called from another thread. */
  void hush();

  @Override
  void close();
}
