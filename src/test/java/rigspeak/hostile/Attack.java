package rigspeak.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Lets hostile input loose on one place that takes input.
 *
 * <p>What is held: nothing is thrown that the place does not promise, no input takes more than two
 * seconds of a processor, none needs more memory than its length allows.
 */
public final class Attack {
  private static final double MOST_SECONDS = 2;
  private static final Path FOUND = Path.of("src", "test", "resources", "rigspeak", "hostile");
  private static final com.sun.management.ThreadMXBean THREADS =
      (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** Takes one input and throws what must not be. */
  public interface Target {
    void take(byte[] input) throws Exception;
  }

  private final String name;
  private final Target target;
  private final long mostBytes;
  private final int mostBytesPerByte;
  private double slowest;
  private long largest;

  /**
   * @param name of the place; found input is kept in a folder of that name
   * @param mostBytes memory that any input may need, over time
   * @param mostBytesPerByte and so much more for each of its bytes
   */
  public Attack(String name, long mostBytes, int mostBytesPerByte, Target target) {
    this.name = name;
    this.mostBytes = mostBytes;
    this.mostBytesPerByte = mostBytesPerByte;
    this.target = target;
  }

  /** What once went wrong, then so many seeds. */
  public void run(Hostile hostile, long firstSeed, int count) {
    found().forEach(file -> take(bytes(file), file.toString()));
    quietly(hostile, firstSeed, count);
    System.out.printf("hostile %-10s %,9d inputs, %s%n", name, count, this);
  }

  /** So many seeds. */
  public void quietly(Hostile hostile, long firstSeed, int count) {
    for (long seed = firstSeed; seed < firstSeed + count; seed++) {
      take(hostile.input(seed), name + ", seed " + seed);
    }
  }

  @Override
  public String toString() {
    return "slowest %.2f s, largest %.1f MB".formatted(slowest, largest / 1e6);
  }

  private void take(byte[] input, String which) {
    long cpu = THREADS.getCurrentThreadCpuTime();
    long allocated = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    try {
      target.take(input);
    } catch (Exception | Error e) {
      throw new AssertionError(which + ": " + e + "\n" + shown(input), e);
    }
    double seconds = (THREADS.getCurrentThreadCpuTime() - cpu) / 1e9;
    long bytes = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId()) - allocated;
    slowest = Math.max(slowest, seconds);
    largest = Math.max(largest, bytes);
    if (seconds > MOST_SECONDS) {
      throw new AssertionError(which + " takes " + seconds + " s\n" + shown(input));
    }
    if (bytes > mostBytes + (long) mostBytesPerByte * input.length) {
      throw new AssertionError(
          "%s: %,d bytes of memory for %,d of input%n%s"
              .formatted(which, bytes, input.length, shown(input)));
    }
  }

  private List<Path> found() {
    Path folder = FOUND.resolve(name);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String shown(byte[] input) {
    String text = new String(input, 0, Math.min(input.length, 2_000), StandardCharsets.ISO_8859_1);
    return text.replaceAll("[^\\p{Print}\n]", "?");
  }
}
