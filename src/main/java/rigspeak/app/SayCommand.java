package rigspeak.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;

/** The voice alone. */
@Command(
    name = "say",
    mixinStandardHelpOptions = true,
    description = "The voice alone: speaks a text, or writes it as WAV.")
final class SayCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "TEXT", description = "the words to speak")
  private List<String> words;

  @Option(names = "--out", paramLabel = "FILE", description = "write a WAV instead of playing")
  private Path out;

  @Option(names = "--speaker", paramLabel = "NAME", description = "part of the device's name")
  private List<String> speaker = List.of();

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    Sound sound = FreeTtsVoice.load().speak(String.join(" ", words), Pace.ORDINARY);
    if (out != null) {
      WavFile.write(out, sound);
      return 0;
    }
    try (Loudspeaker loudspeaker = Devices.loudspeaker(speaker)) {
      loudspeaker.play(sound);
    }
    return 0;
  }
}
