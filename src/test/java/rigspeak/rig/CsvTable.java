package rigspeak.rig;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.provider.ArgumentsSource;
import org.junit.jupiter.params.support.AnnotationConsumer;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Runs a test once for each row of a table. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ArgumentsSource(CsvTable.Reader.class)
public @interface CsvTable {
  /** The file, from the root of the resources. */
  String value();

  /** One row; its columns are read by name. */
  final class Row {
    private final CSVRecord columns;

    private Row(CSVRecord columns) {
      this.columns = columns;
    }

    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    public String text(String column) {
      return columns.get(column);
    }

    public boolean has(String column) {
      return columns.isMapped(column) && !text(column).isEmpty();
    }

    @Override
    public String toString() {
      return String.join(" | ", columns.values());
    }
  }

  /** Reads the rows. */
  final class Reader implements ArgumentsProvider, AnnotationConsumer<CsvTable> {
    private String file;

    @Override
    public void accept(CsvTable table) {
      file = table.value();
    }

    @Override
    public Stream<? extends Arguments> provideArguments(
        ParameterDeclarations parameters, ExtensionContext context) {
      return rows(file).stream().map(Arguments::of);
    }

    /** All rows of a file. */
    public static List<Row> rows(String file) {
      CSVFormat format =
          CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
      try (InputStream bytes = CsvTable.class.getResourceAsStream(file)) {
        if (bytes == null) {
          throw new IllegalArgumentException("there is no table " + file);
        }
        InputStreamReader text = new InputStreamReader(bytes, StandardCharsets.UTF_8);
        try (CSVParser parser = CSVParser.parse(text, format)) {
          return parser.stream().map(Row::new).toList();
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
