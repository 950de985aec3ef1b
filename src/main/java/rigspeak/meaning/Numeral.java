package rigspeak.meaning;

/**
 * Builds a number from its tags, in the order in which its words are said: "two hundred ten" adds
 * 2, times 100, adds 10; "one two zero" is three digits; "four point five"; "eight and a half".
 */
final class Numeral {
  private double thousands;
  private double current;
  private double nextDecimal;
  private boolean teen;
  private boolean roundTen;

  void add(int number) {
    current += number;
    teen |= number > 12 && number < 20;
    roundTen = number >= 30;
  }

  /**
   * Whether it was said with a teen where a ten may be heard, or the other way round: fifteen,
   * fifty. A digit after the ten keeps it from that.
   */
  boolean hasTwin() {
    return teen || roundTen;
  }

  void times(int factor) {
    if (factor == 1000) {
      thousands = current * factor;
      current = 0;
    } else {
      current *= factor;
    }
  }

  void point() {
    nextDecimal = 0.1;
  }

  void digit(int digit) {
    if (nextDecimal == 0) {
      current = current * 10 + digit;
    } else {
      current += digit * nextDecimal;
      nextDecimal /= 10;
    }
  }

  void half() {
    current += 0.5;
  }

  void over(int divisor) {
    current /= divisor;
  }

  double value() {
    return thousands + current;
  }
}
