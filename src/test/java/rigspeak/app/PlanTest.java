package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import rigspeak.drawing.DrawnArrow;
import rigspeak.verdict.WorkedRigs;

/** Plans from the outside: a file in, a verdict or a card out. */
class PlanTest {
  private static final Path DEMO = Path.of("demo-data", "plan.txt");

  private static final String SLING =
      " stem 20 inches by tape union sound sling choked three wraps seated on a stub bark rough"
          + " sling rated 5400 pounds over ring";

  /** What a word of the file stands for, in lines. */
  private static final Map<String, List<String>> WORDS =
      Map.of(
          "BASE",
          List.of(
              "all up 210 pounds by tape species red oak stationary rope canopy anchor",
              "go to the main point",
              "live wood limb 12 inches by tape limb upright by tape at the union" + SLING,
              "go to redirect one"),
          "STOUT",
          List.of(
              "live wood limb 12 inches by tape limb rises 20 by tape out 1 foot by tape" + SLING,
              "anchor leg up 60 toward the stem 10 feet by tape",
              "working leg straight down 20 feet by tape"),
          "SECOND",
          List.of(
              "live wood limb 12 inches by tape limb rises 20 by tape out 1 foot by tape" + SLING,
              "anchor leg straight up 20 feet by tape",
              "working leg down 70 toward the stem 10 feet by tape"),
          "SLENDER",
          List.of(
              "live wood limb 2 inches by tape limb level by tape out 6 feet by tape" + SLING,
              "anchor leg up 30 toward the stem 10 feet by tape",
              "working leg straight down 20 feet by tape"));

  @TempDir Path folder;

  /** A plan and what is expected of it. */
  record Case(String name, List<String> plan, List<String> expected) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> cases() throws IOException {
    List<Case> cases = new ArrayList<>();
    try (InputStream file = PlanTest.class.getResourceAsStream("/rigspeak/plan/plans.txt")) {
      String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      String[] blocks = text.split("(?m)^== ", -1);
      for (String block : Arrays.asList(blocks).subList(1, blocks.length)) {
        String[] parts = block.strip().split("\n--\n", 2);
        List<String> lines = parts[0].lines().toList();
        cases.add(
            new Case(lines.get(0), lines.subList(1, lines.size()), parts[1].lines().toList()));
      }
    }
    return cases;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatComesOfAPlan(Case one) throws IOException {
    List<String> lines = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>(List.of(0));
    for (int i = 0; i < one.plan().size(); i++) {
      for (String line : WORDS.getOrDefault(one.plan().get(i), List.of(one.plan().get(i)))) {
        lines.add(line);
        numbers.add(i + 1);
      }
    }
    Path file = Files.write(folder.resolve("plan.txt"), lines);
    Cli cli = Cli.run("plan", "check", "--json", file);
    JsonNode json = cli.json().get(0);
    assertEquals(one.expected(), found(json, numbers));
    assertEquals(json.get("not_taken").isEmpty() ? 0 : 3, cli.exitCode());
  }

  private static List<String> found(JsonNode json, List<Integer> numbers) {
    List<String> found = new ArrayList<>();
    found.add("verdict " + json.get("verdict").asText());
    found.add("in_order " + json.get("in_order").asText());
    for (JsonNode rope : json.get("ropes")) {
      found.add(
          "rope until %d %s %s %s"
              .formatted(
                  numbers.get(rope.get("until_line").asInt()),
                  rope.get("set").asBoolean() ? "set" : "planned",
                  rope.get("asked").asText(),
                  rope.get("verdict").asText()));
    }
    for (JsonNode step : json.get("steps")) {
      StringBuilder text = new StringBuilder("step ");
      text.append(numbers.get(step.get("line").asInt())).append(' ');
      text.append(step.get("step").asText());
      step.get("troubles").forEach(trouble -> text.append(' ').append(trouble.asText()));
      found.add(text.toString());
    }
    for (JsonNode line : json.get("not_taken")) {
      found.add("not_taken " + numbers.get(line.get("line").asInt()));
    }
    return found;
  }

