package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import rigspeak.answer.Amounts.Round;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Slot;
import rigspeak.verdict.Loss;
import rigspeak.verdict.Obstacle;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Swing;

/** What a climber needs to know of a fall: how far, which way, into what, how hard. */
final class LossWords {
  /** A swing or fall below this is a step, metres. */
  private static final double NOTHING_M = 0.05;

  private final Detail detail;

  LossWords(Detail detail) {
    this.detail = detail;
  }

  String letsGo(Reply.LetsGo reply) {
    String which = Places.name(reply.place());
    return Cases.<Loss, String>of(Loss.class)
        .on(
            Loss.NothingElseHolds.class,
            nothing -> sentence("if " + which + " lets go", "nothing holds you but your lanyard"))
        .on(Loss.NotKnown.class, LossWords::notKnown)
        .on(Loss.Falls.class, falls -> falls(which, falls, reply.units()))
        .all()
        .make(reply.loss());
  }

  private static String notKnown(Loss.NotKnown unknown) {
    String legs = list(unknown.legs().stream().map(LossWords::leg).toList());
    return sentence(
        "I cannot say what happens then",
        "for " + Places.name(unknown.place()) + " I need " + legs + " with its length");
  }

  private static String leg(Slot slot) {
    return SlotWords.name(slot);
  }

  private String falls(String which, Loss.Falls falls, UnitSystem units) {
    String start = "if " + which + " lets go";
    String what =
        falls.dropM().high() < NOTHING_M
            ? sentence(start, "you hardly drop")
            : sentence(start, "you drop up to " + distance(falls.dropM(), units));
    return text(
        what,
        or(way(falls), ""),
        obstacle(falls.obstacle(), units),
        left(falls, units),
        "Clip in first.");
  }

  private static String way(Loss.Falls falls) {
    return falls.lowestSpeedMS().high() < NOTHING_M
        ? ""
        : sentence("you swing " + Pointing.along(falls.bearingDeg().nominal()));
  }

  private String obstacle(Obstacle obstacle, UnitSystem units) {
    return Cases.<Obstacle, String>of(Obstacle.class)
        .on(
            Obstacle.NotSaid.class,
            unsaid -> or("What is in the way I do not know, say how far the stem is clear.", ""))
        .on(Obstacle.Clear.class, clear -> or("You do not reach the stem.", "Clear of the stem."))
        .on(Obstacle.Reached.class, reached -> reached(reached, units))
        .all()
        .make(obstacle);
  }

  private static String reached(Obstacle.Reached reached, UnitSystem units) {
    String hit = reached.asSaid() ? "you hit the stem" : "you may hit the stem";
    String fall = Amounts.distance(Length.ofMetres(reached.equivalentFallM()), units, Round.UP);
    return sentence(hit, "up to as hard as a fall of " + fall);
  }

  private String left(Loss.Falls falls, UnitSystem units) {
    String catching = Places.name(falls.catching());
    String peak = Amounts.force(falls.peakN().high(), units, Round.UP);
    String taken = sentence(catching + " catches you", "with up to " + peak + " in the rope");
    String holds =
        falls
            .left()
            .map(
                left ->
                    left.holds()
                        ? "That is within what I count on."
                        : sentence(
                            "its "
                                + weakest(left)
                                + " would take at worst "
                                + Amounts.shareOf(left.utilisation().high(), "what I count on")))
            .orElse("If that holds I cannot say.");
    return text(or(taken, ""), holds);
  }

  private static String weakest(Loss.Left left) {
    return switch (left.kind()) {
      case LIMB_AT_UNION, LIMB_BETWEEN, COLUMN, SHEAR_AT_UNION -> "limb";
      case LIMB_AT_SLING, SHEAR_AT_SLING -> "limb under the sling";
      case STEM_BETWEEN -> "stem";
      case SHELL -> "hollow";
      case SLING -> "sling";
      case SLIP -> "grip of the sling";
      case CONNECTOR -> "connector";
      case ROPE -> "rope";
    };
  }

  String wouldSwing(Reply.WouldSwing reply) {
    Swing swing = reply.swing();
    String angle = Amounts.degrees(Math.rint(swing.offPlumbDeg().nominal()));
    String offset = distance(swing.offsetM(), reply.units());
    String where =
        sentence(
            "you hang " + angle + " off plumb from " + Places.name(swing.from()),
            "up to " + offset + " to the side");
    String speed =
        sentence(
            "a slip swings you through the lowest point up to as fast as a fall of "
                + distance(swing.equivalentFallM(), reply.units()));
    String second =
        swing.callsForSecondAttachment() ? "Common practice is a second attachment here." : "";
    return text(where, or(speed, ""), obstacle(swing.obstacle(), reply.units()), second);
  }

  String swingNotKnown(Reply.SwingNotKnown unknown) {
    return sentence(
        "for your swing I need the working leg of "
            + Places.name(unknown.place())
            + " with its length");
  }

  private static String distance(Spread metres, UnitSystem units) {
    return Amounts.distance(Length.ofMetres(metres.high()), units, Round.UP);
  }

  private String or(String full, String brief) {
    return detail == Detail.FULL ? full : brief;
  }
}
