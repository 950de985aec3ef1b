package rigspeak.answer;

import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.Stress;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Value;

/**
 * Numbers with their units, as words.
 *
 * <p>What was said is said back exactly. What was computed is rounded, and never to the side of
 * danger: a demand or a least size up, a limit or a largest distance down.
 */
final class Amounts {
  private static final int INCHES_A_FOOT = 12;
  private static final int MILLIMETRES_A_CENTIMETRE = 10;
  private static final int COARSE_FEET = 10;

  /** What rounding leaves of a step; a size that misses its step by less is on it. */
  private static final double ON_THE_STEP = 1e-6;

  /** Which way a computed number is rounded. */
  enum Round {
    UP,
    DOWN;

    /** To a whole number of steps. */
    double to(double step, double number) {
      double steps = number / step;
      return step * (this == UP ? Math.ceil(steps - ON_THE_STEP) : Math.floor(steps + ON_THE_STEP));
    }
  }

  private Amounts() {}

  /** As exactly as it was said, in inches or centimetres. */
  static String diameter(Value.Distance diameter) {
    return diameter.said() == UnitSystem.METRIC
        ? centimetres(diameter.length().centimetres())
        : inches(diameter.length().inches());
  }

  /** As exactly as it was said, in inches or millimetres. */
  static String thickness(Value.Distance thickness) {
    return thickness.said() == UnitSystem.METRIC
        ? millimetres(MILLIMETRES_A_CENTIMETRE * thickness.length().centimetres())
        : inches(thickness.length().inches());
  }

  /** As exactly as it was said, in feet and inches or in metres. */
  static String distance(Value.Distance distance) {
    return distance.said() == UnitSystem.METRIC
        ? metric(distance.length())
        : feetAndInches(distance.length());
  }

  /** A computed diameter, to half an inch or a centimetre. */
  static String diameter(Length length, UnitSystem units, Round round) {
    return units == UnitSystem.METRIC
        ? centimetres(round.to(1, length.centimetres()))
        : inches(round.to(0.5, length.inches()));
  }

  /** A computed thickness, to half an inch or a millimetre. */
  static String thickness(Length length, UnitSystem units, Round round) {
    return units == UnitSystem.METRIC
        ? millimetres(round.to(1, MILLIMETRES_A_CENTIMETRE * length.centimetres()))
        : inches(round.to(0.5, length.inches()));
  }

  /** A computed distance, to an inch or a centimetre. */
  static String distance(Length length, UnitSystem units, Round round) {
    return units == UnitSystem.METRIC
        ? metric(Length.ofCentimetres(round.to(1, length.centimetres())))
        : feetAndInches(Length.ofInches(round.to(1, length.inches())));
  }

