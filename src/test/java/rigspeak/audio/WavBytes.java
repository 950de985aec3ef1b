package rigspeak.audio;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.function.IntToDoubleFunction;

/** Writes WAV files of every kind, by hand and apart from the code under test. */
final class WavBytes {
  private final int rate;
  private final int channels;
  private final int bits;
  private final int coding;
  private boolean extensible;
  private boolean withExtraChunk;

  WavBytes(int rate, int channels, int bits, boolean floating) {
    this.rate = rate;
    this.channels = channels;
    this.bits = bits;
    this.coding = floating ? 3 : 1;
  }

  private WavBytes(int coding) {
    this.rate = 16_000;
    this.channels = 1;
    this.bits = 8;
    this.coding = coding;
  }

  static WavBytes coded(int coding) {
    return new WavBytes(coding);
  }

  WavBytes extensible() {
    extensible = true;
    return this;
  }

  WavBytes withExtraChunk() {
    withExtraChunk = true;
    return this;
  }

  /** A file of so many frames; the signal's full scale is 1 and every channel has it. */
  byte[] file(int frames, IntToDoubleFunction signal) {
    byte[] data = data(frames, signal);
    return file(data, data.length);
  }

  /** A file whose header promises another length than its data has. */
  byte[] file(byte[] data, long promised) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] format = format();
    int extra = withExtraChunk ? 8 + 6 : 0;
    out.writeBytes(ascii("RIFF"));
    out.writeBytes(little(4, 4 + 8 + format.length + extra + 8 + promised));
    out.writeBytes(ascii("WAVE"));
    out.writeBytes(ascii("fmt "));
    out.writeBytes(little(4, format.length));
    out.writeBytes(format);
    if (withExtraChunk) {
      // An odd length is padded to an even one.
      out.writeBytes(ascii("LIST"));
      out.writeBytes(little(4, 5));
      out.writeBytes(new byte[6]);
    }
    out.writeBytes(ascii("data"));
    out.writeBytes(little(4, promised));
    out.writeBytes(data);
    return out.toByteArray();
  }

  byte[] data(int frames, IntToDoubleFunction signal) {
    ByteBuffer out =
        ByteBuffer.allocate(frames * channels * bits / 8).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < frames; i++) {
      for (int channel = 0; channel < channels; channel++) {
        put(out, signal.applyAsDouble(i));
      }
    }
    return out.array();
  }

  private void put(ByteBuffer out, double value) {
    if (coding == 3 && bits == 32) {
      out.putFloat((float) value);
    } else if (coding == 3) {
      out.putDouble(value);
    } else if (bits == 8) {
      out.put((byte) (128 + Math.round(value * 128)));
    } else {
      long whole = Math.round(value * ((1L << (bits - 1)) - 1));
      out.put(little(bits / 8, whole));
    }
  }

  private byte[] format() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(little(2, extensible ? 0xFFFE : coding));
    out.writeBytes(little(2, channels));
    out.writeBytes(little(4, rate));
    out.writeBytes(little(4, (long) rate * channels * bits / 8));
    out.writeBytes(little(2, channels * bits / 8));
    out.writeBytes(little(2, bits));
    if (extensible) {
      out.writeBytes(little(2, 22));
      out.writeBytes(little(2, bits));
      out.writeBytes(little(4, channels == 1 ? 4 : 3));
      out.writeBytes(little(2, coding));
      // The rest of the identifier that every sound format has.
      byte[] tail = {
        0, 0, 0, 0, 0x10, 0, (byte) 0x80, 0, 0, (byte) 0xAA, 0, 0x38, (byte) 0x9B, 0x71
      };
      out.writeBytes(tail);
    }
    return out.toByteArray();
  }

  private static byte[] little(int count, long value) {
    byte[] bytes = new byte[count];
    for (int i = 0; i < count; i++) {
      bytes[i] = (byte) (value >> (8 * i));
    }
    return bytes;
  }

  private static byte[] ascii(String word) {
    return word.getBytes(StandardCharsets.US_ASCII);
  }
}
