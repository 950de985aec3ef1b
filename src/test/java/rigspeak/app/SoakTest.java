package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A conversation of many hours must leave the program as large as it was; here some minutes. */
class SoakTest {
  private static final List<String> RECORDINGS =
      List.of(
          "01-climber-weight-and-tree",
          "02-climber-limb",
          "08-trainee-missing",
          "03-ground-stem",
          "12-ground-read-back",
          "14-climber-check");

  @TempDir Path folder;

  /**
   * In a process of its own, whose heap is all there from the start: what its resident memory gains
   * is then what it holds beside the heap, and not what other tests left there.
   */
  @Test
  void nothingGrowsWhileOneTalks() throws Exception {
    for (String name : RECORDINGS) {
      Files.copy(Path.of("demo-data/one-day", name + ".wav"), folder.resolve(name + ".wav"));
    }
    File told = folder.resolve("told").toFile();
    Process soak =
        new ProcessBuilder(
                OwnProcess.command(
                    List.of(
                        "-Xms256m",
                        "-Xmx256m",
                        "-XX:+AlwaysPreTouch",
                        "-XX:+UseSerialGC",
                        "-Djava.io.tmpdir=" + folder),
                    List.of("soak", "--hours", "0.25", folder.toString())))
            .redirectErrorStream(true)
            .redirectOutput(told)
            .start();
    try {
      assertTrue(soak.waitFor(5, TimeUnit.MINUTES), "it never ends");
    } finally {
      soak.destroyForcibly();
    }

    String table = Files.readString(told.toPath());
    assertEquals(0, soak.exitValue(), table);
    assertTrue(table.lines().anyMatch(SoakTest::isOfNoise), table);
    assertTrue(table.endsWith("Nothing grows." + System.lineSeparator()), table);
  }

  /** A look whose third column, what was held in the midst of noise, is a number. */
  private static boolean isOfNoise(String line) {
    return line.matches(" *\\d+:\\d\\d +[\\d.]+ +[\\d.]+ .*");
  }

  @Test
  void whatGrowsIsNamed() {
    assertEquals(List.of(), Footprint.growing(looks(0, 0, 0, 0)));
    // A kilobyte for each of some eight hundred exchanges an hour, over four hours.
    assertEquals(List.of("heap by 6.0"), Footprint.growing(looks(1, 0, 0, 0)));
    assertEquals(List.of("resident memory by 24.0"), Footprint.growing(looks(0, 4, 0, 0)));
    assertEquals(
        List.of("threads by 6.0", "open files by 12.0"), Footprint.growing(looks(0, 0, 1, 2)));
  }

  /** Eighteen looks, between which so much is added. */
  private static List<Footprint> looks(double heap, double resident, int threads, int handles) {
    return IntStream.range(0, 18)
        .mapToObj(
            i ->
                new Footprint(
                    60 * i,
                    80 + heap * i,
                    Double.NaN,
                    300 + resident * i,
                    12 + threads * i,
                    9 + handles * i))
        .toList();
  }
}
