package rigspeak.hearing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * A file of numbers in the form of Sphinx3: a few words, then integers and numbers of 32 bits with
 * a checksum over them.
 */
final class NumberFile {
  private static final int RIGHT_ORDER = 0x11223344;
  private static final byte[] HEADER_ENDS = "endhdr\n".getBytes(StandardCharsets.US_ASCII);

  private final ByteBuffer bytes;
  private long sum;

  private NumberFile(ByteBuffer bytes) {
    this.bytes = bytes;
  }

  /**
   * Reads it whole and closes the stream.
   *
   * @throws IOException if it is in another form
   */
  static NumberFile read(InputStream file) throws IOException {
    try (file) {
      byte[] all = file.readAllBytes();
      int at = 0;
      while (!endsHeader(all, at)) {
        at++;
      }
      NumberFile numbers = new NumberFile(ByteBuffer.wrap(all).position(at + HEADER_ENDS.length));
      if (numbers.next() != RIGHT_ORDER) {
        numbers.bytes.order(ByteOrder.LITTLE_ENDIAN);
      }
      return numbers;
    }
  }

  private static boolean endsHeader(byte[] all, int at) throws IOException {
    if (at + HEADER_ENDS.length > all.length) {
      throw new IOException("it has no header");
    }
    for (int i = 0; i < HEADER_ENDS.length; i++) {
      if (all[at + i] != HEADER_ENDS[i]) {
        return false;
      }
    }
    return true;
  }

  private int next() throws IOException {
    if (bytes.remaining() < Integer.BYTES) {
      throw new IOException("it ends too early");
    }
    return bytes.getInt();
  }

  int integer() throws IOException {
    int value = next();
    sum = ((sum << 20 | sum >> 12) + value) & 0xFFFFFFFFL;
    return value;
  }

  void floats(float[] into) throws IOException {
    for (int i = 0; i < into.length; i++) {
      into[i] = Float.intBitsToFloat(integer());
    }
  }

  /**
   * Compares the checksum.
   *
   * @throws IOException if the file is damaged
   */
  void end() throws IOException {
    if (next() != (int) sum) {
      throw new IOException("it is damaged");
    }
  }
}
