package rigspeak.drawing;

import java.util.List;
import rigspeak.drawing.Ink.Colour;
import rigspeak.verdict.PathVerdict.Outcome;

/** A sign for what comes of a support, told apart by its shape alone. */
final class Badge {
  private static final Ink EDGE = Ink.line(Colour.BLACK, 2).filledWith(Colour.WHITE);
  private static final Ink STROKE = Ink.line(Colour.BLACK, 2.6);

  private Badge() {}

  /** A ring with a tick, a triangle with a bar, a filled square with a cross, a broken ring. */
  static Mark of(Outcome outcome, Spot centre, double half) {
    return new Mark.Group(
        "badge",
        switch (outcome) {
          case GOOD ->
              List.of(
                  new Mark.Ring(centre, half, EDGE),
                  track(centre, half, STROKE, -0.5, 0, -0.1, 0.42, 0.52, -0.42));
          case MARGINAL ->
              List.of(
                  closed(centre, half, EDGE, 0, -1, 1, 0.85, -1, 0.85),
                  track(centre, half, STROKE, 0, -0.35, 0, 0.3),
                  new Mark.Ring(
                      centre.plus(Spot.of(0, 0.58 * half)), 1.6, Ink.filled(Colour.BLACK)));
          case REFUSE ->
              List.of(
                  closed(centre, half, EDGE.filledWith(Colour.BLACK), -1, -1, 1, -1, 1, 1, -1, 1),
                  track(centre, half, Ink.line(Colour.WHITE, 3), -0.6, -0.6, 0.6, 0.6),
                  track(centre, half, Ink.line(Colour.WHITE, 3), 0.6, -0.6, -0.6, 0.6));
          case CANNOT_SAY ->
              List.of(
                  new Mark.Ring(centre, half, Ink.dashed(Colour.BLACK, 2)),
                  new Mark.Words(
                      centre.plus(Spot.of(0, 0.45 * half)),
                      "?",
                      Type.bold(1.3 * half).from(Type.From.MIDDLE)));
        });
  }

  private static Mark track(Spot centre, double half, Ink ink, double... ways) {
    return new Mark.Track(spots(centre, half, ways), false, ink);
  }

  private static Mark closed(Spot centre, double half, Ink ink, double... ways) {
    return new Mark.Track(spots(centre, half, ways), true, ink);
  }

  private static List<Spot> spots(Spot centre, double half, double... ways) {
    return java.util.stream.IntStream.range(0, ways.length / 2)
        .mapToObj(i -> centre.plus(Spot.of(ways[2 * i], ways[2 * i + 1]).times(half)))
        .toList();
  }
}
