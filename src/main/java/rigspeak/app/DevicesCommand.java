package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.hearing.SoundCheck;

/** The sound devices of this machine. */
@Command(
    name = "devices",
    mixinStandardHelpOptions = true,
    description = {
      "Lists microphones and loudspeakers by name.",
      "With --meter, listens while you speak and tells how well you are heard."
    })
final class DevicesCommand implements Callable<Integer> {
  private static final double METER_SECONDS = 5;

  @Option(names = "--meter", description = "listen for five seconds and tell the level")
  private boolean meter;

  @Option(
      names = "--mic",
      paramLabel = "NAME",
      description = "for --meter: part of the microphone's name; again for a second choice")
  private List<String> microphones = List.of();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    if (meter) {
      measure();
    } else {
      list("microphones", Devices.microphones());
      list("loudspeakers", Devices.loudspeakers());
    }
    return 0;
  }

  private void list(String what, List<String> names) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(what + ":");
    names.forEach(name -> out.println("  " + name));
    if (names.isEmpty()) {
      out.println("  none");
    }
  }

  private void measure() throws IOException, NoSuchDevice {
    PrintWriter out = spec.commandLine().getOut();
    try (Microphone microphone = Devices.microphone(microphones)) {
      out.println("Speak now into " + microphone.name() + ", as you will aloft.");
      out.flush();
      microphone.reopen(System.nanoTime());
      SoundCheck check = SoundCheck.of(microphone, METER_SECONDS);
      out.printf(
          "voice %.0f dB, background %.0f dB, peak %.0f dB, clipped %.1f %%%n",
          check.voiceDecibels(),
          check.backgroundDecibels(),
          check.peakDecibels(),
          100 * check.clippedShare());
      out.println(words(check.finding()));
    }
  }

  private static String words(SoundCheck.Finding finding) {
    return switch (finding) {
      case FINE -> "Fine.";
      case CLIPPED -> "Clipping: turn the microphone down, or hold it farther away.";
      case TOO_NOISY -> "Too loud: the noise is nearly as loud as the voice.";
      case TOO_QUIET -> "Too quiet: turn the microphone up, or bring it nearer.";
      case NO_VOICE -> "No voice: there is sound, but nobody speaks.";
    };
  }
}
