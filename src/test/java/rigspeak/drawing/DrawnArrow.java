package rigspeak.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The arrow of a load as it stands in an SVG file, read by another XML parser.
 *
 * @param x of its way to the right
 * @param up of its way upward on the sheet
 */
public record DrawnArrow(double x, double up) {
  private static final double HALF_A_DEGREE = 0.5;

  /** The arrow of this aspect, if there is one that is not seen end on. */
  public static Optional<DrawnArrow> in(Document svg, String aspect) {
    return all(svg, aspect).stream().findFirst();
  }

  /** The arrows of this aspect, "side", "plan" or "slope", in the order of the file. */
  public static List<DrawnArrow> all(Document svg, String aspect) {
    List<DrawnArrow> arrows = new ArrayList<>();
    NodeList groups = svg.getElementsByTagName("g");
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      Element first = firstElement(group);
      if (group.getAttribute("class").equals("load " + aspect)
          && first.getTagName().equals("line")) {
        arrows.add(
            new DrawnArrow(
                number(first, "x2") - number(first, "x1"),
                number(first, "y1") - number(first, "y2")));
      }
    }
    return arrows;
  }

  /** Its angle is that of this way, within half a degree. */
  public void assertPoints(double alongX, double upward, String what) {
    double apart = Math.IEEEremainder(Math.atan2(up, x) - Math.atan2(upward, alongX), 2 * Math.PI);
    assertEquals(0, Math.toDegrees(apart), HALF_A_DEGREE, what);
  }

  /** A file that is not well-formed is refused. */
  public static Document read(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new AssertionError("not well-formed: " + svg, e);
    }
  }

  private static Element firstElement(Element parent) {
    Node node = parent.getFirstChild();
    while (!(node instanceof Element)) {
      node = node.getNextSibling();
    }
    return (Element) node;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
