package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import rigspeak.answer.Amounts.Round;
import rigspeak.catalogue.Conflict;
import rigspeak.catalogue.Range;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** One sentence for each thing that cannot be. */
final class ConflictWords {
  private static final Cases<Conflict, String> WORDS =
      Cases.<Conflict, String>of(Conflict.class)
          .on(Conflict.OutOfRange.class, ConflictWords::outOfRange)
          .on(Conflict.AnglesDisagree.class, ConflictWords::anglesDisagree)
          .on(
              Conflict.LegsCoincide.class,
              each -> "Both legs go the same way, so the rope is not redirected.")
          .on(
              Conflict.LegsInLine.class,
              each -> "Both legs make a straight line, so the rope does not load the sling.")
          .on(
              Conflict.WorkingLegUp.class,
              each -> "The working leg points up, but that is the leg you hang on.")
          .on(Conflict.SlingElsewhere.class, ConflictWords::slingElsewhere)
          .on(
              Conflict.LimbThickerThanStem.class,
              each -> "The limb is thicker than the stem that bears it.")
          .on(
              Conflict.SoundAndFaulty.class,
              each -> "You called the union sound, and you named a fault.")
          .on(
              Conflict.DecayWithoutExtent.class,
              each -> "The union is decayed, so say how much of the limb is gone, as a cavity.")
          .on(Conflict.LegAwayFromSling.class, ConflictWords::legAwayFromSling)
          .on(
              Conflict.SeatedButOut.class,
              each -> "A sling that is seated at the union does not hang out on the limb.")
          .on(
              Conflict.OutBeyondLimb.class,
              each -> "The sling is farther out than the limb is long.")
          .on(
              Conflict.BothPartsOfStationaryRope.class,
              each -> "A stationary rope has a single part, both parts cannot be captured.")
          .on(
              Conflict.SlackWithoutLengths.class,
              each -> "Where there is slack I need the length of both legs.")
          .on(
              Conflict.ThickEndThinnerThanLimb.class,
              each -> "The thick end is thinner than the limb under the sling.")
          .on(
              Conflict.ShapeOfNoCavity.class,
              each -> "You said where the cavity lies, but there is none.")
          .on(Conflict.NotOfThisHitch.class, wrong -> notOfThisHitch(wrong.slot()))
          .on(
              Conflict.ConnectorOverBark.class,
              each -> "The rope runs over bark, so there is no connector.")
          .on(Conflict.MovingRopeFromBase.class, each -> "A moving rope has no base anchor.")
          .on(
              Conflict.AnchorLegWithoutLength.class,
              each -> "With a base anchor I need the length of the anchor leg.")
          .on(Conflict.SharedLegTurns.class, ConflictWords::sharedLegTurns)
          .on(Conflict.SharedLegLengths.class, ConflictWords::sharedLegLengths)
          .all();

  private ConflictWords() {}

  static String of(Conflict conflict) {
    return WORDS.make(conflict);
  }

  private static String outOfRange(Conflict.OutOfRange offence) {
    Slot slot = offence.slot();
    Range range = offence.range();
    UnitSystem units = offence.said();
    String most = limit(slot, range.high(), range.unit(), units, Round.DOWN);
    String taken =
        range.low() == 0
            ? "I take at most " + most
            : "I take " + limit(slot, range.low(), range.unit(), units, Round.UP) + " to " + most;
    String said = exact(slot, offence.value(), range.unit(), units);
    return sentence(SlotWords.name(slot) + " cannot be " + said, taken);
  }

  private static String exact(Slot slot, double value, Range.Unit unit, UnitSystem units) {
    return switch (unit) {
      case KILOGRAM -> Amounts.weight(new Value.Weight(Mass.ofKilograms(value), units));
      case NEWTON -> Amounts.rating(new Value.Rating(Force.ofNewtons(value), units));
      case DEGREE -> slope(slot, value);
      case METRE -> {
        Value.Distance distance = new Value.Distance(Length.ofMetres(value), units);
        yield switch (slot) {
          case LIMB_DIAMETER, THICK_END, STEM_DIAMETER -> Amounts.diameter(distance);
          case SLING_THICKNESS -> Amounts.thickness(distance);
          default -> Amounts.distance(distance);
        };
      }
    };
  }

