package rigspeak.catalogue;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.Source;
import rigspeak.rig.Sourced;

/**
 * What the angle at a choke leaves of the choker rating.
 *
 * <p>Printed by bands; between the end of one band and the start of the next (89 and 90 degrees)
 * the lower one still counts.
 */
final class ChokeAngles {
  private record Band(double fromDeg, boolean startCounts, double factor) {
    boolean reachedBy(double degrees) {
      return startCounts ? degrees >= fromDeg : degrees > fromDeg;
    }
  }

  private final List<Band> bands;
  private final Source source;

  ChokeAngles(Sources sources) {
    this.bands = Table.rows("choke").stream().map(ChokeAngles::band).toList();
    this.source = sources.get("choke_angles");
  }

  private static Band band(CSVRecord row) {
    return new Band(
        Table.number(row, "from_deg"),
        row.get("start_counts").equals("yes"),
        Table.number(row, "factor"));
  }

  /**
   * @param degrees 0 to 180
   * @throws IllegalArgumentException below 0
   */
  Sourced factor(double degrees) {
    double factor =
        bands.stream()
            .filter(band -> band.reachedBy(degrees))
            .reduce((lower, higher) -> higher)
            .orElseThrow(() -> new IllegalArgumentException("no choke makes " + degrees))
            .factor();
    return new Sourced("choke_angle", factor, source);
  }
}
