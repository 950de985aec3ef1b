package rigspeak.hearing;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * The tool's ear and another recogniser on the same recordings, in every condition, and the tables
 * of docs/hearing.md. One command does all of it; what has been measured is kept in the output
 * folder, so that a run that was broken off goes on where it was.
 *
 * <pre>
 * corpus=target/corpus        the folder that make-recordings made
 * out=target/hearing          outcomes, tables and noisy recordings
 * part=all                    tune, held-out or all
 * conditions=all              names with commas between, or all
 * engines=rigspeak,pocketsphinx
 * settings=FILE               another ear.xml
 * sentences=60                commands played in each condition, half as many sentences of talk, and
 *                             each half of each dangerous pair, each by one voice
 * clean=all                   recordings played clean: all, or so many commands, half as much talk,
 *                             and each half of each pair by two voices
 * wip=1e-1,1e-2,1e-3          pocketsphinx's word insertion; the best on the clean ones counts
 * </pre>
 */
final class HearingComparison {
  private final Map<String, String> options;
  private final Grammar grammar = Grammar.bundled();
  private final Path out;

  private HearingComparison(Map<String, String> options) {
    this.options = options;
    this.out = Path.of(option("out", "target/hearing"));
  }

  private String option(String name, String usual) {
    return options.getOrDefault(name, usual);
  }

  public static void main(String[] args) throws Exception {
    Map<String, String> options = new LinkedHashMap<>();
    for (String arg : args) {
      String[] halves = arg.split("=", 2);
      options.put(halves[0], halves.length > 1 ? halves[1] : "");
    }
    HearingComparison comparison = new HearingComparison(options);
    comparison.run();
    String tables = HearingTables.of(comparison.out);
    Files.writeString(comparison.out.resolve("tables.md"), tables);
    System.out.println(tables);
  }

  private void run() throws IOException, InterruptedException {
    Files.createDirectories(out);
    Path corpus = Path.of(option("corpus", "target/corpus"));
    String part = option("part", "all");
    List<Recorded> all =
        Recorded.all(corpus).stream()
            .filter(r -> part.equals("all") || r.keptAside() == part.equals("held-out"))
            .sorted(Comparator.comparing(Recorded::voice).thenComparing(Recorded::file))
            .toList();
    Predicate<Recorded> some = Recorded.some(all, Integer.parseInt(option("sentences", "60")), 1);
    String clean = option("clean", "all");
    Predicate<Recorded> more =
        clean.equals("all") ? r -> true : Recorded.some(all, Integer.parseInt(clean), 2);
    List<Condition> conditions = conditions();
    for (String name : option("engines", "rigspeak,pocketsphinx").split(",", -1)) {
      List<Condition> open =
          conditions.stream().filter(c -> !Files.exists(outcomes(name, c))).toList();
      if (open.isEmpty()) {
        continue;
      }
      Engine engine = engine(name, all.stream().filter(some).toList());
      for (Condition condition : open) {
        Predicate<Recorded> mine = condition instanceof Condition.Clean ? more.or(some) : some;
        measure(engine, condition, all.stream().filter(mine).toList(), some);
      }
    }
  }

  private List<Condition> conditions() {
    String names = option("conditions", "all");
    if (names.equals("all")) {
      return Condition.all();
    }
    return List.of(names.split(",", -1)).stream().map(Condition::named).toList();
  }

  private Engine engine(String name, List<Recorded> some) throws IOException, InterruptedException {
    URL settings =
        options.containsKey("settings")
            ? Path.of(options.get("settings")).toUri().toURL()
            : Ear.class.getResource("/rigspeak/hearing/ear.xml");
    String[] choices = option("wip", "1e-1,1e-2,1e-3").split(",", -1);
    String best = choices[0];
    if (name.equals("pocketsphinx") && choices.length > 1) {
      long most = -1;
      // Not on what was kept aside, unless nothing else is there.
      List<Recorded> tuning =
          some.stream()
              .filter(r -> r.kind() != Recorded.Kind.TALK)
              .filter(r -> option("part", "all").equals("held-out") || !r.keptAside())
              .toList();
      for (String choice : choices) {
        Engine engine = Engine.named(name, grammar, settings, choice, out);
        Map<Path, Engine.Took> took = engine.hear(files(new Condition.Clean(), tuning));
        long right =
            tuning.stream()
                .filter(r -> took.containsKey(r.file()))
                .filter(
                    r -> r.outcome(grammar, took.get(r.file()).words()) == Recorded.Outcome.RIGHT)
                .count();
        System.err.println("pocketsphinx, wip " + choice + ": " + right + "/" + tuning.size());
        if (right > most) {
          most = right;
          best = choice;
        }
      }
    }
    return Engine.named(name, grammar, settings, best, out);
  }

  /** The recordings of a condition, made where they are not there yet. */
  private Map<Path, Expected> files(Condition condition, List<Recorded> recordings)
      throws IOException {
    Map<Path, Expected> files = new LinkedHashMap<>();
    for (Recorded recorded : recordings) {
      Path file = file(condition, recorded);
      if (!Files.exists(file)) {
        Files.createDirectories(file.getParent());
        Sound clean = WavFile.read(recorded.file());
        // Whole or not at all: another run may be looking for it.
        Path half = file.resolveSibling(file.getFileName() + ".part");
        WavFile.write(half, condition.heard(clean, recorded.seed()));
        Files.move(half, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      }
      files.put(file, recorded.expected());
    }
    return files;
  }

  private Path file(Condition condition, Recorded recorded) {
    if (condition instanceof Condition.Clean) {
      return recorded.file();
    }
    return out.resolve("sound")
        .resolve(condition.name())
        .resolve(recorded.voice())
        .resolve(recorded.file().getFileName());
  }

  private Path outcomes(String engine, Condition condition) {
    return out.resolve("outcomes-" + engine + "-" + condition.name() + ".csv");
  }

  private void measure(
      Engine engine, Condition condition, List<Recorded> recordings, Predicate<Recorded> some)
      throws IOException, InterruptedException {
    Map<Path, Engine.Took> took = engine.hear(files(condition, recordings));
    List<String> lines = new ArrayList<>();
    lines.add(HearingTables.Row.HEAD);
    for (Recorded recorded : recordings) {
      Path file = file(condition, recorded);
      Engine.Took mine = took.getOrDefault(file, new Engine.Took(List.of(), "nothing", 0));
      double seconds = (Files.size(file) - 44) / (2.0 * Sound.RATE);
      Recorded.Outcome outcome = recorded.outcome(grammar, mine.words());
      lines.add(
          String.join(
              ",",
              engine.name(),
              condition.name(),
              recorded.voice(),
              recorded.kind().name(),
              recorded.keptAside() ? "held-out" : "tune",
              some.test(recorded) ? "some" : "more",
              recorded.pair(),
              outcome.name(),
              String.join(" ", recorded.words()),
              String.join(" ", mine.words()),
              mine.evidence().replace(',', ';'),
              String.format(Locale.ROOT, "%.2f", seconds),
              String.format(Locale.ROOT, "%.4f", mine.busySeconds()),
              String.format(Locale.ROOT, "%.0f", engine.peakMegabytes()),
              recorded.file().getFileName().toString()));
    }
    Files.write(outcomes(engine.name(), condition), lines);
    System.err.println(engine.name() + " " + condition.name() + ": " + recordings.size());
  }
}
