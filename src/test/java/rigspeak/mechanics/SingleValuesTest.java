package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URISyntaxException;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

class SingleValuesTest {
  @ParameterizedTest
  @PublishedTable(SingleValues.TABLE)
  void asFromOutside(PublishedTable.Row row) {
    assertEquals(row.number("value"), SingleValues.ours(row), row.number("tolerance"));
  }

  /** A table that is checked but not shown would make the list of worked examples untrue. */
  @Test
  void everyTableIsShown() throws IOException, URISyntaxException {
    assertEquals(new TreeSet<>(ProvenanceTest.tables()), new TreeSet<>(WorkedExamples.files()));
  }
}
