package rigspeak.quantity;

/** The one place where a number that is no number is refused. */
final class Finite {
  private Finite() {}

  static void require(String what, double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("no " + what + " can be " + value);
    }
  }

  static void requireNotNegative(String what, double value) {
    if (!(value >= 0 && value <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("no " + what + " can be " + value);
    }
  }
}
