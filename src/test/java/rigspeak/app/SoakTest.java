package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.journal.CrewFolder;

/** A conversation of many hours must leave the program as large as it was; here some minutes. */
class SoakTest {
  private static final double SECONDS = 900;
  private static final double REST_SECONDS = 45;
  private static final int LOOKS = 18;

  @TempDir Path folder;

  @Test
  void nothingGrowsWhileOneTalks() throws Exception {
    List<Sound> recordings = new ArrayList<>();
    for (String name :
        List.of(
            "01-climber-weight-and-tree",
            "02-climber-limb",
            "08-trainee-missing",
            "03-ground-stem",
            "12-ground-read-back",
            "14-climber-check")) {
      recordings.add(WavFile.read(Path.of("demo-data/one-day", name + ".wav")));
    }
    Grammar grammar = Grammar.bundled();
    List<Footprint> seen;
    try (Scribe scribe =
        new JournalScribe(
            new CrewFolder(folder, "soak"),
            Clock.systemUTC(),
            new PrintWriter(Writer.nullWriter()))) {
      seen =
          new Soak(grammar, Ear.open(grammar), new Mouth(), scribe)
              .run(recordings, SECONDS, REST_SECONDS, LOOKS, look -> {})
              .looks();
    }

    assertEquals(LOOKS, seen.size());
    assertTrue(seen.stream().anyMatch(look -> look.noiseMegabytes() > 0), "also in noise");
    assertEquals(List.of(), Footprint.growing(seen), seen.toString());
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
