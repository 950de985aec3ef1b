package rigspeak.catalogue;

import java.util.HashMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.Sourced;

/** Single numbers: ratings, reductions, design factors. */
final class Factors {
  private final Map<String, Sourced> byName = new HashMap<>();

  /** A number of the crew's takes the place of the tool's own. */
  Factors(Sources sources, Supplement supplement) {
    Table.rows("factors").forEach(row -> put(row, sources));
    supplement.rows("factors").forEach(row -> put(row, sources));
  }

  private void put(CSVRecord row, Sources sources) {
    String name = row.get("name");
    byName.put(name, new Sourced(name, Table.number(row, "value"), sources.get(row.get("source"))));
  }

  Sourced get(String name) {
    Sourced factor = byName.get(name);
    if (factor == null) {
      throw new IllegalStateException("The catalogue has no factor " + name + ".");
    }
    return factor;
  }

  double value(String name) {
    return get(name).value();
  }
}
