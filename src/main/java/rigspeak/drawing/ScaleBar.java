package rigspeak.drawing;

import java.util.List;
import java.util.stream.DoubleStream;
import rigspeak.answer.Figures;
import rigspeak.drawing.Ink.Colour;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;

/** How long a length is on the sheet. */
final class ScaleBar {
  private static final double LONGEST = 90;
  private static final double TICK = 4;

  private static final double[] INCHES = {1, 3, 6, 12, 24, 60, 120, 240};
  private static final double[] CENTIMETRES = {2, 5, 10, 20, 50, 100, 200, 500};

  private ScaleBar() {}

  /**
   * @param left where it begins, on its line
   * @param scale picture units a metre
   * @param letters their size
   */
  static List<Mark> at(Spot left, double scale, UnitSystem units, double letters) {
    Length length = longest(scale, units);
    Spot right = left.plus(Spot.of(length.metres() * scale, 0));
    Spot tick = Spot.of(0, TICK);
    Ink ink = Ink.line(Colour.BLACK, 1.6);
    return List.of(
        new Mark.Group(
            "scale",
            List.of(
                new Mark.Line(left, right, ink),
                new Mark.Line(left.minus(tick), left.plus(tick), ink),
                new Mark.Line(right.minus(tick), right.plus(tick), ink),
                new Mark.Words(
                    right.plus(Spot.of(6, letters / 3)),
                    Figures.distance(length, units),
                    Type.plain(letters)))));
  }

  /** The longest that has room, of lengths that are easily read off. */
  private static Length longest(double scale, UnitSystem units) {
    return (units == UnitSystem.METRIC
            ? DoubleStream.of(CENTIMETRES).mapToObj(Length::ofCentimetres)
            : DoubleStream.of(INCHES).mapToObj(Length::ofInches))
        .filter(length -> length.metres() * scale <= LONGEST)
        .reduce((shorter, longer) -> longer)
        .orElse(units == UnitSystem.METRIC ? Length.ofCentimetres(1) : Length.ofInches(1));
  }
}
