package rigspeak.audio;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A microphone and a loudspeaker without any device: what is said into it is heard from it, what is
 * played on it is kept.
 */
public final class VirtualLine implements Microphone, Loudspeaker {
  private final String name;
  private final Deque<Sound> waiting = new ArrayDeque<>();
  private final List<Sound> played = new ArrayList<>();
  private int at;
  private boolean shut;
  private boolean ended;
  private boolean lost;

  public VirtualLine(String name) {
    this.name = name;
  }

  @Override
  public String name() {
    return name;
  }

  /** Says something into the microphone; lost if it is shut. */
  public synchronized void say(Sound sound) {
    if (!shut && !ended && sound.length() > 0) {
      waiting.add(sound);
      notifyAll();
    }
  }

  /** Nothing more will be said. */
  public synchronized void end() {
    ended = true;
    notifyAll();
  }

  /** As if its plug were pulled. */
  public synchronized void lose() {
    lost = true;
    notifyAll();
  }

  @Override
  public synchronized int read(short[] into, int from, int most) throws LostDevice {
    while (waiting.isEmpty()) {
      if (lost) {
        throw new LostDevice("The microphone " + name + " is gone.");
      }
      if (ended) {
        return END;
      }
      try {
        wait();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return END;
      }
    }
    Sound sound = waiting.peek();
    int count = Math.min(most, sound.length() - at);
    for (int i = 0; i < count; i++) {
      into[from + i] = sound.sample(at + i);
    }
    at += count;
    if (at == sound.length()) {
      waiting.remove();
      at = 0;
    }
    return count;
  }

  @Override
  public synchronized void shut() {
    shut = true;
    waiting.clear();
    at = 0;
  }

  @Override
  public synchronized void reopen(long playedNanos) {
    shut = false;
  }

  @Override
  public synchronized long play(Iterable<Sound> parts) throws LostDevice {
    if (lost) {
      throw new LostDevice("The loudspeaker " + name + " is gone.");
    }
    List<Sound> whole = new ArrayList<>();
    parts.forEach(whole::add);
    played.add(Sound.joined(whole));
    notifyAll();
    return System.nanoTime();
  }

  @Override
  public void hush() {
    // What is played here takes no time.
  }

  /** Everything that has been played, in order. */
  public synchronized List<Sound> played() {
    return List.copyOf(played);
  }

  @Override
  public void close() {
    end();
  }
}
