package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.VirtualLine;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;

/** A headset, tried by voice. */
@Command(
    name = "sound-check",
    mixinStandardHelpOptions = true,
    description = {
      "Tries microphone and loudspeaker by voice, on the ground, before anyone climbs.",
      "It names them, plays its sounds, listens how loud the place is, and asks for a sentence, up",
      "to three times. It ends with one sentence: ready, or what to change.",
      "Exit code 0: ready. 1: not ready."
    })
final class SoundCheckCommand implements Callable<Integer> {
  private static final int NOT_READY = 1;

  @Option(
      names = "--from",
      paramLabel = "WAV",
      description = {
        "recordings in place of the microphone, a folder's in the order of names: first the place",
        "without a voice, then one for each time it asks; nothing is played"
      })
  private List<Path> recordings = List.of();

  @Mixin private LiveOptions live;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    ClosingPause pause = live.pause();
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    LiveConversation.Lines lines = recordings.isEmpty() ? live.lines() : recorded();
    HeadsetTrial trial =
        new HeadsetTrial(
            () -> hearing.open(Grammar.bundled(), err),
            new Mouth(),
            pause,
            spec.commandLine().getOut());
    return trial.run(lines) ? 0 : NOT_READY;
  }

  private LiveConversation.Lines recorded() throws IOException {
    List<Sound> sounds = new ArrayList<>();
    for (Path wav : Recordings.named(recordings)) {
      sounds.add(WavFile.read(wav));
    }
    return new LiveConversation.Lines() {
      @Override
      public Microphone microphone() {
        return new PlayedMicrophone(sounds);
      }

      @Override
      public Loudspeaker loudspeaker() {
        return new VirtualLine("nowhere");
      }

      @Override
      public void beforeNext(int attempt) throws IOException {
        throw new IOException("recordings are not looked for again");
      }
    };
  }
}