  @Test
  void theDemoPlanIsGoodAndInOrder() {
    Cli cli = Cli.run("plan", "check", DEMO);
    assertEquals(0, cli.exitCode());
    assertTrue(
        cli.out().startsWith("Plan: Thistle Bottom, the big limb and the stub\n"), cli.out());
    assertTrue(cli.out().contains("Good to load, every rope of the plan"), cli.out());
  }

  /** A plan is read by type and check as it is. */
  @Test
  void aPlanIsAFileOfUtterances() {
    assertEquals(0, Cli.run("check", DEMO).exitCode());
    assertFalse(Cli.run("type", DEMO).out().contains("Say again."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "card"})
  void aLineThatIsNotTakenIsNamedByFileAndNumber(String command) throws IOException {
    Path file = Files.writeString(folder.resolve("bad.txt"), "# plan: bad\n\nlimb very thick\n");
    Path out = folder.resolve("card.svg");
    Cli cli =
        command.equals("card")
            ? Cli.run("plan", command, file, "--out", out)
            : Cli.run("plan", command, file);
    assertEquals(3, cli.exitCode());
    assertTrue((cli.out() + cli.err()).contains(file + ":3: limb very thick: not understood"));
    assertFalse(Files.exists(out));
    assertFalse(cli.hasStackTrace());
  }

  @Test
  void whatIsNoPlanIsRefusedInOneSentence() throws IOException {
    Path file = Files.write(folder.resolve("x.txt"), new byte[] {(byte) 0xFF, (byte) 0xFE, 0});
    for (String name : List.of(file.toString(), folder.resolve("none.txt").toString())) {
      Cli cli = Cli.run("plan", "check", name);
      assertEquals(3, cli.exitCode());
      assertEquals(1, cli.err().lines().count(), cli.err());
    }
    Cli cli = Cli.run("plan", "card", DEMO, "--out", folder.resolve("card.doc"));
    assertEquals(2, cli.exitCode());
    assertTrue(cli.err().contains(".svg, .pdf, .png or .html"), cli.err());
    assertEquals(2, Cli.run("plan").exitCode());
  }

  /* ---- saved from a conversation ---- */

  @Test
  void aConversationIsKeptAsAPlan() throws IOException {
    Path plan = folder.resolve("saved.txt");
    Path day = Path.of("demo-data", "one-day.txt");
    Cli.run("type", day, "--save", plan);
    assertEquals("# plan: saved", Files.readAllLines(plan).get(0));
    assertEquals(Cli.run("check", "--json", day).out(), Cli.run("check", "--json", plan).out());
    byte[] before = Files.readAllBytes(plan);
    Cli again = Cli.run("type", day, "--save", plan);
    assertEquals(2, again.exitCode());
    assertTrue(again.err().contains("is there already"), again.err());
    assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(plan));
  }

  @Test
  void onlyWhatIsUnderstoodIsKept() throws IOException {
    Path talk = Files.writeString(folder.resolve("talk"), "nice weather\nlimb 8 inches by tape\n");
    Path plan = folder.resolve("kept.txt");
    Cli.run("type", talk, "--save", plan);
    assertEquals(List.of("# plan: kept", "limb 8 inches by tape"), Files.readAllLines(plan));
  }

  @Test
  void aFileThatCannotBeWrittenIsTold() throws IOException {
    Path talk = Files.writeString(folder.resolve("talk"), "live wood\nlimb 8 inches by tape\n");
    Cli cli = Cli.run("type", talk, "--save", talk.resolve("below.txt"));
    assertEquals(0, cli.exitCode());
    assertEquals(1, cli.err().lines().count(), cli.err());
    assertTrue(cli.out().contains("Limb, eight inches, by tape."), cli.out());
  }

  /* ---- the card ---- */

  private List<Document> sheets(Path plan) throws IOException {
    Cli cli = Cli.run("plan", "card", plan, "--out", folder.resolve("card.svg"));
    assertEquals(0, cli.exitCode(), cli.err());
    List<Document> sheets = new ArrayList<>();
    for (String file : cli.out().lines().toList()) {
      sheets.add(DrawnArrow.read(Files.readString(Path.of(file))));
    }
    return sheets;
  }

