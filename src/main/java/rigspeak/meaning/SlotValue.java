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
      case ALL_UP -> weight(amounts(pieces).get(0));
      case SPECIES -> species(words(pieces));
      case WOOD -> word(Value.Wood.class, pieces);
      case LIMB_DIAMETER,
          THICK_END,
          STEM_DIAMETER,
          SLING_THICKNESS,
          LIMB_LENGTH,
          OUT,
          SLACK,
          STEM_CLEAR ->
          distance(amounts(pieces));
      case LIMB_RISE -> new Value.Turned(rise(pieces));
      case UNION -> union(words(pieces));
      case CAVITY -> new Value.Share(words(pieces).isEmpty() ? amounts(pieces).get(0).number() : 0);
      case CAVITY_SHAPE -> word(Value.CavityShape.class, pieces);
      case HITCH -> word(Value.Hitch.class, pieces);
      case WRAPS -> new Value.Wraps((int) amounts(pieces).get(0).number());
      case SEAT -> seat(words(pieces).get(0));
      case BARK -> word(Value.Bark.class, pieces);
      case SLING_RATING -> rating(amounts(pieces).get(0));
      case RUNNING_OVER -> word(Value.RunningOver.class, pieces);
      case CONNECTOR_LIES -> word(Value.ConnectorLies.class, pieces);
      case ROPE_SYSTEM -> word(Value.RopeSystem.class, pieces);
      case ANCHOR -> word(Value.Anchor.class, pieces);
      case CAPTURED -> word(Value.Captured.class, pieces);
      case ANCHOR_LEG, WORKING_LEG -> leg(pieces);
      case INSIDE_ANGLE, BEND, CHOKE_ANGLE, BASKET_ANGLE ->
          new Value.Turned(Angle.ofDegrees(amounts(pieces).get(0).number()));
      case SLING_POINTS -> new Value.Toward(direction(pieces));
    };
  }

  private static <E extends Enum<E> & Value> E word(Class<E> type, List<Piece> pieces) {
    return Enum.valueOf(type, words(pieces).get(0).toUpperCase(Locale.ROOT));
  }

  private static Value seat(String word) {
    return word.equals("none")
        ? Value.Seat.FREE
        : Value.Seat.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Value species(List<String> words) {
    String name = words.get(0);
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
    return switch (words(pieces).get(0)) {
      case "rises" -> Angle.ofDegrees(amounts(pieces).get(0).number());
      case "drops" -> Angle.ofDegrees(-amounts(pieces).get(0).number());
      case "upright" -> Angle.ofDegrees(PLUMB_DEGREES);
      default -> Angle.ofDegrees(0);
    };
  }

  private static Value.Leg leg(List<Piece> pieces) throws BeyondPlumb {
    List<Piece.Amount> lengths =
        amounts(pieces).stream()
            .filter(amount -> amount.unit().filter(unit -> !unit.equals("degrees")).isPresent())
            .toList();
    Optional<Value.Distance> length =
        lengths.isEmpty() ? Optional.empty() : Optional.of(distance(lengths));
    return new Value.Leg(direction(pieces), length);
  }

  private static Direction direction(List<Piece> pieces) throws BeyondPlumb {
    List<String> words = words(pieces);
    return switch (words.get(0)) {
      case "straight_down" -> Direction.straightDown();
      case "straight_up" -> Direction.straightUp();
      case "level" -> Direction.ofDegrees(0, bearing(words.get(1)));
      case "up" -> Direction.ofDegrees(slope(pieces), bearing(words.get(1)));
      case "down" -> Direction.ofDegrees(-slope(pieces), bearing(words.get(1)));
      default -> Direction.ofDegrees(-SLOPING_DEGREES, bearing(words.get(0)));
    };
  }

  private static double slope(List<Piece> pieces) throws BeyondPlumb {
    double degrees = amounts(pieces).get(0).number();
    if (degrees > PLUMB_DEGREES) {
      throw new BeyondPlumb();
    }
    return degrees;
  }

  /** The clock lies flat: twelve at the tip, three to the right, six at the stem. */
  private static double bearing(String word) {
    if (word.startsWith("clock ")) {
      return -30.0 * Integer.parseInt(word.substring("clock ".length()));
    }
    return switch (word) {
      case "toward_tip" -> 0;
      case "left" -> 90;
      case "right" -> -90;
      default -> 180;
    };
  }

  private static Value.Weight weight(Piece.Amount amount) {
    return switch (amount.unit().orElseThrow()) {
      case "pounds" -> new Value.Weight(Mass.ofPounds(amount.number()), UnitSystem.INCH_POUND);
      default -> new Value.Weight(Mass.ofKilograms(amount.number()), UnitSystem.METRIC);
    };
  }

  private static Value.Rating rating(Piece.Amount amount) {
    return switch (amount.unit().orElseThrow()) {
      case "kilonewtons" ->
          new Value.Rating(Force.ofKilonewtons(amount.number()), UnitSystem.METRIC);
      default -> new Value.Rating(Force.ofPoundsForce(amount.number()), UnitSystem.INCH_POUND);
    };
  }

  /** Feet and inches said one after the other add up; a word instead ("none") is nothing. */
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
        default -> {
          metres += amount.number();
          said = UnitSystem.METRIC;
        }
      }
    }
    return new Value.Distance(Length.ofMetres(metres), said);
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
