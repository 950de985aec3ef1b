package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rigspeak.answer.DrillWords;
import rigspeak.drawing.Ink;
import rigspeak.drawing.Ink.Colour;
import rigspeak.drawing.Ink.Dash;
import rigspeak.drawing.Mark;
import rigspeak.drawing.Picture;
import rigspeak.drawing.Spot;
import rigspeak.drawing.Type;
import rigspeak.drill.Answered;
import rigspeak.drill.Asking;
import rigspeak.drill.Memory;
import rigspeak.drill.Progress;
import rigspeak.drill.Results;
import rigspeak.drill.Schedule;
import rigspeak.drill.Skill;

/**
 * One trainee on one sheet: errors over time, bias, certainty against hits, and what is due. What
 * is told by a colour is told by a shape or words as well.
 */
final class DrillChart {
  private static final double WIDTH = 920;
  private static final double HEIGHT = 700;
  private static final double PANEL_WIDTH = 390;
  private static final double PANEL_HEIGHT = 250;
  private static final double LEFT = 60;
  private static final double RIGHT = 510;
  private static final double UPPER = 80;
  private static final double LOWER = 410;
  private static final double DOT = 3;
  private static final double ROW = 17;
  private static final double DEGREES_SHOWN = 10;

  /** Errors in degrees, which can be shown on one axis. */
  private static final List<Asking> IN_DEGREES =
      List.of(Asking.INSIDE, Asking.BEND, Asking.INSIDE_OF_BEND);

  private final List<Mark> marks = new ArrayList<>();
  private final String name;
  private final Progress progress;
  private final Results results;
  private final long nowSeconds;

  private DrillChart(String name, Progress progress, long nowSeconds) {
    this.name = name;
    this.progress = progress;
    this.results = new Results(progress.answers());
    this.nowSeconds = nowSeconds;
  }

  static Picture of(String name, Progress progress, long nowSeconds) {
    return new DrillChart(name, progress, nowSeconds).picture();
  }

  private Picture picture() {
    words(LEFT, 34, "Drills of " + name, 20, true);
    words(LEFT, 54, progress.answers().size() + " answers", 13, false);
    errors();
    bias();
    calibration();
    due();
    return new Picture(WIDTH, HEIGHT, "Drills of " + name, description(), marks);
  }

  /** The same for whoever cannot see it. */
  private String description() {
    StringBuilder told = new StringBuilder();
    results
        .all()
        .ifPresent(
            all ->
                told.append(
                    String.format(
                        Locale.ROOT, "%d of %d answers are right. ", all.right(), all.asked())));
    results
        .byAsking()
        .forEach(
            (asking, tally) ->
                tally
                    .bias()
                    .ifPresent(
                        bias ->
                            told.append(
                                String.format(
                                    Locale.ROOT,
                                    "%s: bias %+.2f. ",
                                    DrillReport.asked(asking),
                                    bias))));
    results
        .calibration()
        .forEach(
            bin ->
                told.append(
                    String.format(
                        Locale.ROOT,
                        "%.0f percent sure: %.0f percent right of %d. ",
                        100 * bin.stated(),
                        100 * bin.right(),
                        bin.count())));
    return told.append("Due now: ").append(dueNow()).append('.').toString();
  }

  private String dueNow() {
    List<String> due = progress.due(nowSeconds).stream().map(DrillWords::name).toList();
    return due.isEmpty() ? "nothing" : String.join(", ", due);
  }

  // ---- panels ----

  private void errors() {
    frame(LEFT, UPPER, "Error of angles over time, degrees (circle: right, cross: wrong)");
    List<Answered> angles =
        progress.answers().stream()
            .filter(answer -> IN_DEGREES.contains(answer.asking()) && answer.error().isPresent())
            .toList();
    double most = DEGREES_SHOWN;
    for (Answered answer : angles) {
      most = Math.max(most, Math.abs(answer.error().orElseThrow()));
    }
    double middle = UPPER + PANEL_HEIGHT / 2;
    line(LEFT, middle, LEFT + PANEL_WIDTH, middle, Colour.GREY, Dash.DASHED);
    axis(LEFT, UPPER + 10, String.format(Locale.ROOT, "+%.0f", most));
    axis(LEFT, middle + 4, "0");
    axis(LEFT, UPPER + PANEL_HEIGHT, String.format(Locale.ROOT, "-%.0f", most));
    for (int i = 0; i < angles.size(); i++) {
      double x = LEFT + PANEL_WIDTH * (i + 0.5) / angles.size();
      double error = angles.get(i).error().orElseThrow();
      double y = middle - error / most * (PANEL_HEIGHT / 2 - 8);
      dot(x, y, angles.get(i).isRight());
    }
    if (angles.isEmpty()) {
      words(LEFT + 20, middle - 10, "no angle was answered yet", 13, false);
    }
  }

