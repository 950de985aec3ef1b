package rigspeak.drawing;

/**
 * How a line or a shape is drawn.
 *
 * @param line the colour of its line
 * @param width of the line; 0 for none
 * @param dash whether the line is broken
 * @param fill the colour inside
 */
public record Ink(Colour line, double width, Dash dash, Colour fill) {

  /** Colours dark enough on white for sunlight; each is told apart by shape or words as well. */
  public enum Colour {
    NONE("none"),
    WHITE("#ffffff"),
    BLACK("#1a1a1a"),
    GREY("#595959"),
    PALE("#cfcfcf"),
    WOOD("#e3dacb"),
    BARK("#6b5a45"),
    ROPE("#1f4e79"),
    LOAD("#8a1c1c"),
    SPREAD("#f1d9d4");

    private final String code;

    Colour(String code) {
      this.code = code;
    }

    /** As SVG writes it: "none", or a number sign and six hexadecimal figures. */
    public String code() {
      return code;
    }
  }

  /** Lengths of line and gap. */
  public enum Dash {
    SOLID(0, 0),
    DASHED(6, 4),
    DOTTED(1.5, 3.5);

    private final double on;
    private final double off;

    Dash(double on, double off) {
      this.on = on;
      this.off = off;
    }

    public double on() {
      return on;
    }

    public double off() {
      return off;
    }
  }

  static Ink line(Colour colour, double width) {
    return new Ink(colour, width, Dash.SOLID, Colour.NONE);
  }

  static Ink dashed(Colour colour, double width) {
    return new Ink(colour, width, Dash.DASHED, Colour.NONE);
  }

  static Ink dotted(Colour colour, double width) {
    return new Ink(colour, width, Dash.DOTTED, Colour.NONE);
  }

  static Ink filled(Colour colour) {
    return new Ink(Colour.NONE, 0, Dash.SOLID, colour);
  }

  Ink filledWith(Colour colour) {
    return new Ink(line, width, dash, colour);
  }
}
