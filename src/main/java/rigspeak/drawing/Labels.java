package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import rigspeak.drawing.Ink.Colour;

/**
 * Finds room for labels: each is put near what it names, where it covers neither a line nor another
 * label, or as little of them as can be.
 */
final class Labels {
  private static final double[] DISTANCES = {5, 12, 20, 32, 46, 62, 80, 100};
  private static final int DIRECTIONS = 24;
  private static final double PADDING = 2;

  /** From here on a thin line leads from a label to what it names. */
  private static final double FAR = 15;

  /** What stands against a place: more than any distance weighs. */
  private static final double COVERS_LABEL = 400;

  private static final double COVERS_LINE = 55;
  private static final double LEADER_CROSSES = 40;
  private static final double SECOND_BEST = 4;
  private static final double LEAVES = 1000;

  private record Segment(Spot from, Spot to) {}

  private final Area frame;
  private final List<Area> taken = new ArrayList<>();
  private final List<Segment> lines = new ArrayList<>();

  /**
   * @param frame where labels may be
   */
  Labels(Area frame) {
    this.frame = frame;
  }

  /** Keeps labels off these marks, where that can be. */
  void keepOff(Mark mark) {
    if (mark instanceof Mark.Line line) {
      lines.add(new Segment(line.from(), line.to()));
    } else if (mark instanceof Mark.Track track) {
      List<Spot> spots = track.spots();
      for (int i = 1; i < spots.size(); i++) {
        lines.add(new Segment(spots.get(i - 1), spots.get(i)));
      }
      if (track.closed()) {
        lines.add(new Segment(spots.get(spots.size() - 1), spots.get(0)));
      }
    } else if (mark instanceof Mark.Ring ring) {
      Spot reach = Spot.of(ring.radius(), ring.radius());
      taken.add(Area.around(List.of(ring.centre().minus(reach), ring.centre().plus(reach))));
    } else if (mark instanceof Mark.Words words) {
      taken.add(words.area());
    } else if (mark instanceof Mark.Group group) {
      group.marks().forEach(this::keepOff);
    }
  }

  void keepOff(Area area) {
    taken.add(area);
  }

  /**
   * A label of some lines.
   *
   * @param near spots of what it names, the best first
   * @param type of the first line; the others are not bold
   */
  List<Mark> label(List<String> texts, List<Spot> near, Type type) {
    double width = texts.stream().mapToDouble(type::width).max().orElse(0) + 2 * PADDING;
    double height = texts.size() * Type.LEADING * type.size() + 2 * PADDING;
    Found best = null;
    for (int i = 0; i < near.size(); i++) {
      for (double distance : DISTANCES) {
        for (int j = 0; j < DIRECTIONS; j++) {
          double turn = 2 * Math.PI * j / DIRECTIONS;
          Spot spot = near.get(i);
          Area there = placed(spot, Math.cos(turn), Math.sin(turn), distance, width, height);
          boolean far = distance > FAR;
          double against =
              against(there) + distance + i * SECOND_BEST + (far ? crossed(spot, there) : 0);
          if (best == null || against < best.against()) {
            best = new Found(spot, there, far, against);
          }
        }
      }
    }
    taken.add(best.area());
    return marks(texts, type, best);
  }

  /**
   * Room for a label.
   *
   * @param spot what it names
   * @param far whether a line leads there
   * @param against how much speaks against it
   */
  private record Found(Spot spot, Area area, boolean far, double against) {}

  /** With its nearest edge or corner about so far off. */
  private static Area placed(
      Spot near, double toRight, double down, double distance, double width, double height) {
    double x = near.x() + toRight * (distance + width / 2);
    double y = near.y() + down * (distance + height / 2);
    return new Area(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
  }

  private double against(Area there) {
    double outside = there.width() * there.height() - there.shared(frame);
    double sum = outside > 1e-6 ? LEAVES + outside : 0;
    for (Area other : taken) {
      double shared = there.shared(other);
      sum += shared > 0 ? COVERS_LABEL + shared : 0;
    }
    for (Segment line : lines) {
      double covered = there.lengthInside(line.from(), line.to());
      sum += covered > 0 ? COVERS_LINE + covered : 0;
    }
    return sum;
  }

  /** What a leader would have to cross. */
  private double crossed(Spot near, Area there) {
    Spot edge = nearest(there, near);
    double sum = 0;
    for (Area other : taken) {
      sum += other.lengthInside(near, edge) > 1 ? LEADER_CROSSES : 0;
    }
    return sum;
  }

  private static Spot nearest(Area area, Spot spot) {
    return Spot.of(
        Math.max(area.left(), Math.min(area.right(), spot.x())),
        Math.max(area.top(), Math.min(area.bottom(), spot.y())));
  }

  private List<Mark> marks(List<String> texts, Type type, Found found) {
    Area area = found.area();
    List<Mark> marks = new ArrayList<>();
    boolean covers = lines.stream().anyMatch(line -> area.lengthInside(line.from(), line.to()) > 0);
    if (found.far()) {
      Spot near = found.spot();
      Mark leader = new Mark.Line(near, nearest(area, near), Ink.line(Colour.GREY, 0.8));
      keepOff(leader);
      marks.add(leader);
    }
    if (covers) {
      marks.add(ground(area));
    }
    double y = area.top() + PADDING + type.size();
    for (String text : texts) {
      boolean first = text.equals(texts.get(0));
      Type each = new Type(type.size(), type.bold() && first, Type.From.START, type.colour());
      marks.add(new Mark.Words(Spot.of(area.left() + PADDING, y), text, each));
      y += Type.LEADING * type.size();
    }
    return marks;
  }

  /** Whatever a label has to cover, it can be read. */
  private static Mark ground(Area area) {
    return new Mark.Track(
        List.of(
            Spot.of(area.left(), area.top()),
            Spot.of(area.right(), area.top()),
            Spot.of(area.right(), area.bottom()),
            Spot.of(area.left(), area.bottom())),
        true,
        Ink.filled(Colour.WHITE));
  }
}
