package rigspeak.hearing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rigspeak.audio.Sound;
import rigspeak.audio.SoundStream;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * Measures the call on an ear that is asleep, and prints the tables of docs/hearing.md.
 *
 * <pre>
 * calls FOLDER         which true calls wake it: clean, in pink noise of 20 dB, by radio
 * near FOLDER          which near misses do
 * talk FOLDER [HOURS]  how often speech does that is not meant for it, one after the other
 * noise [HOURS]        how often noise does
 * leads FOLDER         how far each row that begins with the call is ahead of those like it
 * </pre>
 *
 * <p>Folders are made from calls.txt, near-misses.txt or any text by {@code
 * demo-data/make-recordings --lines}.
 */
final class CallMeasurement {
  private static final List<Condition> CONDITIONS =
      List.of(new Condition.Clean(), new Condition.Noisy(Noise.PINK, 20), new Condition.Radio());

  private static final int SECONDS_AN_HOUR = 3600;

  /** Noise is made piece by piece. */
  private static final int PIECE_SECONDS = 30;

  private final Ear ear = Ear.open(Grammar.bundled());

  /** What woke the ear. */
  record Wake(double atSeconds, String words) {}

  /** Everything that wakes it in a stream. */
  static List<Wake> wakes(Ear ear, SoundStream stream) throws IOException {
    List<Wake> wakes = new ArrayList<>();
    try (Listening listening = ear.listen(stream)) {
      Optional<Heard> heard = listening.next(Expected.call());
      while (heard.isPresent()) {
        if (heard.get() instanceof Heard.Words words) {
          wakes.add(new Wake(words.when().startSeconds(), words.text()));
        }
        heard = listening.next(Expected.call());
      }
    }
    return wakes;
  }

  /** The recordings of a folder, whatever depth they lie in. */
  static List<Path> recordings(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".wav")).sorted().toList();
    }
  }

  /** Sounds one after the other, until so many seconds have gone by. */
  static final class Hours implements SoundStream {
    private final Supplier<Sound> sounds;
    private final long most;
    private long read;
    private Sound sound = Sound.silence(0);
    private int at;

    Hours(Supplier<Sound> sounds, double seconds) {
      this.sounds = sounds;
      this.most = Math.round(seconds * Sound.RATE);
    }

    @Override
    public int read(short[] into, int from, int length) {
      if (read >= most) {
        return END;
      }
      while (at == sound.length()) {
        sound = sounds.get();
        at = 0;
      }
      int count = Math.min(length, sound.length() - at);
      for (int i = 0; i < count; i++) {
        into[from + i] = sound.sample(at + i);
      }
      at += count;
      read += count;
      return count;
    }

    @Override
    public void close() {
      read = most;
    }
  }

  /** The recordings over and over, with pauses as people make them. */
  static Supplier<Sound> talk(List<Path> recordings) {
    Random dice = new Random(0);
    Iterator<Path> next = Stream.generate(recordings::stream).flatMap(all -> all).iterator();
    return () -> {
      try {
        return Sound.joined(
            List.of(WavFile.read(next.next()), Sound.silence(0.2 + dice.nextDouble())));
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    };
  }

  private static Supplier<Sound> noise(Noise noise) {
    Random dice = new Random(0);
    return () -> {
      double[] samples = noise.samples(PIECE_SECONDS * Sound.RATE, dice.nextLong());
      // From hardly audible to as loud as a voice.
      double level = 30 * Math.pow(100, dice.nextDouble());
      short[] piece = new short[samples.length];
      for (int i = 0; i < piece.length; i++) {
        double value = Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, level * samples[i]));
        piece[i] = (short) Math.round(value);
      }
      return Sound.of(piece);
    };
  }

  private void tellHours(String what, Supplier<Sound> sounds, double hours) throws IOException {
    List<Wake> wakes = wakes(ear, new Hours(sounds, hours * SECONDS_AN_HOUR));
    wakes.forEach(wake -> System.out.printf("  %.0f s: %s%n", wake.atSeconds(), wake.words()));
    System.out.printf(Locale.ROOT, "| %s | %.1f h | %d wakes |%n", what, hours, wakes.size());
  }

  /** One file is one thing said; the voice ends its name. */
  private void tellFiles(Path folder, List<Condition> conditions) throws IOException {
    for (Condition condition : conditions) {
      Map<String, int[]> byVoice = new TreeMap<>();
      for (Path wav : recordings(folder)) {
        String name = wav.getFileName().toString().replace(".wav", "");
        Sound sound = condition.heard(WavFile.read(wav), name.hashCode());
        // A breath before, so that a noise is known for what it is.
        List<Wake> wakes = wakes(ear, sound.stream());
        int[] count =
            byVoice.computeIfAbsent(name.substring(name.indexOf('-') + 1), v -> new int[2]);
        count[0] += wakes.isEmpty() ? 0 : 1;
        count[1]++;
        System.out.printf("  %s %s %s%n", condition.name(), name, wakes);
      }
      byVoice.forEach(
          (voice, count) ->
              System.out.printf(
                  "| %s | %s | %d / %d |%n", condition.name(), voice, count[0], count[1]));
    }
  }

  private void tellLeads(Path folder) throws IOException {
    CallCheck check = CallCheck.read(Ear.class.getResource("/rigspeak/hearing/like-the-call.txt"));
    for (Path wav : recordings(folder)) {
      // While the ear still holds what it heard.
      ear.watch(
          (words, evidence) -> {
            String lead =
                check.beginsWithCall(words)
                    ? String.format(
                        "lead %.0f over %s",
                        check.lead(words, ear::likelihoods), check.nearest(words, ear::likelihoods))
                    : "none";
            System.out.printf(
                "%s %s sure %.3f %s%n", wav.getFileName(), lead, ear.surety(evidence), words);
          });
      CorpusMeasurement.heard(ear, wav, Expected.anything());
    }
  }

  public static void main(String[] args) throws IOException {
    CallMeasurement measurement = new CallMeasurement();
    double hours = args.length > 2 ? Double.parseDouble(args[2]) : 1;
    switch (args[0]) {
      case "calls" -> measurement.tellFiles(Path.of(args[1]), CONDITIONS);
      case "near" -> measurement.tellFiles(Path.of(args[1]), CONDITIONS.subList(0, 1));
      case "leads" -> measurement.tellLeads(Path.of(args[1]));
      case "talk" -> measurement.tellHours(args[1], talk(recordings(Path.of(args[1]))), hours);
      case "noise" -> {
        double each = (args.length > 1 ? Double.parseDouble(args[1]) : 1) / Noise.values().length;
        for (Noise noise : Noise.values()) {
          measurement.tellHours(noise.toString(), noise(noise), each);
        }
      }
      default -> throw new IllegalArgumentException(args[0]);
    }
  }
}
