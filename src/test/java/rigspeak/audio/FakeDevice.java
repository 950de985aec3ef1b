package rigspeak.audio;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.TargetDataLine;

/**
 * A sound device that says of every form that it supports it, and opens few. As a microphone it
 * gives a tone; as a loudspeaker it keeps what is played.
 */
final class FakeDevice {
  static final double TONE_HERTZ = 1000;
  static final double TONE_LOUDNESS = 10_000;

  /** Frames in the device's own buffer. */
  static final int BUFFER = 100;

  private final Mixer.Info info;
  private final Class<?> kind;
  private final Predicate<AudioFormat> opens;
  private final List<String> tried = new ArrayList<>();
  private final ByteArrayOutputStream played = new ByteArrayOutputStream();
  private AudioFormat form;
  private long openedNanos;
  private final AtomicLong framesGiven = new AtomicLong();
  private volatile boolean muted;
  private volatile boolean pulled;

  private FakeDevice(String name, Class<?> kind, Predicate<AudioFormat> opens) {
    this.info = new Mixer.Info(name, "tests", "a device of the tests", "1") {};
    this.kind = kind;
    this.opens = opens;
  }

  static FakeDevice microphone(String name, Predicate<AudioFormat> opens) {
    return new FakeDevice(name, TargetDataLine.class, opens);
  }

  static FakeDevice loudspeaker(String name, Predicate<AudioFormat> opens) {
    return new FakeDevice(name, SourceDataLine.class, opens);
  }

  Mixer.Info info() {
    return info;
  }

  /** Every form that was tried, such as "48000 2". */
  List<String> tried() {
    return tried;
  }

  /** All samples that were played, low byte first. */
  byte[] played() {
    return played.toByteArray();
  }

  /** Pulls its plug: it says that there is sound and gives none, has room and takes nothing. */
  void pull() {
    pulled = true;
  }

  /** Waits until so many more frames have been taken from it. */
  void awaitGiven(int frames) {
    long wanted = framesGiven.get() + frames;
    while (framesGiven.get() < wanted) {
      Thread.onSpinWait();
    }
  }

  /** Gives silence from now on. */
  void mute() {
    muted = true;
  }

  Mixer mixer() {
    return proxy(
        Mixer.class,
        (self, method, arguments) ->
            switch (method.getName()) {
              case "getMixerInfo" -> info;
              case "isLineSupported" ->
                  ((javax.sound.sampled.Line.Info) arguments[0]).getLineClass().equals(kind);
              case "getLine" -> line();
              default -> throw new UnsupportedOperationException(method.toString());
            });
  }

  private Object line() {
    return proxy(
        kind,
        (self, method, arguments) ->
            switch (method.getName()) {
              case "open" -> open((AudioFormat) arguments[0]);
              case "getFormat" -> form;
              case "getBufferSize" -> BUFFER * form.getFrameSize();
              case "available" -> available();
              case "read" -> read((byte[]) arguments[0], (int) arguments[2]);
              case "write" -> write((byte[]) arguments[0], (int) arguments[1], (int) arguments[2]);
              case "start", "stop", "flush", "close" -> null;
              default -> throw new UnsupportedOperationException(method.toString());
            });
  }

  private Object open(AudioFormat wanted) throws LineUnavailableException {
    tried.add((int) wanted.getSampleRate() + " " + wanted.getChannels());
    if (opens.test(wanted)) {
      form = wanted;
      openedNanos = System.nanoTime();
      framesGiven.set(0);
      return null;
    }
    // Both are seen: the one where another program has the device, the other where it lied.
    if (wanted.getSampleRate() == 48_000) {
      throw new LineUnavailableException("taken");
    }
    throw new IllegalArgumentException("no such form");
  }

  /** A microphone gives sound as fast as time goes by; a loudspeaker always has room. */
  private int available() {
    int frames = BUFFER;
    if (kind == TargetDataLine.class && !pulled) {
      double seconds = (System.nanoTime() - openedNanos) / 1e9;
      frames = (int) Math.min(frames, (long) (seconds * form.getSampleRate()) - framesGiven.get());
    }
    return frames * form.getFrameSize();
  }

  private int read(byte[] into, int count) {
    if (pulled) {
      return 0;
    }
    int channels = form.getChannels();
    for (int at = 0; at < count; at += 2 * channels) {
      double phase =
          2 * Math.PI * TONE_HERTZ * framesGiven.getAndIncrement() / form.getSampleRate();
      int step = muted ? 0 : (int) Math.round(TONE_LOUDNESS * Math.sin(phase));
      for (int channel = 0; channel < channels; channel++) {
        into[at + 2 * channel] = (byte) step;
        into[at + 2 * channel + 1] = (byte) (step >> 8);
      }
    }
    return count;
  }

  private int write(byte[] from, int offset, int count) {
    if (pulled) {
      return 0;
    }
    played.write(from, offset, count);
    return count;
  }

  private static <T> T proxy(Class<T> type, InvocationHandler handler) {
    return type.cast(
        Proxy.newProxyInstance(FakeDevice.class.getClassLoader(), new Class<?>[] {type}, handler));
  }
}
