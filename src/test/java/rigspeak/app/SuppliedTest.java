package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
import rigspeak.catalogue.Catalogue;
import rigspeak.grammar.Grammar;

/** A crew's own tables and words from the outside. */
class SuppliedTest {
  private static final String TOLD = "your crew's own figures";
  private static final Path CREW = Path.of("demo-data", "crew");
  private static final String WOOD =
      "species,specific_gravity,bending_mpa,stiffness_mpa,compression_mpa,shear_mpa,source\n";

  /** Two supports, each a little over what is plainly good. */
  private static final String RIG =
      """
      all up two hundred forty pounds by tape, species white oak, stationary rope, canopy anchor
      go to the main point
      live wood, limb nine inches by tape, limb upright by tape, out one foot by tape
      stem twenty inches by tape, union sound, sling basket, bark rough, seated on a stub, over pulley
      go to redirect one
      live wood, limb eight inches by tape, limb rises thirty by tape, out one foot by tape
      stem fourteen inches by tape, union sound, sling choked, two wraps, seated on a stub
      bark rough, over ring
      anchor leg up sixty toward the stem fifteen feet by tape
      working leg straight down twenty feet by tape
      """;

  @TempDir Path folder;

  private Path tables(String name, String text) throws IOException {
    Path crew = Files.createDirectories(folder.resolve("crew"));
    Files.writeString(crew.resolve("sources.csv"), "key,title\nown,measured by this test\n");
    Files.writeString(crew.resolve(name), text);
    return crew;
  }

  private JsonNode check(Object... options) throws IOException {
    List<Object> arguments = new ArrayList<>(List.of("check", "--json"));
    arguments.addAll(List.of(options));
    arguments.add(Files.writeString(folder.resolve("rig.txt"), RIG));
    Cli cli = Cli.run(arguments.toArray());
    assertEquals(0, cli.exitCode(), cli.out() + cli.err());
    return cli.json().get(0);
  }

  private static JsonNode withoutAnswers(JsonNode verdict) {
    ObjectNode numbers = verdict.deepCopy();
    numbers.remove(List.of("answers", "sources"));
    return numbers;
  }

  /** Whichever number is supplied, at its most lenient: where it changes anything, it is told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "factors.csv  | name,value,source@rope_n,60000,own                     | true",
        "factors.csv  | name,value,source@sling_n,60000,own                    | true",
        "factors.csv  | name,value,source@ring_n,60000,own                     | true",
        "factors.csv  | name,value,source@pulley_n,60000,own                   | true",
        "factors.csv  | name,value,source@carabiner_n,60000,own                | false",
        "factors.csv  | name,value,source@cross_loaded_n,20000,own             | false",
        "factors.csv  | name,value,source@design_factor_share,0.3,own          | true",
        "factors.csv  | name,value,source@working_peak,2.5,own                 | true",
        "factors.csv  | name,value,source@rope_modulus_n,20000,own             | true",
        "friction.csv | contact,low,nominal,high,source@bark_rough,0.9,0.9,0.9,own   | true",
        "friction.csv | contact,low,nominal,high,source@ring,0.05,0.05,0.05,own      | true",
        "friction.csv | contact,low,nominal,high,source@pulley,0.05,0.05,0.05,own    | true",
        "friction.csv | contact,low,nominal,high,source@bark_smooth,0.9,0.9,0.9,own  | false",
        "choke.csv    | from_deg,start_counts,factor,source@0,yes,1,own        | true",
        "bend.csv     | bend_over_rope,factor,source@1,1,own                   | true",
        "wood.csv     |"
            + " species,specific_gravity,bending_mpa,stiffness_mpa,compression_mpa,shear_mpa,source@\"Oak,"
            + " white\",0.6,190,25000,94,30,own | true",
        "wood.csv     |"
            + " species,specific_gravity,bending_mpa,stiffness_mpa,compression_mpa,shear_mpa,source@\"Oak,"
            + " bur\",0.6,190,25000,94,30,own   | false",
      })
  void aSuppliedNumberThatCountsIsToldWithTheVerdict(String file, String rows, boolean counts)
      throws IOException {
    Path crew = tables(file, rows.replace('@', '\n') + "\n");
    JsonNode usual = check();
    JsonNode supplied = check("--catalogue", crew);
    boolean changed = !withoutAnswers(usual).equals(withoutAnswers(supplied));
    boolean told = supplied.get("answers").toString().contains(TOLD);
    assertTrue(told || !changed, supplied::toString);
    assertEquals(counts, told, supplied::toString);
    assertFalse(usual.toString().contains("crew's own"), usual::toString);
  }

  /** So that it need not be looked at again at every start. */
  @Test
  void theToolsOwnSpeciesAllHaveWood() {
    assertDoesNotThrow(() -> Supplied.refuseStrangers(Grammar.bundled(), Catalogue.bundled()));
  }

