package rigspeak.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.zip.CRC32;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.rig.Slot;

/**
 * A row of a large corpus's index.csv.
 *
 * @param words what is said
 * @param pair the kind of dangerous pair it is half of, or empty
 * @param other the other half's words
 * @param asked the slot whose bare value is expected too
 */
record Recorded(
    Path file,
    String voice,
    Kind kind,
    boolean keptAside,
    List<String> words,
    String pair,
    List<String> other,
    Optional<Slot> asked) {

  enum Kind {
    COMMAND,
    PAIR,
    TALK
  }

  static List<Recorded> all(Path corpus) throws IOException {
    return Files.readAllLines(corpus.resolve("index.csv")).stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .map(
            cells ->
                new Recorded(
                    corpus.resolve(cells[0]),
                    cells[1],
                    Kind.valueOf(cells[2].toUpperCase(java.util.Locale.ROOT)),
                    cells[3].equals("held-out"),
                    CorpusMeasurement.normalised(cells[4]),
                    cells[5],
                    CorpusMeasurement.normalised(cells[6]),
                    Slot.of(cells[7])))
        .toList();
  }

  /** The voice and the file's name, which no other recording has. */
  String name() {
    return voice + "/" + file.getFileName();
  }

  static Expected expected(Optional<Slot> asked) {
    return asked.map(Slot::key).map(Expected::answerFor).orElseGet(Expected::anything);
  }

  /** Every meaning that the grammar sees in a row of words. */
  Set<List<String>> meaning(Grammar grammar, List<String> row) {
    return grammar.match(row, expected(asked));
  }

  /**
   * What came of it. A sentence may be taken in two breaths; something else beside it is wrong.
   *
   * @param taken the rows of words that an engine took, one for each utterance
   */
  Outcome outcome(Grammar grammar, List<List<String>> taken) {
    // Words that mean nothing are taken by nobody.
    if (taken.stream().allMatch(row -> meaning(grammar, row).isEmpty())) {
      return Outcome.REFUSED;
    }
    Set<List<String>> heard = meaning(grammar, taken.stream().flatMap(List::stream).toList());
    boolean right = kind != Kind.TALK && heard.equals(meaning(grammar, words));
    if (right) {
      return Outcome.RIGHT;
    }
    boolean confused = !other.isEmpty() && heard.equals(meaning(grammar, other));
    return confused ? Outcome.CONFUSED : Outcome.WRONG;
  }

  /** What came of a recording. */
  enum Outcome {
    RIGHT,
    /** Taken with another meaning. */
    WRONG,
    /** Taken for the other half of its pair, which is wrong too. */
    CONFUSED,
    REFUSED
  }

  /**
   * The recordings that are played in every condition: of the commands that come first by a hash of
   * their words, of half as many sentences of talk, and of each half of each pair, one recording or
   * the given number for pairs; which voice says it is settled by the hash too.
   */
  static Predicate<Recorded> some(List<Recorded> all, int commands, int pairVoices) {
    Set<List<String>> chosen = new java.util.HashSet<>();
    chosen.addAll(first(all, Kind.COMMAND, commands));
    chosen.addAll(first(all, Kind.TALK, commands / 2));
    Set<Recorded> taken = new java.util.HashSet<>();
    all.stream()
        .filter(r -> r.kind() == Kind.PAIR || chosen.contains(r.words()))
        .map(r -> List.of(r.kind().name(), String.join(" ", r.words()), r.pair()))
        .distinct()
        .forEach(
            key -> {
              List<Recorded> said =
                  all.stream()
                      .filter(r -> r.kind().name().equals(key.get(0)))
                      .filter(r -> String.join(" ", r.words()).equals(key.get(1)))
                      .filter(r -> r.pair().equals(key.get(2)))
                      .toList();
              int from = (int) (hash(said.get(0).words()) / 7 % said.size());
              int most = said.get(0).kind() == Kind.PAIR ? Math.min(pairVoices, said.size()) : 1;
              for (int i = 0; i < most; i++) {
                // Five apart, so that the voices of one engine do not come together.
                taken.add(said.get((from + 5 * i) % said.size()));
              }
            });
    return taken::contains;
  }

  private static List<List<String>> first(List<Recorded> all, Kind kind, int most) {
    return all.stream()
        .filter(r -> r.kind() == kind)
        .map(Recorded::words)
        .distinct()
        .sorted(java.util.Comparator.comparingLong(Recorded::hash))
        .limit(most)
        .toList();
  }

  private static long hash(List<String> words) {
    CRC32 crc = new CRC32();
    crc.update(
        ("order " + String.join(" ", words)).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    return crc.getValue();
  }

  /** A seed of its own for each recording. */
  long seed() {
    return hash(words) * 31 + voice.hashCode();
  }
}
