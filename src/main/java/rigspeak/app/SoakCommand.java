package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.journal.CrewFolder;

/** Whether anything grows while one talks for hours. */
@Command(
    name = "soak",
    mixinStandardHelpOptions = true,
    description = {
      "Holds a live conversation for hours of simulated time, as fast as the machine can, and",
      "prints what the program holds every quarter of an hour, and in the midst of noise.",
      "A working day: a dozen recordings, then minutes of quiet, saws and talk played backward,",
      "in which it sleeps, and so on; the headset is pulled once in a while.",
      "Exit code 1 if anything grows."
    })
final class SoakCommand implements Callable<Integer> {
  /** In less there are too few looks to tell growth from chance. */
  private static final double LEAST_HOURS = 0.25;

  private static final double MOST_HOURS = 100;
  private static final double REST_SECONDS = 180;
  private static final int LOOKS_AN_HOUR = 4;
  private static final int GROWS = 1;

  /** Six in each third: the least of fewer hangs on what happened to be held. */
  private static final int LEAST_LOOKS = 18;

  @Parameters(arity = "1..*", paramLabel = "WAV", description = "recordings or folders of them")
  private List<Path> wavs;

  @Option(
      names = "--hours",
      paramLabel = "HOURS",
      defaultValue = "4",
      description = "of simulated time (${DEFAULT-VALUE})")
  private double hours;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    if (!(hours >= LEAST_HOURS && hours <= MOST_HOURS)) {
      throw new ParameterException(
          spec.commandLine(), "--hours is a number from 0.25 to 100, not " + hours + ".");
    }
    List<Sound> recordings = new ArrayList<>();
    for (Path wav : Recordings.named(wavs)) {
      recordings.add(WavFile.read(wav));
    }
    Grammar grammar = Grammar.bundled();
    PrintWriter out = spec.commandLine().getOut();
    out.println("simulated  heap MB  in noise MB  resident MB  threads  open files");
    int looks = Math.max(LEAST_LOOKS, (int) Math.round(LOOKS_AN_HOUR * hours));
    CrewFolder crew = new CrewFolder(Files.createTempDirectory("rigspeak-soak-"), "soak");
    Soak.Day day;
    try (Scribe scribe =
        new JournalScribe(
            crew, Clock.system(ZoneId.systemDefault()), spec.commandLine().getErr())) {
      day =
          new Soak(grammar, Ear.open(grammar), new Mouth(), scribe)
              .run(recordings, hours * 3600, REST_SECONDS, looks, this::print);
    }
    out.printf(
        Locale.ROOT,
        "%d recordings said, %d lines in the journal in %s, at its peak %.0f MB resident%n",
        day.said(),
        crew.verify().values().stream().mapToInt(CrewFolder.Verified::lines).sum(),
        crew.folder(),
        Footprint.peakMegabytes());
    List<String> growing = Footprint.growing(day.looks());
    out.println(growing.isEmpty() ? "Nothing grows." : "Grows: " + String.join(", ", growing));
    out.flush();
    return growing.isEmpty() ? 0 : GROWS;
  }

  private void print(Footprint look) {
    int minutes = (int) (look.seconds() / 60);
    PrintWriter out = spec.commandLine().getOut();
    out.printf(
        Locale.ROOT,
        "%5d:%02d    %7.1f  %11.1f  %11.0f  %7d  %10d%n",
        minutes / 60,
        minutes % 60,
        look.heapMegabytes(),
        look.noiseMegabytes(),
        look.residentMegabytes(),
        look.threads(),
        look.handles());
    out.flush();
  }
}
