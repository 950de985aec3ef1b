package rigspeak.catalogue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Source;

/** How far off a value can be, by what it is and how it was got. */
final class Bounds {

  /** What kind of thing was judged. */
  enum Kind {
    DIAMETER,
    DISTANCE,
    ANGLE,
    PLUMB,
    WEIGHT,
    SHARE,
    THICKNESS
  }

  private record Case(Kind kind, HowGot how) {}

  /**
   * @param share of the value itself
   * @param least in the SI unit of the kind
   */
  private record Width(double share, double least, Source source) {}

  private final Map<Case, Width> widths = new HashMap<>();

  Bounds(Sources sources) {
    for (CSVRecord row : Table.rows("bounds")) {
      Kind kind = Kind.valueOf(row.get("kind").toUpperCase(Locale.ROOT));
      HowGot how = HowGot.valueOf(row.get("how").toUpperCase(Locale.ROOT));
      double least = Table.number(row, "least");
      boolean degrees = row.get("unit").equals("degree");
      widths.put(
          new Case(kind, how),
          new Width(
              Table.number(row, "share"),
              degrees ? Math.toRadians(least) : least,
              sources.get(row.get("source"))));
    }
  }

  /** The value and the most it can be off to either side, within what is possible at all. */
  Estimate around(double value, Kind kind, HowGot how, double leastPossible, double mostPossible) {
    Width width = width(kind, how);
    double half = half(value, width);
    return new Estimate(
        Math.max(value - half, Math.min(leastPossible, value)),
        value,
        Math.min(value + half, Math.max(mostPossible, value)),
        how,
        width.source());
  }

  /** Half the width of the bounds, in the SI unit of the kind. */
  double half(double value, Kind kind, HowGot how) {
    return half(value, width(kind, how));
  }

  private static double half(double value, Width width) {
    return Math.max(width.share() * Math.abs(value), width.least());
  }

  private Width width(Kind kind, HowGot how) {
    return widths.get(new Case(kind, how));
  }
}
