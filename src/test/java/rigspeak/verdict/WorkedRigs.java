package rigspeak.verdict;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigspeak.WorkedValue;
import rigspeak.rig.Spoken;
import rigspeak.verdict.WorkedRigTest.Worked;

/** The rigs that were worked out apart, with what the program makes of them. */
public final class WorkedRigs {
  private static final String SOURCE = "formulas at the head of the file";

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
            double given = Double.parseDouble(outside);
            boolean nothing = Math.abs(given) < NOTHING && Math.abs(value) < NOTHING;
            values.add(
                new WorkedValue(
                    name.replace('_', ' '),
                    nothing ? "0" : outside,
                    nothing ? 0 : turned(name, value, given),
                    SOURCE,
                    "computed"));
          }
        });
    return values;
  }

  private static double turned(String name, double value, double given) {
    return name.equals("bearing_deg") ? given + Math.IEEEremainder(value - given, 360) : value;
  }

  /** What is true as said needs no more samples than a quick look takes. */
  private static Map<String, Double> ours(QuickLook look) {
    Map<String, Double> ours = new TreeMap<>();
    Load load = look.load();
    ours.put("resultant_n", load.resultantN().nominal());
    ours.put("along_n", load.alongN().nominal());
    ours.put("top_n", load.topN().nominal());
    ours.put("side_n", load.sideN().nominal());
    ours.put("elevation_deg", load.elevationDeg().nominal());
    ours.put("bearing_deg", load.bearingDeg().nominal());
    look.nominal().forEach((kind, utilisation) -> ours.put(kind.key(), utilisation));
    return ours;
  }
}
