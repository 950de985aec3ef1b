package rigspeak.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigspeak.hearing.Recorded.Kind;
import rigspeak.hearing.Recorded.Outcome;
import rigspeak.rig.Slot;

/** The tables of docs/hearing.md, from the outcomes that {@link HearingComparison} wrote. */
final class HearingTables {
  private static final int WORST = 30;

  private final List<Row> rows;
  private final StringBuilder text = new StringBuilder();

  private HearingTables(List<Row> rows) {
    this.rows = rows;
  }

  /** One recording heard by one engine in one condition. */
  record Row(
      String engine,
      String condition,
      String voice,
      Kind kind,
      boolean keptAside,
      String pair,
      Outcome outcome,
      String said,
      String heard,
      boolean toldTooLoud,
      boolean doubtful,
      double seconds,
      double busySeconds,
      double peakMegabytes,
      String recording,
      Optional<Slot> asked) {
    static final String HEAD =
        "engine,condition,voice,kind,part,pair,outcome,said,heard,evidence,seconds,busy,"
            + "peak_mb,file,asked";

    static Row read(String line) {
      String[] cells = line.split(",", -1);
      return new Row(
          cells[0],
          cells[1],
          cells[2],
          Kind.valueOf(cells[3]),
          cells[4].equals("held-out"),
          cells[5],
          Outcome.valueOf(cells[6]),
          cells[7],
          cells[8],
          cells[9].contains(Heard.TooNoisy.class.getSimpleName()),
          isDoubtful(cells[9]),
          Double.parseDouble(cells[10]),
          Double.parseDouble(cells[11]),
          Double.parseDouble(cells[12]),
          cells[2] + "/" + cells[13],
          Slot.of(cells[14]));
    }

    /** Nothing else was taken in it than what is asked back. */
    private static boolean isDoubtful(String evidence) {
      return evidence.contains(Heard.Doubtful.class.getSimpleName())
          && !evidence.contains(Heard.Words.class.getSimpleName());
    }

    /** As it was said, but it stands only when it has been affirmed. */
    boolean affirmedFirst() {
      return outcome == Outcome.RIGHT && Consequence.isAffirmedFirst(asked, heard, doubtful);
    }

    boolean talk() {
      return kind == Kind.TALK;
    }

    /** Taken, and not what was said. */
    boolean wrong() {
      return misheard(Consequence.STANDS);
    }

    /** Not what was said, but nothing stands before it has been affirmed. */
    boolean waits() {
      return misheard(Consequence.WAITS);
    }

    /** Not heard, or heard as what cannot be; it is asked again. */
    boolean refused() {
      return outcome == Outcome.REFUSED || misheard(Consequence.ASKED_AGAIN);
    }

    private boolean misheard(Consequence consequence) {
      return (outcome == Outcome.WRONG || outcome == Outcome.CONFUSED)
          && Consequence.of(asked, talk() ? "" : said, heard, doubtful) == consequence;
    }

    String played() {
      return condition + " " + recording;
    }

    boolean clean() {
      return condition.equals("clean");
    }
  }

  static String of(Path folder) throws IOException {
    List<Row> rows = new ArrayList<>();
    List<Path> files;
    try (Stream<Path> listed = Files.list(folder)) {
      files = listed.filter(f -> f.getFileName().toString().startsWith("outcomes-")).toList();
    }
    for (Path file : files) {
      Files.readAllLines(file).stream().skip(1).map(Row::read).forEach(rows::add);
    }
    HearingTables tables = new HearingTables(heardByAll(rows));
    tables.write();
    return tables.text.toString();
  }

  /** Of a condition that several engines have heard, only the recordings that all of them have. */
  private static List<Row> heardByAll(List<Row> rows) {
    Map<String, Set<String>> engines = new TreeMap<>();
    Map<String, Set<String>> heard = new TreeMap<>();
    for (Row row : rows) {
      engines.computeIfAbsent(row.condition(), c -> new TreeSet<>()).add(row.engine());
      heard.computeIfAbsent(row.played(), r -> new TreeSet<>()).add(row.engine());
    }
    return rows.stream()
        .filter(row -> heard.get(row.played()).equals(engines.get(row.condition())))
        .toList();
  }

  public static void main(String[] args) throws IOException {
    System.out.print(of(Path.of(args.length > 0 ? args[0] : "target/hearing")));
  }

