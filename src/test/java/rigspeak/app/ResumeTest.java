package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Event;
import rigspeak.journal.Event.Answer;
import rigspeak.journal.Event.Came;
import rigspeak.journal.Journal;

/** A conversation is kept, goes on, and takes nothing that could not be kept. */
class ResumeTest {
  /** With something that waits for an affirm, a question, a refusal and a good verdict in it. */
  private static final List<String> TALK =
      """
      all up two hundred ten pounds
      species red oak live wood stationary rope canopy anchor
      go to the main point
      live wood limb twelve inches by tape limb upright at the union stem twenty inches union sound
      sling choked three wraps seated at the union bark rough over ring
      go to redirect one
      limb eight inches by tape
      correction limb nine inches by tape
      affirm
      what is missing
      thirty degrees up
      limb rises thirty out one foot by tape stem fourteen inches union sound live wood
      sling choked three wraps seated on a stub bark rough over carabiner
      anchor leg up sixty toward the stem fifteen feet
      working leg straight down twenty feet
      check redirect
      ready to set
      clipped in
      affirm
      rope loaded
      say again
      """
          .lines()
          .toList();

  @TempDir Path folder;

  private Path file(List<String> lines) throws IOException {
    return Files.write(Files.createTempFile(folder, "said", ".txt"), lines);
  }

  private Cli type(List<String> lines) throws IOException {
    return Cli.run("type", "--json", "--crew", "oak", "--journal", folder, file(lines));
  }

  private Cli resume(List<String> lines) throws IOException {
    return Cli.run("resume", "--json", "--crew", "oak", "--journal", folder, "--type", file(lines));
  }

  private CrewFolder crew() {
    return new CrewFolder(folder, "oak");
  }

  private static String answers(JsonNode exchange) {
    List<String> texts = new ArrayList<>();
    exchange.get("answers").forEach(answer -> texts.add(answer.get("text").asText()));
    return String.join(" ", texts);
  }

  private static List<String> answers(Cli cli) {
    return cli.json().stream().map(ResumeTest::answers).toList();
  }

  private static final String CAUTION = " If anything has moved, say so, and check again.";

  @Test
  void whereverItIsBrokenOffItGoesOnAsIfItHadNotBeen() throws IOException {
    List<String> whole = answers(type(TALK));
    assertTrue(whole.get(15).startsWith("Good to load, redirect one"), whole.get(15));
    for (int cut = 1; cut < TALK.size(); cut++) {
      type(TALK.subList(0, cut));
      Cli rest = resume(TALK.subList(cut, TALK.size()));
      List<String> answers = answers(rest);
      assertEquals(whole.subList(cut, whole.size()), answers.subList(1, answers.size()), "" + cut);
      assertFalse(rest.hasStackTrace());
    }
    crew().verify();
  }

  @Test
  void itSaysWhereItGoesOn() throws IOException {
    type(TALK.subList(0, 8));
    assertEquals(
        List.of(
            "I go on from the record. Redirect one. The last I took was, correction limb nine"
                + " inches by tape. Nothing is checked."
                + " I do not know if the lanyard is clipped in. No redirect is loaded."
                + " Limb, now nine inches, by tape, it was eight inches, by tape."
                + " Say affirm or negative."),
        answers(resume(List.of())));
    type(TALK.subList(0, 10));
    assertTrue(
        answers(resume(List.of()))
            .get(0)
            .endsWith(
                "No redirect is loaded. Say how the limb lies, level, upright, rises or drops."));
    type(TALK);
    assertEquals(
        List.of(
            "I go on from the record. Redirect one. The last I took was, say again. The check of"
                + " redirect one is kept."
                + CAUTION
                + " The lanyard is clipped in. The rope is loaded on redirect one."),
        answers(resume(List.of())));
  }

  @Test
  void itGoesOnMoreThanOnce() throws IOException {
    List<String> whole = answers(type(TALK));
    type(TALK.subList(0, 1));
    for (int i = 1; i < TALK.size(); i++) {
      assertEquals(whole.get(i), answers(resume(TALK.subList(i, i + 1))).get(1));
    }
  }

  // ---- nothing to go on with ----

  @Test
  void withoutAJournalANewOneBegins() throws IOException {
    assertEquals(
        "There is no talk to go on with. I begin anew. Nothing is known yet.",
        answers(resume(List.of())).get(0));
    assertEquals(
        "I go on from the record. Redirect one. Nothing was said yet. Nothing is checked."
            + " I do not know if the lanyard is clipped in. No redirect is loaded.",
        answers(resume(List.of())).get(0));
  }

  private static Event said(String words, String answer) {
    return new Event.Said(
        Came.TYPED,
        words,
        Optional.empty(),
        List.of(new Answer(answer, false)),
        JsonNodeFactory.instance.objectNode().put("kind", "values"),
        Optional.empty());
  }