  /**
   * How far somebody falls or swings, rounded up to half a foot, from ten feet on to a foot, or to
   * ten centimetres; no more is known of it.
   */
  static String fall(double metres, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return metric(Length.ofCentimetres(Round.UP.to(10, Length.ofMetres(metres).centimetres())));
    }
    double exact = Length.ofMetres(metres).feet();
    double feet = Round.UP.to(exact < COARSE_FEET ? 0.5 : 1, exact);
    return feet < 1 ? inches(INCHES_A_FOOT * feet) : feet(feet);
  }

  /** Feet with whole inches where that is exact; else whichever of the two takes fewer decimals. */
  private static String feetAndInches(Length length) {
    double inches = length.inches();
    double feet = length.feet();
    if (Numbers.decimals(inches) == 0) {
      return feetWithInches(Math.rint(inches));
    }
    return feet >= 1 && Numbers.decimals(feet) <= Numbers.decimals(inches)
        ? feet(feet)
        : inches(inches);
  }

  private static String feetWithInches(double inches) {
    double left = inches % INCHES_A_FOOT;
    double feet = (inches - left) / INCHES_A_FOOT;
    if (left == 0) {
      return feet(feet);
    }
    return feet == 0 ? inches(left) : feet(feet) + " " + inches(left);
  }

  private static String metric(Length length) {
    boolean belowOne = length.metres() > 0 && length.metres() < 1;
    return belowOne
        ? centimetres(length.centimetres())
        : counted(length.metres(), "meter", "meters");
  }

  private static String feet(double feet) {
    return counted(feet, "foot", "feet");
  }

  private static String inches(double inches) {
    return inches == 0.5 ? "half an inch" : counted(inches, "inch", "inches");
  }

  private static String centimetres(double centimetres) {
    return counted(centimetres, "centimeter", "centimeters");
  }

  private static String millimetres(double millimetres) {
    return counted(millimetres, "millimeter", "millimeters");
  }

  static String weight(Value.Weight weight) {
    return weight.said() == UnitSystem.METRIC
        ? counted(weight.mass().kilograms(), "kilogram", "kilograms")
        : counted(weight.mass().pounds(), "pound", "pounds");
  }

  /** A computed weight, to a whole pound or kilogram. */
  static String weight(Mass mass, UnitSystem units, Round round) {
    return units == UnitSystem.METRIC
        ? counted(round.to(1, mass.kilograms()), "kilogram", "kilograms")
        : counted(round.to(1, mass.pounds()), "pound", "pounds");
  }

  /** As the label has it. */
  static String rating(Value.Rating rating) {
    if (rating.said() == UnitSystem.METRIC) {
      return counted(rating.force().kilonewtons(), "kilonewton", "kilonewtons");
    }
    return Numbers.label(rating.force().poundsForce()) + " pounds";
  }

  static String degrees(Angle angle) {
    return degrees(Math.abs(angle.degrees()));
  }

  static String degrees(double degrees) {
    return counted(degrees, "degree", "degrees");
  }

  /** A computed force, to two or three figures; no more is known of it, and no more is heard. */
  static String force(double newtons, UnitSystem units, Round round) {
    Force force = Force.ofNewtons(newtons);
    if (units != UnitSystem.METRIC) {
      return figures(force.poundsForce(), round, "pound", "pounds");
    }
    if (force.kilonewtons() < 1) {
      return figures(newtons, round, "newton", "newtons");
    }
    return figures(force.kilonewtons(), round, "kilonewton", "kilonewtons");
  }

  /** A computed stress. */
  static String stress(double pascals, UnitSystem units, Round round) {
    Stress stress = Stress.ofPascals(pascals);
    if (units != UnitSystem.METRIC) {
      return figures(stress.poundsPerSquareInch(), round, "pound", "pounds") + " a square inch";
    }
    return figures(stress.megapascals(), round, "megapascal", "megapascals");
  }

  private static String figures(double number, Round round, String one, String many) {
    return counted(round.to(step(number), number), one, many);
  }

  /** A tenth below ten, then what leaves two figures of a number, at most a hundred. */
  static double step(double number) {
    if (number < 10) {
      return 0.1;
    }
    if (number < 100) {
      return 1;
    }
    return number < 1000 ? 10 : 100;
  }

  /** So much of something: in percent, rounded up to a whole one; past three times, as times. */
  static String shareOf(double ratio, String something) {
    if (ratio > 10) {
      return "more than ten times " + something;
    }
    if (ratio > 3) {
      return "more than " + Numbers.whole((long) Math.ceil(ratio) - 1) + " times " + something;
    }
    return percent(ratio, Round.UP) + " of " + something;
  }

  static String percent(double ratio, Round round) {
    return Numbers.exact(round.to(1, 100 * ratio)) + " percent";
  }

  /** A factor to two decimals, rounded up: "once", "twice", "one point four two times". */
  static String times(double factor) {
    double rounded = Round.UP.to(0.01, factor);
    String words = Numbers.exact(rounded);
    return switch (words) {
      case "one" -> "once";
      case "two" -> "twice";
      default -> words + " times";
    };
  }

  private static String counted(double number, String one, String many) {
    String words = Numbers.exact(number);
    return words + " " + (words.equals("one") ? one : many);
  }
}
