package rigspeak.answer;

import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Measure;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Remedy;

/** What would make a support good, and what is worth measuring. */
final class RemedyWords {
  private RemedyWords() {}

  static String of(Remedy remedy, Rig said) {
    return Cases.<Remedy, String>of(Remedy.class)
        .on(Remedy.Wraps.class, wraps -> "take " + SaidBack.wraps(wraps.turns()))
        .on(Remedy.Choke.class, choke -> "choke the sling with " + SaidBack.wraps(choke.turns()))
        .on(Remedy.Basket.class, basket -> "hang the sling as a basket")
        .on(
            Remedy.WorkingLeg.class,
            leg -> "lead the working leg " + Pointing.exact(leg.direction()))
        .on(Remedy.WiderAngle.class, RemedyWords::wider)
        .on(
            Remedy.SecondRedirect.class,
            second ->
                "set one more redirect, with the working leg " + Pointing.exact(second.direction()))
        .on(Remedy.StrongerSling.class, sling -> stronger(sling, said))
        .on(
            Remedy.SeatAtTheUnion.class,
            seat -> "move the sling in until it is seated at the union")
        .on(Remedy.NearerTheUnion.class, nearer -> nearer(nearer, said))
        .on(Remedy.ThickerLimb.class, thicker -> thicker(thicker, said))
        .all()
        .make(remedy);
  }

  private static String stronger(Remedy.StrongerSling sling, Rig said) {
    UnitSystem units =
        said.value(Slot.SLING_RATING, Value.Rating.class)
            .map(Value.Rating::said)
            .orElse(units(said, Slot.OUT));
    return "take a sling rated "
        + Amounts.rating(new Value.Rating(sling.rating(), units))
        + " or more";
  }

  private static String nearer(Remedy.NearerTheUnion nearer, Rig said) {
    String most = Amounts.distance(nearer.atMost(), units(said, Slot.OUT), Round.DOWN);
    return most.startsWith("zero ")
        ? "move the sling in to the union"
        : "move the sling in to " + most + " or less from the union";
  }

  private static String thicker(Remedy.ThickerLimb thicker, Rig said) {
    UnitSystem units = units(said, Slot.LIMB_DIAMETER);
    return "choose a limb of " + Amounts.diameter(thicker.atLeast(), units, Round.UP) + " or more";
  }

  private static String wider(Remedy.WiderAngle wider) {
    return "open the inside angle to " + Amounts.degrees(wider.atLeast()) + " or more";
  }

  private static UnitSystem units(Rig said, Slot slot) {
    return said.value(slot, Value.Distance.class)
        .map(Value.Distance::said)
        .orElse(UnitSystem.INCH_POUND);
  }

  static String measured(Measure measure) {
    return switch (measure) {
      case ALL_UP -> "your all up weight";
      case LIMB_DIAMETER -> "the limb's diameter";
      case THICK_END -> "the thick end of the limb";
      case LIMB_RISE -> "how the limb lies";
      case LIMB_LENGTH -> "the limb's length";
      case OUT -> "how far out the sling is";
      case STEM_DIAMETER -> "the stem's diameter";
      case CAVITY -> "the cavity";
      case ANCHOR_LEG_ELEVATION -> "the slope of the anchor leg";
      case ANCHOR_LEG_BEARING -> "the bearing of the anchor leg";
      case WORKING_LEG_ELEVATION -> "the slope of the working leg";
      case WORKING_LEG_BEARING -> "the bearing of the working leg";
      case INSIDE_ANGLE -> "the inside angle";
      case SLING_ELEVATION -> "the slope of the sling";
      case SLING_BEARING -> "the bearing of the sling";
      case ANCHOR_LEG_LENGTH -> "the length of the anchor leg";
      case WORKING_LEG_LENGTH -> "the length of the working leg";
      case SLACK -> "the slack";
      case ROPE_OUT -> "the length of the rope";
      case STEM_CLEAR -> "how far the stem is";
      case CHOKE_ANGLE -> "the choke angle";
      case SLING_THICKNESS -> "the sling's thickness";
      case BASKET_ANGLE -> "the angle of the basket";
      case BEYOND -> "the friction nearer to you";
      case BASE_LEG_ELEVATION, BASE_LEG_RATIO -> "the pull of the leg to the base";
      case ROPE_FRICTION -> "the friction of the rope";
      case BARK_FRICTION -> "the friction of the bark";
    };
  }
}
