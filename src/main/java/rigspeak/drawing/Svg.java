package rigspeak.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import rigspeak.drawing.Ink.Colour;
import rigspeak.drawing.Ink.Dash;

/**
 * Marks as SVG. Elements and attributes are written only here, by name, and every text is escaped:
 * whatever stands in it, the file is well-formed XML 1.0 and the text is text.
 */
final class Svg {
  private static final int DECIMALS = 2;
  private static final int REPLACEMENT = 0xFFFD;

  private final StringBuilder out = new StringBuilder();

  private Svg() {}

  static String of(Picture picture) {
    Svg svg = new Svg();
    svg.picture(picture);
    return svg.out.toString();
  }

  private void picture(Picture picture) {
    String width = number(picture.width());
    String height = number(picture.height());
    begin("svg");
    attribute("xmlns", "http://www.w3.org/2000/svg");
    attribute("viewBox", "0 0 " + width + " " + height);
    attribute("width", width);
    attribute("height", height);
    attribute("role", "img");
    attribute("aria-label", picture.title());
    attribute("font-family", "Liberation Sans, Arial, Helvetica, sans-serif");
    out.append(">\n");
    text("title", picture.title());
    text("desc", picture.description());
    begin("rect");
    attribute("width", width);
    attribute("height", height);
    attribute("fill", Colour.WHITE.code());
    out.append("/>\n");
    picture.marks().forEach(this::mark);
    out.append("</svg>\n");
  }

  private void mark(Mark mark) {
    if (mark instanceof Mark.Line line) {
      begin("line");
      attribute("x1", number(line.from().x()));
      attribute("y1", number(line.from().y()));
      attribute("x2", number(line.to().x()));
      attribute("y2", number(line.to().y()));
      end(line.ink());
    } else if (mark instanceof Mark.Track track) {
      begin(track.closed() ? "polygon" : "polyline");
      attribute("points", points(track.spots()));
      end(track.ink());
    } else if (mark instanceof Mark.Ring ring) {
      begin("circle");
      attribute("cx", number(ring.centre().x()));
      attribute("cy", number(ring.centre().y()));
      attribute("r", number(ring.radius()));
      end(ring.ink());
    } else if (mark instanceof Mark.Words words) {
      words(words);
    } else if (mark instanceof Mark.Group group) {
      begin("g");
      attribute("class", group.kind());
      group.data().forEach((name, value) -> attribute("data-" + name, value));
      out.append(">\n");
      group.marks().forEach(this::mark);
      out.append("</g>\n");
    }
  }

  private void words(Mark.Words words) {
    Type type = words.type();
    begin("text");
    attribute("x", number(words.at().x()));
    attribute("y", number(words.at().y()));
    attribute("font-size", number(type.size()));
    if (type.bold()) {
      attribute("font-weight", "bold");
    }
    switch (type.from()) {
      case START -> {}
      case MIDDLE -> attribute("text-anchor", "middle");
      case END -> attribute("text-anchor", "end");
    }
    attribute("fill", type.colour().code());
    out.append('>').append(escaped(words.text())).append("</text>\n");
  }

  private void end(Ink ink) {
    attribute("fill", ink.fill().code());
    if (ink.width() > 0) {
      attribute("stroke", ink.line().code());
      attribute("stroke-width", number(ink.width()));
      attribute("stroke-linejoin", "round");
    }
    if (ink.dash() != Dash.SOLID) {
      attribute("stroke-dasharray", number(ink.dash().on()) + " " + number(ink.dash().off()));
    }
    out.append("/>\n");
  }

  private void begin(String element) {
    out.append('<').append(element);
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
  }

  private void text(String element, String words) {
    out.append('<').append(element).append('>');
    out.append(escaped(words));
    out.append("</").append(element).append(">\n");
  }

  private static String points(List<Spot> spots) {
    return spots.stream()
        .map(spot -> number(spot.x()) + "," + number(spot.y()))
        .collect(Collectors.joining(" "));
  }

  private static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** What XML does not allow at all, not even escaped, becomes a replacement character. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            letter -> {
              switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isAllowed(letter) ? letter : REPLACEMENT);
              }
            });
    return safe.toString();
  }

  /** The characters of XML 1.0, section 2.2. */
  private static boolean isAllowed(int letter) {
    return letter == '\t'
        || letter == '\n'
        || letter == '\r'
        || (letter >= 0x20 && letter <= 0xD7FF)
        || (letter >= 0xE000 && letter <= 0xFFFD)
        || (letter >= 0x10000 && letter <= 0x10FFFF);
  }
}
