package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rigspeak.dialogue.Detail;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Check;
import rigspeak.verdict.Load;
import rigspeak.verdict.LoadAsSaid;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.PathVerdict.Outcome;
import rigspeak.verdict.Verdict;

/** What stands in and beside a picture: it is read, so numbers are figures. */
public final class PictureWords {
  /** Below this a limb is level, and from its complement on upright; degrees. */
  private static final double LEVEL_DEGREES = 0.5;

  private static final double UPRIGHT_DEGREES = 89.5;

  private static final Form FORM = new Form(Detail.FULL);
  private static final SaidBack SAID_BACK = new SaidBack(Detail.BRIEF);
  private static final VerdictWords VERDICTS = new VerdictWords(FORM, new SaidBack(Detail.FULL));
  private static final NoNumbers NO_NUMBERS = new NoNumbers(FORM);

  private PictureWords() {}

  /* ---- what is looked at ---- */

  /** "Redirect two". */
  public static String title(Place place) {
    String title = Places.title(place);
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }

  public static String fromTheSide() {
    return "From the limb's right";
  }

  public static String fromAbove() {
    return "From above";
  }

  public static String slopeOfTheLoad() {
    return "Slope of the load";
  }

  public static String plumb() {
    return "plumb";
  }

  /* ---- what is drawn ---- */

  /** The limb's diameter, and how it lies. */
  public static List<String> limb(Rig rig) {
    return List.of(
        rig.value(Slot.LIMB_DIAMETER, Value.Distance.class)
            .map(diameter -> "limb " + Figures.diameter(diameter))
            .orElse("limb, diameter not said"),
        rig.value(Slot.LIMB_RISE, Value.Turned.class)
            .map(turned -> rise(turned.angle().degrees()))
            .orElse("how it lies not said"));
  }

  private static String rise(double degrees) {
    if (Math.abs(degrees) >= UPRIGHT_DEGREES) {
      return degrees > 0 ? "upright" : "hangs straight down";
    }
    if (Math.abs(degrees) < LEVEL_DEGREES) {
      return "level";
    }
    return (degrees > 0 ? "rises " : "drops ") + Figures.degrees(Math.abs(degrees));
  }

  public static List<String> stem(Rig rig) {
    return List.of(
        rig.value(Slot.STEM_DIAMETER, Value.Distance.class)
            .map(diameter -> "stem " + Figures.diameter(diameter))
            .orElse("stem, diameter not said"));
  }

  /** How far out the sling is. */
  public static List<String> out(Rig rig) {
    return List.of(
        rig.value(Slot.OUT, Value.Distance.class)
            .map(
                out -> out.length().metres() == 0 ? "at the union" : "out " + Figures.distance(out))
            .orElse("how far out not said"));
  }

  public static List<String> union(Rig rig) {
    return List.of(
        rig.said(Slot.UNION)
            .map(said -> SAID_BACK.phrase(Slot.UNION, said))
            .orElse("union not said"));
  }

  /** A sling that hangs at the union, and what that is like. */
  public static List<String> outAndUnion(Rig rig) {
    return under(out(rig).get(0), union(rig));
  }

  /** A leg of the rope, how long it is and where it goes. */
  public static List<String> leg(Slot slot, double elevationDeg, double bearingDeg, Rig rig) {
    String length =
        rig.value(slot, Value.Leg.class)
            .flatMap(Value.Leg::length)
            .map(far -> ", " + Figures.distance(far))
            .orElse("");
    return under(SlotWords.title(slot) + length, Figures.direction(elevationDeg, bearingDeg));
  }

  /** A leg that was said from its other end only: how steep it is, but not to which side. */
  public static List<String> legOfSlope(Slot slot, double elevationDeg) {
    return List.of(SlotWords.title(slot), Figures.slope(elevationDeg), "side not said");
  }

  /** A leg of which only the angle to the other one is known. */
  public static List<String> legOfAngle(Slot slot) {
    return List.of(SlotWords.title(slot), "which way not said");
  }

  /** "Load 270 lb", in the middle of a line. */
  public static String loadSize(Load load, UnitSystem units) {
    return "load " + Figures.force(load.resultantN().nominal(), units);
  }

  /** The load's size and where it points. */
  public static List<String> load(Load load, boolean sideKnown, UnitSystem units) {
    double elevationDeg = load.elevationDeg().nominal();
    return under(
        loadSize(load, units),
        sideKnown
            ? Figures.direction(elevationDeg, load.bearingDeg().nominal())
            : List.of(Figures.slope(elevationDeg), "side not known"));
  }

  private static List<String> under(String first, List<String> rest) {
    List<String> lines = new ArrayList<>(List.of(first));
    lines.addAll(rest);
    return lines;
  }

