package rigspeak.hearing;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.rig.Slot;

/** A recogniser that is measured: it gets files and says what it took of each. */
interface Engine {
  /** As it stands in tables and folder names. */
  String name();

  /** What is heard in each file of a recording; all of them are heard in this order. */
  Map<Path, Took> hear(Map<Path, Recorded> files) throws IOException, InterruptedException;

  /** The largest resident memory so far, megabytes. */
  double peakMegabytes() throws IOException;

  /**
   * What an engine took of a file.
   *
   * @param rows the words it took, a row for each utterance; empty if none
   * @param evidence whatever else it says of its decision
   * @param busySeconds processor time
   */
  record Took(List<List<String>> rows, String evidence, double busySeconds) {
    String text() {
      return rows.stream().flatMap(List::stream).collect(Collectors.joining(" "));
    }
  }

  /** The high-water mark of a process, as Linux keeps it; 0 when it is gone. */
  static double highWater(String process) throws IOException {
    Path status = Path.of("/proc", process, "status");
    if (!Files.exists(status)) {
      return 0;
    }
    try {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmHWM:")) {
          return Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024;
        }
      }
    } catch (IOException e) {
      // It ended while it was being looked at.
      return 0;
    }
    return 0;
  }

  /** The tool's own ear, one and the same for all files, as a crew has it. */
  final class Ours implements Engine {
    private final Ear ear;
    private final List<String> rows = new ArrayList<>();

    Ours(Ear ear) {
      this.ear = ear;
      ear.watch((words, evidence) -> rows.add(FoundRow.written(words, evidence)));
    }

    @Override
    public String name() {
      return "rigspeak";
    }

    @Override
    public Map<Path, Took> hear(Map<Path, Recorded> files) throws IOException {
      Map<Path, Took> took = new LinkedHashMap<>();
      for (Map.Entry<Path, Recorded> entry : files.entrySet()) {
        rows.clear();
        Recorded recorded = entry.getValue();
        List<Heard> heard =
            CorpusMeasurement.heard(ear, entry.getKey(), Recorded.expected(recorded.asked()));
        took.put(entry.getKey(), took(recorded.asked(), heard));
      }
      return took;
    }

    private Took took(Optional<Slot> asked, List<Heard> heard) {
      List<List<String>> taken = new ArrayList<>();
      double busy = 0;
      List<String> evidence = new ArrayList<>();
      for (Heard one : heard) {
        Heard told = one;
        if (one instanceof Heard.Words w) {
          taken.add(w.words());
        } else if (one instanceof Heard.Doubtful d) {
          if (Consequence.isAskedBack(asked, d.text())) {
            taken.add(d.words());
          } else {
            told = d.otherwise();
          }
        }
        evidence.add(evidence(told));
        busy += one.when().busySeconds();
      }
      return new Took(taken, String.join(" / ", evidence) + String.join("", rows), busy);
    }

    /** Everything that is told of an utterance but its words and its time. */
    private static String evidence(Heard heard) {
      return heard.getClass().getSimpleName()
          + Arrays.stream(heard.getClass().getRecordComponents())
              .filter(c -> !List.of("words", "otherwise", "when").contains(c.getName()))
              .map(c -> " " + c.getName() + "=" + value(heard, c))
              .collect(Collectors.joining());
    }

    private static Object value(Heard heard, RecordComponent component) {
      try {
        return component.getAccessor().invoke(heard);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }

    @Override
    public double peakMegabytes() throws IOException {
      return highWater("self");
    }
  }

  /** Debian's pocketsphinx with the same grammar and the same words. */
  final class Pocketsphinx implements Engine {
    private static final Path MODEL = Path.of("/usr/share/pocketsphinx/model/en-us");
    private static final Pattern HYPOTHESIS = Pattern.compile("(.*)\\((\\S+) -?\\d+\\)");
    private static final Pattern SPENT =
        Pattern.compile(".*INFO: batch\\.c\\(\\d+\\): (\\S+): .* ([0-9.]+) seconds CPU,.*");

    private final String wordInsertion;
    private final Path scratch;
    private double peak;

    Pocketsphinx(String wordInsertion, Path scratch) {
      this.wordInsertion = wordInsertion;
      this.scratch = scratch;
    }

    @Override
    public String name() {
      return "pocketsphinx";
    }

    @Override
    public Map<Path, Took> hear(Map<Path, Recorded> files)
        throws IOException, InterruptedException {
      Map<Path, Took> took = new LinkedHashMap<>();
      Map<Expected, List<Path>> byExpected =
          files.keySet().stream()
              .collect(
                  Collectors.groupingBy(
                      file -> Recorded.expected(files.get(file).asked()),
                      LinkedHashMap::new,
                      Collectors.toList()));
      for (Map.Entry<Expected, List<Path>> mine : byExpected.entrySet()) {
        took.putAll(hear(mine.getValue(), mine.getKey()));
      }
      return took;
    }

    private Map<Path, Took> hear(List<Path> files, Expected expected)
        throws IOException, InterruptedException {
      Files.createDirectories(scratch);
      Map<String, Path> byName = new HashMap<>();
      for (Path file : files) {
        byName.put(file.toAbsolutePath().toString().replaceAll("\\.wav$", ""), file);
      }
      Path control = scratch.resolve("files.txt");
      Files.write(
          control,
          files.stream()
              .map(file -> file.toAbsolutePath().toString().replaceAll("\\.wav$", ""))
              .toList());
      Path heard = scratch.resolve("heard.txt");
      Path log = scratch.resolve("log.txt");
      List<String> command =
          List.of(
              "pocketsphinx_batch",
              "-adcin",
              "yes",
              "-adchdr",
              "44",
              "-cepdir",
              "/",
              "-cepext",
              ".wav",
              "-ctl",
              control.toString(),
              "-hyp",
              heard.toString(),
              "-hmm",
              MODEL.resolve("en-us").toString(),
              "-dict",
              dictionary().toString(),
              "-jsgf",
              grammar(expected).toString(),
              "-wip",
              wordInsertion);
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start();
      while (!process.waitFor(200, java.util.concurrent.TimeUnit.MILLISECONDS)) {
        peak = Math.max(peak, highWater(Long.toString(process.pid())));
      }
      if (process.exitValue() != 0) {
        throw new IOException("pocketsphinx_batch failed, see " + log);
      }
      return took(byName, heard, log);
    }

    private static Map<Path, Took> took(Map<String, Path> byName, Path heard, Path log)
        throws IOException {
      Map<String, Double> spent = new HashMap<>();
      for (String line : Files.readAllLines(log, StandardCharsets.ISO_8859_1)) {
        Matcher matcher = SPENT.matcher(line);
        if (matcher.matches()) {
          spent.put(matcher.group(1), Double.parseDouble(matcher.group(2)));
        }
      }
      Map<Path, Took> took = new LinkedHashMap<>();
      for (String line : Files.readAllLines(heard)) {
        Matcher matcher = HYPOTHESIS.matcher(line);
        if (matcher.matches()) {
          String name = matcher.group(2);
          List<String> words =
              CorpusMeasurement.normalised(matcher.group(1).replaceAll("\\(\\d+\\)", ""));
          took.put(byName.get(name), new Took(List.of(words), "", spent.getOrDefault(name, 0.0)));
        }
      }
      return took;
    }

    /** The model's own dictionary and, after it, the words of ours. */
    private Path dictionary() throws IOException {
      Path file = scratch.resolve("words.dict");
      Files.writeString(
          file,
          Files.readString(MODEL.resolve("cmudict-en-us.dict"))
              + Files.readString(Path.of("grammars/rigspeak.dict")));
      return file;
    }

    /** The same grammar; with the bare value of a slot beside the utterance where it is open. */
    private Path grammar(Expected expected) throws IOException {
      Path file = scratch.resolve("grammar.jsgf");
      String rules =
          new TreeSet<>(expected.rules())
              .stream().map(rule -> "<" + rule + ">").collect(Collectors.joining(" | "));
      String text = Files.readString(Path.of("grammars/rigspeak.jsgf"));
      Files.writeString(
          file,
          expected.equals(Expected.anything())
              ? text
              : text.replace("public <utterance>", "<utterance>")
                  + "\npublic <open> = "
                  + rules
                  + ";\n");
      return file;
    }

    @Override
    public double peakMegabytes() {
      return peak;
    }
  }

  /** An engine by its name. */
  static Engine named(String name, Grammar grammar, java.net.URL settings, String wip, Path out) {
    return name.equals("rigspeak")
        ? new Ours(Ear.open(grammar, settings))
        : new Pocketsphinx(wip, out.resolve("scratch"));
  }
}