  private static String limit(
      Slot slot, double value, Range.Unit unit, UnitSystem units, Round round) {
    return switch (unit) {
      case KILOGRAM -> Amounts.weight(Mass.ofKilograms(value), units, round);
      case NEWTON -> Amounts.force(value, units, round);
      case DEGREE -> slope(slot, value);
      case METRE -> {
        Length length = Length.ofMetres(value);
        yield switch (slot) {
          case LIMB_DIAMETER, THICK_END, STEM_DIAMETER -> Amounts.diameter(length, units, round);
          case SLING_THICKNESS -> Amounts.thickness(length, units, round);
          default -> Amounts.distance(length, units, round);
        };
      }
    };
  }

  private static String slope(Slot slot, double degrees) {
    String size = Amounts.degrees(Math.abs(degrees));
    if (slot != Slot.LIMB_RISE) {
      return size;
    }
    return size + (degrees < 0 ? " down" : " up");
  }

  private static String anglesDisagree(Conflict.AnglesDisagree disagree) {
    return sentence(
        source(disagree.one()) + " an inside angle of " + whole(disagree.first()),
        "but " + source(disagree.other()) + " " + whole(disagree.second()));
  }

  private static String legAwayFromSling(Conflict.LegAwayFromSling away) {
    return sentence(
        SlotWords.name(away.leg())
            + " and sling are "
            + whole(away.apart())
            + " apart as you said them",
        "with that inside angle they would be about " + whole(away.halfInside()));
  }

  private static String notOfThisHitch(Slot slot) {
    return switch (slot) {
      case WRAPS -> "A girth hitch goes around the limb once.";
      case CHOKE_ANGLE -> "A basket has no choke angle.";
      case BASKET_ANGLE -> "Only a basket has a basket angle.";
      default -> sentence(SlotWords.name(slot) + " does not go with the sling's hitch");
    };
  }

  private static String sharedLegTurns(Conflict.SharedLegTurns shared) {
    return text(
        oneLeg(shared.nearer(), shared.farther()),
        sentence(
            "from " + Places.name(shared.nearer()) + " you said " + slope(shared.elevation()),
            "from " + Places.name(shared.farther()) + " " + slope(shared.elevationBack())));
  }

  private static String sharedLegLengths(Conflict.SharedLegLengths shared) {
    return text(
        oneLeg(shared.nearer(), shared.farther()),
        sentence(
            "you said "
                + Amounts.distance(shared.one())
                + " and "
                + Amounts.distance(shared.other())));
  }

  private static String oneLeg(Place nearer, Place farther) {
    return sentence(
        "the working leg of "
            + Places.name(nearer)
            + " is the anchor leg of "
            + Places.name(farther));
  }

  private static String slope(Angle elevation) {
    double degrees = Math.rint(elevation.degrees());
    if (degrees == 0) {
      return "level";
    }
    return (degrees < 0 ? "down " : "up ") + Amounts.degrees(Math.abs(degrees));
  }

  private static String source(Slot slot) {
    return switch (slot) {
      case ANCHOR_LEG, WORKING_LEG -> "the legs make";
      case BEND -> "the bend makes";
      default -> "you said";
    };
  }

  private static String whole(Angle angle) {
    return Amounts.degrees(Math.rint(angle.degrees()));
  }

  private static String slingElsewhere(Conflict.SlingElsewhere elsewhere) {
    String pull = Pointing.close(elsewhere.pullElevation(), elsewhere.pullBearing());
    String said = Pointing.close(elsewhere.saidElevation(), elsewhere.saidBearing());
    return sentence(
        "the sling should point " + pull, "you said " + said, whole(elsewhere.apart()) + " away");
  }
}
