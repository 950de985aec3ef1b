package rigspeak.app;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigspeak.audio.NoSuchDevice;

/** The conversation, live. */
@Command(
    name = "listen",
    mixinStandardHelpOptions = true,
    description = {
      "The conversation, live, with a headset.",
      "It waits for the call, copper lantern, alone or before what is said; Enter does as well.",
      "A short tone says that it listens, three soft ones down that it waits for the call again.",
      "It is deaf while it speaks. Ctrl-C ends it.",
      "A headset that is lost is looked for until it is back; nothing said is forgotten.",
      "What is said is in the crew's journal before it is answered; see journal and resume."
    })
final class ListenCommand implements Callable<Integer> {
  @Mixin private LiveTalk talk;

  @Mixin private JournalOptions journal;

  @Mixin private final Supplied supplied = new Supplied();

  @Option(names = "--no-journal", description = "keep nothing; then nothing can be resumed either")
  private boolean unkept;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    Supplied.Loaded loaded = supplied.load();
    if (unkept) {
      hold(loaded, Scribe.none());
      return 0;
    }
    try (JournalScribe scribe = journal.scribe()) {
      hold(loaded, scribe);
    }
    return 0;
  }

  private void hold(Supplied.Loaded loaded, Scribe scribe) throws IOException, NoSuchDevice {
    Session session = new Session(loaded, talk.attention(), scribe);
    talk.hold(loaded.grammar(), session, () -> session.begin().stream().toList());
  }
}
