package rigspeak.hearing;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * How well the ear hears what is said in a read-back, clean and over a hand-held radio. Prints a
 * row for each; the recordings of a folder have their words beside them.
 */
public final class RadioMeasurement {
  private RadioMeasurement() {}

  public static void main(String[] arguments) throws IOException {
    Grammar grammar = Grammar.bundled();
    Ear ear = Ear.open(grammar);
    PrintStream out = System.out;
    for (Condition condition : List.of(new Condition.Clean(), new Condition.Radio())) {
      measure(ear, grammar, Path.of(arguments[0]), condition, out);
    }
  }

  private static void measure(
      Ear ear, Grammar grammar, Path folder, Condition condition, PrintStream out)
      throws IOException {
    List<Path> wavs;
    try (Stream<Path> all = Files.walk(folder)) {
      wavs = all.filter(file -> file.toString().endsWith(".wav")).sorted().toList();
    }
    int right = 0;
    int wrong = 0;
    for (Path wav : wavs) {
      Set<List<String>> said =
          grammar.match(CorpusMeasurement.wordsBeside(wav), Expected.overTheRadio());
      List<Heard> heard = heard(ear, wav, condition);
      boolean words = heard.stream().anyMatch(Heard.Words.class::isInstance);
      boolean same =
          heard.size() == 1
              && heard.get(0) instanceof Heard.Words one
              && grammar.match(one.words(), Expected.overTheRadio()).equals(said);
      right += same ? 1 : 0;
      wrong += words && !same ? 1 : 0;
      if (!same) {
        out.println(wav.getFileName() + " " + CorpusMeasurement.wordsBeside(wav) + " -> " + heard);
      }
    }
    out.printf(
        Locale.ROOT,
        "%s: %d said, %d right, %d wrong, %d refused%n",
        condition.name(),
        wavs.size(),
        right,
        wrong,
        wavs.size() - right - wrong);
  }

  private static List<Heard> heard(Ear ear, Path wav, Condition condition) throws IOException {
    List<Heard> all = new ArrayList<>();
    ear.forgetVoices();
    Sound clean = Sound.readAll(WavFile.open(wav));
    try (Listening listening =
        ear.listen(condition.heard(clean, wav.getFileName().hashCode()).stream())) {
      for (var next = listening.next(Expected.overTheRadio());
          next.isPresent();
          next = listening.next(Expected.overTheRadio())) {
        if (!(next.get() instanceof Heard.Silence)) {
          all.add(next.get());
        }
      }
    }
    return all;
  }
}