  private void write() {
    byWhat("Clean, every recording", "part", Row::clean, HearingTables::part);
    byWhat("Voices, clean", "voice", Row::clean, Row::voice);
    Set<String> played =
        rows.stream().filter(r -> !r.clean()).map(Row::recording).collect(Collectors.toSet());
    Predicate<Row> everywhere = row -> played.contains(row.recording());
    List<String> order = Condition.all().stream().map(Condition::name).toList();
    byWhat(
        "Conditions, the same recordings in each",
        "condition",
        everywhere,
        row -> String.format("%02d %s", order.indexOf(row.condition()), row.condition()));
    byWhat(
        "Conditions, only what was kept aside",
        "condition",
        everywhere.and(Row::keptAside),
        row -> String.format("%02d %s", order.indexOf(row.condition()), row.condition()));
    pairs("Dangerous pairs, clean", Row::clean, Row::pair);
    pairs("Dangerous pairs, every other condition", row -> !row.clean(), Row::pair);
    pairs("Dangerous pairs by voice, clean", Row::clean, Row::voice);
    pairs(
        "Dangerous pairs by condition",
        everywhere,
        row -> String.format("%02d %s", order.indexOf(row.condition()), row.condition()));
    words("Words taken for others, clean", Row::clean);
    words("Words taken for others, every other condition", row -> !row.clean());
    talk();
  }

  private static String part(Row row) {
    return row.keptAside() ? "kept aside" : "tuned on";
  }

  private List<String> engines() {
    return rows.stream().map(Row::engine).distinct().sorted(Comparator.reverseOrder()).toList();
  }

  private void byWhat(String title, String head, Predicate<Row> which, Function<Row, String> what) {
    heading(title);
    List<String> engines = engines();
    line(
        "| "
            + head
            + " | commands | "
            + engines.stream()
                .map(engine -> engine + " right (affirmed first) / wrong / waits / refused % | ")
                .collect(Collectors.joining())
            + "told that it is too loud % | talk | taken % "
            + String.join(" / ", engines)
            + " | asked back % "
            + String.join(" / ", engines)
            + " | real-time factor | peak MB |");
    line("|---|---|" + "---|".repeat(engines.size()) + "---|---|---|---|---|---|");
    Map<String, List<Row>> groups = groups(which, what);
    if (groups.size() > 1 && !head.equals("condition")) {
      groups.put("~ all", rows.stream().filter(which).toList());
    }
    groups.forEach(
        (name, group) ->
            line("| " + name.replaceFirst("^(\\d\\d|~) ", "") + " | " + score(group, engines)));
  }

  private Map<String, List<Row>> groups(Predicate<Row> which, Function<Row, String> what) {
    return rows.stream()
        .filter(which)
        .collect(Collectors.groupingBy(what, TreeMap::new, Collectors.toList()));
  }

  private static String score(List<Row> rows, List<String> engines) {
    StringBuilder cells = new StringBuilder();
    List<Row> talk = rows.stream().filter(Row::talk).toList();
    List<Row> commands = rows.stream().filter(r -> !r.talk()).toList();
    cells.append(said(commands, engines)).append(" | ");
    for (String engine : engines) {
      List<Row> mine = by(engine, commands);
      cells.append(percent(mine, r -> r.outcome() == Outcome.RIGHT));
      cells.append(" (").append(percent(mine, Row::affirmedFirst)).append(") / ");
      cells.append(percent(mine, Row::wrong)).append(" / ");
      cells.append(percent(mine, Row::waits)).append(" / ");
      cells.append(percent(mine, Row::refused)).append(" | ");
    }
    cells.append(each(engines, engine -> percent(by(engine, commands), Row::toldTooLoud)));
    cells.append(" | ").append(said(talk, engines)).append(" | ");
    cells.append(each(engines, engine -> percent(by(engine, talk), Row::wrong))).append(" | ");
    cells.append(each(engines, engine -> percent(by(engine, talk), Row::waits))).append(" | ");
    cells.append(each(engines, engine -> speed(by(engine, rows)))).append(" | ");
    cells.append(each(engines, engine -> peak(by(engine, rows)))).append(" |");
    return cells.toString();
  }

  private static List<Row> by(String engine, List<Row> rows) {
    return rows.stream().filter(r -> r.engine().equals(engine)).toList();
  }

  /** How many recordings; each engine had them all. */
  private static int said(List<Row> rows, List<String> engines) {
    return engines.stream().mapToInt(engine -> by(engine, rows).size()).max().orElse(0);
  }

  private static String each(List<String> engines, Function<String, String> cell) {
    return engines.stream().map(cell).collect(Collectors.joining(" / "));
  }

