package rigspeak.verdict;

/**
 * A number at its word and over everything that may be true; the unit is that of what it measures.
 *
 * @param low the least found
 * @param nominal with every value as it was said
 * @param high the most found
 */
public record Spread(double low, double nominal, double high) {
  public Spread {
    if (!(low <= nominal && nominal <= high)) {
      throw new IllegalArgumentException(
          "no spread runs from " + low + " over " + nominal + " to " + high);
    }
  }
}
