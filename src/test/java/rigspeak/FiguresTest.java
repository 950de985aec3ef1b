package rigspeak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The figures of the documents are what their script draws, and each is shown somewhere. */
class FiguresTest {
  private static final Path FOLDER = Path.of("docs", "figures");
  private static final Pattern SHOWN = Pattern.compile("figures/([a-z-]+\\.svg)");

  @Test
  void theyAreAsDrawn() throws IOException, InterruptedException {
    Optional<Process> process = started();
    assumeTrue(process.isPresent() || System.getenv("CI") != null, "no python3 here");
    Process draw = process.orElseThrow();
    String said = new String(draw.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, draw.waitFor(), said);
  }

  private static Optional<Process> started() {
    try {
      return Optional.of(
          new ProcessBuilder(List.of("python3", FOLDER.resolve("draw").toString(), "--check"))
              .redirectErrorStream(true)
              .start());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Test
  void eachIsShownAndEachThatIsShownIsThere() throws IOException {
    assertEquals(figures(), shown());
  }

  private static Set<String> figures() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(".svg"))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static Set<String> shown() throws IOException {
    Set<String> shown = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("docs"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".md")).toList()) {
        Matcher matcher = SHOWN.matcher(Files.readString(file, StandardCharsets.UTF_8));
        while (matcher.find()) {
          shown.add(matcher.group(1));
        }
      }
    }
    return shown;
  }
}
