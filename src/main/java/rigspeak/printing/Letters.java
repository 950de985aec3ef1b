package rigspeak.printing;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The one font of a document, Liberation Sans, which comes with the library. */
final class Letters {
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final String UNKNOWN = "?";
  private static final float THOUSANDTH = 0.001f;

  private final PDType0Font font;

  private Letters(PDType0Font font) {
    this.font = font;
  }

  static Letters in(PDDocument document) throws IOException {
    try (InputStream file = PDDocument.class.getResourceAsStream(FONT)) {
      if (file == null) {
        throw new IOException("the font of the card is missing");
      }
      return new Letters(PDType0Font.load(document, file, true));
    }
  }

  PDType0Font font() {
    return font;
  }

  /** The text as far as the font has it. */
  String printable(String text) {
    StringBuilder printable = new StringBuilder();
    text.codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> printable.append(has(letter) ? letter : UNKNOWN));
    return printable.toString();
  }

  private boolean has(String letter) {
    try {
      font.encode(letter);
      return true;
    } catch (IllegalArgumentException | IOException e) {
      return false;
    }
  }

  /** How long a printable text becomes. */
  float width(String printable, double size) throws IOException {
    return font.getStringWidth(printable) * THOUSANDTH * (float) size;
  }
}
