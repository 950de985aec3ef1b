package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.speaking.EarSound;

/** The conversation, live. */
@Command(
    name = "listen",
    mixinStandardHelpOptions = true,
    description = {
      "The conversation, live, with a headset.",
      "It listens after the short tone, and is deaf while it speaks. Ctrl-C ends it."
    })
final class ListenCommand implements Callable<Integer> {
  @Option(
      names = "--mic",
      paramLabel = "NAME",
      description = "part of the microphone's name; say it again for a second choice")
  private List<String> microphones = List.of();

  @Option(
      names = "--speaker",
      paramLabel = "NAME",
      description = "part of the loudspeaker's name; say it again for a second choice")
  private List<String> loudspeakers = List.of();

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Mixin private final ProfileOption profile = new ProfileOption();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    try (Loudspeaker loudspeaker = Devices.loudspeaker(loudspeakers);
        Microphone microphone = Devices.microphone(microphones)) {
      Report report = new Report(spec.commandLine().getOut(), json);
      converse(microphone, loudspeaker, profile, report, spec.commandLine().getErr());
    }
    return 0;
  }

  /**
   * Listens and answers until nothing more comes.
   *
   * @throws IOException if the microphone is lost
   */
  static void converse(
      Microphone microphone,
      Loudspeaker loudspeaker,
      ProfileOption profile,
      Report report,
      PrintWriter remarks)
      throws IOException {
    microphone.shut();
    Grammar grammar = Grammar.bundled();
    Session session = new Session(grammar);
    Ear ear = Ear.open(grammar);
    profile.giveTo(ear, remarks);
    Mouth mouth = new Mouth();
    try (Listening listening = ear.listen(microphone)) {
      remarks.println("Listening on " + microphone.name() + ", speaking on " + loudspeaker.name());
      play(microphone, loudspeaker, EarSound.LISTENING.sound());
      for (Optional<Heard> heard = listening.next(session.expected());
          heard.isPresent();
          heard = listening.next(session.expected())) {
        Exchange exchange = session.heard(heard.get());
        report.exchange("heard", exchange);
        play(microphone, loudspeaker, mouth.speak(exchange, session.manner().pace()));
      }
    }
  }

  /** The microphone is shut meanwhile: the tool must not hear itself. */
  private static void play(Microphone microphone, Loudspeaker loudspeaker, Sound sound) {
    microphone.shut();
    loudspeaker.play(sound);
    microphone.reopen();
  }
}
