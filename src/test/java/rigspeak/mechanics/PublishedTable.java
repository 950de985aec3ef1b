package rigspeak.mechanics;

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

/** Runs a test once for each row of a table of values from outside the program. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ArgumentsSource(PublishedTable.Reader.class)
@interface PublishedTable {
  /** The file's name, beside this class. */
  String value();

  /** One row; its columns are read by name. */
  final class Row {
    private final CSVRecord columns;

    Row(CSVRecord columns) {
      this.columns = columns;
    }

    double number(String column) {
      return Double.parseDouble(columns.get(column));
    }

    double degrees(String column) {
      return Math.toRadians(number(column));
    }

    String text(String column) {
      return columns.get(column);
    }

    boolean has(String column) {
      return !columns.get(column).isEmpty();
    }

    @Override
    public String toString() {
      return String.join(" | ", columns.values());
    }
  }

  /** Reads the rows. */
  final class Reader implements ArgumentsProvider, AnnotationConsumer<PublishedTable> {
    private String file;

    @Override
    public void accept(PublishedTable table) {
      file = table.value();
    }

    @Override
    public Stream<? extends Arguments> provideArguments(
        ParameterDeclarations parameters, ExtensionContext context) {
      return rows(file).stream().map(Arguments::of);
    }

    static List<Row> rows(String file) {
      CSVFormat format =
          CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
      try (InputStream bytes = PublishedTable.class.getResourceAsStream(file);
          CSVParser parser =
              CSVParser.parse(new InputStreamReader(bytes, StandardCharsets.UTF_8), format)) {
        return parser.stream().map(Row::new).toList();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
