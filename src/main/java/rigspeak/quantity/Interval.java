package rigspeak.quantity;

/**
 * All values from {@code low} to {@code high}, both included; the unit is that of the ends.
 *
 * @param low finite
 * @param high finite, not below {@code low}
 */
public record Interval(double low, double high) {
  /**
   * @throws IllegalArgumentException if an end is infinite or not a number, or the ends are swapped
   */
  public Interval {
    Finite.require("interval", low);
    Finite.require("interval", high);
    if (low > high) {
      throw new IllegalArgumentException("no interval runs from " + low + " down to " + high);
    }
  }

  public static Interval of(double low, double high) {
    return new Interval(low, high);
  }

  public static Interval at(double value) {
    return new Interval(value, value);
  }

  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  public double width() {
    return high - low;
  }
}
