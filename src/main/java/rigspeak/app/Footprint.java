package rigspeak.app;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What this program holds at a moment.
 *
 * @param seconds when that was, by whatever clock is watched
 * @param heapMegabytes of objects that are in use, after a collection; the least between some
 *     utterances
 * @param noiseMegabytes the same in the midst of an utterance of noise, the most since the look
 *     before; not-a-number if there was none
 * @param residentMegabytes of memory that the kernel has given it; not-a-number where it does not
 *     say
 * @param threads that live
 * @param handles of open files; 0 where the kernel does not say
 */
record Footprint(
    double seconds,
    double heapMegabytes,
    double noiseMegabytes,
    double residentMegabytes,
    int threads,
    int handles) {
  private static final Path STATUS = Path.of("/proc/self/status");
  private static final Path HANDLES = Path.of("/proc/self/fd");

  /**
   * What may still be learned after the first third: a compiler's code, a word that nobody had said
   * before. Judgements; what leaks a kilobyte for each exchange grows by more in four hours.
   */
  private static final double MOST_HEAP_MEGABYTES = 3;

  /** What a search holds depends on how far it is. A judgement. */
  private static final double MOST_NOISE_MEGABYTES = 24;

  private static final double MOST_RESIDENT_MEGABYTES = 16;
  private static final int MOST_THREADS = 1;
  private static final int MOST_HANDLES = 2;

  /**
   * As it is now.
   *
   * @param heapMegabytes what was held just now
   * @param noiseMegabytes what was held in noise before
   */
  static Footprint now(double seconds, double heapMegabytes, double noiseMegabytes)
      throws IOException {
    int threads = ManagementFactory.getThreadMXBean().getThreadCount();
    double resident = kilobytes("VmRSS:") / 1024;
    return new Footprint(seconds, heapMegabytes, noiseMegabytes, resident, threads, openHandles());
  }

  /** Objects that are in use now, after a collection. */
  static double heldMegabytes() {
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1048576.0;
  }

  /** The most memory that this process ever held, as the kernel counts it. */
  static double peakMegabytes() throws IOException {
    return kilobytes("VmHWM:") / 1024;
  }

  private static double kilobytes(String name) throws IOException {
    if (!Files.exists(STATUS)) {
      return Double.NaN;
    }
    return Files.readAllLines(STATUS).stream()
        .filter(line -> line.startsWith(name))
        .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")))
        .findFirst()
        .orElse(Double.NaN);
  }

  private static int openHandles() throws IOException {
    if (!Files.isDirectory(HANDLES)) {
      return 0;
    }
    try (Stream<Path> open = Files.list(HANDLES)) {
      return (int) open.count();
    }
  }

  /**
   * What grows: the least of the last third beside the least of the second; the first is start-up.
   * What is held for a moment only, a collection that has not come yet, is not growth.
   */
  static List<String> growing(List<Footprint> moments) {
    return Stream.of(
            new Kind("heap", Footprint::heapMegabytes, MOST_HEAP_MEGABYTES),
            new Kind("heap in noise", Footprint::noiseMegabytes, MOST_NOISE_MEGABYTES),
            new Kind("resident memory", Footprint::residentMegabytes, MOST_RESIDENT_MEGABYTES),
            new Kind("threads", Footprint::threads, MOST_THREADS),
            new Kind("open files", Footprint::handles, MOST_HANDLES))
        .filter(kind -> kind.growth(moments) > kind.most())
        .map(kind -> kind.told(moments))
        .toList();
  }

  private record Kind(String name, ToDoubleFunction<Footprint> value, double most) {
    double growth(List<Footprint> moments) {
      int count = moments.size();
      List<Footprint> second = moments.subList(count / 3, 2 * count / 3);
      return least(moments.subList(2 * count / 3, count)) - least(second);
    }

    private double least(List<Footprint> some) {
      return some.stream()
          .mapToDouble(value)
          .filter(megabytes -> !Double.isNaN(megabytes))
          .min()
          .orElse(Double.NaN);
    }

    String told(List<Footprint> moments) {
      return String.format(Locale.ROOT, "%s by %.1f", name, growth(moments));
    }
  }
}
