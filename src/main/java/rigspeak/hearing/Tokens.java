package rigspeak.hearing;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Words and numbers between blanks, with comments from # to the end of the line. */
final class Tokens implements Closeable {
  private final InputStream in;
  private final byte[] buffer = new byte[1 << 16];
  private int filled;
  private int at;
  private byte[] token = new byte[16];
  private int length;

  Tokens(InputStream in) {
    this.in = in;
  }

  /** The next word. */
  String next() throws IOException {
    advance();
    return new String(token, 0, length, StandardCharsets.US_ASCII);
  }

  /** Passes over a word that has to be there. */
  void expect(String word) throws IOException {
    advance();
    if (!is(word)) {
      throw new IOException("expected " + word);
    }
  }

  /** A number and what it counts. */
  int counted(String what) throws IOException {
    int number = number();
    expect(what);
    return number;
  }

  /** The next number, which is not negative. */
  int number() throws IOException {
    advance();
    int number = 0;
    for (int i = 0; i < length; i++) {
      if (token[i] < '0' || token[i] > '9') {
        throw new IOException("expected a number");
      }
      number = 10 * number + token[i] - '0';
    }
    return number;
  }

  /** Which of these words comes next. */
  int nextOf(List<String> words) throws IOException {
    advance();
    for (int i = 0; i < words.size(); i++) {
      if (is(words.get(i))) {
        return i;
      }
    }
    throw new IOException("expected one of " + words);
  }

  private boolean is(String word) {
    if (word.length() != length) {
      return false;
    }
    for (int i = 0; i < length; i++) {
      if (word.charAt(i) != token[i]) {
        return false;
      }
    }
    return true;
  }

  private void advance() throws IOException {
    int c = read();
    while (c <= ' ' || c == '#') {
      if (c == '#') {
        do {
          c = read();
        } while (c != '\n');
      }
      c = read();
    }
    length = 0;
    while (c > ' ') {
      if (length == token.length) {
        token = Arrays.copyOf(token, 2 * length);
      }
      token[length++] = (byte) c;
      c = read();
    }
  }

  private int read() throws IOException {
    if (at == filled) {
      filled = in.read(buffer);
      at = 0;
      if (filled <= 0) {
        throw new EOFException("it ends too early");
      }
    }
    return buffer[at++];
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
