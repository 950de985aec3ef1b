package rigspeak.audio;

import java.util.List;

/** Where the tool's voice goes. */
public interface Loudspeaker extends AutoCloseable {
  /** What the line is called. */
  String name();

  /**
   * Plays a sound and waits until it has been played or {@link #hush} is called.
   *
   * @return when it ended, by the clock of {@link System#nanoTime}
   * @throws LostDevice if the line broke off; part of the sound may have been heard
   */
  default long play(Sound sound) throws LostDevice {
    return play(List.of(sound));
  }

  /**
   * Plays sounds without a gap between them, each asked for when the one before is nearly over, and
   * waits as above.
   *
   * @return when the last of them ended, by the clock of {@link System#nanoTime}
   * @throws LostDevice if the line broke off; some of it may have been heard
   */
  long play(Iterable<Sound> parts) throws LostDevice;

  /** Breaks off what is being played. May be called from another thread. */
  void hush();

  @Override
  void close();
}
