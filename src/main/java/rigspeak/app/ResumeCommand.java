package rigspeak.app;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigspeak.audio.NoSuchDevice;
import rigspeak.dialogue.Attention;

/** The crew's last conversation, from where it was broken off. */
@Command(
    name = "resume",
    mixinStandardHelpOptions = true,
    description = {
      "The crew's last conversation, from where it was broken off: by a dead battery, a fault or",
      "Ctrl-C. The rig, the lanyard gate and what waits for an answer are as they were.",
      "It says what was taken last, and goes on live as with listen, or typed.",
      "If there is none of the last twelve hours, a new one begins."
    })
final class ResumeCommand implements Callable<Integer> {
  @Mixin private LiveTalk talk;

  @Mixin private JournalOptions journal;

  @Mixin private final Supplied supplied = new Supplied();

  @Option(
      names = "--type",
      arity = "0..1",
      fallbackValue = "-",
      paramLabel = "FILE",
      description = "it goes on typed, a line each; here, if no file is named")
  private String typed;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    Supplied.Loaded loaded = supplied.load();
    Attention attention = typed == null ? talk.attention() : Attention.alwaysOpen();
    try (JournalScribe scribe = journal.scribe()) {
      Session session = new Session(loaded, attention, scribe);
      Supplier<List<Exchange>> beginning =
          () -> Resumption.begin(session, scribe, Clock.systemUTC());
      if (typed == null) {
        talk.hold(loaded.grammar(), session, beginning);
      } else {
        type(session, beginning.get());
      }
    }
    return 0;
  }

  private void type(Session session, List<Exchange> first) throws IOException {
    Report report = talk.report();
    first.forEach(exchange -> report.exchange("resumed", exchange));
    try (Lines lines = Lines.of(typed)) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        report.exchange("said", session.said(line.get()));
      }
    }
  }
}
