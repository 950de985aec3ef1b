package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The typed commands from the outside: text in, text or JSON and an exit code out. */
class TypedTest {
  /** The rope is pulled down along the leg to the first redirect, into a stout union. */
  private static final String MAIN_POINT =
      """
      go to the main point
      all up two hundred ten pounds species red oak live wood
      limb twelve inches by tape limb upright at the union stem twenty inches union sound
      sling choked three wraps seated at the union bark rough over ring
      stationary rope canopy anchor
      """;

  private static final String REST_OF_RIG =
      MAIN_POINT
          + """
      # a stout limb, loaded through legs that press it into its union
      go to redirect one
      live wood limb rises thirty out one foot by tape
      stem fourteen inches union sound
      sling choked three wraps seated on a stub bark rough
      over carabiner
      anchor leg up sixty toward the stem fifteen feet
      """;

  @TempDir Path folder;

  private Cli check(String rig, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("rig.txt"), rig);
    Object[] arguments = new Object[options.length + 2];
    arguments[0] = "check";
    System.arraycopy(options, 0, arguments, 1, options.length);
    arguments[arguments.length - 1] = file;
    return Cli.run(arguments);
  }

  @ParameterizedTest
  @CsvSource({
    "limb eight inches by tape, working leg straight down, good",
    "limb two inches by tape, working leg straight down, refuse",
    "limb eight inches by tape, working leg up ten left, cannot_say",
    "limb eight inches by tape, no slack, cannot_say",
  })
  void oneVerdictComesOut(String limb, String leg, String verdict) throws IOException {
    Cli cli = check(REST_OF_RIG + limb + "\n" + leg, "--json");
    assertEquals(0, cli.exitCode());
    assertEquals(verdict, cli.json().get(0).get("verdict").asText());
    assertEquals("", cli.err());
  }

  /** A file from somebody else must not paint another answer over the tool's own. */
  @ParameterizedTest
  @ValueSource(strings = {"type", "check", "plan check"})
  void whatSteersATerminalIsNotPrinted(String command) throws IOException {
    String line = "limb\u001b[2K\rGood to load, redirect one.\u009b2J\u202e\u2028\u0007\b\n";
    Path file = Files.writeString(folder.resolve("rig.txt"), line);
    List<Object> arguments = new ArrayList<>(List.of(command.split(" ", -1)));
    arguments.add(file);
    Cli cli = Cli.run(arguments.toArray());
    assertTrue(cli.out().contains("limb\uFFFD[2K"), cli.out());
    assertTrue(
        (cli.out() + cli.err())
            .codePoints()
            .noneMatch(
                sign ->
                    sign != '\n'
                        && (Character.isISOControl(sign)
                            || Character.getType(sign) == Character.FORMAT
                            || sign == 0x2028)),
        cli.out());
  }

  @Test
  void theNumbersAreThere() throws IOException {
    JsonNode json =
        check(REST_OF_RIG + "limb eight inches by tape working leg straight down", "--json")
            .json()
            .get(0);
    // Two legs with 150 degrees between them: 2 cos 75 of 95.2544 kg times 9.80665 m/s2.
    double tension = 210 * 0.45359237 * 9.80665;
    double load = 2 * Math.cos(Math.toRadians(75)) * tension;
    assertEquals(tension, json.at("/working_leg_n/nominal").asDouble(), 1e-6);
    assertEquals(load, json.at("/resultant_n/nominal").asDouble(), 1e-6);
    assertEquals(-15, json.at("/elevation_deg/nominal").asDouble(), 1e-9);
    assertEquals(180, Math.abs(json.at("/bearing_deg/nominal").asDouble()), 1e-9);
    // The limb rises 30: the load, down 15 toward the stem, lies 45 degrees off its axis.
    assertEquals(
        -load * Math.cos(Math.toRadians(15)) * Math.cos(Math.toRadians(30))
            - load * Math.sin(Math.toRadians(15)) * Math.sin(Math.toRadians(30)),
        json.at("/along_n/nominal").asDouble(),
        1e-6);
    assertEquals("into_union", json.get("load_class").asText());
    for (JsonNode check : json.get("checks")) {
      assertTrue(check.at("/utilisation/high").asDouble() <= 1, check.toString());
      assertFalse(check.get("sources").isEmpty(), check.toString());
    }
    json.get("checks")
        .forEach(
            check ->
                check
                    .get("sources")
                    .forEach(
                        source ->
                            assertTrue(json.get("sources").has(source.asText()), source.asText())));
  }

  @Test
  void missingSlotsAreNamed() throws IOException {
    JsonNode json = check("limb eight inches\n", "--json").json().get(0);
    assertEquals("cannot_say", json.get("verdict").asText());
    assertTrue(json.get("missing_slots").toString().contains("\"all_up\""));
    assertFalse(json.get("missing_slots").toString().contains("\"limb_diameter\""));
  }

  private static final String FIRST =
      """
      go to redirect one
      live wood limb twelve inches by tape limb level at the union stem twenty inches union sound
      sling choked three wraps seated on a stub bark rough over ring
      anchor leg up sixty toward the stem twelve feet by tape
      working leg down seventy five toward the tip ten feet by tape
      """;

  private static final String SECOND =
      """
      next redirect
      live wood limb twelve inches by tape limb level at the union stem twenty inches union sound
      sling choked three wraps seated on a stub bark rough over ring
      anchor leg up seventy five toward the stem ten feet by tape
      working leg straight down fifteen feet by tape stem clear of swing by twelve feet
      """;

  private static final String SET = "clipped in\naffirm\nready to set\n";

  @Test
  void aWholeRopeIsToldSupportBySupport() throws IOException {
    JsonNode json = check(MAIN_POINT + FIRST + SET + SECOND, "--json").json().get(0);
    assertEquals("good", json.get("verdict").asText());
    assertEquals("redirect_2", json.get("asked").asText());
    assertEquals(
        List.of("main_point", "redirect_1", "redirect_2"), fieldNames(json.get("supports")));
    double tension = 210 * 0.45359237 * 9.80665;
    // The main point has one leg: all of the rope's tension, down sixty. The legs of the first
    // redirect make 120 and -75 degrees in one plane, those of the second 105 and -90: both have
    // 165 degrees between them.
    JsonNode main = json.at("/supports/main_point");
    assertEquals(tension, main.at("/resultant_n/nominal").asDouble(), 1e-6);
    assertEquals(-60, main.at("/elevation_deg/nominal").asDouble(), 1e-9);
    double load = 2 * Math.cos(Math.toRadians(82.5)) * tension;
    for (String place : List.of("redirect_1", "redirect_2")) {
      JsonNode support = json.at("/supports/" + place);
      assertEquals(load, support.at("/resultant_n/nominal").asDouble(), 1e-6, place);
      assertEquals(165, support.at("/inside_angle_deg/nominal").asDouble(), 1e-9, place);
    }
    assertEquals(load, json.at("/resultant_n/nominal").asDouble(), 1e-6);
    for (JsonNode support : json.get("supports")) {
      assertEquals("good", support.get("verdict").asText());
      assertFalse(support.get("governing_check").isNull());
    }
  }

  @Test
  void whatALossDoesIsTold() throws IOException {
    JsonNode json = check(MAIN_POINT + FIRST + SET + SECOND, "--json").json().get(0);
    assertEquals("nothing_else_holds", json.at("/if_lost/main_point/loss").asText());
    // Straight between its neighbours the rope of the first would be 21.813 ft instead of 22; the
    // second's two legs hang 25 ft below the first, where the climber is 24.659 ft below it.
    assertFalls(json.at("/if_lost/redirect_1"), "redirect_2", 22 - 21.81327);
    assertFalls(json.at("/if_lost/redirect_2"), "redirect_1", 25 - 24.65926);
    JsonNode swing = json.get("working_swing");
    assertEquals("redirect_2", swing.get("from").asText());
    assertEquals(0, swing.at("/offset_m/nominal").asDouble(), 1e-9);
    assertEquals("clear", swing.at("/obstacle/obstacle").asText());
    assertFalse(swing.get("second_attachment").asBoolean());
  }

  private static void assertFalls(JsonNode loss, String caughtBy, double dropFeet) {
    assertEquals("falls", loss.get("loss").asText());
    assertEquals(caughtBy, loss.get("caught_by").asText());
    assertEquals(dropFeet * 0.3048, loss.at("/drop_m/nominal").asDouble(), 1e-4);
    assertTrue(loss.at("/peak_n/high").asDouble() > 0);
  }

  @Test
  void theWorstSupportGoverns() throws IOException {
    String thin = MAIN_POINT + "limb four inches by tape limb level out ten feet sling free\n";
    JsonNode json = check(thin + FIRST, "--json").json().get(0);
    assertEquals("refuse", json.get("verdict").asText());
    assertEquals("redirect_1", json.get("asked").asText());
    assertEquals("main_point", json.get("governing_support").asText());
    assertEquals("limb_at_union", json.get("governing_check").asText());
    assertEquals("good", json.at("/supports/redirect_1/verdict").asText());
    assertEquals("refuse", json.at("/supports/main_point/verdict").asText());
  }

  @Test
  void anUnknownMainPointIsNamed() throws IOException {
    String redirectAlone =
        "all up two hundred pounds species red oak stationary rope canopy anchor\n";
    JsonNode json = check(redirectAlone + FIRST, "--json").json().get(0);
    assertEquals("cannot_say", json.get("verdict").asText());
    assertEquals("main_point", json.get("governing_support").asText());
    assertEquals("missing", json.at("/reasons/0").asText());
    assertEquals("wood", json.at("/missing_slots/0").asText());
    assertEquals("good", json.at("/supports/redirect_1/verdict").asText());
    assertEquals("nothing_else_holds", json.at("/if_lost/main_point/loss").asText());
  }

  @Test
  void whatIsNotKnownNearerTheClimberKeepsTheOthersWaiting() throws IOException {
    String rig = MAIN_POINT + FIRST + SET + "next redirect\nlive wood\n";
    JsonNode json = check(rig, "--json").json().get(0);
    assertEquals("cannot_say", json.get("verdict").asText());
    assertEquals("redirect_2", json.get("governing_support").asText());
    for (String place : List.of("main_point", "redirect_1")) {
      assertEquals(
          "waits_for_redirect_2", json.at("/supports/" + place + "/reasons/0").asText(), place);
    }
    assertEquals(1, json.get("if_lost").size());
    assertEquals("nothing_else_holds", json.at("/if_lost/main_point/loss").asText());
    assertFalse(json.has("working_swing"));
  }

  @Test
  void aLegSaidInTwoWaysIsACannotSay() throws IOException {
    String rig =
        MAIN_POINT + "working leg down twenty toward the tip thirty feet by tape\n" + FIRST;
    JsonNode json = check(rig, "--json").json().get(0);
    assertEquals("cannot_say", json.get("verdict").asText());
    assertEquals("main_point", json.get("governing_support").asText());
    assertEquals("[\"shared_leg_turns\",\"shared_leg_lengths\"]", json.get("reasons").toString());
  }

  /** Nobody hears "lanyard first" when a file is checked; what follows would be judged without. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "ready to set",
        "rope loaded",
        "clipped in\naffirm\nnegative\nready to set\nclipped in",
        "go to redirect two",
        "correction limb twelve inches by tape",
        "two wraps three wraps"
      })
  void aStepThatIsNotDoneNeverEndsInAVerdict(String step) throws IOException {
    Cli json = check(MAIN_POINT + FIRST + step, "--json");
    assertEquals(3, json.exitCode());
    assertEquals("not_taken", json.json().get(0).get("reasons").get(0).asText());
    Cli text = check(MAIN_POINT + FIRST + step);
    assertEquals(3, text.exitCode());
    assertTrue(text.out().startsWith("Cannot say."), text.out());
    assertFalse(text.hasStackTrace(), text.out());
  }

  @Test
  void aStepThatWaitedForTheLanyardIsDoneThen() throws IOException {
    String set = "ready to set\nclipped in\naffirm\n";
    JsonNode json = check(MAIN_POINT + FIRST + set + SECOND, "--json").json().get(0);
    assertEquals("good", json.get("verdict").asText());
    assertTrue(json.get("supports").has("redirect_1"));
  }

  private static List<String> fieldNames(JsonNode json) {
    List<String> names = new ArrayList<>();
    json.fieldNames().forEachRemaining(names::add);
    return names;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "limb eight bananas",
        "limb minus five inches",
        "limb -5 inches",
        "limb nan inches",
        "limb infinity inches",
        "limb 1e400 inches",
        "limb 99999999999999999999 inches",
        "limb eight",
        "limb eight hundred inches",
        "anchor leg up one hundred left",
        "rope angle sixty",
        "limb eight inches limb nine inches",
        "\u0000\u0001\u0002",
        "лимб восемь",
        "<script>alert(1)</script>"
      })
  void aLineThatIsNotTakenNeverEndsInAVerdict(String line) throws IOException {
    String rig = REST_OF_RIG + "limb eight inches by tape working leg straight down\n" + line;
    Cli json = check(rig, "--json");
    assertEquals(3, json.exitCode());
    assertEquals("cannot_say", json.json().get(0).get("verdict").asText());
    assertEquals("not_taken", json.json().get(0).get("reasons").get(0).asText());
    Cli text = check(rig);
    assertEquals(3, text.exitCode());
    assertTrue(text.out().startsWith("Cannot say."), text.out());
    assertFalse(text.hasStackTrace(), text.out());
  }

  @Test
  void aVeryLongLineIsRefusedQuickly() throws IOException {
    assertEquals(3, check("limb eight inches ".repeat(20_000)).exitCode());
  }

  @Test
  void everyTypedUtteranceIsOneJsonObject() {
    Cli cli = Cli.run("type", "--json", "demo-data/one-day.txt");
    assertEquals(0, cli.exitCode());
    List<JsonNode> exchanges = cli.json();
    List<String> verdicts =
        exchanges.stream()
            .filter(exchange -> exchange.has("verdict"))
            .map(exchange -> exchange.at("/verdict/verdict").asText())
            .toList();
    assertEquals(List.of("good", "refuse", "refuse", "good"), verdicts);
    assertTrue(exchanges.stream().allMatch(exchange -> exchange.get("understood").asBoolean()));
  }

  @Test
  void aMissingFileIsOneSentence() {
    Cli cli = Cli.run("check", folder.resolve("nowhere.txt"));
    assertEquals(3, cli.exitCode());
    assertEquals(1, cli.err().lines().count());
    assertTrue(cli.err().startsWith("There is no file "), cli.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"chekc", "--colour", "check one two"})
  void aWrongCommandLineIsUsage(String arguments) {
    assertEquals(2, Cli.run((Object[]) arguments.split(" ", -1)).exitCode());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"listen", "hear", "type", "check", "transcribe", "say", "devices", "bench"})
  void everyCommandExplainsItself(String command) {
    Cli cli = Cli.run(command, "--help");
    assertEquals(0, cli.exitCode());
    assertTrue(cli.out().startsWith("Usage: rigspeak " + command), cli.out());
  }
}
