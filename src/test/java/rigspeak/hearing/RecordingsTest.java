package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * Every {@code x.wav} of the demonstration day is heard as its {@code x.txt}; where an {@code
 * x.refused} stands beside it, it must not be taken. The corpus as a whole is heard well enough.
 */
final class RecordingsTest {
  private static Ear ear;

  @BeforeAll
  static void open() {
    ear = Ear.open(Grammar.bundled());
  }

  @TestFactory
  Stream<DynamicTest> demonstration() throws IOException {
    List<Path> wavs;
    try (Stream<Path> files = Files.list(Path.of("demo-data", "one-day"))) {
      wavs = files.filter(f -> f.toString().endsWith(".wav")).sorted().toList();
    }
    assertTrue(wavs.size() >= 20, "the recordings are there: " + wavs.size());
    return wavs.stream().map(wav -> DynamicTest.dynamicTest(wav.toString(), () -> check(wav)));
  }

  private static void check(Path wav) throws IOException {
    List<Heard> heard = CorpusMeasurement.heard(ear, wav, Expected.anything());
    if (Files.exists(
        wav.resolveSibling(wav.getFileName().toString().replace(".wav", ".refused")))) {
      assertTrue(heard.stream().noneMatch(h -> h instanceof Heard.Words), heard::toString);
      return;
    }
    assertEquals(1, heard.size(), heard::toString);
    Heard.Words words = assertInstanceOf(Heard.Words.class, heard.get(0));
    assertEquals(CorpusMeasurement.wordsBeside(wav), words.words());
  }

  @Test
  @Tag("long")
  void theCorpusIsHeard() throws IOException {
    CorpusMeasurement measurement = new CorpusMeasurement();
    measurement.measure(ear, CorpusMeasurement.Recording.all(Path.of("src/test/resources/corpus")));

    // It refuses rather than guesses: the voices that it hears badly make most of the difference.
    assertTrue(
        measurement.share("commands", CorpusMeasurement.Outcome.RIGHT) >= 0.90, measurement::table);
    assertTrue(
        measurement.share("commands", CorpusMeasurement.Outcome.WRONG) <= 0.015,
        measurement::table);
    // Not what was said, but nothing stands before it has been affirmed.
    assertTrue(
        measurement.share("commands", CorpusMeasurement.Outcome.WAITS) <= 0.005,
        measurement::table);
    assertTrue(
        measurement.share("talk", CorpusMeasurement.Outcome.WRONG) <= 0.015, measurement::table);
  }
}
