package rigspeak.app;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import rigspeak.audio.Microphone;
import rigspeak.audio.Sound;
import rigspeak.audio.SoundStream;

/**
 * Recordings in place of a microphone: each time it is opened the next of them is heard, and
 * silence without end after it.
 */
final class PlayedMicrophone implements Microphone {
  private final Deque<Sound> recordings;
  private SoundStream now = Sound.silence(0).stream();

  PlayedMicrophone(List<Sound> recordings) {
    this.recordings = new ArrayDeque<>(recordings);
  }

  @Override
  public String name() {
    return "recordings";
  }

  @Override
  public int read(short[] into, int from, int most) throws IOException {
    int read = now.read(into, from, most);
    if (read != END) {
      return read;
    }
    Arrays.fill(into, from, from + most, (short) 0);
    return most;
  }

  @Override
  public void shut() {
    now = Sound.silence(0).stream();
  }

  @Override
  public void reopen(long playedNanos) {
    if (!recordings.isEmpty()) {
      now = recordings.remove().stream();
    }
  }

  @Override
  public void close() {
    // There is no device.
  }
}
