package rigspeak.hearing;

import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Grammar;
import rigspeak.rig.Slot;

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
 * decide=again                before the tables, what was found is taken or refused once more, by the
 *                             weights as they are now
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
    if (comparison.option("decide", "once").equals("again")) {
      comparison.decideAgain();
    }
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
      Optional<Engine> engine = Optional.empty();
      for (Condition condition : conditions) {
        Predicate<Recorded> mine = condition instanceof Condition.Clean ? more.or(some) : some;
        List<Recorded> open = notYetHeard(name, condition, all.stream().filter(mine).toList());
        if (engine.isEmpty() && !open.isEmpty()) {
          engine = Optional.of(engine(name, all.stream().filter(some).toList()));
        }
        // Voice after voice is written down; the other recogniser would load anew for each.
        Collection<List<Recorded>> batches =
            name.equals("rigspeak") ? byVoice(open) : open.isEmpty() ? List.of() : List.of(open);
        for (List<Recorded> batch : batches) {
          measure(engine.orElseThrow(), condition, batch);
        }
      }
    }
  }

  private static Collection<List<Recorded>> byVoice(List<Recorded> recordings) {
    return recordings.stream()
        .collect(Collectors.groupingBy(Recorded::voice, TreeMap::new, Collectors.toList()))
        .values();
  }

  private List<Recorded> notYetHeard(String engine, Condition condition, List<Recorded> recordings)
      throws IOException {
    Path file = outcomes(engine, condition);
    if (!Files.exists(file)) {
      return recordings;
    }
    Set<String> heard =
        Files.readAllLines(file).stream()
            .skip(1)
            .map(HearingTables.Row::read)
            .map(HearingTables.Row::recording)
            .collect(Collectors.toSet());
    return recordings.stream().filter(r -> !heard.contains(r.name())).toList();
  }

  private List<Condition> conditions() {
    String names = option("conditions", "all");
    if (names.equals("all")) {
      return Condition.all();
    }
    return List.of(names.split(",", -1)).stream().map(Condition::named).toList();
  }

  private Engine engine(String name, List<Recorded> some) throws IOException, InterruptedException {
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
        Engine engine = Engine.named(name, grammar, settings(), choice, out);
        Map<Path, Engine.Took> took = engine.hear(files(new Condition.Clean(), tuning));
        long right =
            tuning.stream()
                .filter(r -> took.containsKey(r.file()))
                .filter(
                    r -> r.outcome(grammar, took.get(r.file()).rows()) == Recorded.Outcome.RIGHT)
                .count();
        System.err.println("pocketsphinx, wip " + choice + ": " + right + "/" + tuning.size());
        if (right > most) {
          most = right;
          best = choice;
        }
      }
    }
    return Engine.named(name, grammar, settings(), best, out);
  }

  private URL settings() throws IOException {
    return options.containsKey("settings")
        ? Path.of(options.get("settings")).toUri().toURL()
        : Ear.class.getResource("/rigspeak/hearing/ear.xml");
  }

  /** The recordings of a condition, made where they are not there yet. */
  private Map<Path, Recorded> files(Condition condition, List<Recorded> recordings)
      throws IOException {
    Map<Path, Recorded> files = new LinkedHashMap<>();
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
      files.put(file, recorded);
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

  /**
   * What was found and what spoke for it is in the outcomes; only whether that is enough is new.
   */
  private void decideAgain() throws IOException {
    Acceptance acceptance = new ConfigurationManager(settings()).lookup("acceptance");
    Map<String, Recorded> recorded =
        Recorded.all(Path.of(option("corpus", "target/corpus"))).stream()
            .collect(Collectors.toMap(Recorded::name, r -> r));
    for (Condition condition : Condition.all()) {
      Path file = outcomes("rigspeak", condition);
      if (Files.exists(file)) {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.replaceAll(
            line -> line.equals(HearingTables.Row.HEAD) ? line : again(line, recorded, acceptance));
        Files.write(file, lines);
      }
    }
  }

  private String again(String line, Map<String, Recorded> recorded, Acceptance acceptance) {
    List<FoundRow> found = FoundRow.in(line);
    HearingTables.Row row = HearingTables.Row.read(line);
    List<Class<? extends Heard>> heard = new ArrayList<>();
    List<List<String>> taken = new ArrayList<>();
    for (FoundRow each : found) {
      if (acceptance.isSure(each.evidence(), Caution.NORMAL)) {
        heard.add(Heard.Words.class);
        taken.add(each.words());
      } else if (acceptance.isWorthAsking(each.evidence(), Caution.NORMAL)
          && Consequence.isAskedBack(row.asked(), String.join(" ", each.words()))) {
        heard.add(Heard.Doubtful.class);
        taken.add(each.words());
      }
    }
    Recorded.Outcome outcome = recorded.get(row.recording()).outcome(grammar, taken);
    String[] cells = line.split(",", -1);
    String tooLoud =
        row.toldTooLoud() && taken.isEmpty() ? Heard.TooNoisy.class.getSimpleName() : "";
    cells[9] =
        heard.stream().map(Class::getSimpleName).collect(Collectors.joining(" / ", "", tooLoud))
            + found.stream()
                .map(each -> FoundRow.written(each.words(), each.evidence()))
                .collect(Collectors.joining());
    cells[6] = outcome.name();
    cells[8] = taken.stream().flatMap(List::stream).collect(Collectors.joining(" "));
    return String.join(",", cells);
  }

  private Path outcomes(String engine, Condition condition) {
    return out.resolve("outcomes-" + engine + "-" + condition.name() + ".csv");
  }

  private void measure(Engine engine, Condition condition, List<Recorded> recordings)
      throws IOException, InterruptedException {
    Map<Path, Engine.Took> took = engine.hear(files(condition, recordings));
    Path outcomes = outcomes(engine.name(), condition);
    List<String> lines = new ArrayList<>();
    if (!Files.exists(outcomes)) {
      lines.add(HearingTables.Row.HEAD);
    }
    for (Recorded recorded : recordings) {
      Path file = file(condition, recorded);
      Engine.Took mine = took.getOrDefault(file, new Engine.Took(List.of(), "nothing", 0));
      double seconds = (Files.size(file) - 44) / (2.0 * Sound.RATE);
      Recorded.Outcome outcome = recorded.outcome(grammar, mine.rows());
      lines.add(
          String.join(
              ",",
              engine.name(),
              condition.name(),
              recorded.voice(),
              recorded.kind().name(),
              recorded.keptAside() ? "held-out" : "tune",
              recorded.pair(),
              outcome.name(),
              String.join(" ", recorded.words()),
              mine.text(),
              mine.evidence().replace(',', ';'),
              String.format(Locale.ROOT, "%.2f", seconds),
              String.format(Locale.ROOT, "%.4f", mine.busySeconds()),
              String.format(Locale.ROOT, "%.0f", engine.peakMegabytes()),
              recorded.file().getFileName().toString(),
              recorded.asked().map(Slot::key).orElse("")));
    }
    Files.write(outcomes, lines, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    System.err.println(engine.name() + " " + condition.name() + ": " + recordings.size() + " more");
  }
}
