package rigspeak.contract;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/**
 * A rope over a main point and one redirect, in words, from a point of a unit cube. Every side of
 * the cube is one choice or one number, whether the rope needs it or not, so that a search can move
 * along it. The space is chosen so that good, marginal and refused ropes all come up.
 */
final class RopeDraw {
  /** How many sides the cube has. */
  static final int SIDES = 46;

  private static final Place REDIRECT = Place.redirectNumber(1);
  private static final double CENTIMETRES_AN_INCH = 2.54;
  private static final double POUNDS_A_KILOGRAM = 2.2046;

  private final double[] shares;
  private final boolean metric;
  private final String how;
  private final String howAngle;
  private final Map<Slot, String> said = new EnumMap<>(Slot.class);
  private final Map<Slot, String> main = new EnumMap<>(Slot.class);

  private RopeDraw(double[] shares) {
    this.shares = shares;
    this.metric = shares[0] < 0.5;
    this.how = pick(1, "by tape", "by tape", "by tape", "by hand span", "by eye", "a guess");
    this.howAngle = pick(2, "by tape", "by tape", "by eye", "a guess");
  }

  /**
   * @param shares as many as the cube has sides, from 0 to 1
   */
  static SaidRope of(double... shares) {
    RopeDraw draw = new RopeDraw(shares);
    draw.climb();
    draw.limb();
    draw.sling();
    draw.legs();
    draw.main();
    return SaidRope.of(Map.of(Place.MAIN_POINT, draw.main, REDIRECT, draw.said));
  }

  private void climb() {
    double kilograms = between(3, 45, 130);
    main.put(
        Slot.ALL_UP,
        metric
            ? "all up %s kilograms by tape".formatted(number(kilograms, 1))
            : "all up %s pounds by tape".formatted(number(kilograms * POUNDS_A_KILOGRAM, 1)));
    main.put(
        Slot.SPECIES,
        "species "
            + pick(
                4,
                "unknown",
                "white oak",
                "northern red oak",
                "silver maple",
                "sugar maple",
                "black locust",
                "douglas fir",
                "american beech",
                "spruce"));
    main.put(Slot.ROPE_SYSTEM, moving() ? "moving rope" : "stationary rope");
    if (!moving()) {
      main.put(Slot.ANCHOR, fromBase() ? "base anchor" : "canopy anchor");
    }
  }

  private boolean moving() {
    return shares[5] < 0.35;
  }

  /** Then the main point has two legs, and the redirect's anchor leg must have a length. */
  private boolean fromBase() {
    return shares[6] < 0.3 && byLegs();
  }

  private boolean byLegs() {
    return shares[7] < 0.7;
  }

  private void limb() {
    said.put(Slot.WOOD, "live wood");
    double diameter = between(8, 8, 45);
    double stem = diameter * between(9, 1, 3.5);
    said.put(Slot.LIMB_DIAMETER, "limb " + diameter(diameter) + " " + how);
    double butt = Math.min(stem, diameter * between(10, 1.02, 1.6));
    if (shares[11] < 0.25) {
      said.put(Slot.THICK_END, "thick end " + diameter(butt) + " " + how);
    }
    said.put(Slot.STEM_DIAMETER, "stem " + diameter(stem) + " " + how);
    said.put(
        Slot.LIMB_RISE,
        pick(
            12,
            "limb level " + howAngle,
            "limb upright " + howAngle,
            "limb rises %s %s".formatted(whole(13, 1, 89), howAngle),
            "limb rises %s %s".formatted(whole(13, 1, 89), howAngle),
            "limb drops %s %s".formatted(whole(13, 1, 40), howAngle)));
    boolean atUnion = shares[14] < 0.4;
    said.put(
        Slot.OUT, atUnion ? "at the union" : "out " + distance(between(15, 10, 250)) + " " + how);
    if (shares[16] < 0.3) {
      said.put(Slot.LIMB_LENGTH, "limb length " + distance(between(17, 300, 800)) + " " + how);
    }
    String union = pick(18, "sound", "sound", "codominant", "included bark");
    said.put(Slot.UNION, "union " + union);
    String cavity =
        pick(
            19,
            "no cavity",
            "no cavity",
            "cavity one quarter",
            "cavity one third",
            "cavity one half");
    if (union.equals("sound")) {
      cavity = "no cavity";
    }
    said.put(Slot.CAVITY, cavity);
    if (!cavity.equals("no cavity")) {
      said.put(Slot.CAVITY_SHAPE, "cavity " + pick(20, "centered", "off center", "open"));
    }
    said.put(
        Slot.SEAT,
        shares[21] < 0.5 ? "sling free" : atUnion ? "seated at the union" : "seated on a stub");
  }

