package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;

/** Prints how fast and how large the tool is here, beside another recogniser where there is one. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    description = {
      "How fast and how large the tool is on this machine.",
      "Prints the first verdict, a verdict, hearing, the wait for an answer, memory;",
      "and what pocketsphinx makes of the same recordings, where it is installed."
    })
final class BenchCommand implements Callable<Integer> {
  private static final int VERDICTS = 60;
  private static final int VERDICTS_TO_WARM = 20;

  @Parameters(
      arity = "0..*",
      paramLabel = "WAV",
      description = "recordings with their words in x.txt beside x.wav, or folders of them")
  private List<Path> wavs = List.of();

  @Option(
      names = "--real-time",
      paramLabel = "N",
      defaultValue = "12",
      description = "how many of them are played in real time to time the answers (12)")
  private int realTime;

  @Option(
      names = "--live",
      paramLabel = "N",
      description = {
        "instead of all that: says N of them to a second rigspeak through real sound devices",
        "(of a PulseAudio server of its own) and times the answers at its loudspeaker"
      })
  private int live;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    if (live > 0) {
      timeLive(Recordings.named(wavs));
      return 0;
    }
    Grammar grammar = Grammar.bundled();
    timeVerdicts(grammar);
    timeRopes(grammar);
    if (wavs.isEmpty()) {
      print("peak resident memory, no recogniser", "%.0f MB", Footprint.peakMegabytes());
      return 0;
    }
    long before = System.nanoTime();
    Supplier<Ear> ears = new Ahead<>(() -> Ear.open(grammar));
    Mouth mouth = new Mouth();
    Ear ear = ears.get();
    print("ear and voice loaded and warm", "%.2f s", secondsSince(before));
    print("  since the program began", "%.2f s", uptimeSeconds());
    List<Path> recordings = Recordings.named(wavs);
    timeHearing(ear, recordings);
    timeAnswers(grammar, ear, mouth, recordings.subList(0, Math.min(realTime, recordings.size())));
    print("peak resident memory", "%.0f MB", Footprint.peakMegabytes());
    Yardstick.measure(recordings).ifPresent(this::print);
    return 0;
  }

  private void timeVerdicts(Grammar grammar) {
    Session session = new Session(grammar);
    TypicalRig.sayTo(session);
    session.said("check redirect");
    print("first verdict since the program began", "%.2f s", uptimeSeconds());
    double[] milliseconds = new double[VERDICTS];
    for (int i = -VERDICTS_TO_WARM; i < VERDICTS; i++) {
      long before = System.nanoTime();
      session.said("check redirect");
      if (i >= 0) {
        milliseconds[i] = secondsSince(before) * 1000;
      }
    }
    print("a verdict over 10,000 samples, median", "%.1f ms", share(milliseconds, 0.5));
    print("a verdict over 10,000 samples, 95 of 100", "%.1f ms", share(milliseconds, 0.95));
  }

  /** Of ropes with up to five supports; twice the supports or samples should take twice as long. */
  private void timeRopes(Grammar grammar) {
    RopeBench ropes = new RopeBench(grammar);
    for (int supports : new int[] {1, 2, 3, 4, 5}) {
      for (int samples : new int[] {2_500, 10_000, 40_000}) {
        String rope = "a rope of %d supports, %,d samples".formatted(supports, samples);
        print(rope, "%.0f ms", ropes.milliseconds(supports, samples));
      }
    }
  }

  private void timeHearing(Ear ear, List<Path> recordings) throws IOException {
    double soundSeconds = 0;
    double busySeconds = 0;
    int right = 0;
    for (Path wav : recordings) {
      Sound sound = WavFile.read(wav);
      soundSeconds += sound.seconds();
      String words = "";
      try (Listening listening = ear.listen(sound.stream())) {
        Optional<Heard> heard = listening.next(Expected.anything());
        while (heard.isPresent()) {
          busySeconds += heard.get().when().busySeconds();
          words = heard.get() instanceof Heard.Words spoken ? spoken.text() : words;
          heard = listening.next(Expected.anything());
        }
      }
      if (words.equals(Yardstick.wordsBeside(wav))) {
        right++;
      }
    }
    print("recordings", "%.0f", (double) recordings.size());
    print("heard word for word", "%.1f %%", 100.0 * right / recordings.size());
    print("real-time factor of hearing", "%.3f", busySeconds / soundSeconds);
  }

  /** Plays recordings in real time; from the end of the last word to the answer's first sample. */
  private void timeAnswers(Grammar grammar, Ear ear, Mouth mouth, List<Path> recordings)
      throws IOException {
    Session session = new Session(grammar);
    List<Double> waits = new ArrayList<>();
    for (Path wav : recordings) {
      RealTime stream = new RealTime(WavFile.read(wav));
      try (Listening listening = ear.listen(stream)) {
        Optional<Heard> heard = listening.next(session.expected());
        if (heard.isPresent()) {
          Exchange exchange = session.heard(heard.get()).orElseThrow();
          Iterator<Sound> answer = mouth.speak(exchange, session.manner().pace()).iterator();
          // As soon as the first piece is there it is played.
          if (answer.hasNext() && answer.next().length() > 0) {
            waits.add(stream.secondsSinceLastWord());
          }
        }
      }
    }
    double[] seconds = waits.stream().mapToDouble(Double::doubleValue).toArray();
    if (seconds.length > 0) {
      print("last word to answer in real time, median", "%.2f s", share(seconds, 0.5));
      print("last word to answer in real time, longest", "%.2f s", share(seconds, 1));
    }
  }

  private void timeLive(List<Path> recordings) throws IOException {
    if (!SoundLoop.isPossible()) {
      throw new ParameterException(spec.commandLine(), "--live needs PulseAudio and its programs.");
    }
    LiveWaits measured = LiveWaits.of(recordings.subList(0, Math.min(live, recordings.size())));
    double[] waits = measured.seconds();
    print("from its start to the tone that says that it listens", "%.2f s", measured.start());
    print("answers timed at the loudspeaker", "%.0f", waits.length);
    if (waits.length > 0) {
      print("last word to answer, live, median", "%.3f s", share(waits, 0.5));
      print("last word to answer, live, 95 of 100", "%.3f s", share(waits, 0.95));
      print("last word to answer, live, longest", "%.3f s", share(waits, 1));
      print("of which the pause that ends an utterance", "%.3f s", ClosingPause.ORDINARY.seconds());
    }
  }

  private void print(Yardstick.Result yardstick) {
    print("pocketsphinx: heard word for word", "%.1f %%", 100 * yardstick.right());
    print("pocketsphinx: real-time factor", "%.3f", yardstick.realTimeFactor());
  }

  private void print(String what, String format, double value) {
    PrintWriter out = spec.commandLine().getOut();
    out.printf("%-45s %s%n", what, String.format(Locale.ROOT, format, value));
    out.flush();
  }

  private static double share(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.ceil(share * sorted.length) - 1];
  }

  private static double secondsSince(long nanoTime) {
    return (System.nanoTime() - nanoTime) / 1e9;
  }

  private static double uptimeSeconds() {
    return ManagementFactory.getRuntimeMXBean().getUptime() / 1e3;
  }
}
