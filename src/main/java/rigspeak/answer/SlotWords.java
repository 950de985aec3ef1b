package rigspeak.answer;

import java.util.Optional;
import rigspeak.rig.Slot;

/** What each slot is called, how it is asked for, and an example of what can be said of it. */
final class SlotWords {
  private SlotWords() {}

  /** What the slot is called in the middle of a sentence. */
  static String name(Slot slot) {
    return switch (slot) {
      case ALL_UP -> "your all up weight";
      case SPECIES -> "the species";
      case ROPE_SYSTEM -> "moving or stationary rope";
      case ANCHOR -> "base or canopy anchor";
      case WOOD -> "live or dead wood";
      case LIMB_DIAMETER -> "the limb's diameter";
      case LIMB_RISE -> "how the limb lies";
      case LIMB_LENGTH -> "the limb's length";
      case OUT -> "how far out the sling is";
      case STEM_DIAMETER -> "the stem's diameter";
      case UNION -> "the union";
      case CAVITY -> "the cavity";
      case HITCH -> "the sling's hitch";
      case WRAPS -> "the wraps";
      case SEAT -> "the sling's seat";
      case BARK -> "the bark";
      case SLING_RATING -> "the sling's rating";
      case RUNNING_OVER -> "what the rope runs over";
      case CAPTURED -> "the captured parts";
      case ANCHOR_LEG -> "the anchor leg";
      case WORKING_LEG -> "the working leg";
      case INSIDE_ANGLE -> "the inside angle";
      case BEND -> "the bend";
      case SLING_POINTS -> "where the sling points";
      case SLACK -> "the slack";
      case THICK_END -> "the thick end of the limb";
      case CAVITY_SHAPE -> "where the cavity lies";
      case CHOKE_ANGLE -> "the choke angle";
      case BASKET_ANGLE -> "the basket angle";
      case SLING_THICKNESS -> "the sling's thickness";
      case CONNECTOR_LIES -> "how the connector lies";
      case STEM_CLEAR -> "how far the stem is from you";
    };
  }

  /** The word or two before its value. */
  static String title(Slot slot) {
    return switch (slot) {
      case ALL_UP -> "all up";
      case SPECIES -> "species";
      case ROPE_SYSTEM -> "rope";
      case ANCHOR -> "anchor";
      case WOOD -> "wood";
      case LIMB_DIAMETER, LIMB_RISE -> "limb";
      case LIMB_LENGTH -> "limb length";
      case OUT -> "out";
      case STEM_DIAMETER -> "stem";
      case UNION -> "union";
      case CAVITY -> "cavity";
      case HITCH -> "sling";
      case WRAPS -> "wraps";
      case SEAT -> "seat";
      case BARK -> "bark";
      case SLING_RATING -> "sling rated";
      case RUNNING_OVER -> "over";
      case CAPTURED -> "captured";
      case ANCHOR_LEG -> "anchor leg";
      case WORKING_LEG -> "working leg";
      case INSIDE_ANGLE -> "inside angle";
      case BEND -> "bend";
      case SLING_POINTS -> "sling points";
      case SLACK -> "slack";
      case THICK_END -> "thick end";
      case CAVITY_SHAPE -> "cavity";
      case CHOKE_ANGLE -> "choke angle";
      case BASKET_ANGLE -> "basket angle";
      case SLING_THICKNESS -> "sling thickness";
      case CONNECTOR_LIES -> "connector";
      case STEM_CLEAR -> "stem clear of swing";
    };
  }

  /** Asks for it. */
  static String question(Slot slot) {
    return switch (slot) {
      case ALL_UP -> "say your all up weight";
      case SPECIES -> "say the species, or species unknown";
      case ROPE_SYSTEM -> "say moving rope or stationary rope";
      case ANCHOR -> "say base anchor or canopy anchor";
      case WOOD -> "say live wood or dead wood";
      case LIMB_DIAMETER -> "say the limb's diameter";
      case LIMB_RISE -> "say how the limb lies, level, upright, rises or drops";
      case LIMB_LENGTH -> "say the limb's length";
      case OUT -> "say how far out the sling is, or at the union";
      case STEM_DIAMETER -> "say the stem's diameter";
      case UNION -> "say what the union is, sound, codominant, included bark, cracked or decayed";
      case CAVITY -> "say how much of the limb is hollow, or no cavity";
      case HITCH -> "say sling choked, sling basket or sling girth";
      case WRAPS -> "say how many wraps";
      case SEAT -> "say seated on a stub, seated at the union, or sling free";
      case BARK -> "say bark smooth, bark rough or bark wet";
      case SLING_RATING -> "say what the sling is rated";
      case RUNNING_OVER -> "say what the rope runs over, carabiner, ring, pulley or bark";
      case CAPTURED -> "say both parts or single part";
      case ANCHOR_LEG -> "say where the anchor leg goes";
      case WORKING_LEG -> "say where the working leg goes";
      case INSIDE_ANGLE -> "say the inside angle";
      case BEND -> "say the bend";
      case SLING_POINTS -> "say where the sling points";
      case SLACK -> "say the slack, or no slack";
      case THICK_END -> "say thick end, with the diameter at the union";
      case CAVITY_SHAPE -> "say cavity centered, cavity off center or cavity open";
      case CHOKE_ANGLE -> "say the choke angle";
      case BASKET_ANGLE -> "say the basket angle";
      case SLING_THICKNESS -> "say the sling's thickness";
      case CONNECTOR_LIES ->
          "say connector in line, connector cross loaded or connector over an edge";
      case STEM_CLEAR -> "say how far the stem is from you, the way you would swing";
    };
  }

