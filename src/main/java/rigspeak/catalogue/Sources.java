package rigspeak.catalogue;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.Source;
import rigspeak.rig.Source.Provenance;

/** The list of where numbers come from. */
final class Sources {
  private final Map<String, Source> byKey = new LinkedHashMap<>();

  Sources(Supplement supplement) {
    byKey.putAll(supplement.sources());
    for (CSVRecord row : Table.rows("sources")) {
      String key = row.get("key");
      Provenance provenance = Provenance.valueOf(row.get("provenance").toUpperCase(Locale.ROOT));
      byKey.put(key, new Source(key, provenance, row.get("title")));
    }
  }

  Source get(String key) {
    Source source = byKey.get(key);
    if (source == null) {
      throw new IllegalStateException("The catalogue names no source " + key + ".");
    }
    return source;
  }

  Map<String, Source> all() {
    return Map.copyOf(byKey);
  }
}
