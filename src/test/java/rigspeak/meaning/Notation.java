package rigspeak.meaning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/**
 * How values are written in the data files of the tests: {@code 8 in by_tape}, {@code elevation 60
 * bearing 180 length 15 ft}.
 *
 * <p>Both what a file expects and what the program has are brought to one form in SI units; the
 * conversion of what the file expects is the test's own, from the units' definitions.
 *
 * <ul>
 *   <li>{@code in, ft, mm, cm, m}; feet and inches add up
 *   <li>{@code lb, kg}; {@code lbf, kN}; {@code deg}; {@code turns}
 *   <li>{@code 1/3}: share of the diameter
 *   <li>{@code elevation E bearing B}: degrees, up positive; 0 to the tip, 90 left, 180 to the stem
 *   <li>words of a species, conditions of a union joined by {@code +}
 *   <li>the last word may say how the value was got; by eye if it does not
 * </ul>
 */
public final class Notation {
  /** Exact: the international inch of 1959 is 25.4 mm, the foot is twelve of it. */
  private static final BigDecimal INCH = new BigDecimal("0.0254");

  private static final BigDecimal FOOT = INCH.multiply(new BigDecimal(12));
  private static final BigDecimal MILLIMETRE = new BigDecimal("0.001");
  private static final BigDecimal CENTIMETRE = new BigDecimal("0.01");

  /** Exact: the avoirdupois pound of 1959 in kilograms. */
  private static final BigDecimal POUND = new BigDecimal("0.45359237");

  /** Exact: the pound under standard gravity, 9.80665 m/s2. */
  private static final BigDecimal POUND_FORCE = POUND.multiply(new BigDecimal("9.80665"));

  private static final MathContext TEN_DIGITS = new MathContext(10);
  private static final Pattern AMOUNT =
      Pattern.compile("(-?[\\d.]+) (in|ft|mm|cm|m|lbf|lb|kg|kN)\\b");
  private static final Pattern POINTING =
      Pattern.compile("elevation (-?[\\d.]+) bearing (-?[\\d.]+)(?: length (.+))?");

  private Notation() {}

  // ---- what the program has ----

  public static String of(Slot slot, Said said) {
    return slot.key() + " = " + of(said);
  }

  public static String of(Said said) {
    return of(said.value()) + " " + key(said.how());
  }

  static String of(Value value) {
    if (value instanceof Value.Weight weight) {
      return number(weight.mass().kilograms()) + " kg " + key(weight.said());
    }
    if (value instanceof Value.Distance distance) {
      return number(distance.length().metres()) + " m " + key(distance.said());
    }
    if (value instanceof Value.Turned turned) {
      return number(Math.toDegrees(turned.angle().radians())) + " deg";
    }
    if (value instanceof Value.Rating rating) {
      return number(rating.force().newtons()) + " N " + key(rating.said());
    }
    if (value instanceof Value.Wraps wraps) {
      return wraps.turns() + " turns";
    }
    if (value instanceof Value.Share share) {
      return number(share.ofDiameter()) + " of the diameter";
    }
    if (value instanceof Value.Toward toward) {
      return of(toward.direction());
    }
    if (value instanceof Value.Leg leg) {
      return of(leg.direction()) + leg.length().map(length -> " length " + of(length)).orElse("");
    }
    if (value instanceof Value.Species species) {
      return species.isUnknown() ? "unknown" : String.join(" ", species.words());
    }
    if (value instanceof Value.Union union) {
      return union.conditions().stream().map(Notation::key).collect(Collectors.joining(" + "));
    }
    return key((Enum<?>) value);
  }

  private static String of(Direction direction) {
    return "elevation %s bearing %s"
        .formatted(
            number(Math.toDegrees(direction.elevation().radians())),
            number(Math.toDegrees(direction.bearing().radians())));
  }

  // ---- what a file expects ----

