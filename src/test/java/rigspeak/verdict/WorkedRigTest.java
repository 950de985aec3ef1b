package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.rig.Spoken;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** Whole rigs, from what is said to every check, against a calculation apart from the program. */
class WorkedRigTest {
  /** A tenth of a percent; the steps are printed to five figures. */
  private static final double SHARE = 0.001;

  /**
   * A rig and what it comes to.
   *
   * @param said one utterance a line
   * @param expected by the names of the file
   */
  record Worked(String name, String said, Map<String, String> expected) {
    double number(String key) {
      return Double.parseDouble(expected.get(key));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Worked> workedRigs() throws IOException {
    List<Worked> rigs = new ArrayList<>();
    try (InputStream file =
        WorkedRigTest.class.getResourceAsStream("/rigspeak/verdict/worked-rigs.txt")) {
      String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      for (String block : text.split("(?m)^== ", -1)) {
        if (!block.startsWith("#")) {
          rigs.add(worked(block));
        }
      }
    }
    assertTrue(rigs.size() >= 14, rigs.size() + " worked rigs");
    return rigs;
  }

  private static Worked worked(String block) {
    List<String> lines = block.lines().map(String::strip).toList();
    StringBuilder said = new StringBuilder();
    Map<String, String> expected = new TreeMap<>();
    boolean saying = true;
    for (String line : lines.subList(1, lines.size())) {
      if (line.equals("--")) {
        saying = false;
      } else if (saying) {
        said.append(line).append('\n');
      } else if (line.contains(" = ") && !line.startsWith("#")) {
        expected.put(
            line.substring(0, line.indexOf(" = ")), line.substring(line.indexOf(" = ") + 3));
      }
    }
    return new Worked(lines.get(0), said.toString(), expected);
  }

  @ParameterizedTest
  @MethodSource("workedRigs")
  void theLoad(Worked worked) {
    Load load = QuickLook.judged(Spoken.rig(worked.said())).load();
    double size = worked.number("resultant_n");
    assertEquals(size, load.resultantN().nominal(), SHARE * size);
    assertEquals(worked.number("along_n"), load.alongN().nominal(), SHARE * size);
    assertEquals(worked.number("top_n"), load.topN().nominal(), SHARE * size);
    assertEquals(worked.number("side_n"), load.sideN().nominal(), SHARE * size);
    assertEquals(worked.number("elevation_deg"), load.elevationDeg().nominal(), 0.01);
    double bearing = load.bearingDeg().nominal() - worked.number("bearing_deg");
    assertEquals(0, Math.IEEEremainder(bearing, 360), 0.01);
    assertEquals(worked.expected().get("class"), load.loadClass().name().toLowerCase(Locale.ROOT));
  }

  @ParameterizedTest
  @MethodSource("workedRigs")
  void everyCheck(Worked worked) {
    Judged judged = QuickLook.judged(Spoken.rig(worked.said()));
    double most = 0;
    for (Check check : judged.checks()) {
      double expected = worked.number(check.kind().key());
      double nominal = check.utilisation().nominal();
      // What is worth nothing as said is rounding, in newtons over any capacity there is.
      assertEquals(expected, nominal, Math.max(SHARE * expected, 1e-6), check.kind().key());
      most = Math.max(most, nominal);
    }
    assertEquals(worked.number(worked.expected().get("largest")), most, SHARE * most);
    if (judged.rating() == Rating.REFUSE) {
      assertEquals(worked.expected().get("largest"), judged.governing().kind().key());
    }
    assertEquals(most > 1, judged.rating() == Rating.REFUSE);
  }

  /** What was worked out apart is checked by the program, all of it. */
  @ParameterizedTest
  @MethodSource("workedRigs")
  void noCheckIsDropped(Worked worked) {
    Set<CheckKind> expected = EnumSet.allOf(CheckKind.class);
    expected.removeIf(kind -> !worked.expected().containsKey(kind.key()));
    Set<CheckKind> made = EnumSet.noneOf(CheckKind.class);
    QuickLook.judged(Spoken.rig(worked.said())).checks().forEach(check -> made.add(check.kind()));
    assertEquals(expected, made);
  }

  /**
   * Every kind of check, and every class of load but none, is worked out somewhere; the stem
   * between needs a rope, see {@link WorkedPathTest}.
   */
  @ParameterizedTest
  @MethodSource("kindsAndClasses")
  void nothingIsLeftOut(String name) throws IOException {
    assertTrue(
        workedRigs().stream()
            .anyMatch(
                worked ->
                    worked.expected().containsKey(name)
                        || worked.expected().get("class").equals(name)),
        name);
  }

  static List<String> kindsAndClasses() {
    List<String> names = new ArrayList<>(List.of("lever", "into_union", "pull", "lift", "side"));
    for (CheckKind kind : EnumSet.complementOf(EnumSet.of(CheckKind.STEM_BETWEEN))) {
      names.add(kind.key());
    }
    return names;
  }
}
