package rigspeak.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;

/** pocketsphinx with its model of all of English: what somebody hears who expects nothing. */
final class SecondEar {
  private static final Path MODEL = Path.of("/usr/share/pocketsphinx/model/en-us");

  private SecondEar() {}

  static boolean isPossible() {
    return Files.isDirectory(MODEL);
  }

  /** What it hears in each sound, in small letters. */
  static List<String> transcribe(Path folder, List<Sound> sounds) throws IOException {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < sounds.size(); i++) {
      names.add("heard-" + i);
      WavFile.write(folder.resolve(names.get(i) + ".wav"), sounds.get(i));
    }
    Path list = Files.write(folder.resolve("list.txt"), names);
    Path heard = folder.resolve("heard.txt");
    Process process =
        new ProcessBuilder(
                "pocketsphinx_batch",
                "-adcin",
                "yes",
                "-adchdr",
                "44",
                "-cepdir",
                folder.toString(),
                "-cepext",
                ".wav",
                "-ctl",
                list.toString(),
                "-hmm",
                MODEL.resolve("en-us").toString(),
                "-lm",
                MODEL.resolve("en-us.lm.bin").toString(),
                "-dict",
                MODEL.resolve("cmudict-en-us.dict").toString(),
                "-hyp",
                heard.toString())
            .redirectErrorStream(true)
            .start();
    String log = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.onExit().join().exitValue() != 0) {
      throw new IOException(log);
    }
    // Each line ends with the name of the file and a score in brackets.
    return Files.readAllLines(heard).stream()
        .map(line -> line.substring(0, line.lastIndexOf('(')).strip())
        .toList();
  }

  /** The text that takes the fewest changes of words, as a share of the longer of both. */
  static String nearest(String heard, List<String> texts) {
    return texts.stream()
        .min(Comparator.comparingDouble(text -> distance(words(heard), words(text))))
        .orElseThrow();
  }

  static List<String> words(String text) {
    return List.of(
        text.toLowerCase(Locale.ROOT).replaceAll("[^a-z' ]", "").strip().split(" +", -1));
  }

  private static double distance(List<String> one, List<String> other) {
    int[] row = new int[other.size() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= one.size(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int changed = diagonal + (one.get(i - 1).equals(other.get(j - 1)) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[other.size()] / (double) Math.max(one.size(), other.size());
  }
}
