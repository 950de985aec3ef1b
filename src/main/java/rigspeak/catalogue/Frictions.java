package rigspeak.catalogue;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Source;

/** Coefficients of friction by what touches what. */
final class Frictions {
  private record Bounds(double low, double nominal, double high, Source source) {}

  private final Map<String, Bounds> byContact = new HashMap<>();

  /** What the crew measured takes the place of the tool's own. */
  Frictions(Sources sources, Supplement supplement) {
    Table.rows("friction").forEach(row -> put(row, sources));
    supplement.rows("friction").forEach(row -> put(row, sources));
  }

  private void put(CSVRecord row, Sources sources) {
    byContact.put(
        row.get("contact"),
        new Bounds(
            Table.number(row, "low"),
            Table.number(row, "nominal"),
            Table.number(row, "high"),
            sources.get(row.get("source"))));
  }

  Estimate of(String contact, HowGot how) {
    Bounds bounds = byContact.get(contact);
    if (bounds == null) {
      throw new IllegalArgumentException("the catalogue knows no friction of " + contact);
    }
    return new Estimate(bounds.low(), bounds.nominal(), bounds.high(), how, bounds.source());
  }
}
