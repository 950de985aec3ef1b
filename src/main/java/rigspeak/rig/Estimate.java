package rigspeak.rig;

/**
 * A measure's bounds and the value between them that was said.
 *
 * @param low in the measure's unit
 * @param nominal what was said or is usual
 * @param high in the measure's unit
 * @param how how it was got
 * @param source of the bounds
 */
public record Estimate(double low, double nominal, double high, HowGot how, Source source) {
  public Estimate {
    if (!(low <= nominal && nominal <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "no estimate runs from " + low + " over " + nominal + " to " + high);
    }
  }

  /** The value at a share of the way from low (0) to high (1). */
  public double at(double share) {
    return low + share * (high - low);
  }

  public boolean isExact() {
    return low == high;
  }
}