  /** A ring for what was right, a cross for what was not. */
  private void dot(double x, double y, boolean right) {
    if (right) {
      marks.add(new Mark.Ring(new Spot(x, y), DOT, ink(Colour.ROPE, Dash.SOLID)));
    } else {
      line(x - DOT, y - DOT, x + DOT, y + DOT, Colour.LOAD, Dash.SOLID);
      line(x - DOT, y + DOT, x + DOT, y - DOT, Colour.LOAD, Dash.SOLID);
    }
  }

  private void bias() {
    frame(RIGHT, UPPER, "Numbers: mean error, and bias (plus is too large)");
    double y = UPPER + 20;
    for (Map.Entry<Asking, Results.Tally> entry : results.byAsking().entrySet()) {
      Results.Tally tally = entry.getValue();
      if (tally.bias().isPresent()) {
        String row =
            String.format(
                Locale.ROOT,
                "%.2f off, bias %+.2f, of %d",
                tally.meanError().orElseThrow(),
                tally.bias().orElseThrow(),
                tally.asked());
        words(RIGHT + 10, y, DrillReport.asked(entry.getKey()), 12, false);
        words(RIGHT + 190, y, row, 12, false);
        y += ROW;
      }
    }
  }

  private void calibration() {
    frame(LEFT, LOWER, "How sure against how often right, percent (number: answers)");
    line(LEFT, LOWER + PANEL_HEIGHT, LEFT + PANEL_WIDTH, LOWER, Colour.GREY, Dash.DASHED);
    axis(LEFT, LOWER + 10, "100");
    axis(LEFT, LOWER + PANEL_HEIGHT, "0");
    words(LEFT + PANEL_WIDTH - 80, LOWER + PANEL_HEIGHT + 16, "100 sure", 12, false);
    words(LEFT, LOWER + PANEL_HEIGHT + 16, "0 sure", 12, false);
    List<Spot> spots = new ArrayList<>();
    for (Results.Bin bin : results.calibration()) {
      double x = LEFT + PANEL_WIDTH * bin.stated();
      double y = LOWER + PANEL_HEIGHT * (1 - bin.right());
      spots.add(new Spot(x, y));
      marks.add(new Mark.Ring(new Spot(x, y), DOT, ink(Colour.ROPE, Dash.SOLID)));
      words(x - 16, y + 16, Integer.toString(bin.count()), 12, false);
    }
    if (spots.size() > 1) {
      marks.add(new Mark.Track(spots, false, ink(Colour.ROPE, Dash.SOLID)));
    }
  }

  private void due() {
    frame(RIGHT, LOWER, "When each skill is due, and how likely it is known now");
    double y = LOWER + 16;
    for (Skill skill : Skill.values()) {
      words(RIGHT + 10, y, DrillWords.name(skill), 12, false);
      words(RIGHT + 200, y, when(progress.memory(skill)), 12, false);
      y += ROW;
    }
  }

  private String when(Optional<Memory> memory) {
    return memory
        .map(
            known ->
                String.format(
                    Locale.ROOT,
                    "due %s, known %.0f %%",
                    DrillReport.due(known, nowSeconds),
                    100 * Schedule.remembered(known, nowSeconds)))
        .orElse("not asked yet");
  }

  // ---- marks ----

  private void frame(double left, double top, String title) {
    words(left, top - 8, title, 13, true);
    marks.add(
        new Mark.Track(
            List.of(
                new Spot(left, top),
                new Spot(left + PANEL_WIDTH, top),
                new Spot(left + PANEL_WIDTH, top + PANEL_HEIGHT),
                new Spot(left, top + PANEL_HEIGHT)),
            true,
            ink(Colour.GREY, Dash.SOLID)));
  }

  private void axis(double left, double y, String text) {
    marks.add(
        new Mark.Words(
            new Spot(left - 6, y), text, new Type(12, false, Type.From.END, Colour.BLACK)));
  }

  private void words(double x, double y, String text, double size, boolean bold) {
    marks.add(
        new Mark.Words(new Spot(x, y), text, new Type(size, bold, Type.From.START, Colour.BLACK)));
  }

  private void line(double x1, double y1, double x2, double y2, Colour colour, Dash dash) {
    marks.add(new Mark.Line(new Spot(x1, y1), new Spot(x2, y2), ink(colour, dash)));
  }

  private static Ink ink(Colour colour, Dash dash) {
    return new Ink(colour, 1.2, dash, Colour.NONE);
  }
}