  private void write(Instant at, Event... events) throws IOException {
    try (Journal journal = Journal.open(crew(), Clock.fixed(at, ZoneOffset.UTC))) {
      for (Event event : events) {
        journal.append(event);
      }
    }
  }

  @Test
  void yesterdaysTalkIsNotGoneOnWith() throws IOException {
    Event limb = said("limb eight inches by tape", "Limb, eight inches, by tape.");
    write(Instant.now().minus(Duration.ofHours(11)), new Event.Began("1"), limb);
    assertTrue(answers(resume(List.of())).get(0).startsWith("I go on from the record."));
    Files.delete(crew().file(crew().days().get(0)));
    write(Instant.now().minus(Duration.ofHours(13)), new Event.Began("1"), limb);
    assertTrue(answers(resume(List.of())).get(0).startsWith("There is no talk to go on with."));
  }

  /** The record says one thing and this version would have said another: who knows what it took? */
  @Test
  void aTalkThatWouldBeAnsweredOtherwiseIsNotGoneOnWith() throws IOException {
    write(
        Instant.now(),
        new Event.Began("0"),
        said("all up two hundred ten pounds", "All up, two hundred ten pounds."),
        said("limb eight inches by tape", "Limb, eighty inches, by tape."));
    List<String> answers = answers(resume(List.of("read back")));
    assertEquals(
        List.of(
            "The last talk was held by another version of me. I begin anew. Nothing is known"
                + " yet.",
            "Redirect one. Nothing has been said of it."),
        answers);
  }

  // ---- what cannot be kept is not taken ----

  private void assertNothingIsTaken(Cli cli, String mishap, String sentence) {
    for (JsonNode exchange : cli.json()) {
      assertEquals(mishap, exchange.get("mishap").asText());
      assertEquals(sentence, answers(exchange));
      assertFalse(exchange.get("understood").asBoolean());
      assertEquals(0, exchange.get("taken").size());
      assertFalse(exchange.has("verdict"));
    }
    assertFalse(cli.hasStackTrace());
  }

  @Test
  void twoProgramsWithOneJournal() throws IOException {
    try (Journal other = Journal.open(crew(), Clock.systemUTC())) {
      other.append(new Event.Began("1"));
      assertNothingIsTaken(
          type(TALK),
          "in_use",
          "I cannot keep the record. Another program is writing it. Nothing was taken.");
      assertNothingIsTaken(
          resume(TALK),
          "in_use",
          "I cannot keep the record. Another program is writing it. Nothing was taken.");
    }
    assertEquals(2, crew().verify().values().iterator().next().lines());
  }

  @Test
  void aLineThatWasChanged() throws IOException {
    type(TALK);
    Path file = crew().file(crew().days().get(0));
    Files.writeString(file, Files.readString(file).replace("eight inches", "nine inches"));
    byte[] changed = Files.readAllBytes(file);
    String sentence = "I cannot keep the record. A line in it has been changed. Nothing was taken.";
    assertNothingIsTaken(type(TALK), "changed", sentence);
    assertNothingIsTaken(resume(TALK), "changed", sentence);
    Cli verified = Cli.run("journal", "verify", "--crew", "oak", "--journal", folder);
    assertEquals(3, verified.exitCode());
    assertTrue(verified.err().startsWith(file + ":9: it or a line before it has been changed"));
    assertEquals("", verified.out());
    assertEquals(new String(changed, StandardCharsets.UTF_8), Files.readString(file));
  }