  private void sling() {
    String over = pick(22, "carabiner", "ring", "pulley", "pulley", "bark");
    said.put(Slot.RUNNING_OVER, "over " + over);
    String hitch = pick(23, "choked", "choked", "choked", "basket", "girth");
    said.put(Slot.HITCH, "sling " + hitch);
    if (!hitch.equals("girth")) {
      said.put(
          Slot.WRAPS, pick(24, "one wrap", "two wraps", "three wraps", "four wraps", "six wraps"));
    }
    if (shares[25] < 0.4) {
      boolean basket = hitch.equals("basket");
      said.put(
          basket ? Slot.BASKET_ANGLE : Slot.CHOKE_ANGLE,
          "%s angle %s %s".formatted(basket ? "basket" : "choke", whole(26, 20, 140), howAngle));
    }
    if (shares[27] < 0.4) {
      said.put(
          Slot.SLING_THICKNESS,
          "sling thickness %s millimeters by tape".formatted(whole(28, 10, 40)));
    }
    said.put(Slot.BARK, "bark " + pick(29, "rough", "smooth", "wet"));
    if (!over.equals("bark")) {
      said.put(
          Slot.CONNECTOR_LIES, shares[30] < 0.8 ? "connector in line" : "connector cross loaded");
    }
    said.put(
        Slot.SLING_RATING,
        metric
            ? "sling rated %s kilonewtons".formatted(whole(31, 20, 40))
            : "sling rated %s000 pounds".formatted(whole(31, 5, 9)));
  }

  private void legs() {
    if (moving()) {
      said.put(Slot.CAPTURED, shares[6] < 0.5 ? "both parts" : "single part");
    }
    if (!byLegs()) {
      String inside = whole(32, 20, 160);
      if (shares[33] < 0.5) {
        said.put(Slot.INSIDE_ANGLE, "inside angle %s %s".formatted(inside, howAngle));
      } else {
        said.put(Slot.BEND, "bend %s %s".formatted(inside, howAngle));
      }
      said.put(
          Slot.SLING_POINTS,
          "sling points %s %s".formatted(slope("down", whole(34, 1, 89), 35), howAngle));
      said.put(Slot.SLACK, "no slack");
      return;
    }
    boolean lengths = fromBase() || shares[36] < 0.4;
    String anchorLength = lengths ? " " + distance(between(37, 150, 1500)) : "";
    String workingLength = lengths ? " " + distance(between(38, 150, 1500)) : "";
    String way = pick(39, "up", "up", "up", "down");
    said.put(
        Slot.ANCHOR_LEG,
        "anchor leg "
            + slope(way, way.equals("up") ? whole(40, 1, 89) : whole(40, 1, 40), 41)
            + anchorLength
            + " "
            + howAngle);
    said.put(
        Slot.WORKING_LEG,
        "working leg "
            + (shares[42] < 0.5 ? "straight down" : slope("down", whole(43, 30, 89), 44))
            + workingLength
            + " "
            + howAngle);
    said.put(
        Slot.SLACK, lengths && shares[45] < 0.2 ? "slack " + distance(20) + " " + how : "no slack");
  }

  private String slope(String way, String degrees, int bearing) {
    return "%s %s %s"
        .formatted(
            way,
            degrees,
            pick(
                bearing,
                "toward the stem",
                "toward the tip",
                "left",
                "right",
                "at one o'clock",
                "at two o'clock",
                "at four o'clock",
                "at five o'clock",
                "at seven o'clock",
                "at eight o'clock",
                "at ten o'clock",
                "at eleven o'clock"));
  }

  /** A stout leader, the sling in its union. Its leg to the redirect is said there, if it is. */
  private void main() {
    main.put(Slot.WOOD, "live wood");
    main.put(Slot.LIMB_DIAMETER, "limb 55 centimeters by tape");
    main.put(Slot.LIMB_RISE, "limb upright by tape");
    main.put(Slot.OUT, "at the union");
    main.put(Slot.STEM_DIAMETER, "stem 95 centimeters by tape");
    main.put(Slot.UNION, "union sound");
    main.put(Slot.CAVITY, "no cavity");
    main.put(Slot.HITCH, "sling choked");
    main.put(Slot.WRAPS, "four wraps");
    main.put(Slot.SEAT, "seated at the union");
    main.put(Slot.BARK, "bark rough");
    main.put(Slot.SLING_RATING, "sling rated 55 kilonewtons");
    main.put(Slot.RUNNING_OVER, "over pulley");
    main.put(Slot.CONNECTOR_LIES, "connector in line");
    main.put(Slot.SLACK, "no slack");
    if (fromBase()) {
      main.put(Slot.ANCHOR_LEG, "anchor leg straight down 12 meters by tape");
    }
    if (!byLegs()) {
      main.put(Slot.WORKING_LEG, "working leg down 45 toward the tip by tape");
    }
  }

  // ---- words ----

  private String diameter(double centimetres) {
    return metric
        ? number(centimetres, 0.5) + " centimeters"
        : number(centimetres / CENTIMETRES_AN_INCH, 0.5) + " inches";
  }

  private String distance(double centimetres) {
    if (metric) {
      return number(Math.min(999, centimetres), 1) + " centimeters";
    }
    return number(centimetres / CENTIMETRES_AN_INCH / 12, 0.5) + " feet";
  }

  /** In figures, to the nearest step and never nothing. */
  private static String number(double exact, double step) {
    double rounded = Math.max(step, step * Math.rint(exact / step));
    return rounded == Math.rint(rounded)
        ? Long.toString((long) rounded)
        : String.format(Locale.ROOT, "%.1f", rounded);
  }

  private String whole(int side, int low, int high) {
    return Long.toString(Math.round(between(side, low, high)));
  }

  private double between(int side, double low, double high) {
    return low + (high - low) * shares[side];
  }

  @SafeVarargs
  private <T> T pick(int side, T... options) {
    return options[Math.min(options.length - 1, (int) (options.length * shares[side]))];
  }
}
