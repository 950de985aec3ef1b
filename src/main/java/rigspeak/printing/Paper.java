package rigspeak.printing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import rigspeak.drawing.Picture;

/**
 * Sheets as files. A picture unit is a point, 1/72 inch. No font of the machine is used: the
 * letters are those of the font that comes with the library, and they go into the file.
 */
public final class Paper {
  private static final float DOTS_AN_INCH = 150;

  private Paper() {}

  /**
   * One document with a page for each sheet.
   *
   * @throws IOException if the library cannot write it
   */
  public static byte[] pdf(List<Picture> sheets) throws IOException {
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      document.getDocumentInformation().setTitle(sheets.get(0).title());
      Letters letters = Letters.in(document);
      for (Picture sheet : sheets) {
        PDPage page = new PDPage(new PDRectangle((float) sheet.width(), (float) sheet.height()));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          Pen pen = new Pen(content, letters, sheet.height());
          pen.draw(sheet.marks());
        }
      }
      document.save(out);
      return out.toByteArray();
    }
  }

  /**
   * A picture for each sheet, 150 dots an inch.
   *
   * @throws IOException if the library cannot write them
   */
  public static List<byte[]> png(List<Picture> sheets) throws IOException {
    List<byte[]> pictures = new ArrayList<>();
    ImageIO.setUseCache(false);
    try (PDDocument document = Loader.loadPDF(pdf(sheets))) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < sheets.size(); page++) {
        BufferedImage image = renderer.renderImageWithDPI(page, DOTS_AN_INCH, ImageType.RGB);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(image, "png", out)) {
          throw new IOException("this Java writes no PNG");
        }
        pictures.add(out.toByteArray());
      }
    }
    return pictures;
  }
}
