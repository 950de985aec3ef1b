package rigspeak.verdict;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigspeak.WorkedValue;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.verdict.Verdict.Judged;

/** The ropes and falls that were worked out apart, with what the program makes of them. */
public final class WorkedPaths {
  /** What is true as said needs no more samples. */
  private static final Judge JUDGE = new Judge(QuickLook.CATALOGUE, 128);

  private WorkedPaths() {}

  /** A table for each rope or fall, in Markdown. */
  public static String markdown() throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("\n## Whole ropes\n\n`worked-paths.txt`, where all that was said stands: every")
        .append(" support at the values as said. The ratio beyond is the largest that friction")
        .append(" nearer the climber can make.\n");
    for (WorkedPath worked : WorkedPath.in("worked-paths")) {
      text.append("\n### A rope: ").append(worked.name()).append("\n\n");
      text.append(WorkedValue.table(rope(worked)));
    }
    text.append(
            "\n## Falls\n\n`worked-losses.txt`, where all that was said stands: what happens as")
        .append(" said if a support lets go. What the catch does to the support that is left is")
        .append(" compared in the tests alone.\n");
    for (WorkedPath worked : WorkedPath.in("worked-losses")) {
      text.append("\n### Who ").append(worked.name()).append("\n\n");
      text.append(WorkedValue.table(falls(worked)));
    }
    return text.toString();
  }

  /** The values of all of them. */
  public static List<WorkedValue> values() throws IOException {
    List<WorkedValue> values = new ArrayList<>();
    WorkedPath.in("worked-paths").forEach(worked -> values.addAll(rope(worked)));
    WorkedPath.in("worked-losses").forEach(worked -> values.addAll(falls(worked)));
    return values;
  }

  private static List<WorkedValue> rope(WorkedPath worked) {
    PathVerdict verdict = JUDGE.judge(worked.path(), worked.path().last());
    List<WorkedValue> values = new ArrayList<>();
    for (Place place : worked.path().places()) {
      values.addAll(beside(worked, place, ofSupport((Judged) verdict.supports().get(place))));
    }
    return values;
  }

  private static Map<String, Double> ofSupport(Judged judged) {
    Map<String, Double> ours = new TreeMap<>(WorkedRigs.ours(judged.load()));
    ours.put("working_n", judged.load().workingLegN().nominal());
    judged.load().angleFactor().ifPresent(f -> ours.put("published_factor", f.nominal()));
    if (judged.rig().has(Measure.BEYOND)) {
      ours.put("beyond_high", judged.rig().measures().get(Measure.BEYOND).high());
    }
    judged.checks().forEach(c -> ours.put(c.kind().key(), c.utilisation().nominal()));
    return ours;
  }

  private static List<WorkedValue> falls(WorkedPath worked) {
    PathVerdict verdict = JUDGE.judge(worked.path(), worked.path().last());
    List<WorkedValue> values = new ArrayList<>();
    for (Place place : worked.path().places()) {
      if (verdict.losses().get(place) instanceof Loss.Falls falls) {
        values.addAll(beside(worked, place, ofFall(falls)));
      }
    }
    return values;
  }

  private static Map<String, Double> ofFall(Loss.Falls falls) {
    Map<String, Double> ours = new TreeMap<>();
    ours.put("free_fall_m", falls.freeFallM().nominal());
    ours.put("drop_m", falls.dropM().nominal());
    ours.put("speed_ms", falls.lowestSpeedMS().nominal());
    ours.put("peak_n", falls.peakN().nominal());
    ours.put("bearing_deg", falls.bearingDeg().nominal());
    return ours;
  }

  private static List<WorkedValue> beside(
      WorkedPath worked, Place place, Map<String, Double> ours) {
    List<WorkedValue> values = new ArrayList<>();
    ours.forEach(
        (key, value) -> {
          if (worked.has(place, key)) {
            String name = place.key() + " " + key;
            values.add(WorkedRigs.value(name, key, worked.text(place, key), value));
          }
        });
    return values;
  }
}
