package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program in 64 megabytes, with files of 100: it refuses them instead of running out. */
class SmallHeapTest {
  private static final int MEGABYTES = 100;

  @TempDir static Path folder;

  private record Ended(int exitCode, String out, String err) {}

  private static Ended run(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = OwnProcess.command(List.of("-Xmx64m", "-XX:+UseSerialGC"), arguments);
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    try {
      assertTrue(process.waitFor(120, TimeUnit.SECONDS), "it never ends");
      return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
    } finally {
      process.destroyForcibly();
    }
  }

  /** The same line again and again, or one line without end. */
  private static Path large(String line) throws IOException {
    Path file = folder.resolve("large.csv");
    char[] piece = line.repeat(1 + (1 << 20) / line.length()).toCharArray();
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      for (int i = 0; i < MEGABYTES; i++) {
        out.write(piece);
      }
    }
    return file;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "check FILE                                   | 'limb eight inches '",
        "plan check FILE                              | 'check redirect@'",
        "confirm FILE --type demo-data/plan.txt       | 'limb eight inches@'",
        "check --grammar FILE demo-data/plan.txt      | '<a> = so;@'",
        "check --catalogue FOLDER demo-data/plan.txt  | 'a,b,c@'",
        "drill report FILE.trainee                    | 'answer@'",
      })
  void aFileThatIsTooLargeIsRefusedInOneSentence(String command, String line)
      throws IOException, InterruptedException {
    Path file = large(line.replace('@', '\n'));
    Path named = command.contains(".trainee") ? folder.resolve("large.csv.trainee") : file;
    if (!named.equals(file)) {
      Files.move(file, named);
    }
    try {
      Ended ended =
          run(
              List.of(
                  command
                      .strip()
                      .replace("FILE.trainee", named.toString())
                      .replace("FILE", named.toString())
                      .replace("FOLDER", folder.toString())
                      .split("\\s+", -1)));
      assertEquals(3, ended.exitCode(), ended.out() + ended.err());
      assertEquals(1, ended.err().lines().count(), ended.err());
      HostilePlaces.isOneSentence(ended.err().strip());
      assertTrue(!ended.err().contains("memory"), ended.err());
      assertEquals("", ended.out());
    } finally {
      Files.delete(named);
    }
  }

  @Test
  void aLineWithoutEndIsNotUnderstood() throws IOException, InterruptedException {
    Path file = large("limb eight inches ");
    try {
      Ended ended = run(List.of("type", "--json", file.toString()));
      assertEquals(0, ended.exitCode(), ended.err());
      assertEquals(1, ended.out().lines().count());
      assertTrue(ended.out().contains("\"understood\":false"), ended.out());
      assertTrue(ended.out().length() < 100_000, "it says all of it again");
    } finally {
      Files.delete(file);
    }
  }
}
