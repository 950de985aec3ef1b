package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import rigspeak.answer.Amounts.Round;
import rigspeak.drill.Asking;
import rigspeak.drill.Change;
import rigspeak.drill.Choice;
import rigspeak.drill.Grounds;
import rigspeak.drill.Matter;
import rigspeak.drill.Question;
import rigspeak.drill.Step;
import rigspeak.drill.Truth;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Rig;
import rigspeak.verdict.Load;

/** Right answers of a drill, and why they are right: one sentence, the number last. */
final class DrillReasons {
  private static final double HALF_TURN = 180;
  private static final double HUNDREDTHS = 100;
  private static final String COUNTED = "what I count on";

  private DrillReasons() {}

  // ---- the answer ----

  static String truth(Question question) {
    if (question.truth() instanceof Truth.Named named) {
      return sentence(
          named.choice() == Choice.GO
              // Whoever hears only this must not take it for a licence.
              ? "go, by these numbers, after a load test from the ground"
              : choice(named.choice()));
    }
    double value = ((Truth.Figure) question.truth()).value();
    return sentence("it is " + number(question.asking(), value));
  }

  static String number(Asking asking, double value) {
    return switch (asking) {
      case INSIDE, BEND, INSIDE_OF_BEND -> Amounts.degrees(Math.rint(Math.abs(value)));
      case FACTOR, MORE -> times(value);
      case WRAPS -> SaidBack.wraps((int) Math.rint(value));
      case DROP, HARD -> feet(value);
      default -> Numbers.whole(Math.round(value));
    };
  }

  static String choice(Choice choice) {
    return switch (choice) {
      case INTO_UNION -> "into the union";
      case PULL -> "pull";
      case LEVER -> "lever";
      case LIFT -> "lift";
      case SIDE -> "side";
      case FIRST -> "the first";
      case SECOND -> "the second";
      case THIRD -> "the third";
      case ALL_RIGHT -> "affirm";
      case SLIDES -> "it slides";
      case HOLDS -> "it holds";
      case TOWARD_STEM -> "toward the stem";
      case TOWARD_TIP -> "toward the tip";
      case LEFT -> "to the left";
      case RIGHT -> "to the right";
      case KEEP -> "keep the lanyard";
      case RELEASE -> "release the lanyard";
      case GO -> "go";
      case REFUSE -> "refuse";
      case NOBODY_CAN_SAY -> "nobody can say";
    };
  }

  private static String times(double value) {
    String words = hundredths(value);
    return switch (words) {
      case "one" -> "once";
      case "two" -> "twice";
      default -> words + " times";
    };
  }

  private static String hundredths(double value) {
    return Numbers.exact(Math.rint(Math.abs(value) * HUNDREDTHS) / HUNDREDTHS);
  }

  private static String feet(double value) {
    String words = Numbers.exact(Math.rint(Math.abs(value) * 2) / 2);
    return words + (words.equals("one") ? " foot" : " feet");
  }

  // ---- why ----

  static String reason(Question question) {
    return Cases.<Grounds, String>of(Grounds.class)
        .on(Grounds.OfLoad.class, of -> load(question.asking(), of.load()))
        .on(Grounds.OfLoads.class, DrillReasons::loads)
        .on(Grounds.OfUnions.class, unions -> unions(question.asking(), unions))
        .on(Grounds.OfGrip.class, DrillReasons::grip)
        .on(Grounds.OfFall.class, fall -> fall(question.asking(), fall))
        .on(
            Grounds.OfCheck.class,
            check ->
                sentence(
                    CheckWords.subject(check.kind(), Rig.empty())
                        + " takes "
                        + Amounts.shareOf(check.share(), COUNTED)))
        .on(Grounds.Outright.class, outright -> NoNumbers.reason(outright.refusal()))
        .on(
            Grounds.Unsaid.class,
            unsaid ->
                sentence(
                    "nobody has said "
                        + list(
                            unsaid.slots().stream()
                                .limit(Sentences.MOST_ITEMS)
                                .map(SlotWords::name)
                                .toList())))
        .on(Grounds.Itself.class, itself -> itself(question))
        .all()
        .make(question.grounds());
  }

  private static String load(Asking asking, Load load) {
    double inside = load.insideDeg().map(angle -> angle.nominal()).orElse(0.0);
    return switch (asking) {
      case INSIDE ->
          sentence(
              "straight on would be one eight zero",
              "and the rope bends by " + whole(HALF_TURN - inside));
      case BEND, INSIDE_OF_BEND ->
          sentence(
              "bend and inside angle add up to one eight zero",
              "here " + whole(inside) + " inside and " + whole(HALF_TURN - inside) + " of bend");
      case FACTOR ->
          sentence(
              "half of the inside angle is " + half(inside),
              "and the sling takes twice its cosine");
      default ->
          sentence(
              "half way between its legs the load points "
                  + Pointing.about(load.elevationDeg().nominal(), load.bearingDeg().nominal()));
    };
  }

  private static String whole(double degrees) {
    return Numbers.whole(Math.round(degrees));
  }

