package rigspeak.answer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Value;

/** Numbers as figures, for what is read and not heard; rounded as {@link Amounts} rounds. */
public final class Figures {
  private static final int INCHES_A_FOOT = 12;
  private static final int DEGREES_AN_HOUR = 30;
  private static final int HOURS = 12;
  private static final double MOST_TIMES = 10;
  private static final double COARSE_FEET = 10;
  private static final double PLUMB_DEGREES = 89.5;

  /** Below this a direction is level, degrees. */
  private static final double LEVEL_DEGREES = 0.5;

  private Figures() {}

  /** A diameter as it was said: "8.5 in", "22 cm". */
  public static String diameter(Value.Distance diameter) {
    return diameter.said() == UnitSystem.METRIC
        ? plain(diameter.length().centimetres(), 1) + " cm"
        : plain(diameter.length().inches(), 1) + " in";
  }

  /** A distance as it was said: "3 ft 6 in", "2.4 m". */
  public static String distance(Value.Distance distance) {
    return distance(distance.length(), distance.said());
  }

  /** A distance to an inch or a centimetre. */
  public static String distance(Length length, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return length.metres() < 1
          ? plain(length.centimetres(), 0) + " cm"
          : plain(length.metres(), 2) + " m";
    }
    long inches = Math.round(length.inches());
    long feet = inches / INCHES_A_FOOT;
    long left = inches % INCHES_A_FOOT;
    if (feet == 0) {
      return left + " in";
    }
    return left == 0 ? feet + " ft" : feet + " ft " + left + " in";
  }

  /** A computed force, rounded up to the figures that are known: "270 lb", "1.3 kN". */
  public static String force(double newtons, UnitSystem units) {
    Force force = Force.ofNewtons(newtons);
    if (units != UnitSystem.METRIC) {
      return rounded(force.poundsForce()) + " lb";
    }
    return force.kilonewtons() < 1 ? rounded(newtons) + " N" : rounded(force.kilonewtons()) + " kN";
  }

  /**
   * How far somebody falls or swings, rounded up to half a foot, from ten feet on to a foot, or to
   * ten centimetres: "3.5 ft", "1.2 m".
   */
  public static String fall(double metres, UnitSystem units) {
    Length length = Length.ofMetres(metres);
    if (units == UnitSystem.METRIC) {
      return distance(Length.ofCentimetres(Round.UP.to(10, length.centimetres())), units);
    }
    double feet = Round.UP.to(length.feet() < COARSE_FEET ? 0.5 : 1, length.feet());
    return plain(feet, 1) + " ft";
  }

  private static String rounded(double number) {
    return plain(Round.UP.to(Amounts.step(number), number), 1);
  }

  /** A share, rounded up to a whole percent; past ten times only that: "34 %". */
  public static String percent(double ratio) {
    return ratio > MOST_TIMES
        ? "more than " + plain(100 * MOST_TIMES, 0) + " %"
        : plain(Round.UP.to(1, 100 * ratio), 0) + " %";
  }

  /** To a whole degree: "40°". */
  public static String degrees(double degrees) {
    return plain(degrees, 0) + "°";
  }

  /**
   * A direction to a whole degree and the nearest hour, its slope and its bearing apart: "up 60°"
   * and "toward the stem"; a plumb one has no bearing.
   *
   * @param elevationDeg up positive
   * @param bearingDeg 0 toward the tip, 90 left
   */
  public static List<String> direction(double elevationDeg, double bearingDeg) {
    if (Math.abs(elevationDeg) >= PLUMB_DEGREES) {
      return List.of(elevationDeg < 0 ? "straight down" : "straight up");
    }
    return List.of(slope(elevationDeg), bearing(bearingDeg));
  }

  /** How steep something points: "up 60°", "level". */
  public static String slope(double elevationDeg) {
    return Math.abs(elevationDeg) < LEVEL_DEGREES
        ? "level"
        : (elevationDeg < 0 ? "down " : "up ") + degrees(Math.abs(elevationDeg));
  }

  /** The clock lies flat: twelve at the tip, three to the right, six at the stem. */
  private static String bearing(double degrees) {
    int hour = Math.floorMod(-Math.round(degrees / DEGREES_AN_HOUR), HOURS);
    return switch (hour) {
      case 0 -> "toward the tip";
      case 3 -> "to the right";
      case 6 -> "toward the stem";
      case 9 -> "to the left";
      default -> "at " + hour + " o'clock";
    };
  }

  /** With at most so many decimals, and none that say nothing. */
  private static String plain(double number, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
