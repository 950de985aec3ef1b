package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import rigspeak.answer.Utterance;
import rigspeak.audio.Sound;
import rigspeak.audio.Wind;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.Answered;
import rigspeak.drill.Course;
import rigspeak.drill.Generator;
import rigspeak.drill.Progress;
import rigspeak.drill.Question;
import rigspeak.drill.Skill;
import rigspeak.grammar.Grammar;

/** Drills from the outside, typed and recorded. */
class DrillTest {
  private static final Path DRILLS = Path.of("demo-data/drills");
  private static final Grammar GRAMMAR = Grammar.bundled();
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-06-01T17:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private Path kept() {
    return folder.resolve("wren.trainee");
  }

  private Cli drill(String answers, Object... more) throws IOException {
    Path typed = Files.writeString(folder.resolve("answers.txt"), answers);
    List<Object> arguments = new ArrayList<>(List.of("drill", "wren", "--file", kept()));
    arguments.add("--type=" + typed);
    arguments.addAll(List.of(more));
    return Cli.run(arguments.toArray());
  }

  // ---- questions that somebody wrote ----

  @Test
  void everySkillHasWrittenQuestionsWhoseAnswersAreWorkedOutByHand() throws IOException {
    List<Question> questions =
        new DrillScript(GRAMMAR, CATALOGUE).read(DRILLS.resolve("every-skill.txt"));
    for (Skill skill : Skill.values()) {
      long count = questions.stream().filter(question -> question.skill() == skill).count();
      assertTrue(count >= 2, () -> skill + " has " + count);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "inside_angle | 1 | inside | anchor leg up 60 toward the stem; working leg straight down | 120",
        "inside_angle | 1 | inside | anchor leg up 60 toward the stem; working leg straight down",
        "juggling | 1 | inside | anchor leg up 60 toward the stem; working leg straight down | 150",
        "inside_angle | 4 | inside | anchor leg up 60 toward the stem; working leg straight down | 150",
        "inside_angle | 1 | inside | anchor leg up sideways; working leg straight down | 150",
        "read_back | 1 | read_back | limb 8 inches // limb 9 inches | first",
        "where_it_goes | 1 | where | rope angle 60 | lever",
        "inside_angle | 1 | inside | anchor leg up 60 toward the stem | many",
      })
  void aLineThatIsNoQuestionIsToldInOneSentence(String line) throws IOException {
    Path script = Files.writeString(folder.resolve("bad.txt"), line + "\n");
    Cli cli = drill("stop\n", "--script", script);
    assertEquals(3, cli.exitCode());
    assertEquals(1, cli.err().lines().count(), cli.err());
    assertFalse(cli.hasStackTrace(), cli.err());
    assertFalse(Files.exists(kept()));
  }

  // ---- typed ----

  @Test
  void aTypedDrillIsMarkedAndKept() throws IOException {
    Cli cli =
        drill(
            """
            explain
            one three ninety percent
            again
            nonsense
            90 degrees
            seventy percent
            no idea
            stop
            """,
            "--script",
            DRILLS.resolve("by-ear.txt"));
    assertEquals(0, cli.exitCode(), cli.err());
    assertTrue(cli.out().contains("answered  Right. It is one three."), cli.out());
    assertTrue(cli.out().contains("How sure?"), cli.out());
    assertTrue(
        cli.out().contains("Wrong. You said nine zero degrees. It is one five zero degrees."),
        cli.out());
    assertTrue(cli.out().contains("One right of three."), cli.out());
    assertEquals(1, cli.out().split("licence to load", -1).length - 1, "the cautions come once");
    List<Answered> answers = TraineeFiles.read(kept());
    assertEquals(3, answers.size());
    assertEquals(0.9, answers.get(0).sure().orElseThrow(), 1e-12);
    assertEquals(-60, answers.get(1).error().orElseThrow(), 1e-9);
    assertTrue(answers.get(2).sure().isEmpty());
  }

  @Test
  void slowerIsSlowerAndTheSameQuestionComesAgain() throws IOException {
    DrillTalk talk = talk(5);
    Utterance asked = talk.toSay().get(1);
    talk.said("speak slower", 1);
    assertEquals(rigspeak.dialogue.Pace.SLOW, talk.pace());
    assertEquals(asked, talk.toSay().get(1));
  }

