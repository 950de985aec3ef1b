package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The program with its own Java runtime says what it says here. It is run without an environment:
 * no other Java is found then.
 */
@Tag("image")
class ImageTest {
  private static final Path PROGRAM = Path.of("target/image/rigspeak/bin/rigspeak");

  @BeforeAll
  static void build() throws Exception {
    ProcessBuilder build = new ProcessBuilder("src/packaging/build").redirectErrorStream(true);
    build.environment().put("JAVA_HOME", System.getProperty("java.home"));
    Process process = build.start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), printed);
    System.out.print(printed);
  }

  @Test
  void itKnowsItsVersion() throws Exception {
    String printed = run("--version");
    assertTrue(printed.matches("rigspeak [0-9.]+\n"), printed);
  }

  @Test
  void theTypedDayEndsAsItDoesHere() throws Exception {
    Path day = Path.of("demo-data/one-day.txt");
    assertEquals(Cli.run("type", "--json", day).out(), run("type", "--json", day.toString()));
  }

  /** The card needs fonts and pictures, which a runtime can lack. */
  @Test
  void itDrawsACard() throws Exception {
    for (String ending : List.of("pdf", "png")) {
      String card = "target/image-card." + ending;
      String printed = run("plan", "card", "demo-data/plan.txt", "--out", card);
      assertTrue(printed.lines().allMatch(line -> line.endsWith(ending)), printed);
      assertTrue(Path.of(card).toFile().length() > 10_000, card);
    }
  }

  @Test
  void itHearsARecording() throws Exception {
    String printed = run("hear", "demo-data/one-day/02-climber-limb.wav");
    assertTrue(
        printed.startsWith("heard     limb ten inches by tape limb level by eye\n"), printed);
  }

  private static String run(String... arguments) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder();
    builder.command().add(PROGRAM.toAbsolutePath().toString());
    builder.command().addAll(List.of(arguments));
    builder.environment().clear();
    Process process = builder.redirectErrorStream(true).start();
    process.getOutputStream().close();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), printed);
    return printed;
  }
}
