package rigspeak.hearing;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * Measures the recogniser on the corpus and prints the tables of docs/hearing.md. Arguments: the
 * part of the corpus (tune, held-out or all), and optionally the folder of the corpus, another
 * configuration file, and "errors" to list what went wrong.
 */
final class CorpusMeasurement {
  private final Grammar grammar = Grammar.bundled();
  private final Map<String, Score> scores = new TreeMap<>();
  private final List<String> errors = new ArrayList<>();

  /** One recording of the corpus. */
  record Recording(Path file, String voice, boolean talk, boolean heldOut) {
    static List<Recording> all(Path corpus) throws IOException {
      return Files.readAllLines(corpus.resolve("split.csv")).stream()
          .skip(1)
          .map(line -> line.split(",", -1))
          .map(
              cells ->
                  new Recording(
                      corpus.resolve(cells[0]),
                      cells[1],
                      cells[3].equals("talk"),
                      cells[4].equals("held-out")))
          .toList();
    }

    List<String> words() throws IOException {
      return wordsBeside(file);
    }
  }

  /** The words that the text file beside a recording says are in it. */
  static List<String> wordsBeside(Path wav) throws IOException {
    Path text = wav.resolveSibling(wav.getFileName().toString().replace(".wav", ".txt"));
    return normalised(Files.readString(text));
  }

  /** Lower case, no punctuation. */
  static List<String> normalised(String text) {
    String plain = text.toLowerCase(java.util.Locale.ROOT).replaceAll("[.,;:?!]", " ").strip();
    return plain.isEmpty() ? List.of() : List.of(plain.split("\\s+", -1));
  }

  /** Everything heard in a recording but silence. */
  static List<Heard> heard(Ear ear, Path wav, Expected expected) throws IOException {
    List<Heard> all = new ArrayList<>();
    try (Listening listening = ear.listen(WavFile.open(wav))) {
      Optional<Heard> next = listening.next(expected);
      while (next.isPresent()) {
        if (!(next.get() instanceof Heard.Silence)) {
          all.add(next.get());
        }
        next = listening.next(expected);
      }
    }
    return all;
  }

  private static final class Score {
    private int said;
    private int right;
    private int wrong;
    private int waits;
    private double busySeconds;
    private double seconds;

    @Override
    public String toString() {
      return String.format(
          java.util.Locale.ROOT,
          "| %4d | %5.1f | %5.1f | %5.1f | %5.1f | %.3f |",
          said,
          100.0 * right / said,
          100.0 * wrong / said,
          100.0 * waits / said,
          100.0 * (said - right - wrong - waits) / said,
          busySeconds / seconds);
    }
  }

  private void take(Recording recording, List<Heard> heard) throws IOException {
    Outcome outcome = outcome(recording, heard);
    count(recording.talk() ? "talk" : recording.voice(), outcome, heard);
    if (!recording.talk()) {
      count("commands", outcome, heard);
    }
    boolean fault = outcome != (recording.talk() ? Outcome.REFUSED : Outcome.RIGHT);
    if (fault) {
      errors.add(recording.file() + ": " + recording.words() + " -> " + heard);
    }
  }

  private Outcome outcome(Recording recording, List<Heard> heard) throws IOException {
    boolean sure = heard.stream().anyMatch(Heard.Words.class::isInstance);
    String text = heard.stream().map(CorpusMeasurement::taken).collect(Collectors.joining(" "));
    text = text.strip();
    if (text.isEmpty()) {
      return Outcome.REFUSED;
    }
    String said = recording.talk() ? "" : String.join(" ", recording.words());
    if (!recording.talk() && heard.size() == 1 && meant(text).equals(meant(said))) {
      return Outcome.RIGHT;
    }
    return switch (Consequence.of(Optional.empty(), said, text, !sure)) {
      case STANDS -> Outcome.WRONG;
      case WAITS -> Outcome.WAITS;
      case ASKED_AGAIN -> Outcome.REFUSED;
    };
  }

  /** Its words, where anything comes of them. */
  static String taken(Heard heard) {
    if (heard instanceof Heard.Words words) {
      return words.text();
    }
    return heard instanceof Heard.Doubtful doubtful
            && Consequence.isAskedBack(Optional.empty(), doubtful.text())
        ? doubtful.text()
        : "";
  }

  private Set<List<String>> meant(String words) {
    return grammar.match(normalised(words), Expected.anything());
  }

  enum Outcome {
    RIGHT,
    WRONG,
    /** Not what was said, but nothing stands before it has been affirmed. */
    WAITS,
    /** Or heard as what cannot be; it is asked again. */
    REFUSED
  }

  private void count(String row, Outcome outcome, List<Heard> heard) {
    Score score = scores.computeIfAbsent(row, r -> new Score());
    score.said++;
    score.right += outcome == Outcome.RIGHT ? 1 : 0;
    score.wrong += outcome == Outcome.WRONG ? 1 : 0;
    score.waits += outcome == Outcome.WAITS ? 1 : 0;
    for (Heard h : heard) {
      score.busySeconds += h.when().busySeconds();
      score.seconds += h.when().endSeconds() - h.when().startSeconds();
    }
  }

  void measure(Ear ear, List<Recording> recordings) throws IOException {
    for (Recording recording : recordings) {
      take(recording, heard(ear, recording.file(), Expected.anything()));
    }
  }

  /** Share of the recordings of a row that came out so, 0 to 1. */
  double share(String row, Outcome outcome) {
    Score score = scores.get(row);
    int count =
        switch (outcome) {
          case RIGHT -> score.right;
          case WRONG -> score.wrong;
          case WAITS -> score.waits;
          case REFUSED -> score.said - score.right - score.wrong - score.waits;
        };
    return count / (double) score.said;
  }

  /** The table of docs/hearing.md. */
  String table() {
    StringBuilder table = new StringBuilder();
    table.append("| voice | said | right % | wrong % | waits % | refused % | real-time factor |\n");
    table.append("|---|---|---|---|---|---|---|\n");
    scores.forEach((row, score) -> table.append("| " + row + " " + score + "\n"));
    return table.toString();
  }

  public static void main(String[] args) throws Exception {
    String part = args[0];
    Path corpus = Path.of(args.length > 1 ? args[1] : "src/test/resources/corpus");
    CorpusMeasurement measurement = new CorpusMeasurement();
    List<Recording> recordings =
        Recording.all(corpus).stream()
            .filter(r -> part.equals("all") || r.heldOut() == part.equals("held-out"))
            .toList();
    URL settings =
        args.length > 2
            ? Path.of(args[2]).toUri().toURL()
            : Ear.class.getResource("/rigspeak/hearing/ear.xml");
    Ear ear = Ear.open(measurement.grammar, settings);
    measurement.measure(ear, recordings);
    System.out.print(measurement.table());
    if (args.length > 3) {
      measurement.errors.forEach(System.out::println);
    }
  }
}
