package rigspeak.meaning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigspeak.meaning.Breath.Piece;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** Makes a slot's value of the pieces that were said. */
final class SlotValue {
  /** "Down toward the stem", without a number, is taken as half way down. */
  private static final double SLOPING_DEGREES = 45;

  private static final double PLUMB_DEGREES = 90;

  private static final String CLOCK = "clock ";

  private static final int MILLIMETRES_A_CENTIMETRE = 10;

  private SlotValue() {}

  /** A direction that rises or falls by more than a right angle. */
  static final class BeyondPlumb extends Exception {
    private static final long serialVersionUID = 1L;
  }

  static Said of(Slot slot, Breath breath) throws BeyondPlumb {
    List<Piece> pieces = breath.pieces();
    HowGot how =
        breath
            .how()
            .orElse(words(pieces).contains("sloping_down") ? HowGot.GUESSED : HowGot.BY_EYE);
    return new Said(value(slot, pieces), how);
  }

  private static Value value(Slot slot, List<Piece> pieces) throws BeyondPlumb {
    return switch (slot) {
      case ALL_UP -> weight(only(amounts(pieces)));
      case SPECIES -> species(onlyWord(pieces));
      case WOOD -> word(Value.Wood.class, pieces);
      case LIMB_DIAMETER,
          THICK_END,
          STEM_DIAMETER,
          SLING_THICKNESS,
          LIMB_LENGTH,
          OUT,
          SLACK,
          STEM_CLEAR ->
          isNowhere(slot, pieces)
              ? new Value.Distance(Length.ofMetres(0), UnitSystem.INCH_POUND)
              : distance(onlyAmounts(pieces));
      case LIMB_RISE -> new Value.Turned(rise(pieces));
      case UNION -> union(words(pieces));
      case CAVITY -> new Value.Share(isOnly(pieces, "none") ? 0 : bare(only(onlyAmounts(pieces))));
      case CAVITY_SHAPE -> word(Value.CavityShape.class, pieces);
      case HITCH -> word(Value.Hitch.class, pieces);
      case WRAPS -> new Value.Wraps(wraps(only(onlyAmounts(pieces))));
      case SEAT -> seat(onlyWord(pieces));
      case BARK -> word(Value.Bark.class, pieces);
      case SLING_RATING -> rating(only(onlyAmounts(pieces)));
      case RUNNING_OVER -> word(Value.RunningOver.class, pieces);
      case CONNECTOR_LIES -> word(Value.ConnectorLies.class, pieces);
      case ROPE_SYSTEM -> word(Value.RopeSystem.class, pieces);
      case ANCHOR -> word(Value.Anchor.class, pieces);
      case CAPTURED -> word(Value.Captured.class, pieces);
      case ANCHOR_LEG, WORKING_LEG -> leg(pieces);
      case INSIDE_ANGLE, BEND, CHOKE_ANGLE, BASKET_ANGLE ->
          new Value.Turned(degrees(only(onlyAmounts(pieces))));
      case SLING_POINTS -> new Value.Toward(direction(pieces));
    };
  }

  /** A distance that is said by a word: none at all. */
  private static boolean isNowhere(Slot slot, List<Piece> pieces) {
    return switch (slot) {
      case OUT -> isOnly(pieces, "at_union");
      case SLACK -> isOnly(pieces, "none");
      default -> false;
    };
  }

  private static <E extends Enum<E> & Value> E word(Class<E> type, List<Piece> pieces) {
    return Enum.valueOf(type, onlyWord(pieces).toUpperCase(Locale.ROOT));
  }

