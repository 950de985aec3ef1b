package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Load;
import rigspeak.verdict.Verdict;

/** Where the load of a support goes, how much it is, and how it comes about. */
final class LoadWords {
  /** A part of the load that is smaller than this share of it is not worth a number. */
  private static final double NOTHING = 0.01;

  private static final double PLUMB_DEGREES = 90;

  private final Form form;

  LoadWords(Form form) {
    this.form = form;
  }

  /** The units that the climber speaks in. */
  static UnitSystem units(Verdict.Judged judged) {
    return judged
        .rig()
        .said()
        .value(Slot.ALL_UP, Value.Weight.class)
        .map(Value.Weight::said)
        .orElse(UnitSystem.INCH_POUND);
  }

  /** What the load of a still climber does to the limb. */
  String of(Verdict.Judged judged) {
    Load load = judged.load();
    String size = Amounts.force(load.resultantN().nominal(), units(judged), Round.UP);
    if (!bearingIsKnown(judged)) {
      return form.or(
          sentence(
              "the load points " + offPlumb(load), "about " + size, "to which side I do not know"),
          sentence(offPlumb(load), size));
    }
    String where = Pointing.about(load.elevationDeg().nominal(), load.bearingDeg().nominal());
    String about = "the load points " + where + ", about " + size;
    String side = load.sideN().nominal() > 0 ? "left" : "right";
    return switch (load.loadClass()) {
      case NONE -> "Both legs cancel, so nothing pulls on the sling.";
      case INTO_UNION ->
          form.or(sentence(about, "mostly into the union"), sentence("into the union", size));
      case PULL ->
          form.or(
              sentence(about, "and pulls the limb away from the union"),
              sentence("pulls outward", size));
      case LEVER ->
          form.or(sentence(about, "and levers the limb down"), sentence("levers down", size));
      case LIFT -> form.or(sentence(about, "and lifts the limb"), sentence("lifts", size));
      case SIDE ->
          form.or(
              sentence(about, "and pulls the limb to its " + side),
              sentence("side load to the " + side, size));
    };
  }

  /** The pull on a support that was not asked about. */
  String pull(Place place, Verdict.Judged judged) {
    Load load = judged.load();
    String most = "at most " + Amounts.force(load.resultantN().high(), units(judged), Round.UP);
    return form.or(
        sentence(Places.name(place) + " is pulled " + offPlumb(load) + ", by " + most),
        sentence(Places.title(place), offPlumb(load), most));
  }

  private static String offPlumb(Load load) {
    double degrees = Math.rint(PLUMB_DEGREES + load.elevationDeg().nominal());
    if (degrees == 0) {
      return "straight down";
    }
    return degrees < PLUMB_DEGREES ? Amounts.degrees(degrees) + " off plumb" : "upward";
  }

  /** A leg that was said only from its other end has a slope here, but no side to go to. */
  private static boolean bearingIsKnown(Verdict.Judged judged) {
    Measure bearing = Measure.WORKING_LEG_BEARING;
    return !judged.rig().has(bearing)
        || judged.rig().measures().get(bearing).how() != HowGot.ASSUMED;
  }

  /** The load along the limb, across it and sideways; the parts are square to one another. */
  String parts(Verdict.Judged judged) {
    if (!bearingIsKnown(judged)) {
      return of(judged);
    }
    Load load = judged.load();
    UnitSystem units = units(judged);
    double all = load.resultantN().nominal();
    return text(
        part("along the limb", load.alongN().nominal(), all, units, "outward", "into the union"),
        part("across it", load.topN().nominal(), all, units, "up", "down"),
        part("sideways", load.sideN().nominal(), all, units, "to the left", "to the right"));
  }

  private static String part(
      String where,
      double newtons,
      double all,
      UnitSystem units,
      String positive,
      String negative) {
    double size = Math.abs(newtons);
    if (size <= NOTHING * all) {
      return sentence(where, "nothing");
    }
    String force = Amounts.force(size, units, Round.UP);
    return sentence(where, force + " " + (newtons > 0 ? positive : negative));
  }

  /** What the turn of the rope and movement make of its pull. */
  String turn(Load load) {
    String movement = "counted " + Amounts.times(load.peakFactor().nominal()) + " for movement";
    if (load.insideDeg().isEmpty() || load.angleFactor().isEmpty()) {
      return sentence(movement);
    }
    double factor = load.angleFactor().get().nominal();
    return sentence(
        "inside angle " + Amounts.degrees(Math.rint(load.insideDeg().get().nominal())),
        "the sling takes " + Amounts.times(factor) + " the pull of the rope",
        movement);
  }
}