  private static String half(double inside) {
    return Numbers.exact(Math.rint(inside) / 2);
  }

  private static String loads(Grounds.OfLoads loads) {
    return sentence(
        "the first loads it " + factor(loads.first()), "the second " + factor(loads.second()));
  }

  private static String factor(Load load) {
    return times(load.angleFactor().map(f -> f.nominal()).orElse(0.0));
  }

  private static String unions(Asking asking, Grounds.OfUnions unions) {
    boolean before = asking == Asking.MORE;
    return sentence(
        (before ? "before the change the limb at the union takes " : "the first takes ")
            + Amounts.shareOf(unions.first(), COUNTED),
        (before ? "after it " : "the second ") + Amounts.shareOf(unions.second(), "it"));
  }

  private static String grip(Grounds.OfGrip grip) {
    return sentence(
        "it is pushed along by " + Amounts.force(grip.pushN(), UnitSystem.INCH_POUND, Round.UP),
        "and the grip as said is "
            + Amounts.force(grip.heldN(), UnitSystem.INCH_POUND, Round.DOWN));
  }

  private static String fall(Asking asking, Grounds.OfFall fall) {
    return switch (asking) {
      case DROP ->
          sentence(
              "of that you fall free, before the rope is taut, "
                  + feet(Length.ofMetres(fall.slackM()).feet()));
      case HARD ->
          sentence(
              "you swing through the lowest point as fast as after such a fall, having dropped "
                  + feet(Length.ofMetres(fall.dropM()).feet()));
      default -> sentence("you swing in under the main point", Pointing.along(fall.bearingDeg()));
    };
  }

  private static String itself(Question question) {
    return switch (question.asking()) {
      case COMES_FIRST -> before((Matter.Steps) question.matter());
      case LANYARD ->
          "The lanyard stays until the check says good to load, and the rope is loaded.";
      case READ_BACK -> readBack((Matter.TwoRigs) question.matter());
      default -> "A teen ends in its digit, a ten in zero.";
    };
  }

  private static String before(Matter.Steps steps) {
    return steps.named().contains(Step.CLIP_IN)
        ? "Nothing is set, moved, taken off or loaded before the lanyard is clipped in."
        : "The lanyard is released last, after a good check and with the rope loaded.";
  }

  private static String readBack(Matter.TwoRigs plan) {
    for (int i = 0; i < plan.first().size(); i++) {
      Change planned = plan.first().get(i);
      Change heard = plan.second().get(i);
      if (!planned.equals(heard)) {
        return text(
            DrillQuestions.said("planned, ", planned), DrillQuestions.said("read back, ", heard));
      }
    }
    return "All three were read back as planned.";
  }

  // ---- at more length ----

  static String explanation(Asking asking) {
    return switch (asking) {
      case WHERE ->
          text(
              "With the same pull in both legs the load halves the angle between them.",
              "Along the limb toward the stem it goes into the union, away from it, it pulls.",
              "Square to the limb it levers down or lifts up, and to left or right it is side load.");
      case INSIDE ->
          text(
              "Point one arm along each leg and take the angle between your arms.",
              "In one plane, a leg up six zero toward the stem and one straight down make one five"
                  + " zero.");
      case BEND, INSIDE_OF_BEND, PULLS_MORE ->
          text(
              "The inside angle is between the legs, the bend is how far the rope turns.",
              "They add up to one eight zero.",
              "A small inside angle is a big bend, and a big load.");
      case FACTOR ->
          text(
              "Inside one two zero the sling takes the pull once.",
              "Inside nine zero one point four one times, inside six zero one point seven three"
                  + " times.",
              "With both legs together it takes twice.");
      case STRONGER ->
          text(
              "A limb holds by the cube of its diameter, one inch on eight is nearly half as much"
                  + " again.",
              "A union holds less the nearer the limb comes to its stem in size.");
      case MORE ->
          text(
              "What bends the limb is the load times its distance from the union.",
              "What the limb takes goes with the cube of its diameter.");
      case SLIDE, WRAPS ->
          text(
              "The steeper the limb, the more of the load pushes the sling along.",
              "Rough bark and more wraps hold more, wet bark less.",
              "I count the least friction that may be true.");
      case DROP, WAY, HARD ->
          text(
              "If the redirect lets go, its two legs become one rope from the main point.",
              "You fall until that is taut, then you swing in under the main point.",
              "How hard depends on how far down you come.");
      case COMES_FIRST, LANYARD ->
          text(
              "Clip in before you set, move, take off or load.",
              "Release only after a good check, with the rope loaded.");
      case READ_BACK -> "Hold each item against the plan as you hear it, the number and the unit.";
      case DIGITS ->
          "Thirteen is one three, thirty is three zero. In digits they never sound alike.";
      case GO_OR_REFUSE ->
          text(
              "Refuse what is over a limit, and dead wood, a cracked union, a connector over an"
                  + " edge.",
              "Where something that counts has not been said, nobody can say.",
              "A thicker limb and a shorter way out turn refuse into go.");
    };
  }
}
