package rigspeak.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import rigspeak.catalogue.Catalogue;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.verdict.Load;
import rigspeak.verdict.LoadAsSaid;
import rigspeak.verdict.SampledRigs;
import rigspeak.verdict.WorkedRigs;

/** Pictures of a support: what is drawn is what was said and worked out. */
class RigDrawingTest {
  private static final int RIGS = 400;

  /** Square units that two boxes round letters may share unseen. */
  private static final double TOUCHING = 4;

  private static final Place ALONE = Place.redirectNumber(1);
  private static final Catalogue CATALOGUE = Catalogue.bundled();

  private static Subject subject(Rig rig) {
    RopePath path = RopePath.alone(rig);
    return Subject.asSaid(
        path, ALONE, Optional.ofNullable(LoadAsSaid.of(CATALOGUE, path).get(ALONE)));
  }

  private static Document drawn(Rig rig) {
    return DrawnArrow.read(RigDrawing.sideAndPlan(subject(rig)));
  }

  /** Elevation and bearing were worked out apart from the program. */
  @ParameterizedTest
  @MethodSource("worked")
  void theArrowPointsWhereTheLoadWasWorkedOutToPoint(WorkedRigs.Direction worked) {
    assertArrows(drawn(worked.rig()), worked.elevationDeg(), worked.bearingDeg(), worked.name());
  }

  static List<WorkedRigs.Direction> worked() throws IOException {
    return WorkedRigs.directions();
  }

  @Test
  void theArrowPointsWhereTheLoadPointsAllOverTheSpaceOfRigs() {
    for (Rig rig : SampledRigs.first(RIGS)) {
      Load load = subject(rig).loaded().orElseThrow().load();
      assertArrows(
          drawn(rig), load.elevationDeg().nominal(), load.bearingDeg().nominal(), rig.toString());
    }
  }

  /**
   * The parts of a unit vector (spherical coordinates): cos e cos b toward the tip, cos e sin b to
   * the left, sin e up. From above one sees the first two, from the side the first and the last.
   */
  private static void assertArrows(
      Document svg, double elevationDeg, double bearingDeg, String what) {
    double elevation = Math.toRadians(elevationDeg);
    double bearing = Math.toRadians(bearingDeg);
    double tip = Math.cos(elevation) * Math.cos(bearing);
    double left = Math.cos(elevation) * Math.sin(bearing);
    double up = Math.sin(elevation);
    DrawnArrow slope = DrawnArrow.in(svg, "slope").orElseThrow();
    slope.assertPoints(Math.cos(elevation), up, "slope of " + what);
    Optional<DrawnArrow> side = DrawnArrow.in(svg, "side");
    Optional<DrawnArrow> plan = DrawnArrow.in(svg, "plan");
    side.ifPresent(arrow -> arrow.assertPoints(tip, up, "side of " + what));
    plan.ifPresent(arrow -> arrow.assertPoints(tip, left, "plan of " + what));
    // Only what is seen nearly end on has no arrow; then the other view has one.
    assertTrue(side.isPresent() || Math.hypot(tip, up) < 0.6, "no arrow from the side: " + what);
    assertTrue(plan.isPresent() || Math.hypot(tip, left) < 0.6, "no arrow from above: " + what);
    assertTrue(side.isPresent() || plan.isPresent(), what);
  }

  /** As little as was said is drawn, and no load that is not known. */
  @ParameterizedTest
  @EnumSource(Slot.class)
  void aRigThatIsOnlyPartlySaidIsDrawnToo(Slot slot) {
    Rig stout = Spoken.rig(Spoken.STOUT);
    Document without = drawn(stout.without(slot));
    boolean known = subject(stout.without(slot)).loaded().isPresent();
    assertEquals(known, DrawnArrow.in(without, "slope").isPresent());
    Optional.ofNullable(stout.said().get(slot))
        .ifPresent(
            said -> {
              Document alone = drawn(Rig.empty().with(slot, said));
              assertTrue(DrawnArrow.in(alone, "slope").isEmpty());
            });
  }

  @Test
  void whatWasNotSaidIsCalledSo() {
    String nothing = RigDrawing.sideAndPlan(subject(Rig.empty()));
    for (String part :
        List.of("limb, diameter not said", "stem, diameter not said", "how far out")) {
      assertTrue(nothing.contains(part), part);
    }
    assertTrue(nothing.contains("stroke-dasharray"));
  }