  /**
   * The kernel lets the tool write no more than so many bytes to a file, in the midst of a line.
   * What was taken before is kept, whole; from there on nothing is taken.
   */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aDiskThatIsFullInTheMidstOfALine() throws Exception {
    List<String> command = new ArrayList<>(List.of("bash", "-c", "ulimit -f 4; exec \"$@\"", "-"));
    command.addAll(
        OwnProcess.command(
            List.of("-XX:-UsePerfData", "-Xshare:off"),
            List.of(
                "type",
                "--json",
                "--crew",
                "oak",
                "--journal",
                folder.toString(),
                file(TALK).toString())));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), out);
    Cli cli = new Cli(0, out, "");
    List<JsonNode> taken = cli.json().stream().filter(exchange -> !exchange.has("mishap")).toList();
    int kept = taken.size();
    assertTrue(kept > 3 && kept < TALK.size() - 3, kept + " of " + TALK.size());
    assertNothingIsTaken(
        new Cli(0, String.join("\n", out.lines().skip(kept).toList()), ""),
        "disk_full",
        "I cannot keep the record. The disk is full. Nothing was taken.");
    LocalDate day = crew().days().get(0);
    // Opened, began, and what was taken.
    assertEquals(2 + kept, crew().verify().get(day).lines());
    assertEquals(0, crew().verify().get(day).tornBytes(), "the half line was taken away again");
  }

  @Test
  void aFolderThatCannotBeWritten() throws IOException {
    Path notAFolder = Files.writeString(folder.resolve("file"), "");
    Cli cli = Cli.run("type", "--json", "--crew", "oak", "--journal", notAFolder, file(TALK));
    assertNothingIsTaken(
        cli, "not_kept", "I cannot keep the record. The disk does not take it. Nothing was taken.");
    assertTrue(cli.err().startsWith("The journal: " + notAFolder), cli.err());
  }

  @Test
  void aClockThatWasSetBackIsTold() throws IOException {
    write(Instant.now().plus(Duration.ofHours(1)), new Event.Began("1"));
    List<String> answers = answers(type(TALK.subList(0, 2)));
    assertEquals("The clock was set back. The record keeps its order.", answers.get(0));
    assertEquals("All up, two hundred ten pounds.", answers.get(1));
  }

  // ---- reading it ----

  @Test
  void aDayIsShown() throws IOException {
    type(TALK);
    Cli shown = Cli.run("journal", "show", "--crew", "oak", "--journal", folder);
    assertEquals(0, shown.exitCode());
    for (String words : TALK) {
      assertTrue(shown.out().contains("  typed     " + words + "\n"), words);
    }
    assertTrue(shown.out().contains("          answered  Limb, eight inches, by tape.\n"));
    Cli verified = Cli.run("journal", "verify", "--crew", "oak", "--journal", folder);
    assertEquals(0, verified.exitCode());
    assertTrue(verified.out().endsWith("As it was written.\n"), verified.out());
  }

  /** A record from somebody else must not paint over what is printed. */
  @Test
  void whatIsShownSteersNoTerminal() throws IOException {
    write(Instant.now(), new Event.Began("1"), said("limb\u001b[2K\rGood to load", "No."));
    Cli shown = Cli.run("journal", "show", "--crew", "oak", "--journal", folder);
    assertTrue(shown.out().contains("typed     limb\uFFFD[2K\uFFFDGood to load\n"), shown.out());
  }

  @Test
  void aDayIsTakenAlongAsATable() throws IOException {
    type(TALK);
    Path table = folder.resolve("day.csv");
    Cli cli = Cli.run("journal", "export", "--crew", "oak", "--journal", folder, "--out", table);
    assertEquals(0, cli.exitCode(), cli.err());
    List<String> rows = Files.readAllLines(table);
    assertEquals("line,at,event,words,meaning,answers,verdict,support,check", rows.get(0));
    assertEquals(3 + TALK.size(), rows.size());
    String check = rows.get(3 + TALK.indexOf("check redirect"));
    assertTrue(check.contains(",typed,check redirect,command,\"Good to load, redirect one"), check);
    assertTrue(check.endsWith(",good,main_point,sling"), check);
  }

  /** A picture for each rig that was judged, also of a talk that began the day before. */
  @Test
  void aDayIsTakenAlongAsAReportWithPictures() throws IOException {
    type(TALK);
    Path report = folder.resolve("the day.md");
    Cli cli = Cli.run("journal", "export", "--crew", "oak", "--journal", folder, "--out", report);
    assertEquals(0, cli.exitCode(), cli.err());
    String text = Files.readString(report);
    assertTrue(text.contains("\n> Limb, eight inches, by tape.\n"), text);
    assertTrue(text.contains("](<the day-1.svg>)\n"), text);
    assertFalse(text.contains("the day-2.svg"), text);
    assertTrue(Files.readString(folder.resolve("the day-1.svg")).startsWith("<svg"));
  }

  @Test
  void whatIsNotThereIsSaidInOneSentence() throws IOException {
    Cli none = Cli.run("journal", "show", "--crew", "oak", "--journal", folder);
    assertEquals(3, none.exitCode());
    assertEquals("There is no file " + folder.resolve("oak-DAY.jsonl") + ".\n", none.err());
    Cli name = Cli.run("journal", "show", "--crew", "../oak", "--journal", folder);
    assertEquals(2, name.exitCode());
    assertTrue(name.err().startsWith("A crew's name is one to forty letters"), name.err());
    type(TALK);
    Cli day =
        Cli.run("journal", "show", "--crew", "oak", "--journal", folder, "--day", "1999-01-01");
    assertEquals(3, day.exitCode());
    Cli form =
        Cli.run("journal", "export", "--crew", "oak", "--journal", folder, "--out", "day.pdf");
    assertEquals(2, form.exitCode());
  }
}
