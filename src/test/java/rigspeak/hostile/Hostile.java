package rigspeak.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Hostile input made of real input: a seed always makes the same bytes. */
public final class Hostile {
  private static final int LONGEST = 1 << 20;

  /** What programs stumble over. */
  private static final List<byte[]> PIECES =
      List.of(
          utf8("\0"),
          utf8("\0\0\0\0\0\0\0\0"),
          utf8("\n"),
          utf8("\r"),
          utf8("\r\n\r\n"),
          utf8("\u2028"),
          utf8("\u0085"),
          utf8("\uFEFF"),
          utf8("\u202Egood to load"),
          utf8("\u0660\u0661\u0662"),
          utf8("\u00BD \u00B2 \u2167"),
          utf8("\u0130\u0131\u1E9E\uFB00"),
          utf8("e\u0301\u0301\u0301\u0301"),
          utf8("\uD83C\uDF33"),
          new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80},
          new byte[] {(byte) 0xC0, (byte) 0xAE, (byte) 0xFF, (byte) 0xFE},
          utf8("-"),
          utf8("-0"),
          utf8("1e999"),
          utf8("NaN"),
          utf8("Infinity"),
          utf8("0x7fffffff"),
          utf8("99999999999999999999999999999999999999999999"),
          utf8("4294967296"),
          utf8("-2147483649"),
          utf8("0.000000000000000000000000000000000000001"),
          utf8("1,5"),
          utf8("one one one one one one one one"),
          utf8("((((((((((((((((((((((((((((((("),
          utf8("[[[[[[[[[[[[[[[["),
          utf8("{{{}}}"),
          utf8("<<>><a><a>"),
          utf8("\"\"\"\"\"\""),
          utf8("../../../../"),
          utf8("%2e%2e%2f%00"),
          utf8("${jndi:x}%s%n%x{0}"),
          utf8("<script>alert(1)</script>"),
          utf8("/* /* */ // */"),
          utf8("affirm"),
          utf8("check redirect"),
          utf8("good to load"));

  private final List<byte[]> corpus;

  /**
   * @param corpus real input, at least one
   */
  public Hostile(List<byte[]> corpus) {
    this.corpus = List.copyOf(corpus);
  }

  /** The same of texts. */
  public static Hostile ofTexts(List<String> corpus) {
    return new Hostile(corpus.stream().map(Hostile::utf8).toList());
  }

  /** The same of files. */
  public static Hostile ofFiles(List<Path> files) {
    return new Hostile(files.stream().map(Hostile::bytes).toList());
  }

  /** One input: a real one, changed in one to eight places. */
  public byte[] input(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes = any(random);
    int changes = 1 + random.nextInt(8);
    for (int i = 0; i < changes && bytes.length < LONGEST; i++) {
      bytes = changed(bytes, random);
    }
    return Arrays.copyOf(bytes, Math.min(bytes.length, LONGEST));
  }

  /** The same as text; what is no UTF-8 becomes the sign that stands for it. */
  public String text(long seed) {
    return new String(input(seed), StandardCharsets.UTF_8);
  }

  private byte[] any(SplittableRandom random) {
    return corpus.get(random.nextInt(corpus.size()));
  }

  private byte[] changed(byte[] bytes, SplittableRandom random) {
    int from = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, from + length(random));
    return switch (random.nextInt(14)) {
      case 0, 1 -> flipped(bytes, random);
      case 2 -> Arrays.copyOf(bytes, from);
      case 3 -> joined(bytes, from, new byte[0], to);
      case 4 -> joined(bytes, to, Arrays.copyOfRange(bytes, from, to), to);
      case 5 -> joined(bytes, from, again(Arrays.copyOfRange(bytes, from, to), random), to);
      case 6 -> spliced(bytes, from, random);
      case 7, 8 -> joined(bytes, from, PIECES.get(random.nextInt(PIECES.size())), from);
      case 9 -> joined(bytes, from, again(PIECES.get(random.nextInt(PIECES.size())), random), to);
      case 10 -> swapped(bytes, random);
      case 11 -> noise(bytes, from, random);
      case 12 -> number(bytes, from, random);
      default -> otherCase(bytes, random);
    };
  }

  private static int length(SplittableRandom random) {
    return 1 << random.nextInt(10);
  }

  private static byte[] flipped(byte[] bytes, SplittableRandom random) {
    byte[] other = bytes.clone();
    for (int i = 0; i < 1 + random.nextInt(4) && other.length > 0; i++) {
      other[random.nextInt(other.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return other;
  }

  /** Up to a hundred kilobytes of the same. */
  private static byte[] again(byte[] piece, SplittableRandom random) {
    int times = Math.min(1 << random.nextInt(14), 100_000 / Math.max(1, piece.length));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < times; i++) {
      out.writeBytes(piece);
    }
    return out.toByteArray();
  }

  private byte[] spliced(byte[] bytes, int from, SplittableRandom random) {
    byte[] other = any(random);
    return joined(bytes, from, other, bytes.length, random.nextInt(other.length + 1));
  }

  /** Two lines change places. */
  private static byte[] swapped(byte[] bytes, SplittableRandom random) {
    String[] lines = new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1);
    int one = random.nextInt(lines.length);
    int other = random.nextInt(lines.length);
    String line = lines[one];
    lines[one] = lines[other];
    lines[other] = line;
    return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] noise(byte[] bytes, int from, SplittableRandom random) {
    byte[] noise = new byte[length(random)];
    random.nextBytes(noise);
    return joined(bytes, from, noise, Math.min(bytes.length, from + noise.length));
  }

  /** Two or four bytes become a number at the edge of what they can hold, the low byte first. */
  private static byte[] number(byte[] bytes, int from, SplittableRandom random) {
    long[] edges = {0, 1, 2, 0x7F, 0xFF, 0x7FFF, 0x8000, 0xFFFF, 0x7FFFFFFF, 0x80000000L, -1, -8};
    long edge = edges[random.nextInt(edges.length)];
    byte[] other = bytes.clone();
    for (int i = 0; i < (random.nextBoolean() ? 2 : 4) && from + i < other.length; i++) {
      other[from + i] = (byte) (edge >> (8 * i));
    }
    return other;
  }

  private static byte[] otherCase(byte[] bytes, SplittableRandom random) {
    byte[] other = bytes.clone();
    for (int i = 0; i < other.length; i++) {
      if (Character.isLetter(other[i]) && random.nextInt(4) == 0) {
        other[i] ^= 0x20;
      }
    }
    return other;
  }

  private static byte[] joined(byte[] bytes, int end, byte[] middle, int begin) {
    return joined(bytes, end, middle, begin, 0);
  }

  private static byte[] joined(byte[] bytes, int end, byte[] middle, int begin, int middleFrom) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, end);
    out.write(middle, middleFrom, middle.length - middleFrom);
    out.write(bytes, begin, bytes.length - begin);
    return out.toByteArray();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
