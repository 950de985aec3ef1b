package rigspeak.printing;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import rigspeak.drawing.Ink;
import rigspeak.drawing.Ink.Colour;
import rigspeak.drawing.Ink.Dash;
import rigspeak.drawing.Mark;
import rigspeak.drawing.Spot;
import rigspeak.drawing.Type;

/** Draws marks on a page, whose y goes up where the sheet's goes down. */
final class Pen {
  /** How far the handles of a quarter circle are from its ends: 4/3 (sqrt 2 - 1) of the radius. */
  private static final double HANDLE = 4.0 / 3 * (Math.sqrt(2) - 1);

  /** Bold letters are drawn with an outline of this share of their size. */
  private static final double BOLD = 0.022;

  private static final int ROUND_JOIN = 1;

  private final PDPageContentStream page;
  private final Letters letters;
  private final double height;

  Pen(PDPageContentStream page, Letters letters, double height) {
    this.page = page;
    this.letters = letters;
    this.height = height;
  }

  void draw(List<Mark> marks) throws IOException {
    for (Mark mark : marks) {
      draw(mark);
    }
  }

  private void draw(Mark mark) throws IOException {
    if (mark instanceof Mark.Line line) {
      moveTo(line.from());
      lineTo(line.to());
      paint(line.ink());
    } else if (mark instanceof Mark.Track track) {
      moveTo(track.spots().get(0));
      for (Spot spot : track.spots().subList(1, track.spots().size())) {
        lineTo(spot);
      }
      if (track.closed()) {
        page.closePath();
      }
      paint(track.ink());
    } else if (mark instanceof Mark.Ring ring) {
      circle(ring.centre(), ring.radius());
      paint(ring.ink());
    } else if (mark instanceof Mark.Words words) {
      write(words);
    } else if (mark instanceof Mark.Group group) {
      draw(group.marks());
    }
  }

  private void moveTo(Spot spot) throws IOException {
    page.moveTo((float) spot.x(), (float) (height - spot.y()));
  }

  private void lineTo(Spot spot) throws IOException {
    page.lineTo((float) spot.x(), (float) (height - spot.y()));
  }

  private void circle(Spot centre, double radius) throws IOException {
    float x = (float) centre.x();
    float y = (float) (height - centre.y());
    float r = (float) radius;
    float h = (float) (HANDLE * radius);
    page.moveTo(x + r, y);
    page.curveTo(x + r, y + h, x + h, y + r, x, y + r);
    page.curveTo(x - h, y + r, x - r, y + h, x - r, y);
    page.curveTo(x - r, y - h, x - h, y - r, x, y - r);
    page.curveTo(x + h, y - r, x + r, y - h, x + r, y);
    page.closePath();
  }

  private void paint(Ink ink) throws IOException {
    boolean filled = ink.fill() != Colour.NONE;
    boolean stroked = ink.width() > 0 && ink.line() != Colour.NONE;
    if (filled) {
      page.setNonStrokingColor(colour(ink.fill()));
    }
    if (stroked) {
      page.setStrokingColor(colour(ink.line()));
      page.setLineWidth((float) ink.width());
      page.setLineJoinStyle(ROUND_JOIN);
      page.setLineDashPattern(dash(ink.dash()), 0);
    }
    if (filled && stroked) {
      page.fillAndStroke();
    } else if (filled) {
      page.fill();
    } else if (stroked) {
      page.stroke();
    }
  }

  private static float[] dash(Dash dash) {
    return dash == Dash.SOLID ? new float[0] : new float[] {(float) dash.on(), (float) dash.off()};
  }

  private void write(Mark.Words words) throws IOException {
    Type type = words.type();
    String text = letters.printable(words.text());
    float width = letters.width(text, type.size());
    double x =
        switch (type.from()) {
          case START -> words.at().x();
          case MIDDLE -> words.at().x() - width / 2;
          case END -> words.at().x() - width;
        };
    page.beginText();
    page.setFont(letters.font(), (float) type.size());
    page.setNonStrokingColor(colour(type.colour()));
    if (type.bold()) {
      page.setStrokingColor(colour(type.colour()));
      page.setLineWidth((float) (BOLD * type.size()));
      page.setLineDashPattern(new float[0], 0);
    }
    page.setRenderingMode(type.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    page.newLineAtOffset((float) x, (float) (height - words.at().y()));
    page.showText(text);
    page.endText();
  }

  private static Color colour(Colour colour) {
    return Color.decode(colour.code());
  }
}