  private DrillTalk talk(int questions) throws IOException {
    Course course =
        new Course.Spaced(new Generator(CATALOGUE), List.of(Skill.values()), questions, 1);
    return new DrillTalk(GRAMMAR, course, "wren", kept(), CLOCK);
  }

  /** Every example that the tool gives of an answer can be said. */
  @ParameterizedTest
  @EnumSource(Skill.class)
  void theExampleOfAnAnswerIsOne(Skill skill) throws IOException {
    Course course = new Course.Spaced(new Generator(CATALOGUE), List.of(skill), 20, 3);
    DrillTalk talk = new DrillTalk(GRAMMAR, course, "wren", kept(), CLOCK);
    for (int i = 0; i < 20; i++) {
      talk.said("this is no answer", 1);
      String again = talk.toSay().get(0).text();
      assertTrue(again.startsWith("Say for example "), again);
      String example = again.replace("Say for example ", "").replace("affirm, or ", "");
      talk.said(example, 1);
      assertEquals(i + 1, talk.answered().size(), example);
    }
    assertTrue(talk.isOver());
  }

  @Test
  void nothingIsAskedTwiceInARowAndWhatIsDueComesBack() throws IOException {
    DrillTalk talk = talk(40);
    while (!talk.isOver()) {
      talk.said("no idea", 1);
    }
    List<Skill> asked = talk.answered().stream().map(Answered::skill).toList();
    assertEquals(40, asked.size());
    assertTrue(asked.containsAll(List.of(Skill.values())));
    for (int i = 1; i < asked.size(); i++) {
      assertFalse(asked.get(i) == asked.get(i - 1), "twice in a row: " + asked.get(i));
    }
  }

  // ---- what is kept ----

  /** Each answer is on the disk before anything is said to it: a crash loses only the open one. */
  @Test
  void aCrashInMidDrillLosesNothing() throws IOException {
    DrillTalk talk = talk(10);
    for (int i = 1; i <= 4; i++) {
      talk.said("no idea", 1);
      assertEquals(i, TraineeFiles.read(kept()).size());
    }
    // An answer that still waits for how sure it is was not given yet.
    talk.said("nobody can say", 1);
    assertEquals(4, TraineeFiles.read(kept()).size());
    DrillTalk after = talk(10);
    assertEquals(0, after.answered().size());
    after.said("no idea", 1);
    assertEquals(5, TraineeFiles.read(kept()).size());
  }

  /** A file that was being written when the power went leaves the old one as it was. */
  @Test
  void aHalfWrittenFileBesideItHarmsNothing() throws IOException {
    DrillTalk talk = talk(10);
    talk.said("no idea", 1);
    Files.writeString(folder.resolve("wren.trainee123.new"), "rigspeak trainee 1\nname wr");
    assertEquals(1, TraineeFiles.read(kept()).size());
  }

