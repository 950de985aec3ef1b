package rigspeak.audio;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A WAV file, read as it is needed and turned into the tool's own form of sound.
 *
 * <p>Taken: uncompressed samples of 8, 16, 24 or 32 bits or floating point of 32 or 64 bits, 8,000
 * to 48,000 samples a second, one to eight channels (their mean is used), the plain and the
 * extensible header. A file that breaks off is read as far as it goes, and {@link #remark} says so.
 */
public final class WavFile implements SoundStream {
  private static final int SLOWEST = 8_000;
  private static final int FASTEST = 48_000;
  private static final int MOST_CHANNELS = 8;
  private static final int FRAMES_AT_ONCE = 1024;
  private static final int PCM = 1;
  private static final int FLOAT = 3;
  private static final int EXTENSIBLE = 0xFFFE;

  /** A writer that did not know the length in advance leaves a number as large as this. */
  private static final long UNKNOWN_LENGTH = 0x7FFF_0000L;

  private final String name;
  private final InputStream in;
  private final WavForm form;
  private final long promised;
  private final Resampler resampler;
  private long taken;
  private short[] ready = new short[0];
  private int readyFrom;
  private boolean atEnd;
  private boolean brokeOff;

  private WavFile(String name, InputStream in, WavForm form, long promised) {
    this.name = name;
    this.in = in;
    this.form = form;
    this.promised = promised;
    this.resampler = Resampler.between(form.rate(), Sound.RATE);
  }

  /**
   * Opens a file and reads its header.
   *
   * @throws UnreadableSound if it is not a WAV file that can be heard
   */
  public static WavFile open(Path file) throws UnreadableSound {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.isDirectory(file)) {
        throw new UnreadableSound(name + " is a folder, not a sound file.");
      }
      return open(name, Files.newInputStream(file));
    } catch (NoSuchFileException e) {
      throw new UnreadableSound("There is no file " + file + ".", e);
    } catch (UnreadableSound e) {
      throw e;
    } catch (IOException e) {
      throw new UnreadableSound(name + " cannot be read.", e);
    }
  }

  /**
   * Reads the header of a WAV file that comes as a stream; it is closed with the sound.
   *
   * @param name what to call it in messages
   * @throws UnreadableSound if it is not a WAV file that can be heard
   */
  public static WavFile open(String name, InputStream bytes) throws UnreadableSound {
    InputStream in = new BufferedInputStream(bytes, 1 << 16);
    try {
      WavFile file = header(name, in);
      if (file.fill()) {
        return file;
      }
      throw new UnreadableSound(name + " has a header but no sound in it.");
    } catch (IOException e) {
      closeQuietly(in);
      throw e instanceof UnreadableSound u ? u : new UnreadableSound(name + " cannot be read.", e);
    }
  }

  /** The whole of a short file. */
  public static Sound read(Path file) throws IOException {
    try (WavFile wav = open(file)) {
      return Sound.readAll(wav);
    }
  }

  /** Writes a sound as a WAV file: 16-bit, one channel, {@value Sound#RATE} samples a second. */
  public static void write(Path file, Sound sound) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      out.write(bytes(sound));
    }
  }

  /** A sound as the bytes of a WAV file. */
  public static byte[] bytes(Sound sound) {
    int dataLength = 2 * sound.length();
    ByteBuffer out = ByteBuffer.allocate(44 + dataLength).order(ByteOrder.LITTLE_ENDIAN);
    out.put(ascii("RIFF")).putInt(36 + dataLength).put(ascii("WAVE"));
    out.put(ascii("fmt ")).putInt(16).putShort((short) PCM).putShort((short) 1);
    out.putInt(Sound.RATE).putInt(2 * Sound.RATE).putShort((short) 2).putShort((short) 16);
    out.put(ascii("data")).putInt(dataLength);
    for (int i = 0; i < sound.length(); i++) {
      out.putShort(sound.sample(i));
    }
    return out.array();
  }

  /** What the listener should know about the file; complete only when all of it has been read. */
  public Optional<String> remark() {
    if (!brokeOff) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            java.util.Locale.ROOT,
            "%s breaks off: its header promises %.1f seconds, %.1f are there.",
            name,
            seconds(promised),
            seconds(taken)));
  }

  @Override
  public int read(short[] into, int from, int most) throws IOException {
    while (readyFrom == ready.length) {
      if (!fill()) {
        return END;
      }
    }
    int count = Math.min(most, ready.length - readyFrom);
    System.arraycopy(ready, readyFrom, into, from, count);
    readyFrom += count;
    return count;
  }

  @Override
  public void close() {
    closeQuietly(in);
  }

  /** Makes more samples ready; false if there are none. */
  private boolean fill() throws IOException {
    while (!atEnd) {
      int frameLength = form.bytesPerFrame();
      long wanted = Math.min(promised - taken, (long) FRAMES_AT_ONCE * frameLength);
      byte[] bytes;
      try {
        bytes = in.readNBytes((int) wanted);
      } catch (IOException e) {
        throw new UnreadableSound(name + " could not be read to its end.", e);
      }
      taken += bytes.length;
      atEnd = bytes.length < wanted || taken == promised;
      brokeOff = bytes.length < wanted && promised < UNKNOWN_LENGTH;
      int frames = bytes.length / frameLength;
      double[] values = new double[frames];
      for (int i = 0; i < frames; i++) {
        values[i] = form.frame(bytes, i * frameLength);
      }
      short[] first = rounded(resampler.push(values, frames));
      short[] last = atEnd ? rounded(resampler.flush()) : new short[0];
      ready = java.util.Arrays.copyOf(first, first.length + last.length);
      System.arraycopy(last, 0, ready, first.length, last.length);
      readyFrom = 0;
      if (ready.length > 0) {
        return true;
      }
    }
    return false;
  }

  private double seconds(long bytes) {
    return bytes / (double) form.bytesPerFrame() / form.rate();
  }

  private static WavFile header(String name, InputStream in) throws IOException {
    byte[] start = in.readNBytes(12);
    if (start.length == 0) {
      throw new UnreadableSound(name + " is empty.");
    }
    boolean riff = start.length >= 4 && is(start, 0, "RIFF");
    if (!riff || (start.length == 12 && !is(start, 8, "WAVE"))) {
      throw new UnreadableSound(name + " is not a WAV file.");
    }
    WavForm form = null;
    while (true) {
      byte[] chunk = in.readNBytes(8);
      if (start.length < 12 || chunk.length < 8) {
        throw new UnreadableSound(name + " breaks off before its sound begins.");
      }
      long length = WavForm.little(chunk, 4, 4);
      if (is(chunk, 0, "data")) {
        if (form == null) {
          throw new UnreadableSound(name + " does not say how its sound is written.");
        }
        long whole = length - length % form.bytesPerFrame();
        return new WavFile(name, in, form, length >= UNKNOWN_LENGTH ? Long.MAX_VALUE : whole);
      }
      long padded = length + (length & 1);
      if (is(chunk, 0, "fmt ")) {
        byte[] body = in.readNBytes((int) Math.min(padded, 1024));
        if (body.length < 16) {
          throw new UnreadableSound(name + " breaks off before its sound begins.");
        }
        form = form(name, body);
        padded -= body.length;
      }
      skip(in, padded);
    }
  }

  private static WavForm form(String name, byte[] body) throws UnreadableSound {
    int coding = (int) WavForm.little(body, 0, 2);
    if (coding == EXTENSIBLE && body.length >= 26) {
      coding = (int) WavForm.little(body, 24, 2);
    }
    int channels = (int) WavForm.little(body, 2, 2);
    long rate = WavForm.little(body, 4, 4);
    int bits = (int) WavForm.little(body, 14, 2);
    boolean known =
        switch (coding) {
          case PCM -> bits == 8 || bits == 16 || bits == 24 || bits == 32;
          case FLOAT -> bits == 32 || bits == 64;
          default -> false;
        };
    if (!known) {
      throw new UnreadableSound(
          name
              + " is written in a way that is not understood here (coding "
              + coding
              + ", "
              + bits
              + " bits); save it as a 16-bit WAV file.");
    }
    if (channels < 1 || channels > MOST_CHANNELS) {
      throw new UnreadableSound(name + " has " + channels + " channels; one or two are needed.");
    }
    if (rate < SLOWEST || rate > FASTEST) {
      throw new UnreadableSound(
          name
              + " has "
              + rate
              + " samples a second; between "
              + SLOWEST
              + " and "
              + FASTEST
              + " are needed.");
    }
    return new WavForm((int) rate, channels, bits, coding == FLOAT);
  }

  private static void skip(InputStream in, long bytes) throws IOException {
    long left = bytes;
    while (left > 0) {
      int read = in.readNBytes((int) Math.min(left, 1 << 16)).length;
      if (read == 0) {
        return;
      }
      left -= read;
    }
  }

  private static short[] rounded(double[] values) {
    short[] samples = new short[values.length];
    for (int i = 0; i < values.length; i++) {
      long whole = Math.round(values[i]);
      samples[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, whole));
    }
    return samples;
  }

  private static boolean is(byte[] bytes, int at, String word) {
    return new String(bytes, at, 4, StandardCharsets.ISO_8859_1).equals(word);
  }

  private static byte[] ascii(String word) {
    return word.getBytes(StandardCharsets.US_ASCII);
  }

  private static void closeQuietly(InputStream in) {
    try {
      in.close();
    } catch (IOException e) {
      // Nothing was written, so nothing is lost.
    }
  }
}
