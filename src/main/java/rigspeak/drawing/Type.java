package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import rigspeak.drawing.Ink.Colour;

/**
 * How text is set.
 *
 * @param size of the letters
 * @param bold whether they are thick
 * @param from what lies at its spot
 * @param colour of the letters
 */
public record Type(double size, boolean bold, From from, Colour colour) {
  /** From one base line to the next, in sizes. */
  static final double LEADING = 1.28;

  /** Which end of a line of text lies at its spot. */
  public enum From {
    START,
    MIDDLE,
    END
  }

  static Type plain(double size) {
    return new Type(size, false, From.START, Colour.BLACK);
  }

  static Type bold(double size) {
    return new Type(size, true, From.START, Colour.BLACK);
  }

  Type in(Colour other) {
    return new Type(size, bold, from, other);
  }

  Type from(From other) {
    return new Type(size, bold, other, colour);
  }

  /** How long a text becomes. */
  double width(String text) {
    return size * LetterWidths.of(text, bold);
  }

  /** A text in lines that are no longer than this, broken at its blanks. */
  List<String> wrapped(String text, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+", -1)) {
      boolean fits = line.isEmpty() || width(line + " " + word) <= width;
      if (!fits) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
      while (width(line.toString()) > width && line.length() > 1) {
        int cut = longestThatFits(line, width);
        lines.add(line.substring(0, cut));
        line.delete(0, cut);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /** A word that is longer than a line is cut. */
  private int longestThatFits(StringBuilder line, double width) {
    int cut = line.length();
    while (cut > 1 && width(line.substring(0, cut)) > width) {
      cut = line.offsetByCodePoints(cut, -1);
    }
    return Math.max(cut, 1);
  }
}
