package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.drawing.Card;
import rigspeak.drawing.Picture;
import rigspeak.drawing.RigDrawing;
import rigspeak.drawing.Subject;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.rig.Spoken;
import rigspeak.verdict.LoadAsSaid;

/**
 * The pictures of the documents that the tool itself draws are what it draws now. {@code mvn -q
 * test -Dtest=DrawnFiguresTest -Drewrite} writes them.
 */
class DrawnFiguresTest {
  private static final Path FOLDER = Path.of("docs", "figures");

  private static final String REST =
      """
      all up 170 pounds by tape
      species northern red oak
      live wood
      stationary rope
      stem 18 inches by tape
      union sound
      sling choked
      three wraps
      bark rough
      over ring
      """;

  @ParameterizedTest
  @CsvSource({
    "into-union, INTO_UNION, limb rises 20, anchor leg up 60 toward the stem, working leg straight down",
    "lever, LEVER, limb level, anchor leg down 50 toward the stem, working leg straight down",
    "lift, LIFT, limb drops 45, anchor leg up 80 toward the tip, working leg down 10 toward the tip",
    "side, SIDE, limb level, anchor leg up 20 at 8 o'clock, working leg down 45 at 10 o'clock",
  })
  void aUnionIsLoaded(String name, String loadClass, String limb, String anchor, String working)
      throws IOException {
    Place place = Place.redirectNumber(1);
    RopePath path =
        RopePath.alone(
            Spoken.rig(
                REST
                    + String.join(
                        "\n",
                        "limb 8 inches by tape",
                        "out 3 feet by tape",
                        limb + " by tape",
                        anchor + " by tape",
                        working + " by tape")));
    LoadAsSaid loaded = LoadAsSaid.of(Catalogue.bundled(), path).get(place);
    assertEquals(loadClass, loaded.load().loadClass().name().toUpperCase(Locale.ROOT));
    assertKept(
        "drawn-" + name, RigDrawing.picture(Subject.asSaid(path, place, Optional.of(loaded))));
  }

  /** The first two sheets of the demo's card. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void theCardOfTheDemoPlan(int sheet) throws IOException {
    Path plan = Path.of("demo-data", "plan.txt");
    List<Picture> sheets = Card.pages(Thinking.bundled().verdict(PlanFiles.read(plan.toString())));
    assertKept(sheet == 0 ? "card-first" : "card-second", sheets.get(sheet));
  }

  private static void assertKept(String name, Picture picture) throws IOException {
    Path file = FOLDER.resolve(name + ".svg");
    if (System.getProperty("rewrite") != null) {
      Files.writeString(file, picture.svg());
    }
    assertTrue(Files.exists(file), file + " is missing");
    assertEquals(picture.svg(), Files.readString(file), file + " is not as drawn; see -Drewrite");
  }
}
