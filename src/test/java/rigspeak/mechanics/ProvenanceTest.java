package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every value from outside says where it is from and how far it can be trusted. */
class ProvenanceTest {
  private static final Set<String> KNOWN =
      Set.of("published", "computed", "memory", "common practice", "judgement");

  static List<String> tables() throws IOException, URISyntaxException {
    Path folder =
        Path.of(
            Objects.requireNonNull(ProvenanceTest.class.getResource("angle-factors.csv")).toURI());
    try (Stream<Path> files = Files.list(Objects.requireNonNull(folder.getParent()))) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(".csv"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void namesASourceAndItsKind(String table) {
    List<PublishedTable.Row> rows = PublishedTable.Reader.rows(table);
    assertFalse(rows.isEmpty());
    for (PublishedTable.Row row : rows) {
      assertTrue(row.text("source").matches("\\d.*"), () -> "no numbered source: " + row);
      assertTrue(KNOWN.contains(row.text("provenance")), () -> "unknown provenance: " + row);
    }
  }
}
