package rigspeak.catalogue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.Source;
import rigspeak.rig.Source.Provenance;

/**
 * What a crew's own tables add to the catalogue, each cell checked.
 *
 * <p>Which numbers may be supplied, and within what bounds, stands in {@code supplied.csv}. A
 * number names a source of the crew's own list; that it is the crew's own goes with it wherever it
 * goes.
 */
final class Supplement {
  private static final int LONGEST_FILE = 200_000;
  private static final int LONGEST_CELL = 200;
  private static final int MOST_ROWS = 1_000;
  private static final String SOURCES = "sources";
  private static final String SOURCE = "source";
  private static final String ANY = "*";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  /** What a cell with a number may be. */
  private record Limit(String column, double low, double high) {}

  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Map<String, List<CSVRecord>> rows = new TreeMap<>();

  private Supplement() {}

  static Supplement none() {
    return new Supplement();
  }

  /**
   * @throws CatalogueFault with one sentence that has file, line and reason
   */
  static Supplement of(List<SuppliedTable> tables) {
    Supplement supplement = new Supplement();
    tables.stream().filter(table -> table.name().equals(SOURCES)).forEach(supplement::takeSources);
    tables.stream().filter(table -> !table.name().equals(SOURCES)).forEach(supplement::take);
    supplement.refuseUnusedSources(tables);
    return supplement;
  }

  Map<String, Source> sources() {
    return sources;
  }

  List<CSVRecord> rows(String table) {
    return rows.getOrDefault(table, List.of());
  }

  /** The rows of a table that only makes sense whole: the crew's, or the tool's own. */
  List<CSVRecord> whole(String table) {
    return rows.containsKey(table) ? rows.get(table) : Table.rows(table);
  }

  private void takeSources(SuppliedTable table) {
    Set<String> taken = new TreeSet<>();
    Table.rows(SOURCES).forEach(row -> taken.add(row.get("key")));
    for (CSVRecord row : read(table, List.of("key", "title"))) {
      String key = row.get("key");
      if (!key.matches("[a-z][a-z0-9_]*")) {
        throw fault(
            table, row, "has the key \"" + key + "\", which is not small letters, digits, _");
      }
      if (!taken.add(key)) {
        throw fault(table, row, "has the key " + key + ", which is taken already");
      }
      if (row.get("title").length() < 5) {
        throw fault(table, row, "does not say what " + key + " is");
      }
      sources.put(key, new Source(key, Provenance.SUPPLIED, row.get("title")));
    }
  }

  private void take(SuppliedTable table) {
    Map<String, List<Limit>> limits = limits(table);
    String key = keyColumn(table.name());
    Set<String> columns = new LinkedHashSet<>(List.of(key));
    if (table.name().equals("choke")) {
      columns.add("start_counts");
    }
    limits.values().forEach(of -> of.forEach(limit -> columns.add(limit.column())));
    columns.add(SOURCE);
    List<CSVRecord> read = read(table, List.copyOf(columns));
    Set<String> keys = new TreeSet<>();
    for (CSVRecord row : read) {
      String name = row.get(key);
      if (table.name().equals("wood") && !name.matches("[A-Za-z-]{2,}(,? [A-Za-z-]{2,}){0,4}")) {
        throw fault(table, row, "has a species that is no name: " + name);
      }
      if (!keys.add(name.toLowerCase(Locale.ROOT))) {
        throw fault(table, row, "has " + name + " a second time");
      }
      List<Limit> allowed = limits.getOrDefault(name, limits.get(ANY));
      if (allowed == null) {
        throw fault(table, row, "has \"" + name + "\", which is not a number to be supplied");
      }
      allowed.forEach(limit -> refuseOutside(table, row, limit));
      if (!sources.containsKey(row.get(SOURCE))) {
        throw fault(
            table,
            row,
            "names the source \"" + row.get(SOURCE) + "\", which the crew's sources.csv has not");
      }
    }
    refuseDisorder(table, read);
    rows.put(table.name(), read);
  }

  /** By key of the row. */
  private static Map<String, List<Limit>> limits(SuppliedTable table) {
    Map<String, List<Limit>> limits = new LinkedHashMap<>();
    for (CSVRecord row : Table.rows("supplied")) {
      if (row.get("table").equals(table.name())) {
        limits
            .computeIfAbsent(row.get("key"), key -> new ArrayList<>())
            .add(new Limit(row.get("column"), Table.number(row, "low"), Table.number(row, "high")));
      }
    }
    if (limits.isEmpty()) {
      throw new CatalogueFault(table.file(), "is none of those that a crew may supply");
    }
    return limits;
  }

  private static String keyColumn(String table) {
    return switch (table) {
      case "wood" -> "species";
      case "friction" -> "contact";
      case "choke" -> "from_deg";
      case "bend" -> "bend_over_rope";
      default -> "name";
    };
  }

