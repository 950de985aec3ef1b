package rigspeak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.verdict.Check;

/** The page of limits has every number of the catalogue's tables, as it stands there. */
class LimitsTest {
  private static List<String> lines;

  @BeforeAll
  static void read() throws IOException {
    lines = Files.readAllLines(Path.of("docs", "limits.md"), StandardCharsets.UTF_8);
  }

  /** One line of the page names the row, and has its numbers as cells of their own, in order. */
  @ParameterizedTest
  @CsvSource({
    "factors, name, value",
    "friction, contact, 'low,nominal,high'",
    "ranges, slot, 'low,high,unit'"
  })
  void everyRowHasALine(String table, String name, String columns) throws IOException {
    List<String> missing = new ArrayList<>();
    for (CSVRecord row : rows(table)) {
      StringBuilder cells = new StringBuilder("| ");
      for (String column : columns.split(",", -1)) {
        cells.append(row.get(column)).append(" | ");
      }
      if (!isSaid("`" + row.get(name) + "`", cells.toString())) {
        missing.add(row.get(name) + ": " + cells);
      }
    }
    assertEquals(List.of(), missing);
  }

  /** Shares and least amounts, a cell for each way of getting a value. */
  @Test
  void everyBoundHasACell() throws IOException {
    List<String> missing = new ArrayList<>();
    for (CSVRecord row : rows("bounds")) {
      if (!isSaid("`" + row.get("kind") + "`", "| " + bound(row) + " |")) {
        missing.add(row.get("kind") + " " + row.get("how") + ": " + bound(row));
      }
    }
    assertEquals(List.of(), missing);
  }

  private static String bound(CSVRecord row) {
    return switch (row.get("unit")) {
      case "degree" -> row.get("least") + "°";
      case "metre" -> row.get("share") + ", " + row.get("least") + " m";
      default -> row.get("share");
    };
  }

  @Test
  void theSlackOfAGoodVerdictIsNamed() {
    assertTrue(isSaid("`Check.WELL_WITHIN`", "| " + Check.WELL_WITHIN + " of every limit"));
  }

  @Test
  void theNumberOfSpeciesIsRight() throws IOException {
    assertTrue(isSaid("`wood.csv`", "| " + rows("wood").size() + " species"));
  }

  private static boolean isSaid(String name, String cells) {
    return lines.stream().anyMatch(line -> line.contains(name) && (line + " ").contains(cells));
  }

  private static List<CSVRecord> rows(String table) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream file =
            LimitsTest.class.getResourceAsStream("/rigspeak/catalogue/" + table + ".csv");
        CSVParser parser =
            CSVParser.parse(new InputStreamReader(file, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    }
  }
}
