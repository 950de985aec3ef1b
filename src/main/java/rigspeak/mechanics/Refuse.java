package rigspeak.mechanics;

/** The one place where a value outside its range is refused; every check fails for a non-number. */
final class Refuse {
  private Refuse() {}

  static double unlessFinite(String what, double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw refusal(what, value);
    }
    return value;
  }

  static double unlessNotNegative(String what, double value) {
    if (!(value >= 0 && value <= Double.MAX_VALUE)) {
      throw refusal(what, value);
    }
    return value;
  }

  static double unlessPositive(String what, double value) {
    if (!(value > 0 && value <= Double.MAX_VALUE)) {
      throw refusal(what, value);
    }
    return value;
  }

  /** Both ends belong to the range. */
  static double unlessWithin(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw refusal(what, value);
    }
    return value;
  }

  static IllegalArgumentException refusal(String what, double value) {
    return new IllegalArgumentException("no " + what + " can be " + value);
  }
}