  private static void refuseOutside(SuppliedTable table, CSVRecord row, Limit limit) {
    String cell = row.get(limit.column());
    if (!cell.matches("[0-9]{1,9}(\\.[0-9]{1,9})?")) {
      throw fault(table, row, "has \"" + cell + "\" where a number should be: " + limit.column());
    }
    double value = Double.parseDouble(cell);
    if (!(value >= limit.low() && value <= limit.high())) {
      throw fault(
          table,
          row,
          "has %s %s, which is not within %s and %s"
              .formatted(limit.column(), cell, plain(limit.low()), plain(limit.high())));
    }
  }

  /** Bounds about what they bound, bands and points one after the other, no strength lost. */
  private static void refuseDisorder(SuppliedTable table, List<CSVRecord> rows) {
    CSVRecord before = null;
    for (CSVRecord row : rows) {
      String trouble =
          switch (table.name()) {
            case "friction" ->
                isRising(row, "low", row, "nominal") && isRising(row, "nominal", row, "high")
                    ? ""
                    : "does not go from low over nominal to high";
            case "choke" -> choke(before, row);
            case "bend" -> before == null ? "" : rises(before, row, "bend_over_rope");
            default -> "";
          };
      if (!trouble.isEmpty()) {
        throw fault(table, row, trouble);
      }
      before = row;
    }
  }

  private static String choke(CSVRecord before, CSVRecord row) {
    if (!row.get("start_counts").matches("yes|no")) {
      return "says neither yes nor no of start_counts";
    }
    if (before != null) {
      return rises(before, row, "from_deg");
    }
    return Table.number(row, "from_deg") == 0 && row.get("start_counts").equals("yes")
        ? ""
        : "does not begin at 0, which counts";
  }

  private static String rises(CSVRecord before, CSVRecord row, String column) {
    if (!row.get(SOURCE).equals(before.get(SOURCE))) {
      return "has another source than the row before";
    }
    boolean further = Table.number(row, column) > Table.number(before, column);
    return further && isRising(before, "factor", row, "factor")
        ? ""
        : "does not rise in " + column + " and factor";
  }

  private static boolean isRising(CSVRecord one, String low, CSVRecord other, String high) {
    return Table.number(one, low) <= Table.number(other, high);
  }

  private static String plain(double number) {
    return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }

  private static List<CSVRecord> read(SuppliedTable table, List<String> columns) {
    if (table.text().length() > LONGEST_FILE) {
      throw new CatalogueFault(table.file(), "is longer than " + LONGEST_FILE + " characters");
    }
    List<CSVRecord> rows = new ArrayList<>();
    try (CSVParser parser = FORMAT.parse(new StringReader(table.text()))) {
      if (!parser.getHeaderNames().equals(columns)) {
        throw new CatalogueFault(
            table.file() + ", line 1", "should have the columns " + String.join(",", columns));
      }
      for (CSVRecord row : parser) {
        if (row.size() != columns.size() || rows.size() >= MOST_ROWS) {
          throw fault(table, row, "has not as many cells as columns, or is one row too many");
        }
        refuseOdd(table, row);
        rows.add(row);
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      throw new CatalogueFault(table.file(), "is no table of cells between commas");
    }
    if (rows.isEmpty()) {
      throw new CatalogueFault(table.file(), "has no row");
    }
    return rows;
  }

  /** Nobody could read such a cell to see where a number comes from. */
  private static void refuseOdd(SuppliedTable table, CSVRecord row) {
    for (String cell : row) {
      if (cell.isBlank() || cell.length() > LONGEST_CELL || !cell.equals(cell.strip())) {
        throw fault(
            table, row, "has a cell that is empty, too long or begins or ends with a blank");
      }
      if (cell.chars().anyMatch(c -> Character.isISOControl(c) || c == '\uFFFD')) {
        throw fault(table, row, "has a cell with a character that cannot be printed");
      }
    }
  }

  private void refuseUnusedSources(List<SuppliedTable> tables) {
    Set<String> unused = new TreeSet<>(sources.keySet());
    rows.values().forEach(of -> of.forEach(row -> unused.remove(row.get(SOURCE))));
    tables.stream()
        .filter(table -> table.name().equals(SOURCES) && !unused.isEmpty())
        .findFirst()
        .ifPresent(
            table -> {
              throw new CatalogueFault(
                  table.file(), "has sources that no number names: " + String.join(", ", unused));
            });
  }

  private static CatalogueFault fault(SuppliedTable table, CSVRecord row, String reason) {
    return new CatalogueFault(table.file() + ", line " + (row.getRecordNumber() + 1), reason);
  }
}