  private static String speed(List<Row> rows) {
    double busy = rows.stream().mapToDouble(Row::busySeconds).sum();
    double seconds = rows.stream().mapToDouble(Row::seconds).sum();
    return rows.isEmpty() ? "-" : String.format(Locale.ROOT, "%.3f", busy / seconds);
  }

  private static String peak(List<Row> rows) {
    return String.format(
        Locale.ROOT, "%.0f", rows.stream().mapToDouble(Row::peakMegabytes).max().orElse(0));
  }

  private static String percent(List<Row> rows, Predicate<Row> which) {
    return rows.isEmpty()
        ? "-"
        : String.format(
            Locale.ROOT, "%.1f", 100.0 * rows.stream().filter(which).count() / rows.size());
  }

  private void pairs(String title, Predicate<Row> which, Function<Row, String> what) {
    heading(title);
    line("| | engine | times said | taken for the other | taken wrong otherwise | not taken |");
    line("|---|---|---|---|---|---|");
    groups(which.and(row -> row.kind() == Kind.PAIR), what)
        .forEach(
            (name, group) -> {
              for (String engine : engines()) {
                Map<Outcome, Long> counts =
                    group.stream()
                        .filter(r -> r.engine().equals(engine))
                        .collect(Collectors.groupingBy(Row::outcome, Collectors.counting()));
                long said = counts.values().stream().mapToLong(Long::longValue).sum();
                if (said > 0) {
                  line(
                      String.format(
                          Locale.ROOT,
                          "| %s | %s | %d | %d | %d | %d |",
                          name.replaceFirst("^\\d\\d ", ""),
                          engine,
                          said,
                          counts.getOrDefault(Outcome.CONFUSED, 0L),
                          counts.getOrDefault(Outcome.WRONG, 0L),
                          counts.getOrDefault(Outcome.REFUSED, 0L)));
                }
              }
            });
  }

  private void words(String title, Predicate<Row> which) {
    heading(title);
    for (String engine : engines()) {
      Map<String, Integer> counts = new TreeMap<>();
      rows.stream()
          .filter(which.and(r -> r.engine().equals(engine) && !r.talk() && r.wrong()))
          .forEach(
              r ->
                  exchanged(words(r.said()), words(r.heard()))
                      .forEach(e -> counts.merge(e, 1, Integer::sum)));
      line(
          engine
              + ": "
              + counts.entrySet().stream()
                  .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                  .limit(WORST)
                  .map(e -> e.getKey() + " " + e.getValue())
                  .collect(Collectors.joining(", "))
              + ".");
      line("");
    }
  }

  private static List<String> words(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
  }

  /** The words that stand for others when two rows are laid side by side with least change. */
  static List<String> exchanged(List<String> said, List<String> heard) {
    int[][] cost = new int[said.size() + 1][heard.size() + 1];
    for (int i = said.size(); i >= 0; i--) {
      for (int j = heard.size(); j >= 0; j--) {
        if (i == said.size() || j == heard.size()) {
          cost[i][j] = said.size() - i + heard.size() - j;
        } else {
          int same = said.get(i).equals(heard.get(j)) ? 0 : 1;
          cost[i][j] =
              Math.min(same + cost[i + 1][j + 1], 1 + Math.min(cost[i + 1][j], cost[i][j + 1]));
        }
      }
    }
    List<String> exchanged = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < said.size() || j < heard.size()) {
      boolean both = i < said.size() && j < heard.size();
      int same = both && said.get(i).equals(heard.get(j)) ? 0 : 1;
      if (both && cost[i][j] == same + cost[i + 1][j + 1]) {
        if (same == 1) {
          exchanged.add(said.get(i) + " -> " + heard.get(j));
        }
        i++;
        j++;
      } else if (i < said.size() && cost[i][j] == 1 + cost[i + 1][j]) {
        exchanged.add(said.get(i++) + " -> nothing");
      } else {
        exchanged.add("nothing -> " + heard.get(j++));
      }
    }
    return exchanged;
  }

  private void talk() {
    heading("Talk that was taken, clean");
    for (String engine : engines()) {
      Map<String, Long> taken = new LinkedHashMap<>();
      rows.stream()
          .filter(r -> r.engine().equals(engine) && r.clean() && r.talk() && r.wrong())
          .forEach(r -> taken.merge(r.said() + " -> " + r.heard(), 1L, Long::sum));
      line(engine + ": " + taken.size() + ".");
      line("");
      taken.entrySet().stream()
          .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
          .limit(WORST)
          .forEach(e -> line("- " + e.getKey() + " (" + e.getValue() + ")"));
      line("");
    }
  }

  private void heading(String title) {
    line("");
    line("### " + title);
    line("");
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
