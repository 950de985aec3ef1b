package rigspeak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Reads what {@code mvn test -P mutation} has found, prints the score of each package and refuses
 * too low a score overall. Not part of the everyday tests.
 */
class MutationScore {
  private static final double LEAST = 0.85;

  @Test
  void enoughOfTheBrokenCodeIsNoticed() throws Exception {
    Path reports = Path.of(System.getProperty("mutation.reports"));
    Score all = Score.NONE;
    File[] packages = reports.toFile().listFiles(File::isDirectory);
    Arrays.sort(packages);
    for (File of : packages) {
      Score score = Score.read(of.toPath().resolve("mutations.xml"));
      System.out.println(score.told(of.getName()));
      all = all.and(score);
    }
    System.out.println(all.told("overall"));
    assertTrue(all.share() >= LEAST, "fewer than " + LEAST + " of all mutations were noticed");
  }

  /**
   * How many mutations there were.
   *
   * @param noticed a test failed, or did not come to an end
   */
  private record Score(int noticed, int made) {
    static final Score NONE = new Score(0, 0);

    static Score read(Path report) throws IOException, SAXException, ParserConfigurationException {
      NodeList mutations =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(report.toFile())
              .getElementsByTagName("mutation");
      int noticed = 0;
      for (int i = 0; i < mutations.getLength(); i++) {
        if (((Element) mutations.item(i)).getAttribute("detected").equals("true")) {
          noticed++;
        }
      }
      return new Score(noticed, mutations.getLength());
    }

    Score and(Score other) {
      return new Score(noticed + other.noticed, made + other.made);
    }

    double share() {
      return noticed / (double) made;
    }

    String told(String name) {
      return "%-10s %4d of %4d mutations noticed, %5.1f %%"
          .formatted(name, noticed, made, 100 * share());
    }
  }
}
