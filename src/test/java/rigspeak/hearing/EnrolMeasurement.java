package rigspeak.hearing;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * Measures what a profile is worth and prints the table of docs/hearing.md. Argument: a folder with
 * {@code enrol} (the sentences of enrolment in their order), {@code test} (other commands) and
 * {@code talk} (ordinary talk), in each the recordings of all voices as {@code NUMBER-VOICE.wav}
 * with their texts beside them, as {@code demo-data/make-recordings --lines} writes them; then,
 * optionally, the names of the voices.
 */
final class EnrolMeasurement {
  private final Path folder;
  private final Grammar grammar = Grammar.bundled();
  private final Ear ear = Ear.open(grammar);

  private EnrolMeasurement(Path folder) {
    this.folder = folder;
  }

  /**
   * Recordings of commands, by what came of them.
   *
   * @param right as they were said, whether they stand at once or are asked back
   * @param affirmedFirst those of them that are asked back
   * @param waits not what was said, but asked back
   */
  private record Score(
      int right, int affirmedFirst, int wrong, int waits, int refused, int talkTaken) {
    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%d (%d) | %d | %d | %d | %d",
          right,
          affirmedFirst,
          wrong,
          waits,
          refused,
          talkTaken);
    }
  }

  private Score score(String voice) throws IOException {
    int right = 0;
    int affirmedFirst = 0;
    int wrong = 0;
    int waits = 0;
    int refused = 0;
    ear.forgetVoices();
    for (Path wav : wavs("test", voice)) {
      String said = String.join(" ", CorpusMeasurement.wordsBeside(wav));
      List<Heard> heard = CorpusMeasurement.heard(ear, wav, Expected.anything());
      boolean sure = heard.stream().anyMatch(Heard.Words.class::isInstance);
      String taken = heard.stream().map(CorpusMeasurement::taken).collect(joining(" ")).strip();
      if (taken.isEmpty()) {
        refused++;
      } else if (meant(taken).equals(meant(said))) {
        right++;
        affirmedFirst += Consequence.isAffirmedFirst(Optional.empty(), taken, !sure) ? 1 : 0;
      } else {
        switch (Consequence.of(Optional.empty(), said, taken, !sure)) {
          case STANDS -> wrong++;
          case WAITS -> waits++;
          case ASKED_AGAIN -> refused++;
        }
      }
    }
    ear.forgetVoices();
    int talk = 0;
    for (Path wav : wavs("talk", voice)) {
      talk +=
          CorpusMeasurement.heard(ear, wav, Expected.anything()).stream()
                  .anyMatch(h -> h instanceof Heard.Words)
              ? 1
              : 0;
    }
    return new Score(right, affirmedFirst, wrong, waits, refused, talk);
  }

  private Set<List<String>> meant(String words) {
    return grammar.match(List.of(words.split(" ", -1)), Expected.anything());
  }

  private String row(String voice) throws IOException {
    Score before = score(voice);
    Enrolment enrolment = new Enrolment(ear);
    List<Path> readings = wavs("enrol", voice);
    for (int i = 0; i < readings.size(); i++) {
      try (WavFile wav = WavFile.open(readings.get(i))) {
        enrolment.read(i, wav);
      }
    }
    Optional<Enrolment.Enrolled> enrolled = enrolment.finish("measured");
    Score after = before;
    String kept = enrolment.taken() + ", no profile";
    if (enrolled.isPresent()) {
      ear.use(enrolled.get().profile());
      after = score(voice);
      kept =
          enrolment.taken()
              + ", "
              + enrolled.get().understoodBefore()
              + " -> "
              + enrolled.get().understoodWith();
    }
    ear.useNone();
    return "| " + voice + " | " + before + " | " + after + " | " + kept + " |";
  }

  private List<Path> wavs(String part, String voice) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(part))) {
      return files.filter(f -> f.toString().endsWith("-" + voice + ".wav")).sorted().toList();
    }
  }

  private static String voice(Path wav) {
    return wav.getFileName().toString().replaceFirst("^\\d+-", "").replace(".wav", "");
  }

  public static void main(String[] args) throws IOException {
    EnrolMeasurement measurement = new EnrolMeasurement(Path.of(args[0]));
    List<String> voices = List.of(args).subList(1, args.length);
    if (voices.isEmpty()) {
      try (Stream<Path> files = Files.list(measurement.folder.resolve("enrol"))) {
        voices =
            files
                .filter(f -> f.toString().endsWith(".wav"))
                .map(EnrolMeasurement::voice)
                .distinct()
                .sorted()
                .toList();
      }
    }
    System.out.println(
        "| voice | right (affirmed first) | wrong | waits | refused | talk taken"
            + " | right (affirmed first) | wrong | waits | refused | talk taken"
            + " | sentences kept, understood |");
    System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (String voice : voices) {
      System.out.println(measurement.row(voice));
    }
  }
}
