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
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
  private static final Pattern FIRST_NAME = Pattern.compile("^\\| `([a-z0-9_]+)`[^.]");
  private static final Pattern CONSTANT = Pattern.compile("`([A-Z][A-Za-z]+)\\.([A-Z][A-Z_]+)`");

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

  /** What a choke's angle and a bend leave of a sling. */
  @Test
  void everyReductionHasALine() throws IOException {
    List<String> missing = new ArrayList<>();
    for (CSVRecord row : rows("choke")) {
      String from = row.get("start_counts").equals("yes") ? "from " : "above ";
      String angle = "`choke.csv`, " + from + row.get("from_deg") + "° |";
      if (!isSaid(angle, "| " + row.get("factor") + " |")) {
        missing.add(angle + " " + row.get("factor"));
      }
    }
    for (CSVRecord row : rows("bend")) {
      String ratio = "`bend.csv`, " + row.get("bend_over_rope") + " |";
      if (!isSaid(ratio, "| " + row.get("factor") + " |")) {
        missing.add(ratio + " " + row.get("factor"));
      }
    }
    assertEquals(List.of(), missing);
  }

  /** A line that begins with a name has it from a table. */
  @Test
  void noLineIsOfARowThatIsGone() throws IOException {
    Set<String> names = new TreeSet<>();
    rows("factors").forEach(row -> names.add(row.get("name")));
    rows("friction").forEach(row -> names.add(row.get("contact")));
    rows("ranges").forEach(row -> names.add(row.get("slot")));
    rows("bounds").forEach(row -> names.add(row.get("kind")));
    Set<String> said = new TreeSet<>();
    for (String line : lines) {
      Matcher matcher = FIRST_NAME.matcher(line);
      if (matcher.find()) {
        said.add(matcher.group(1));
      }
    }
    assertEquals(names, said);
  }

  /** The numbers that stand in code are named by their constants; those are there. */
  @Test
  void everyConstantIsInTheCode() throws IOException {
    List<String> sources = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        sources.add(Files.readString(file, StandardCharsets.UTF_8));
      }
    }
    List<String> named = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (String line : lines) {
      Matcher matcher = CONSTANT.matcher(line);
      while (matcher.find()) {
        named.add(matcher.group());
        Pattern type = Pattern.compile("(class|record) " + matcher.group(1) + "\\b");
        Pattern constant = Pattern.compile("static final \\S+ " + matcher.group(2) + " =");
        if (sources.stream()
            .noneMatch(text -> type.matcher(text).find() && constant.matcher(text).find())) {
          missing.add(matcher.group());
        }
      }
    }
    assertEquals(List.of(), missing);
    assertTrue(named.size() > 20, "named: " + named);
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
