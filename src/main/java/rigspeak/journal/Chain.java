package rigspeak.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * What makes a changed line seen: each line ends with a sum (SHA-256, FIPS 180-4) over itself and
 * the sum of the line before.
 *
 * <p>It shows what was changed by accident or by hand. Whoever changes a line and works out all
 * sums after it anew is not found, unless the last sum was written down elsewhere.
 */
final class Chain {
  /** Stands before the first line of a crew's first file. */
  static final String BEGINNING = "0".repeat(64);

  private static final String SEAL = ",\"sum\":\"";
  private static final String END = "\"}";
  private static final int SUM_DIGITS = 64;

  private Chain() {}

  /** A line with its sum; {@code object} is a JSON object on one line. */
  static String sealed(String object, String before) {
    String open = object.substring(0, object.length() - 1);
    return open + SEAL + sum(open, before) + END;
  }

  /** The sum that a line ends with, if it is the right one after the line before. */
  static Optional<String> sum(byte[] line, String before) {
    String text = new String(line, StandardCharsets.UTF_8);
    int open = text.length() - SEAL.length() - SUM_DIGITS - END.length();
    if (open < 0) {
      return Optional.empty();
    }
    String sum = sum(text.substring(0, open), before);
    return text.startsWith(SEAL + sum + END, open) ? Optional.of(sum) : Optional.empty();
  }

  private static String sum(String open, String before) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      sha.update(before.getBytes(StandardCharsets.US_ASCII));
      return HexFormat.of().formatHex(sha.digest(open.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