  /** How the picture is to be read. */
  public static String key(Rig rig, Optional<LoadAsSaid> loaded) {
    boolean guessed =
        Stream.of(Slot.LIMB_DIAMETER, Slot.LIMB_RISE, Slot.OUT, Slot.STEM_DIAMETER)
            .anyMatch(slot -> !rig.has(slot));
    boolean spread =
        loaded
            .map(LoadAsSaid::load)
            .filter(load -> load.elevationDeg().high() > load.elevationDeg().low())
            .isPresent();
    return text(
        "Limb, stem and distance out are to scale, sling and rope are not.",
        spread ? "Shaded: where the load may point." : "",
        guessed ? "Broken outline: not said, drawn as a guess." : "");
  }

  /* ---- what comes of it ---- */

  /** What the load does to the limb. */
  public static String loadClass(Load load) {
    String side = load.sideN().nominal() > 0 ? "left" : "right";
    return switch (load.loadClass()) {
      case NONE -> "Both legs cancel: no load on the sling.";
      case INTO_UNION -> "Presses the limb into the union.";
      case PULL -> "Pulls the limb away from the union.";
      case LEVER -> "Levers the limb down.";
      case LIFT -> "Lifts the limb.";
      case SIDE -> "Pulls the limb to its " + side + ".";
    };
  }

  /** What comes of this support, as a heading; never better than its rope is. */
  public static String verdict(PathVerdict verdict, Place place) {
    if (place.equals(verdict.asked()) || place.equals(verdict.governing())) {
      PathVerdict itself =
          new PathVerdict(
              verdict.path(), place, verdict.supports(), verdict.losses(), verdict.swing());
      return VERDICTS.head(itself).text();
    }
    String because = "because of " + Places.name(verdict.governing());
    return switch (PathVerdict.outcome(verdict.supports().get(place))) {
      case REFUSE -> "Do not load.";
      case CANNOT_SAY -> "Cannot say. Do not load it yet.";
      case MARGINAL ->
          verdict.outcome() == Outcome.REFUSE
              ? sentence("marginal", "and do not load", because)
              : "Marginal, do not load it yet.";
      case GOOD ->
          switch (verdict.outcome()) {
            case GOOD -> "Good to load, by the numbers you gave.";
            case REFUSE -> sentence("within its limits", "but do not load", because);
            case MARGINAL, CANNOT_SAY ->
                sentence("within its limits", "but do not load yet", because);
          };
    };
  }

  /** The one reason, of this support itself. */
  public static String reason(PathVerdict verdict, Place place) {
    return Cases.<Verdict, String>of(Verdict.class)
        .on(Verdict.Judged.class, PictureWords::reason)
        .on(Verdict.RefusedOutright.class, NO_NUMBERS::refused)
        .on(Verdict.CannotSay.class, NO_NUMBERS::unknown)
        .on(Verdict.WaitsFor.class, NoNumbers::waits)
        .all()
        .make(verdict.supports().get(place));
  }

  private static String reason(Verdict.Judged judged) {
    Check check = judged.governing();
    String subject = CheckWords.subject(check.kind(), judged.rig().said());
    String worst = Figures.percent(check.utilisation().high());
    String asSaid = Figures.percent(check.utilisation().nominal());
    return switch (judged.rating()) {
      case GOOD -> sentence("closest to its limit is " + subject, "at worst " + worst + " of it");
      case MARGINAL ->
          sentence(
              "it holds as you said it",
              "but at worst " + subject + " takes " + worst + " of its limit");
      case REFUSE ->
          sentence("even as you said it", subject + " takes " + asSaid + " of its limit");
    };
  }

  /** What a picture shows, for whoever cannot see it. */
  public static String description(
      Place place, Rig rig, Optional<LoadAsSaid> loaded, Optional<PathVerdict> verdict) {
    List<String> parts = new ArrayList<>();
    String load =
        loaded
            .map(LoadAsSaid::load)
            .map(each -> String.join(", ", load(each, true, units(rig))) + ". " + loadClass(each))
            .orElse("the load is not known yet.");
    parts.add(sentence(Places.title(place), "from the side and from above"));
    List<String> wood = new ArrayList<>(limb(rig));
    wood.addAll(out(rig));
    wood.addAll(union(rig));
    parts.add(sentence(wood.toArray(String[]::new)));
    parts.add(load.substring(0, 1).toUpperCase(Locale.ROOT) + load.substring(1));
    verdict.ifPresent(each -> parts.add(text(verdict(each, place), reason(each, place))));
    return text(parts);
  }

  /** The units that the climber speaks in. */
  public static UnitSystem units(Rig rig) {
    return rig.value(Slot.ALL_UP, Value.Weight.class)
        .map(Value.Weight::said)
        .or(() -> rig.value(Slot.LIMB_DIAMETER, Value.Distance.class).map(Value.Distance::said))
        .or(() -> rig.value(Slot.OUT, Value.Distance.class).map(Value.Distance::said))
        .orElse(UnitSystem.INCH_POUND);
  }
}
