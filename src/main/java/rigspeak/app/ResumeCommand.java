package rigspeak.app;

import java.io.IOException;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigspeak.audio.NoSuchDevice;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;

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

  @Option(
      names = "--type",
      arity = "0..1",
      fallbackValue = "-",
      paramLabel = "FILE",
      description = "it goes on typed, a line each; here, if no file is named")
  private String typed;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    Grammar grammar = Grammar.bundled();
    Attention attention = typed == null ? talk.attention() : Attention.alwaysOpen();
    try (JournalScribe scribe = journal.scribe()) {
      Resumption.Begun begun =
          Resumption.begin(
              scribe, Clock.systemUTC(), () -> new Session(grammar, attention, scribe));
      if (typed == null) {
        talk.hold(grammar, begun.session(), begun.first());
      } else {
        type(begun);
      }
    }
    return 0;
  }

  private void type(Resumption.Begun begun) throws IOException {
    Report report = talk.report();
    begun.first().forEach(exchange -> report.exchange("resumed", exchange));
    try (Lines lines = Lines.of(typed)) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        report.exchange("said", begun.session().said(line.get()));
      }
    }
  }
}