  /** {@code limb_diameter = 8 in by_tape} in the form of {@link #of(Slot, Said)}. */
  public static String expected(String text) {
    String[] sides = text.split("=", 2);
    if (sides.length < 2) {
      throw new IllegalArgumentException("no value in: " + text);
    }
    Slot slot = Slot.of(sides[0].strip()).orElseThrow(() -> new IllegalArgumentException(text));
    return slot.key() + " = " + expected(slot, sides[1].strip());
  }

  /** The value alone and how it was got. */
  public static String expected(Slot slot, String text) {
    Optional<HowGot> how =
        Arrays.stream(HowGot.values()).filter(h -> text.endsWith(" " + key(h))).findFirst();
    String value =
        how.map(h -> text.substring(0, text.length() - key(h).length()).strip()).orElse(text);
    return value(slot.valueType(), value) + " " + key(how.orElse(HowGot.BY_EYE));
  }

  private static String value(Class<? extends Value> type, String text) {
    if (type == Value.Weight.class || type == Value.Distance.class || type == Value.Rating.class) {
      return amount(text);
    }
    if (type == Value.Toward.class || type == Value.Leg.class) {
      return pointing(text);
    }
    if (type == Value.Turned.class) {
      return number(text.substring(0, text.indexOf(" deg"))) + " deg";
    }
    if (type == Value.Share.class) {
      String[] parts = (text.contains("/") ? text : text + "/1").split("/", -1);
      BigDecimal share =
          new BigDecimal(parts[0]).divide(new BigDecimal(parts[1]), MathContext.DECIMAL64);
      return number(share) + " of the diameter";
    }
    if (type == Value.Species.class) {
      return String.join(" ", new TreeSet<>(List.of(text.split(" ", -1))));
    }
    if (type == Value.Union.class) {
      return Arrays.stream(Value.UnionCondition.values())
          .map(Notation::key)
          .filter(List.of(text.split(" \\+ ", -1))::contains)
          .collect(Collectors.joining(" + "));
    }
    return text;
  }

  private static String pointing(String text) {
    Matcher pointing = POINTING.matcher(text);
    if (!pointing.matches()) {
      throw new IllegalArgumentException("no direction: " + text);
    }
    String length = pointing.group(3);
    return "elevation %s bearing %s".formatted(number(pointing.group(1)), number(pointing.group(2)))
        + (length == null ? "" : " length " + amount(length));
  }

  private static String amount(String text) {
    BigDecimal sum = BigDecimal.ZERO;
    List<String> units = new ArrayList<>();
    Matcher amounts = AMOUNT.matcher(text);
    while (amounts.find()) {
      units.add(amounts.group(2));
      sum = sum.add(new BigDecimal(amounts.group(1)).multiply(unit(amounts.group(2))));
    }
    if (units.isEmpty()) {
      throw new IllegalArgumentException("no amount: " + text);
    }
    UnitSystem system =
        List.of("in", "ft", "lb", "lbf").contains(units.get(0))
            ? UnitSystem.INCH_POUND
            : UnitSystem.METRIC;
    return number(sum) + " " + siName(units.get(0)) + " " + key(system);
  }

  private static BigDecimal unit(String name) {
    return switch (name) {
      case "in" -> INCH;
      case "ft" -> FOOT;
      case "mm" -> MILLIMETRE;
      case "cm" -> CENTIMETRE;
      case "lb" -> POUND;
      case "lbf" -> POUND_FORCE;
      case "kN" -> new BigDecimal(1000);
      default -> BigDecimal.ONE;
    };
  }

  private static String siName(String unit) {
    return switch (unit) {
      case "lb", "kg" -> "kg";
      case "lbf", "kN" -> "N";
      default -> "m";
    };
  }

  // ---- numbers and names ----

  public static String number(double value) {
    return number(new BigDecimal(value));
  }

  private static String number(String text) {
    return number(new BigDecimal(text));
  }

  /** Ten digits: far finer than anybody measures, coarser than the rounding of doubles. */
  private static String number(BigDecimal value) {
    BigDecimal rounded = value.round(TEN_DIGITS);
    return Math.abs(rounded.doubleValue()) < 1e-12
        ? "0"
        : rounded.stripTrailingZeros().toPlainString();
  }

  public static String key(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
