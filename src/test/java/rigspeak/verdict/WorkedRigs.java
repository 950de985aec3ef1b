package rigspeak.verdict;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigspeak.WorkedValue;
import rigspeak.rig.Rig;
import rigspeak.rig.Spoken;
import rigspeak.verdict.WorkedRigTest.Worked;

/** The rigs that were worked out apart, with what the program makes of them. */
public final class WorkedRigs {
  private static final String SOURCE = "formulas at the head of the file";
  private static final String ANGLE_FACTORS = "3, two crane-block catalogues";

  /** Below this a utilisation is rounding and nothing else. */
  private static final double NOTHING = 1e-9;

  private WorkedRigs() {}

  /** A table for each rig, in Markdown. */
  public static String markdown() throws IOException {
    StringBuilder text = new StringBuilder();
    for (Worked worked : WorkedRigTest.workedRigs()) {
      text.append("\n### A rig that ").append(worked.name()).append("\n\n```\n");
      text.append(worked.said().strip()).append("\n```\n\n");
      text.append(WorkedValue.table(values(worked)));
    }
    return text.toString();
  }

  /** Where the load of a rig points, as it was worked out apart from the program. */
  public record Direction(
      String name, String said, Rig rig, double elevationDeg, double bearingDeg) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** The directions of all loads. */
  public static List<Direction> directions() throws IOException {
    return WorkedRigTest.workedRigs().stream()
        .map(
            worked ->
                new Direction(
                    worked.name(),
                    worked.said(),
                    Spoken.rig(worked.said()),
                    worked.number("elevation_deg"),
                    worked.number("bearing_deg")))
        .toList();
  }

  /** The values of all rigs. */
  public static List<WorkedValue> values() throws IOException {
    return WorkedRigTest.workedRigs().stream().flatMap(rig -> values(rig).stream()).toList();
  }

  private static List<WorkedValue> values(Worked worked) {
    Map<String, Double> ours = ours(QuickLook.at(Spoken.rig(worked.said())));
    List<WorkedValue> values = new ArrayList<>();
    ours.forEach(
        (name, value) -> {
          String outside = worked.expected().get(name);
          if (outside != null) {
            values.add(value(name, name, outside, value));
          }
        });
    return values;
  }

  /** One that the files of this package give under a key. */
  static WorkedValue value(String name, String key, String outside, double ours) {
    double given = Double.parseDouble(outside);
    boolean nothing = Math.abs(given) < NOTHING && Math.abs(ours) < NOTHING;
    boolean published = key.equals("published_factor");
    return new WorkedValue(
        name.replace('_', ' '),
        nothing ? "0" : outside,
        nothing ? 0 : turned(key, ours, given),
        published ? ANGLE_FACTORS : SOURCE,
        published ? "published" : "computed");
  }

  private static double turned(String name, double value, double given) {
    return name.equals("bearing_deg") ? given + Math.IEEEremainder(value - given, 360) : value;
  }

  /** What is true as said needs no more samples than a quick look takes. */
  private static Map<String, Double> ours(QuickLook look) {
    Map<String, Double> ours = ours(look.load());
    look.nominal().forEach((kind, utilisation) -> ours.put(kind.key(), utilisation));
    return ours;
  }

  static Map<String, Double> ours(Load load) {
    Map<String, Double> ours = new TreeMap<>();
    ours.put("resultant_n", load.resultantN().nominal());
    ours.put("along_n", load.alongN().nominal());
    ours.put("top_n", load.topN().nominal());
    ours.put("side_n", load.sideN().nominal());
    ours.put("elevation_deg", load.elevationDeg().nominal());
    ours.put("bearing_deg", load.bearingDeg().nominal());
    return ours;
  }
}
