package rigspeak.verdict;

/** A number's range so far; the first one taken is as said. */
final class Spreading {
  private static final double FULL_TURN = 360;

  private final boolean round;
  private boolean started;
  private double nominal;
  private double low;
  private double high;

  private Spreading(boolean round) {
    this.round = round;
  }

  Spreading() {
    this(false);
  }

  /** Of bearings, which are counted on past half a turn so that they lie next to the first. */
  static Spreading ofDegreesRound() {
    return new Spreading(true);
  }

  void take(double value) {
    if (!started) {
      started = true;
      nominal = value;
      low = value;
      high = value;
      return;
    }
    double near = round ? nominal + Math.IEEEremainder(value - nominal, FULL_TURN) : value;
    low = Math.min(low, near);
    high = Math.max(high, near);
  }

  double nominal() {
    return nominal;
  }

  Spread spread() {
    return new Spread(low, nominal, high);
  }
}
