package rigspeak.hearing;

import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

final class CallMeasurement {
  public static void main(String[] args) throws Exception {
    Expected expected = args[0].equals("any") ? Expected.anything() : Expected.call();
    URL grammarFile = Path.of(args[1]).toUri().toURL();
    Grammar grammar = Grammar.read(grammarFile);
    long t0 = System.nanoTime();
    Ear ear = Ear.open(grammar);
    ear.expect(expected);
    System.out.printf("open %.1f s%n", (System.nanoTime() - t0) / 1e9);
    String phrase = args[2];
    for (int i = 3; i < args.length; i++) {
      Path folder = Path.of(args[i]);
      List<Path> wavs;
      try (Stream<Path> files = Files.list(folder)) {
        wavs = files.filter(f -> f.toString().endsWith(".wav")).sorted().toList();
      }
      double seconds = 0;
      double busy = 0;
      int woken = 0;
      for (Path wav : wavs) {
        Sound sound = WavFile.read(wav);
        seconds += sound.seconds();
        for (Heard heard : CorpusMeasurement.heard(ear, wav, expected)) {
          busy += heard.when().busySeconds();
          if (heard instanceof Heard.Words words && words.text().startsWith(phrase)) {
            woken++;
            System.out.println("WAKE " + wav.getFileName() + " " + words.text());
          }
        }
      }
      System.out.printf(
          "%s: %d files %.2f h, woken %d, rtf %.3f%n",
          folder, wavs.size(), seconds / 3600, woken, busy / seconds);
    }
  }
}
