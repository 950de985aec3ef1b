package rigspeak.drawing;

import java.util.List;

/**
 * A finished sheet.
 *
 * @param width in picture units
 * @param height in picture units
 * @param title what it shows, in a few words
 * @param description the same for whoever cannot see it
 * @param marks what comes later lies on top
 */
public record Picture(
    double width, double height, String title, String description, List<Mark> marks) {
  public Picture {
    marks = List.copyOf(marks);
  }

  /** The picture as an SVG document; any text in it comes out as text. */
  public String svg() {
    return Svg.of(this);
  }
}
