package rigspeak.app;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import rigspeak.answer.PageWords;
import rigspeak.dialogue.Attention;
import rigspeak.drawing.RigDrawing;
import rigspeak.drawing.Subject;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Entry;
import rigspeak.journal.Event;
import rigspeak.verdict.PathVerdict;

/** A day of a journal as a table, and as a report with pictures. */
final class JournalReport {
  private static final String[] COLUMNS = {
    "line", "at", "event", "words", "meaning", "answers", "verdict", "support", "check"
  };

  private static final CSVFormat CSV = CSVFormat.RFC4180;

  private final CrewFolder crew;
  private final LocalDate day;
  private final List<Entry> entries;
  private final Map<Entry, PathVerdict> verdicts;
  private final boolean allPlayed;

  private JournalReport(
      CrewFolder crew,
      LocalDate day,
      List<Entry> entries,
      Map<Entry, PathVerdict> verdicts,
      boolean allPlayed) {
    this.crew = crew;
    this.day = day;
    this.entries = entries;
    this.verdicts = verdicts;
    this.allPlayed = allPlayed;
  }

  /**
   * Reads a day. Its conversations are played again, from where they began, if need be on a day
   * before: the pictures are of the rigs that come of it.
   *
   * @param loaded the words and numbers that they were held with
   */
  static JournalReport of(CrewFolder crew, LocalDate day, Supplied.Loaded loaded)
      throws IOException {
    List<Entry> before = new ArrayList<>();
    for (LocalDate each : crew.days()) {
      if (each.isBefore(day)) {
        before.addAll(crew.entries(each));
      }
    }
    List<Entry> entries = crew.entries(day);
    List<List<Entry>> talks = new ArrayList<>();
    List<Entry> all = new ArrayList<>(before);
    all.addAll(entries);
    for (Entry entry : all) {
      if (entry.event() instanceof Event.Began || talks.isEmpty()) {
        talks.add(new ArrayList<>());
      }
      talks.get(talks.size() - 1).add(entry);
    }
    talks.removeIf(talk -> talk.stream().noneMatch(entries::contains));
    Map<Entry, PathVerdict> verdicts = new HashMap<>();
    boolean allPlayed = true;
    for (List<Entry> talk : talks) {
      Session session = new Session(loaded, Attention.alwaysOpen(), Scribe.none());
      allPlayed &= play(session, talk, verdicts);
    }
    return new JournalReport(crew, day, entries, verdicts, allPlayed);
  }

  private static boolean play(Session session, List<Entry> talk, Map<Entry, PathVerdict> verdicts) {
    try {
      Resumption.play(
          session,
          talk,
          (entry, exchange) ->
              exchange.verdict().ifPresent(verdict -> verdicts.put(entry, verdict)));
      return true;
    } catch (Resumption.AnswersDiffer e) {
      return false;
    }
  }

  // ---- a table ----

  String csv() {
    StringBuilder table = new StringBuilder(CSV.format((Object[]) COLUMNS)).append('\n');
    entries.forEach(entry -> table.append(CSV.format(row(entry).toArray())).append('\n'));
    return table.toString();
  }

  private static List<Object> row(Entry entry) {
    List<Object> row = new ArrayList<>();
    row.add(entry.number());
    row.add(entry.at());
    row.add(JournalShowCommand.word(entry.event()));
    row.add(JournalShowCommand.what(entry.event()));
    if (entry.event() instanceof Event.Said said) {
      row.add(said.meaning().path("kind").asText());
      row.add(String.join(" ", said.answers().stream().map(Event.Answer::text).toList()));
      for (String field : List.of("verdict", "governing_support", "governing_check")) {
        row.add(said.verdict().map(verdict -> verdict.path(field).asText()).orElse(""));
      }
    } else {
      row.addAll(List.of("", "", "", "", ""));
    }
    return row;
  }

  // ---- a report ----

  /**
   * A report.
   *
   * @param pictures SVG by the name of its file
   */
  record Page(String text, Map<String, String> pictures) {}

  /**
   * The day in Markdown.
   *
   * @param name what the names of the pictures begin with
   */
  Page markdown(String name) {
    Map<String, String> pictures = new LinkedHashMap<>();
    StringBuilder page = new StringBuilder();
    page.append("# ").append(plain(crew.crew())).append(", ").append(day).append("\n\n");
    page.append("What was said and answered, by the record. Nothing in it is a licence to load.\n");
    for (Entry entry : entries) {
      page.append('\n').append(said(entry));
      Optional.ofNullable(verdicts.get(entry))
          .ifPresent(
              verdict -> {
                String file = name + "-" + (pictures.size() + 1) + ".svg";
                pictures.put(
                    file, RigDrawing.sideAndPlan(Subject.judged(verdict, verdict.asked())));
                page.append("\n![").append(plain(PageWords.head(verdict))).append("](<");
                page.append(file).append(">)\n");
              });
    }
    if (!allPlayed) {
      page.append("\nThis version answers otherwise than was written; rigs from there on have no");
      page.append(" picture.\n");
    }
    return new Page(page.toString(), pictures);
  }

  private static String said(Entry entry) {
    StringBuilder lines = new StringBuilder();
    String time = JournalShowCommand.time(entry);
    String word = JournalShowCommand.word(entry.event());
    String what = plain(JournalShowCommand.what(entry.event()));
    if (entry.event() instanceof Event.Began) {
      lines.append("## Conversation from ").append(time).append("\n\n");
    }
    lines.append("**").append(time).append("** ").append(word).append(": ").append(what);
    lines.append('\n');
    if (entry.event() instanceof Event.Said said) {
      for (Event.Answer answer : said.answers()) {
        lines.append("> ").append(answer.danger() ? "**DANGER** " : "");
        lines.append(plain(answer.text())).append('\n');
      }
    }
    return lines.toString();
  }

  /** Text in which nothing is a sign of Markdown. */
  private static String plain(String text) {
    return text.replaceAll("([\\\\`*_{}\\[\\]<>#|!&~])", "\\\\$1").replaceAll("\\s+", " ");
  }
}
