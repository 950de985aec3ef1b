package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The typed commands from the outside: text in, text or JSON and an exit code out. */
class TypedTest {
  private static final String REST_OF_RIG =
      """
      # a stout limb, loaded through legs that press it into its union
      all up two hundred ten pounds species red oak live wood
      limb rises thirty out one foot by tape
      stem fourteen inches union sound
      sling choked three wraps seated on a stub bark rough
      over carabiner stationary rope
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