  @Test
  void whyNamesItAndTheCardLeavesItOnItsSheet() throws IOException {
    Path rig = Files.writeString(folder.resolve("talk.txt"), RIG + "check redirect\ntell me why\n");
    Cli typed = Cli.run("type", "--catalogue", CREW, rig);
    assertEquals(0, typed.exitCode(), typed.err());
    assertEquals(2, typed.out().split(TOLD, -1).length - 1, typed.out());
    Path card = folder.resolve("card.svg");
    Path plan = Path.of("demo-data", "plan.txt");
    assertEquals(0, Cli.run("plan", "card", "--catalogue", CREW, "--out", card, plan).exitCode());
    StringBuilder sheets = new StringBuilder(Files.readString(card));
    for (int i = 2; Files.exists(folder.resolve("card-" + i + ".svg")); i++) {
      sheets.append(Files.readString(folder.resolve("card-" + i + ".svg")));
    }
    String words = sheets.toString().replace("&#39;", "'");
    assertTrue(words.contains("Your crew's own: the label of"), "the card's sources");
    assertTrue(words.contains(TOLD), "the card's verdict");
    assertTrue(Cli.run("plan", "check", "--catalogue", CREW, plan).out().contains(TOLD));
  }

  @Test
  void aNewSpeciesNeedsItsWordsAndItsWood() throws IOException {
    Path crew = tables("wood.csv", WOOD + "\"Oak, turkey\",0.6,57,8600,24,8,own\n");
    Cli unsaid = Cli.run("check", "--catalogue", crew, "demo-data/plan.txt");
    assertRefused(unsaid, "has no words for \"Oak, turkey\" of the table wood.csv.");
    Path words =
        Files.writeString(
            folder.resolve("own.jsgf"),
            Files.readString(Path.of("grammars", "rigspeak.jsgf"))
                .replace("| oak {is oak}", "| oak {is oak} | turkey oak {is turkey oak}"));
    assertRefused(
        Cli.run("check", "--grammar", words, "demo-data/plan.txt"),
        "has the species \"turkey oak\", of which no table has the wood.");
    Path talk = Files.writeString(folder.resolve("talk.txt"), "species turkey oak\n");
    Cli both = Cli.run("type", "--catalogue", crew, "--grammar", words, talk);
    assertEquals(0, both.exitCode(), both.err());
    assertTrue(both.out().contains("Species, turkey oak."), both.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"type", "check", "plan check", "plan card", "hear"})
  void nothingIsDoneWithATableOrAGrammarThatIsRefused(String command) throws IOException {
    Path crew = tables("factors.csv", "name,value,source\nrope_n,24,own\n");
    assertRefused(
        run(command, "--catalogue", crew),
        "factors.csv, line 2, has value 24, which is not within 10000 and 60000.");
    Path words =
        Files.writeString(
            folder.resolve("own.jsgf"),
            Files.readString(Path.of("grammars", "rigspeak.jsgf"))
                .replace("rough {is rough}", "xyzzyx {is rough}"));
    assertRefused(
        run(command, "--grammar", words),
        "has \"xyzzyx\", which no dictionary says how to pronounce.");
  }

  private Cli run(String command, String option, Path supplied) {
    List<Object> arguments = new ArrayList<>(List.of(command.split(" ", -1)));
    arguments.addAll(List.of(option, supplied));
    if (command.equals("plan card")) {
      arguments.addAll(List.of("--out", folder.resolve("card.svg")));
    }
    arguments.add(command.equals("hear") ? "demo-data/one-day" : "demo-data/plan.txt");
    return Cli.run(arguments.toArray());
  }

  @ParameterizedTest
  @CsvSource({"--catalogue, no-such-folder", "--grammar, no-such-file.jsgf"})
  void whatIsNotThereIsToldInOneSentence(String option, String name) {
    Path missing = folder.resolve(name);
    assertRefused(
        Cli.run("check", option, missing, "demo-data/plan.txt"),
        "There is no file " + missing + ".");
  }

  @Test
  void aFolderWithoutATableIsTold() {
    assertRefused(
        Cli.run("check", "--catalogue", folder, "demo-data/plan.txt"),
        folder + " has no table, no file that ends in .csv.");
  }

  private static void assertRefused(Cli cli, String end) {
    assertEquals(Fault.BAD_INPUT, cli.exitCode(), cli.out() + cli.err());
    assertEquals("", cli.out());
    assertEquals(1, cli.err().lines().count(), cli.err());
    assertTrue(cli.err().strip().endsWith(end), cli.err());
    assertFalse(cli.hasStackTrace());
  }
}