  @Test
  void whatCannotBeWrittenIsToldAndTheOldFileStays() throws IOException {
    DrillTalk talk = talk(10);
    talk.said("no idea", 1);
    String before = Files.readString(kept());
    Path moved = folder.resolve("moved");
    Files.move(kept(), moved);
    Files.createDirectory(kept());
    Files.writeString(kept().resolve("in-the-way"), "");
    assertThrows(IOException.class, () -> talk.said("no idea", 1));
    assertEquals(before, Files.readString(moved));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "something else\n",
        "rigspeak trainee 1\nname wren\ncheck 00000000\n",
        "rigspeak trainee 2\nname wren\ncheck 00000000\n",
      })
  void aDamagedFileIsToldAndLeftAlone(String text) throws IOException {
    Files.writeString(kept(), text);
    Cli cli = drill("stop\n");
    assertEquals(3, cli.exitCode());
    assertFalse(cli.hasStackTrace(), cli.err());
    assertTrue(cli.err().contains("damaged"), cli.err());
    assertEquals(text, Files.readString(kept()));
  }

  @Test
  void whatIsKeptIsReadAsItWasWritten() throws IOException {
    Path juno = DRILLS.resolve("juno.trainee");
    List<Answered> answers = TraineeFiles.read(juno);
    assertEquals(100, answers.size());
    TraineeFiles.write(kept(), "juno", answers);
    assertEquals(answers, TraineeFiles.read(kept()));
  }

  // ---- recorded ----

  @Test
  void aWholeDrillIsHeardFromRecordings() throws IOException {
    Path spoken = folder.resolve("spoken");
    Path script = DRILLS.resolve("by-ear.txt");
    Path recordings = Path.of("demo-data/drill-by-ear");
    Cli heard =
        Cli.run(
            "drill",
            "wren",
            "--file",
            kept(),
            "--script",
            script,
            "--hear",
            recordings,
            "--noise",
            "15",
            "--out",
            spoken);
    assertEquals(0, heard.exitCode(), heard.err());
    List<String> words =
        heard.out().lines().filter(l -> l.startsWith("heard ")).map(l -> l.substring(10)).toList();
    assertEquals(
        Files.readAllLines(Path.of("demo-data/drill-by-ear.txt")).stream()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .toList(),
        words);
    assertTrue(heard.out().contains("One three right of one four."), heard.out());
    assertEquals(14, TraineeFiles.read(kept()).size());
    try (Stream<Path> files = Files.list(spoken)) {
      assertEquals(words.size() + 1, files.count());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 20})
  void windIsSoFarBelowTheVoice(double decibels) {
    short[] tone = new short[32_000];
    for (int i = 0; i < tone.length; i++) {
      tone[i] = (short) (4000 * Math.sin(i * 0.3));
    }
    Sound both = Wind.below(decibels).behind(Sound.of(tone));
    double voice = 0;
    double wind = 0;
    for (int i = 0; i < tone.length; i++) {
      voice += (double) tone[i] * tone[i];
      wind += Math.pow(both.sample(i) - tone[i], 2);
    }
    assertEquals(decibels, 10 * Math.log10(voice / wind), 0.1);
  }

  // ---- the report ----

  @Test
  void severalTraineesStandInTheOrderInWhichTheyWereNamed() throws Exception {
    Path html = folder.resolve("drills.html");
    Path csv = folder.resolve("drills.csv");
    Cli cli =
        Cli.run(
            "drill",
            "report",
            DRILLS.resolve("wick.trainee"),
            DRILLS.resolve("juno.trainee"),
            "--html",
            html,
            "--csv",
            csv);
    assertEquals(0, cli.exitCode(), cli.err());
    assertTrue(cli.out().indexOf("wick, 100") < cli.out().indexOf("juno, 100"), cli.out());
    String page = Files.readString(html);
    assertTrue(page.indexOf("Drills of wick") < page.indexOf("Drills of juno"));
    assertTrue(page.contains("aria-label"));
    assertFalse(page.contains("http:") && page.contains("src="), "nothing is fetched");
    long width =
        Files.readAllLines(csv).stream().mapToLong(l -> l.split(",", -1).length).distinct().count();
    assertEquals(1, width);
  }

  /** The made-up trainee of the demo data was given a bias of nine degrees that wears off. */
  @Test
  void thePictureIsWellFormedAndTellsInWordsWhatItShows() throws Exception {
    Progress progress = Progress.of(TraineeFiles.read(DRILLS.resolve("juno.trainee")));
    String svg = DrillChart.of("<juno> & \"co\"", progress, CLOCK.instant().getEpochSecond()).svg();
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
    assertTrue(svg.contains("&lt;juno&gt; &amp; "));
    assertTrue(svg.contains("<desc>"));
    assertTrue(svg.contains("inside angle, degrees: bias +8.06"), svg);
  }

  @Test
  void badUseIsUsage() {
    assertEquals(2, Cli.run("drill").exitCode());
    assertEquals(2, Cli.run("drill", "../wren").exitCode());
    assertEquals(2, Cli.run("drill", "wren", "--skill", "juggling").exitCode());
    assertEquals(2, Cli.run("drill", "wren", "--questions", "0").exitCode());
    assertEquals(2, Cli.run("drill", "wren", "--noise", "90").exitCode());
    assertEquals(3, Cli.run("drill", "report", "nobody-of-this-name").exitCode());
  }
}
