package rigspeak.mechanics;

import java.util.List;

/**
 * A factor that is printed by bands of something, as choke angles are.
 *
 * <p>Model: the factor of the highest band that the value has reached; between the end of one
 * printed band and the start of the next (89 and 90 degrees) the lower band still counts. Source:
 * the table that the caller gives. Range: from the lowest band's start up to a stated end, refused
 * outside.
 *
 * <p>Tested by: the choke-angle factors (source 8).
 */
public final class BandTable {
  /**
   * A band and its factor.
   *
   * @param from where the band starts, in the table's unit
   * @param fromIncluded whether the start itself belongs to the band, else only what is above it
   * @param factor finite
   */
  public record Band(double from, boolean fromIncluded, double factor) {
    /**
     * @throws IllegalArgumentException if a number is infinite or not a number
     */
    public Band {
      Refuse.unlessFinite("start of a band", from);
      Refuse.unlessFinite("factor of a band", factor);
    }

    /** From a value, which belongs to the band. */
    public static Band from(double from, double factor) {
      return new Band(from, true, factor);
    }

    /** Above a value, which does not belong to the band. */
    public static Band above(double from, double factor) {
      return new Band(from, false, factor);
    }

    private boolean reachedBy(double value) {
      return fromIncluded ? value >= from : value > from;
    }
  }

  private final List<Band> bands;
  private final double end;

  /**
   * @param bands at least one, in rising order of their starts; the first includes its start
   * @param end the largest value that the table speaks of
   * @throws IllegalArgumentException if the bands are empty or out of order
   */
  public BandTable(List<Band> bands, double end) {
    if (bands.isEmpty() || !bands.get(0).fromIncluded()) {
      throw new IllegalArgumentException("a table needs a first band that includes its start");
    }
    double last = Double.NEGATIVE_INFINITY;
    for (Band band : bands) {
      if (!(band.from() > last)) {
        throw Refuse.refusal("band after " + last, band.from());
      }
      last = band.from();
    }
    this.bands = List.copyOf(bands);
    this.end = Refuse.unlessWithin("end of a table", end, last, Double.MAX_VALUE);
  }

  /**
   * @throws IllegalArgumentException if the table does not speak of the value
   */
  public double factor(double value) {
    Refuse.unlessWithin("value in this table", value, bands.get(0).from(), end);
    int reached = bands.size() - 1;
    while (!bands.get(reached).reachedBy(value)) {
      reached--;
    }
    return bands.get(reached).factor();
  }
}
