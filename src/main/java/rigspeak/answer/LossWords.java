package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import rigspeak.dialogue.Lanyard;
import rigspeak.dialogue.Reply;
import rigspeak.quantity.Force;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.verdict.Loss;
import rigspeak.verdict.Obstacle;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Swing;

/** What a climber needs to know of a fall: how far, which way, into what, how hard. */
final class LossWords {
  /** A fall below this is a step, metres. */
  private static final double STEP_M = 0.05;

  private static final double HALF_TURN_DEGREES = 180;

  private final Form form;
  private final Numerals numerals;

  LossWords(Form form, Numerals numerals) {
    this.form = form;
    this.numerals = numerals;
  }

  /* ---- a support lets go ---- */

  String letsGo(Reply.LetsGo reply) {
    String start = "if " + Places.name(reply.place()) + " lets go";
    String what =
        Cases.<Loss, String>of(Loss.class)
            .on(
                Loss.NothingElseHolds.class,
                nothing -> sentence(start, "nothing but your lanyard holds you"))
            .on(Loss.NotKnown.class, unknown -> notKnown(start, unknown))
            .on(Loss.Falls.class, falls -> falls(start, falls, reply.units()))
            .all()
            .make(reply.loss());
    return text(what, reply.lanyard() == Lanyard.CLIPPED_IN ? "" : "Clip in first.");
  }

  private String notKnown(String start, Loss.NotKnown unknown) {
    String legs = list(unknown.legs().stream().map(SlotWords::name).toList());
    String lengths = unknown.legs().size() == 1 ? "its length" : "their lengths";
    return text(
        sentence(start, "I cannot say what happens"),
        sentence(
            "for "
                + Places.name(unknown.place())
                + " I need "
                + legs
                + form.or(", ", " ")
                + "with "
                + lengths));
  }

  private String falls(String start, Loss.Falls falls, UnitSystem units) {
    boolean step = falls.dropM().high() < STEP_M;
    return text(
        sentence(
            start,
            step
                ? "you hardly drop"
                : "you drop up to " + numerals.fall(falls.dropM().high(), units)),
        swings(falls) ? way(falls.bearingDeg()) : "",
        swings(falls) ? obstacle(falls.obstacle(), units) : "",
        caught(falls, units));
  }

  /** Faster through the lowest point than after a step. */
  private static boolean swings(Loss.Falls falls) {
    double speed = falls.lowestSpeedMS().high();
    return speed * speed / (2 * Force.STANDARD_GRAVITY) >= STEP_M;
  }

  private static String way(Spread bearingDeg) {
    return bearingDeg.high() - bearingDeg.low() > HALF_TURN_DEGREES
        ? "You swing, which way I cannot say."
        : sentence("you swing " + Pointing.along(bearingDeg.nominal()));
  }

  private String caught(Loss.Falls falls, UnitSystem units) {
    String peak = numerals.force(falls.peakN().high(), units);
    String caught =
        Places.name(falls.catching())
            + " catches you"
            + form.inFull(", with up to " + peak + " in the rope");
    return falls
        .left()
        .map(left -> left(falls.catching(), caught, left))
        .orElseGet(() -> text(sentence(caught), "If it holds I cannot say."));
  }

  private String left(Place catching, String caught, Loss.Left left) {
    if (left.holds()) {
      return sentence(caught, "within what I count on");
    }
    String subject = CheckWords.subject(left.kind(), Rig.empty());
    String takes = numerals.shareOf(left.utilisation().high(), "what I count on");
    return form.or(
        text(sentence(caught), sentence("there " + subject + " takes at worst " + takes)),
        sentence(Places.name(catching) + " takes at worst " + takes));
  }

  /* ---- a slip in the working position ---- */

  String wouldSwing(Reply.WouldSwing reply) {
    Swing swing = reply.swing();
    UnitSystem units = reply.units();
    String angle = numerals.degrees(Math.rint(swing.offPlumbDeg().nominal()));
    String where =
        form.or(
            sentence(
                "you hang " + angle + " off plumb from " + Places.name(swing.from()),
                "up to " + numerals.fall(swing.offsetM().high(), units) + " to the side"),
            sentence(
                angle + " off plumb",
                "up to " + numerals.fall(swing.offsetM().high(), units) + " to the side"));
    boolean step = swing.equivalentFallM().high() < STEP_M;
    String slip =
        step
            ? "If you slip, you hardly swing."
            : sentence(
                form.or("if you slip, you swing as hard as ", "a slip is like ")
                    + "a fall of up to "
                    + numerals.fall(swing.equivalentFallM().high(), units));
    return text(
        where,
        slip,
        step ? "" : obstacle(swing.obstacle(), units),
        swing.callsForSecondAttachment() ? "Common practice here is a second attachment." : "");
  }

  String swingNotKnown(Reply.SwingNotKnown unknown) {
    return sentence(
        "for your swing I need "
            + SlotWords.name(Slot.WORKING_LEG)
            + " of "
            + Places.name(unknown.place()),
        "with its length");
  }

  /* ---- what is in the way ---- */

  private String obstacle(Obstacle obstacle, UnitSystem units) {
    return Cases.<Obstacle, String>of(Obstacle.class)
        .on(
            Obstacle.NotSaid.class,
            unsaid ->
                form.or(
                    "What you would hit I do not know, say stem clear of swing by, and the distance.",
                    "What you would hit I do not know."))
        .on(Obstacle.Clear.class, clear -> "You do not reach the stem.")
        .on(Obstacle.Reached.class, reached -> reached(reached, units))
        .all()
        .make(obstacle);
  }

  private String reached(Obstacle.Reached reached, UnitSystem units) {
    String may = reached.asSaid() ? "you " : "you may ";
    if (reached.equivalentFallM() < STEP_M) {
      return sentence(may + "touch the stem");
    }
    String fall = numerals.fall(reached.equivalentFallM(), units);
    return sentence(may + "hit the stem", "as hard as a fall of up to " + fall);
  }
}