  /** Against the numbers of check, over the rigs that were worked out apart. */
  @ParameterizedTest
  @MethodSource("worked")
  void theArrowOnTheCardPointsAsCheckSays(WorkedRigs.Direction worked) throws IOException {
    Path plan = Files.writeString(folder.resolve("rig.txt"), worked.said());
    JsonNode json = Cli.run("check", "--json", plan).json().get(0);
    double elevation =
        Math.toRadians(json.at("/supports/redirect_1/elevation_deg/nominal").asDouble());
    double bearing = Math.toRadians(json.at("/supports/redirect_1/bearing_deg/nominal").asDouble());
    double tip = Math.cos(elevation) * Math.cos(bearing);
    double left = Math.cos(elevation) * Math.sin(bearing);
    double up = Math.sin(elevation);
    int seen = 0;
    for (Document sheet : sheets(plan)) {
      for (DrawnArrow arrow : DrawnArrow.all(sheet, "slope")) {
        arrow.assertPoints(Math.cos(elevation), up, "slope");
        seen++;
      }
      for (DrawnArrow arrow : DrawnArrow.all(sheet, "side")) {
        arrow.assertPoints(tip, up, "side");
        seen++;
      }
      for (DrawnArrow arrow : DrawnArrow.all(sheet, "plan")) {
        arrow.assertPoints(tip, left, "plan");
        seen++;
      }
    }
    assertTrue(seen >= 2, seen + " arrows");
  }

  static List<WorkedRigs.Direction> worked() throws IOException {
    return WorkedRigs.directions();
  }

  @Test
  void theCardHasWhatPeopleNeedAtTheTree() throws IOException {
    StringBuilder text = new StringBuilder();
    for (Document sheet : sheets(DEMO)) {
      text.append(sheet.getDocumentElement().getTextContent().replaceAll("\\s+", " "));
    }
    for (String part :
        List.of(
            "Plan: Thistle Bottom, the big limb and the stub",
            "1. Clip in, look at it, affirm.",
            "11. Take off redirect two.",
            "The rope's path, unrolled",
            "From the limb's right",
            "From above",
            "load 110 lb",
            "Presses the limb into the union.",
            "Closest to its limit is the sling",
            "If redirect one lets go",
            "never a licence to load",
            "Sources",
            "Page 1 of ")) {
      assertTrue(text.toString().contains(part), part);
    }
  }

  @Test
  void aHostileNameIsText() throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("rig.txt"),
            "# plan: </text><script>alert(1)</script>\n" + worked().get(0).said());
    for (Document sheet : sheets(plan)) {
      assertEquals(0, sheet.getElementsByTagName("script").getLength());
      assertTrue(sheet.getDocumentElement().getTextContent().contains("<script>alert(1)"));
    }
    Path html = folder.resolve("card.html");
    Cli.run("plan", "card", plan, "--out", html);
    assertFalse(Files.readString(html).contains("<script"));
  }

  @Test
  void asPdfItCanBeSearchedAndAsPngItIsAPicture() throws IOException {
    Path pdf = folder.resolve("card.pdf");
    assertEquals(0, Cli.run("plan", "card", DEMO, "--out", pdf).exitCode());
    int pages;
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      pages = document.getNumberOfPages();
      // Letter: the plan speaks in inches and pounds.
      assertEquals(612, document.getPage(0).getMediaBox().getWidth());
      assertTrue(new PDFTextStripper().getText(document).contains("load 110 lb"));
    }
    Cli cli = Cli.run("plan", "card", DEMO, "--out", folder.resolve("card.png"));
    assertEquals(pages, cli.out().lines().count());
    for (String file : cli.out().lines().toList()) {
      BufferedImage image = ImageIO.read(Path.of(file).toFile());
      // 8.5 inches at 150 dots.
      assertEquals(1275, image.getWidth());
    }
  }
}
