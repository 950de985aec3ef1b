package rigspeak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The top level has what a stranger looks for, and nothing else. */
class RepositoryTest {
  private static final Set<String> TOP =
      Set.of(
          "README.md",
          "DEVELOPERS.md",
          "LICENSE",
          "pom.xml",
          "src",
          "grammars",
          "demo-data",
          "docs");

  /** What a build makes. */
  private static final String MADE = "target";

  @Test
  void theTopLevelIsExactlyThis() throws IOException {
    try (Stream<Path> entries = Files.list(Path.of("").toAbsolutePath())) {
      Set<String> names =
          entries
              .map(entry -> entry.getFileName().toString())
              .filter(name -> !name.startsWith(".") && !name.equals(MADE))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(new TreeSet<>(TOP), names);
    }
  }
}