  /** Something that can be said of it, with its name. */
  static String example(Slot slot) {
    return switch (slot) {
      case ALL_UP -> "all up two hundred ten pounds";
      case SPECIES -> "species red oak";
      case ROPE_SYSTEM -> "stationary rope";
      case ANCHOR -> "canopy anchor";
      case WOOD -> "live wood";
      case LIMB_DIAMETER -> "limb eight inches, by tape";
      case LIMB_RISE -> "limb rises three zero degrees";
      case LIMB_LENGTH -> "limb length twelve feet";
      case OUT -> "out four feet, by tape";
      case STEM_DIAMETER -> "stem one four inches, by tape";
      case UNION -> "union sound";
      case CAVITY -> "cavity one third";
      case HITCH -> "sling choked";
      case WRAPS -> "two wraps";
      case SEAT -> "seated on a stub";
      case BARK -> "bark rough";
      case SLING_RATING -> "sling rated five thousand pounds";
      case RUNNING_OVER -> "over ring";
      case CAPTURED -> "single part";
      case ANCHOR_LEG -> "anchor leg up six zero degrees toward the stem";
      case WORKING_LEG -> "working leg straight down";
      case INSIDE_ANGLE -> "inside angle one two zero degrees";
      case BEND -> "bend six zero degrees";
      case SLING_POINTS -> "sling points straight down";
      case SLACK -> "slack two feet, by eye";
      case THICK_END -> "thick end nine inches, by tape";
      case CAVITY_SHAPE -> "cavity centered";
      case CHOKE_ANGLE -> "choke angle one two zero degrees";
      case BASKET_ANGLE -> "basket angle six zero degrees";
      case SLING_THICKNESS -> "sling thickness one inch, by tape";
      case CONNECTOR_LIES -> "connector in line";
      case STEM_CLEAR -> "stem clear of swing by six feet";
    };
  }

  /** The same with its number digit by digit; nothing where no number of two digits is usual. */
  static Optional<String> inDigits(Slot slot) {
    return switch (slot) {
      case ALL_UP -> Optional.of("all up two one zero pounds");
      case LIMB_DIAMETER -> Optional.of("limb one two inches");
      case LIMB_RISE -> Optional.of("limb rises two five degrees");
      case LIMB_LENGTH -> Optional.of("limb length one eight feet");
      case OUT -> Optional.of("out one two feet");
      case STEM_DIAMETER -> Optional.of("stem one four inches");
      case SLING_RATING -> Optional.of("sling rated two two kilonewtons");
      case ANCHOR_LEG -> Optional.of("anchor leg up six five degrees toward the stem");
      case WORKING_LEG -> Optional.of("working leg down seven five degrees toward the tip");
      case INSIDE_ANGLE -> Optional.of("inside angle one two five degrees");
      case BEND -> Optional.of("bend five five degrees");
      case SLING_POINTS -> Optional.of("sling points down four five degrees toward the stem");
      case SLACK -> Optional.of("slack one zero inches");
      case STEM_CLEAR -> Optional.of("stem clear of swing by one two feet");
      case THICK_END -> Optional.of("thick end one two inches");
      case CHOKE_ANGLE -> Optional.of("choke angle one two five degrees");
      case BASKET_ANGLE -> Optional.of("basket angle five five degrees");
      case SLING_THICKNESS -> Optional.of("sling thickness one five millimeters");
      case SPECIES,
          ROPE_SYSTEM,
          ANCHOR,
          WOOD,
          UNION,
          CAVITY,
          CAVITY_SHAPE,
          HITCH,
          WRAPS,
          SEAT,
          BARK,
          RUNNING_OVER,
          CONNECTOR_LIES,
          CAPTURED ->
          Optional.empty();
    };
  }
}