  private static Value seat(String word) {
    return word.equals("none")
        ? Value.Seat.FREE
        : Value.Seat.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Value species(String name) {
    return name.equals("any")
        ? Value.Species.unknown()
        : new Value.Species(Set.of(name.split(" ", -1)));
  }

  private static Value union(List<String> words) {
    Set<Value.UnionCondition> conditions = EnumSet.noneOf(Value.UnionCondition.class);
    for (String word : words) {
      conditions.add(Value.UnionCondition.valueOf(word.toUpperCase(Locale.ROOT)));
    }
    return new Value.Union(conditions);
  }

  private static Angle rise(List<Piece> pieces) {
    String word = only(words(pieces));
    List<Piece.Amount> amounts = amounts(pieces);
    return switch (word) {
      case "rises" -> degrees(only(amounts));
      case "drops" -> Angle.ofDegrees(-degrees(only(amounts)).degrees());
      case "upright" -> Angle.ofDegrees(none(amounts, PLUMB_DEGREES));
      case "level" -> Angle.ofDegrees(none(amounts, 0));
      default -> throw unfit(word);
    };
  }

  private static Value.Leg leg(List<Piece> pieces) throws BeyondPlumb {
    List<Piece.Amount> lengths =
        amounts(pieces).stream().filter(amount -> !isAngle(amount)).toList();
    Optional<Value.Distance> length =
        lengths.isEmpty() ? Optional.empty() : Optional.of(distance(lengths));
    return new Value.Leg(direction(pieces), length);
  }

  private static Direction direction(List<Piece> pieces) throws BeyondPlumb {
    List<String> words = words(pieces);
    List<Piece.Amount> angles = amounts(pieces).stream().filter(SlotValue::isAngle).toList();
    String way = words.get(0);
    return switch (way) {
      case "straight_down" -> none(angles, only(words, Direction.straightDown()));
      case "straight_up" -> none(angles, only(words, Direction.straightUp()));
      case "level" -> none(angles, Direction.ofDegrees(0, bearing(second(words))));
      case "up" -> Direction.ofDegrees(slope(angles), bearing(second(words)));
      case "down" -> Direction.ofDegrees(-slope(angles), bearing(second(words)));
      default ->
          second(words).equals("sloping_down")
              ? none(angles, Direction.ofDegrees(-SLOPING_DEGREES, bearing(way)))
              : nowhere(way);
    };
  }

  private static Direction nowhere(String way) {
    throw unfit(way);
  }

  private static String second(List<String> words) {
    if (words.size() != 2) {
      throw unfit(String.join(", ", words));
    }
    return words.get(1);
  }

  private static double slope(List<Piece.Amount> angles) throws BeyondPlumb {
    double degrees = degrees(only(angles)).degrees();
    if (degrees > PLUMB_DEGREES) {
      throw new BeyondPlumb();
    }
    return degrees;
  }

  /** The clock lies flat: twelve at the tip, three to the right, six at the stem. */
  private static double bearing(String word) {
    if (word.startsWith(CLOCK)) {
      return -30.0 * Integer.parseInt(word.substring(CLOCK.length()));
    }
    return switch (word) {
      case "toward_tip" -> 0;
      case "left" -> 90;
      case "right" -> -90;
      case "toward_stem" -> 180;
      default -> throw unfit(word);
    };
  }

  private static Value.Weight weight(Piece.Amount amount) {
    return switch (amount.unit().orElseThrow()) {
      case "pounds" -> new Value.Weight(Mass.ofPounds(amount.number()), UnitSystem.INCH_POUND);
      case "kilograms" -> new Value.Weight(Mass.ofKilograms(amount.number()), UnitSystem.METRIC);
      default -> throw unfit(amount);
    };
  }

  private static Value.Rating rating(Piece.Amount amount) {
    return switch (amount.unit().orElseThrow()) {
      case "kilonewtons" ->
          new Value.Rating(Force.ofKilonewtons(amount.number()), UnitSystem.METRIC);
      default -> new Value.Rating(Force.ofPoundsForce(amount.number()), UnitSystem.INCH_POUND);
    };
  }

  /** Feet and inches said one after the other add up. */
  private static Value.Distance distance(List<Piece.Amount> amounts) {
    double metres = 0;
    UnitSystem said = UnitSystem.INCH_POUND;
    for (Piece.Amount amount : amounts) {
      switch (amount.unit().orElseThrow()) {
        case "inches" -> metres += Length.ofInches(amount.number()).metres();
        case "feet" -> metres += Length.ofFeet(amount.number()).metres();
        case "millimetres" -> {
          metres += Length.ofCentimetres(amount.number() / MILLIMETRES_A_CENTIMETRE).metres();
          said = UnitSystem.METRIC;
        }
        case "centimetres" -> {
          metres += Length.ofCentimetres(amount.number()).metres();
          said = UnitSystem.METRIC;
        }
        case "metres" -> {
          metres += amount.number();
          said = UnitSystem.METRIC;
        }
        default -> throw unfit(amount);
      }
    }
    return new Value.Distance(Length.ofMetres(metres), said);
  }

  private static Angle degrees(Piece.Amount amount) {
    if (!isAngle(amount)) {
      throw unfit(amount);
    }
    return Angle.ofDegrees(amount.number());
  }

  private static boolean isAngle(Piece.Amount amount) {
    return amount.unit().isEmpty() || amount.unit().get().equals("degrees");
  }

  private static double bare(Piece.Amount amount) {
    if (amount.unit().isPresent()) {
      throw unfit(amount);
    }
    return amount.number();
  }

  private static int wraps(Piece.Amount amount) {
    double turns = bare(amount);
    if (turns != Math.rint(turns)) {
      throw unfit(amount);
    }
    return (int) turns;
  }

  /**
   * The grammar's tags make no value of this slot: a grammar like that is refused when it is read.
   */
  private static IllegalArgumentException unfit(Object what) {
    return new IllegalArgumentException("the grammar has no value of " + what);
  }

  private static <T> T only(List<T> all) {
    if (all.size() != 1) {
      throw unfit(all);
    }
    return all.get(0);
  }

  private static <T> T only(List<String> words, T value) {
    only(words);
    return value;
  }

  private static <T> T none(List<Piece.Amount> amounts, T value) {
    if (!amounts.isEmpty()) {
      throw unfit(amounts);
    }
    return value;
  }

  private static String onlyWord(List<Piece> pieces) {
    return only(words(pieces), only(pieces)) instanceof Piece.Word word ? word.word() : "";
  }

  private static boolean isOnly(List<Piece> pieces, String word) {
    return pieces.equals(List.of(new Piece.Word(word)));
  }

  private static List<Piece.Amount> onlyAmounts(List<Piece> pieces) {
    List<Piece.Amount> amounts = amounts(pieces);
    if (amounts.isEmpty() || amounts.size() < pieces.size()) {
      throw unfit(pieces);
    }
    return amounts;
  }

  private static List<Piece.Amount> amounts(List<Piece> pieces) {
    List<Piece.Amount> amounts = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Amount amount) {
        amounts.add(amount);
      }
    }
    return amounts;
  }

  private static List<String> words(List<Piece> pieces) {
    List<String> words = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Word word) {
        words.add(word.word());
      }
    }
    return words;
  }
}