  /** A picture is an image with a name and a description to a screen reader. */
  @Test
  void whoCannotSeeItIsTold() {
    Element svg = drawn(Spoken.rig(Spoken.STOUT)).getDocumentElement();
    assertEquals("img", svg.getAttribute("role"));
    assertEquals("Redirect one", svg.getAttribute("aria-label"));
    String description = svg.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(description.contains("Load"), description);
    assertTrue(description.contains("Limb 30 cm"), description);
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void anyTextComesOutAsText(String text) {
    Type type = Type.plain(10);
    Picture picture =
        new Picture(10, 10, text, text, List.of(new Mark.Words(Spot.of(1, 1), text, type)));
    Document svg = DrawnArrow.read(picture.svg());
    assertEquals(0, svg.getElementsByTagName("script").getLength());
    String readBack = svg.getElementsByTagName("text").item(0).getTextContent();
    // Line ends are one to XML, and what it does not allow is replaced.
    String expected = text.replaceAll("\r\n?", "\n").replaceAll("[\u0000\u0008\uFFFE]", "\uFFFD");
    assertEquals(expected, readBack);
    assertFalse(svg.getDocumentElement().getAttribute("aria-label").contains("\u0000"));
  }

  static List<String> hostile() {
    return List.of(
        "</text><script>alert(1)</script>",
        "\" onload=\"alert(1)",
        "' x='",
        "&lt; & ]]> <!-- -->",
        "\u0000\u0008\uFFFE",
        "a\nb",
        "\uD83C\uDF33 tree");
  }

  /** WCAG 2.1, success criterion 1.4.3 asks for 4.5; sunlight for more. */
  @ParameterizedTest
  @EnumSource(
      value = Ink.Colour.class,
      names = {"BLACK", "GREY", "ROPE", "LOAD", "BARK"})
  void linesAndLettersStandOut(Ink.Colour colour) {
    assertTrue(contrast(colour, Ink.Colour.WHITE) >= 5.9, "on white");
    if (colour != Ink.Colour.BARK) {
      assertTrue(contrast(colour, Ink.Colour.WOOD) >= 4.5, "on wood");
      assertTrue(contrast(colour, Ink.Colour.SPREAD) >= 4.5, "on the spread");
    }
  }

  /** Relative luminance and contrast ratio as WCAG 2.1 defines them. */
  private static double contrast(Ink.Colour dark, Ink.Colour light) {
    return (luminance(light) + 0.05) / (luminance(dark) + 0.05);
  }

  private static double luminance(Ink.Colour colour) {
    int code = Integer.parseInt(colour.code().substring(1), 16);
    return 0.2126 * linear(code >> 16) + 0.7152 * linear(code >> 8) + 0.0722 * linear(code);
  }

  private static double linear(int eightBits) {
    double share = (eightBits & 0xFF) / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /**
   * Texts keep off one another. Where a picture is crowded there may be no room; of what is said of
   * a rig hardly any picture is.
   */
  @Test
  void labelsKeepOffOneAnother() {
    List<String> found = new ArrayList<>();
    for (Rig rig : SampledRigs.first(RIGS)) {
      List<Mark.Words> words = new ArrayList<>();
      RigDrawing.picture(subject(rig)).marks().forEach(mark -> collect(mark, words));
      for (int i = 0; i < words.size(); i++) {
        for (int j = 0; j < i; j++) {
          if (words.get(i).area().shared(words.get(j).area()) > TOUCHING) {
            found.add(words.get(i).text() + " on " + words.get(j).text());
          }
        }
      }
    }
    assertTrue(found.size() <= RIGS / 50, found.toString());
  }

  private static void collect(Mark mark, List<Mark.Words> words) {
    if (mark instanceof Mark.Words one) {
      words.add(one);
    } else if (mark instanceof Mark.Group group) {
      group.marks().forEach(each -> collect(each, words));
    }
  }

  /** Lengths are to the scale of the bar beside them. */
  @Test
  void theDistanceOutIsToScale() {
    Document svg = drawn(Spoken.with(Spoken.rig(Spoken.STOUT), "out 2 meters by tape"));
    double bar = length(group(svg, "scale"));
    double out = length(group(svg, "out"));
    String written = group(svg, "scale").getTextContent().strip();
    double metres =
        written.endsWith(" cm")
            ? Double.parseDouble(written.replace(" cm", "")) / 100
            : Double.parseDouble(written.replace(" m", ""));
    assertEquals(2.0, out / bar * metres, 0.01);
  }

  private static Element group(Document svg, String kind) {
    for (int i = 0; i < svg.getElementsByTagName("g").getLength(); i++) {
      Element group = (Element) svg.getElementsByTagName("g").item(i);
      if (group.getAttribute("class").equals(kind)) {
        return group;
      }
    }
    throw new AssertionError("no " + kind);
  }

  private static double length(Element group) {
    Element line = (Element) group.getElementsByTagName("line").item(0);
    return Math.hypot(
        Double.parseDouble(line.getAttribute("x2")) - Double.parseDouble(line.getAttribute("x1")),
        Double.parseDouble(line.getAttribute("y2")) - Double.parseDouble(line.getAttribute("y1")));
  }
}
