package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import rigspeak.answer.DrillWords;
import rigspeak.drill.Asking;
import rigspeak.drill.Memory;
import rigspeak.drill.Progress;
import rigspeak.drill.Results;
import rigspeak.drill.Results.Tally;
import rigspeak.drill.Schedule;
import rigspeak.drill.Skill;

/** What trainees have answered, as text, CSV and a page; in the order in which they were named. */
final class DrillReport {
  private static final String NONE = "";
  private final Map<String, Progress> trainees;
  private final long nowSeconds;

  /**
   * @param trainees by name; the order of the map is kept
   */
  DrillReport(Map<String, Progress> trainees, long nowSeconds) {
    this.trainees = trainees;
    this.nowSeconds = nowSeconds;
  }

  /** What a kind of number is called, with its unit. */
  static String asked(Asking asking) {
    return switch (asking) {
      case INSIDE -> "inside angle, degrees";
      case BEND -> "bend, degrees";
      case INSIDE_OF_BEND -> "inside of bend, degrees";
      case FACTOR -> "angle factor, times";
      case MORE -> "inch or foot, times";
      case WRAPS -> "wraps";
      case DROP -> "drop, feet";
      case HARD -> "as hard as a fall of, feet";
      case DIGITS -> "digits";
      case WHERE, PULLS_MORE, STRONGER, SLIDE, WAY, COMES_FIRST, LANYARD, READ_BACK, GO_OR_REFUSE ->
          asking.key();
    };
  }

  // ---- text ----

  List<String> text() {
    List<String> lines = new ArrayList<>();
    trainees.forEach((name, progress) -> lines.addAll(text(name, progress)));
    return lines;
  }

  private List<String> text(String name, Progress progress) {
    Results results = new Results(progress.answers());
    List<String> lines = new ArrayList<>();
    lines.add(name + ", " + progress.answers().size() + " answers");
    lines.add(
        String.format(
            "  %-30s %5s %7s %7s %8s  %s", "skill", "asked", "right", "Brier", "seconds", "due"));
    results
        .bySkill()
        .forEach(
            (skill, tally) ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  %-30s %5d %5.0f %% %7s %8.1f  %s",
                        DrillWords.name(skill),
                        tally.asked(),
                        100 * tally.share(),
                        number(tally.brier()),
                        tally.medianSeconds(),
                        due(progress, skill))));
    results
        .byAsking()
        .forEach(
            (asking, tally) -> {
              if (tally.bias().isPresent()) {
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  %-30s %s off in the mean, bias %+.2f",
                        asked(asking),
                        number(tally.meanError()),
                        tally.bias().orElseThrow()));
              }
            });
    results
        .calibration()
        .forEach(
            bin ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  %3.0f %% sure: %.0f %% right of %d",
                        100 * bin.stated(),
                        100 * bin.right(),
                        bin.count())));
    results
        .forgetting()
        .forEach(
            after ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  after %.1f days: %.0f %% right of %d",
                        after.days(),
                        100 * after.right(),
                        after.count())));
    results
        .stabilityDays()
        .ifPresent(
            days ->
                lines.add(
                    String.format(
                        Locale.ROOT, "  nine in ten are still right after %.1f days", days)));
    lines.add("");
    return lines;
  }

  private static String number(OptionalDouble number) {
    return number.isPresent() ? String.format(Locale.ROOT, "%.2f", number.getAsDouble()) : "-";
  }

  private String due(Progress progress, Skill skill) {
    return due(progress.memory(skill).orElseThrow(), nowSeconds);
  }

  /** Now, or in how many minutes or days. */
  static String due(Memory memory, long nowSeconds) {
    long seconds = memory.dueSeconds() - nowSeconds;
    if (memory.isDue(nowSeconds)) {
      return "now";
    }
    return seconds < Schedule.DAY
        ? String.format(Locale.ROOT, "in %d minutes", (seconds + 59) / 60)
        : String.format(Locale.ROOT, "in %.1f days", seconds / (double) Schedule.DAY);
  }

  // ---- CSV ----

  /** A row for each trainee and skill, then one for each kind of number. */
  List<String> csv() {
    List<String> rows = new ArrayList<>();
    rows.add("trainee,of,what,asked,right,mean_error,bias,brier,median_seconds,due");
    trainees.forEach(
        (name, progress) -> {
          Results results = new Results(progress.answers());
          results
              .bySkill()
              .forEach(
                  (skill, tally) ->
                      rows.add(row(name, "skill", skill.key(), tally, due(progress, skill))));
          results
              .byAsking()
              .forEach((asking, tally) -> rows.add(row(name, "asked", asking.key(), tally, NONE)));
        });
    return rows;
  }

  /** Errors of different units are not put together, so a skill has none. */
  private static String row(String name, String of, String what, Tally tally, String due) {
    boolean unit = of.equals("asked");
    return String.join(
        ",",
        name,
        of,
        what,
        Integer.toString(tally.asked()),
        Integer.toString(tally.right()),
        unit ? figure(tally.meanError()) : NONE,
        unit ? figure(tally.bias()) : NONE,
        figure(tally.brier()),
        figure(OptionalDouble.of(tally.medianSeconds())),
        due);
  }

  private static String figure(OptionalDouble number) {
    return number.isPresent() ? String.format(Locale.ROOT, "%.4f", number.getAsDouble()) : NONE;
  }

  // ---- a page ----

  /** One sheet for each trainee, below a table with all of them side by side. */
  String html() {
    StringBuilder page = new StringBuilder();
    page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    page.append("<title>Drills</title>\n<style>body{font-family:sans-serif;margin:1em}");
    page.append("table{border-collapse:collapse}td,th{border:1px solid #595959;padding:.3em}");
    page.append("</style>\n</head>\n<body>\n<h1>Drills</h1>\n");
    page.append("<p>Practice only; nothing here is a licence to load. Trainees stand in the order");
    page.append(" in which they were named.</p>\n<table>\n<tr><th scope=\"col\">skill</th>");
    trainees.keySet().forEach(name -> cell(page, "th scope=\"col\"", "th", name));
    page.append("</tr>\n");
    for (Skill skill : Skill.values()) {
      page.append("<tr>");
      cell(page, "th scope=\"row\"", "th", DrillWords.name(skill));
      trainees.values().forEach(progress -> cell(page, "td", "td", share(progress, skill)));
      page.append("</tr>\n");
    }
    page.append("</table>\n");
    trainees.forEach(
        (name, progress) -> page.append(DrillChart.of(name, progress, nowSeconds).svg()));
    return page.append("</body>\n</html>\n").toString();
  }

  private static void cell(StringBuilder page, String open, String close, String text) {
    page.append('<').append(open).append('>').append(escaped(text));
    page.append("</").append(close).append('>');
  }

  private String share(Progress progress, Skill skill) {
    Tally tally = new Results(progress.answers()).bySkill().get(skill);
    return tally == null
        ? "not asked yet"
        : String.format(
            Locale.ROOT,
            "%d of %d right, due %s",
            tally.right(),
            tally.asked(),
            due(progress, skill));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
