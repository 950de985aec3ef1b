package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.dialogue.Attention;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;

/** The conversation from recordings. */
@Command(
    name = "hear",
    mixinStandardHelpOptions = true,
    description = {
      "The conversation from recordings, in their order.",
      "Prints what was heard, taken and answered. A folder stands for its .wav files by",
      "name; a recording may hold several utterances."
    })
final class HearCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "WAV", description = "recordings or folders of them")
  private List<Path> wavs;

  @Option(names = "--out", paramLabel = "DIR", description = "write each answer as a WAV there")
  private Path out;

  @Option(names = "--play", description = "speak the answers through the loudspeaker, if any")
  private boolean play;

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Option(names = "--asleep", description = "take nothing before the call")
  private boolean asleep;

  @Mixin private Window window;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Mixin private final Keeping keeping = new Keeping();

  @Mixin private JournalOptions journal;

  @Mixin private final Supplied supplied = new Supplied();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Supplied.Loaded loaded = supplied.load();
    PrintWriter err = spec.commandLine().getErr();
    keeping.begin();
    hearing.read(err);
    boolean allRead = true;
    try (Scribe scribe = journal.scribeIfNamed();
        Run run = new Run(session(loaded, scribe), hearing.open(loaded.grammar(), err))) {
      run.begin();
      for (Path wav : Recordings.named(wavs)) {
        allRead &= run.hear(wav);
      }
    }
    return allRead ? 0 : Fault.BAD_INPUT;
  }

  private Session session(Supplied.Loaded loaded, Scribe scribe) {
    Attention attention = asleep ? window.asleep() : Attention.alwaysOpen();
    return new Session(loaded, attention, scribe);
  }

  /** One run through the recordings. */
  private final class Run implements AutoCloseable {
    private final PrintWriter err = spec.commandLine().getErr();
    private final Report report = new Report(spec.commandLine().getOut(), json, keeping);
    private final Session session;
    private final Ear ear;
    private final Optional<Mouth> mouth;
    private final Optional<Loudspeaker> loudspeaker;
    private int answers;

    Run(Session session, Ear ear) throws IOException {
      this.session = session;
      this.ear = ear;
      this.mouth = out != null || play ? Optional.of(new Mouth()) : Optional.empty();
      this.loudspeaker = play ? loudspeaker() : Optional.empty();
      if (out != null) {
        Files.createDirectories(out);
      }
    }

    void begin() throws IOException {
      Optional<Exchange> first = session.begin();
      if (first.isPresent()) {
        answer(first.get());
      }
    }

    /** Hears one recording; a bad one is told and takes nothing away from what was heard before. */
    boolean hear(Path wav) throws IOException {
      try (WavFile file = WavFile.open(wav);
          Listening listening = ear.listen(file)) {
        for (Optional<Heard> heard = next(listening); heard.isPresent(); heard = next(listening)) {
          Optional<Exchange> exchange = session.heard(heard.get());
          if (exchange.isPresent()) {
            answer(exchange.get());
          }
        }
        session.streamEnded();
        file.remark().ifPresent(err::println);
        return true;
      } catch (IOException e) {
        err.println(Fault.sentence(e));
        return false;
      }
    }

    private Optional<Heard> next(Listening listening) throws IOException {
      return listening.next(session.expected(), session.patienceSeconds());
    }

    private void answer(Exchange exchange) throws IOException {
      report.exchange("heard", exchange);
      if (mouth.isPresent()) {
        Sound sound = mouth.get().whole(exchange, session.manner().pace());
        answers++;
        if (out != null) {
          WavFile.write(out.resolve(String.format(Locale.ROOT, "%03d.wav", answers)), sound);
        }
        if (loudspeaker.isPresent()) {
          loudspeaker.get().play(sound);
        }
      }
    }

    private Optional<Loudspeaker> loudspeaker() {
      try {
        return Optional.of(Devices.loudspeaker(List.of()));
      } catch (NoSuchDevice e) {
        err.println(e.getMessage());
        return Optional.empty();
      }
    }

    @Override
    public void close() {
      loudspeaker.ifPresent(Loudspeaker::close);
    }
  }
}
