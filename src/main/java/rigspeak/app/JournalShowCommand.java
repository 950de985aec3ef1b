package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Entry;
import rigspeak.journal.Event;

/** A day of a journal, to be read. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description = "A day of the journal: when, how it came, what was said, what was answered.")
final class JournalShowCommand implements Callable<Integer> {
  @Mixin private JournalOptions journal;

  @Mixin private JournalDay day;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    CrewFolder crew = journal.crewFolder();
    PrintWriter out = spec.commandLine().getOut();
    for (Entry entry : crew.entries(day.of(crew))) {
      show(entry, out);
    }
    out.flush();
    return 0;
  }

  private static void show(Entry entry, PrintWriter out) {
    line(out, time(entry), word(entry.event()), what(entry.event()));
    if (entry.event() instanceof Event.Said said) {
      for (Event.Answer answer : said.answers()) {
        line(out, "", "answered", (answer.danger() ? "DANGER  " : "") + answer.text());
      }
    }
  }

  private static void line(PrintWriter out, String time, String word, String what) {
    out.println(
        Shown.of(String.format(Locale.ROOT, "%-8s  %-9s %s", time, word, what).stripTrailing()));
  }

  /** By the clock of whoever reads. */
  static String time(Entry entry) {
    return LocalTime.ofInstant(entry.at(), ZoneId.systemDefault()).withNano(0).toString();
  }

  /** What kind of line it is, or how the words came. */
  static String word(Event event) {
    if (event instanceof Event.Said said) {
      return VerdictJson.lower(said.came());
    }
    return event.getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  /** What was said, or else what the line has to say. */
  static String what(Event event) {
    if (event instanceof Event.Said said) {
      return said.words().isEmpty() ? said.trouble().orElse("-") : said.words();
    } else if (event instanceof Event.Opened opened) {
      return opened.crew() + ", " + opened.day();
    } else if (event instanceof Event.Began began) {
      return "a conversation, version " + began.version();
    } else if (event instanceof Event.Resumed resumed) {
      return "after " + resumed.exchanges() + " exchanges, version " + resumed.version();
    } else if (event instanceof Event.Failed failed) {
      return failed.what() + ": " + failed.detail();
    } else if (event instanceof Event.Recovered recovered) {
      return "a torn last line of " + recovered.bytes() + " bytes, never answered";
    }
    return "";
  }
}
