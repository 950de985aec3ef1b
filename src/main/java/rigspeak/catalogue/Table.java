package rigspeak.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the catalogue's tables. */
final class Table {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Table() {}

  static List<CSVRecord> rows(String name) {
    String resource = "/rigspeak/catalogue/" + name + ".csv";
    try (InputStream in = Table.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The table " + resource + " is missing.");
      }
      Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new IllegalStateException("The table " + resource + " cannot be read.", e);
    }
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
