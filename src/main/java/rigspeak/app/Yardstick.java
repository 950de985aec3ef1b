package rigspeak.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigspeak.audio.WavFile;

/** What another recogniser makes of the same recordings with the same model and grammar. */
final class Yardstick {
  private static final Path MODEL = Path.of("/usr/share/pocketsphinx/model/en-us");
  private static final Pattern LINE = Pattern.compile("(.*)\\((\\S+) -?\\d+\\)");

  /** The best of what was tried; its default inserts words. */
  private static final String WORD_INSERTION = "1e-2";

  /**
   * How it did.
   *
   * @param right share heard word for word
   * @param realTimeFactor of the whole run, start included
   */
  record Result(double right, double realTimeFactor) {}

  private Yardstick() {}

  /** Nothing if pocketsphinx is not installed or fails. */
  static Optional<Result> measure(List<Path> recordings) throws IOException {
    if (!Files.isDirectory(MODEL)) {
      return Optional.empty();
    }
    Path scratch = Files.createTempDirectory("rigspeak-yardstick");
    try {
      return run(scratch, recordings);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } finally {
      clear(scratch);
    }
  }

  private static Optional<Result> run(Path scratch, List<Path> recordings)
      throws IOException, InterruptedException {
    Path grammar = scratch.resolve("rigspeak.jsgf");
    Files.writeString(grammar, resource("rigspeak.jsgf"));
    Path words = scratch.resolve("words.dict");
    String known = Files.readString(MODEL.resolve("cmudict-en-us.dict"));
    Files.writeString(words, known + resource("rigspeak.dict"));
    Path control = scratch.resolve("files.txt");
    Files.write(
        control,
        recordings.stream()
            .map(wav -> wav.toAbsolutePath().toString().replaceAll("\\.[wW][aA][vV]$", ""))
            .toList());
    Path heard = scratch.resolve("heard.txt");
    long before = System.nanoTime();
    Process process;
    try {
      process =
          new ProcessBuilder(
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
                  words.toString(),
                  "-jsgf",
                  grammar.toString(),
                  "-wip",
                  WORD_INSERTION)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException e) {
      return Optional.empty();
    }
    if (process.waitFor() != 0) {
      return Optional.empty();
    }
    double seconds = (System.nanoTime() - before) / 1e9;
    return Optional.of(score(recordings, Files.readAllLines(heard), seconds));
  }

  private static Result score(List<Path> recordings, List<String> lines, double seconds)
      throws IOException {
    Map<String, String> byName = new HashMap<>();
    for (String line : lines) {
      Matcher matcher = LINE.matcher(line);
      if (matcher.matches()) {
        String words = matcher.group(1).replaceAll("\\(\\d+\\)", "").strip();
        byName.put(matcher.group(2) + ".wav", words);
      }
    }
    int right = 0;
    double soundSeconds = 0;
    for (Path wav : recordings) {
      String words = byName.getOrDefault(wav.toAbsolutePath().toString(), "");
      if (words.equals(wordsBeside(wav))) {
        right++;
      }
      soundSeconds += WavFile.read(wav).seconds();
    }
    return new Result((double) right / recordings.size(), seconds / soundSeconds);
  }

  /** The words of the text file beside a recording; none if there is no such file. */
  static String wordsBeside(Path wav) throws IOException {
    Path text = Path.of(wav.toString().replaceAll("\\.[wW][aA][vV]$", ".txt"));
    return Files.exists(text) ? Files.readString(text).strip() : "";
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = Yardstick.class.getResourceAsStream("/rigspeak/grammars/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static void clear(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.collect(Collectors.toList())) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
