package rigspeak.drawing;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** One mark on a sheet; what comes later lies on top. */
public sealed interface Mark {

  /** The same mark elsewhere. */
  Mark movedBy(Spot way);

  /** A straight line. */
  record Line(Spot from, Spot to, Ink ink) implements Mark {
    @Override
    public Mark movedBy(Spot way) {
      return new Line(from.plus(way), to.plus(way), ink);
    }
  }

  /**
   * Straight lines from spot to spot.
   *
   * @param closed whether the last spot leads back to the first
   */
  record Track(List<Spot> spots, boolean closed, Ink ink) implements Mark {
    public Track {
      spots = List.copyOf(spots);
    }

    @Override
    public Mark movedBy(Spot way) {
      return new Track(spots.stream().map(way::plus).toList(), closed, ink);
    }
  }

  /** A circle. */
  record Ring(Spot centre, double radius, Ink ink) implements Mark {
    @Override
    public Mark movedBy(Spot way) {
      return new Ring(centre.plus(way), radius, ink);
    }
  }

  /**
   * One line of text.
   *
   * @param at its anchor on the base line
   */
  record Words(Spot at, String text, Type type) implements Mark {
    /** About where its letters are. */
    Area area() {
      double width = type.width(text);
      double left =
          switch (type.from()) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
          };
      return new Area(left, at.y() - type.size(), left + width, at.y() + 0.25 * type.size());
    }

    @Override
    public Mark movedBy(Spot way) {
      return new Words(at.plus(way), text, type);
    }
  }

  /**
   * Marks that belong together.
   *
   * @param kind what they are, for whoever reads the file
   * @param data more of that, by name
   */
  record Group(String kind, SortedMap<String, String> data, List<Mark> marks) implements Mark {
    public Group {
      data = new TreeMap<>(data);
      marks = List.copyOf(marks);
    }

    Group(String kind, List<Mark> marks) {
      this(kind, new TreeMap<>(), marks);
    }

    @Override
    public Mark movedBy(Spot way) {
      return new Group(kind, data, marks.stream().map(mark -> mark.movedBy(way)).toList());
    }
  }
}
