package rigspeak.drill;

import static rigspeak.drill.Changes.LEFT;
import static rigspeak.drill.Changes.RIGHT;
import static rigspeak.drill.Changes.STEM;
import static rigspeak.drill.Changes.TIP;
import static rigspeak.drill.Changes.degrees;
import static rigspeak.drill.Changes.feet;
import static rigspeak.drill.Changes.inches;
import static rigspeak.drill.Changes.leg;
import static rigspeak.drill.Changes.word;

import java.util.ArrayList;
import java.util.List;
import rigspeak.drill.Generator.Wanted;
import rigspeak.drill.Matter.Loading;
import rigspeak.drill.Matter.OneRig;
import rigspeak.drill.Matter.TwoRigs;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.PathVerdict.Outcome;

/** Draws what a question is about: rounder and in one plane at first, then any. */
final class Situations {
  private static final List<Step> AFTER_CLIPPING_IN =
      List.of(Step.SET, Step.MOVE, Step.TAKE_OFF, Step.LOAD);

  private static final List<Integer> NUMBERS_WITH_TWINS =
      List.of(13, 14, 15, 16, 17, 18, 19, 30, 40, 50, 60, 70, 80, 90);

  Matter matter(Skill skill, Level level, Wanted wanted, Lots lots) {
    return switch (skill) {
      case TEENS_AND_TENS -> new OneRig(List.of(withTwin(level, lots)), List.of());
      case INSIDE_ANGLE -> new OneRig(legs(level, wanted, lots), List.of());
      case BEND_OR_INSIDE -> bendOrInside(level, wanted, lots);
      case ANGLE_FACTOR -> factor(level, lots);
      case WHERE_IT_GOES -> where(level, wanted, lots);
      case READ_BACK -> readBack(wanted, lots);
      case CHANGE_OVER -> changeOver(wanted, lots);
      case WHICH_UNION -> unions(level, lots);
      case INCH_OR_FOOT -> inchOrFoot(level, lots);
      case WILL_IT_SLIDE -> slide(level, lots, List.of(Changes.wraps(lots.stepped(1, 4, 1))));
      case HOW_MANY_WRAPS -> slide(level, lots, List.of());
      case IF_IT_LETS_GO -> fall(level, lots);
      case TOO_LITTLE_KNOWN, REFUSE_OR_GO -> goOrRefuse(level, wanted, lots);
    };
  }

  private static int step(Level level) {
    return level.of(30, 15, 5);
  }

  private static int hour(Level level, Lots lots) {
    return switch (level) {
      case FIRST -> lots.of(TIP, RIGHT, STEM, LEFT);
      case SECOND, THIRD -> lots.stepped(1, 12, 1);
    };
  }

  // ---- angles ----

  private static Change withTwin(Level level, Lots lots) {
    int number = lots.of(NUMBERS_WITH_TWINS);
    return switch (level) {
      case FIRST -> degrees(Slot.LIMB_RISE, number);
      case SECOND -> degrees(lots.of(Slot.LIMB_RISE, Slot.INSIDE_ANGLE), number);
      case THIRD ->
          lots.below(3) == 0
              ? feet(Slot.STEM_CLEAR, number)
              : degrees(lots.of(Slot.LIMB_RISE, Slot.INSIDE_ANGLE, Slot.BEND), number);
    };
  }

  /** In the plane of the limb at first. */
  private static List<Change> legs(Level level, Wanted wanted, Lots lots) {
    int step = step(level);
    boolean plane = level != Level.THIRD;
    Change anchor =
        leg(
            Slot.ANCHOR_LEG,
            lots.stepped(plane ? 0 : -30, 90 - step, step),
            plane ? STEM : hour(level, lots));
    Change working =
        leg(
            Slot.WORKING_LEG,
            -lots.stepped(plane ? 30 : 20, 90, step),
            plane ? lots.of(TIP, STEM) : hour(level, lots));
    return List.of(
        anchor, wanted.is(Choice.NOBODY_CAN_SAY) ? Change.unsaid(Slot.WORKING_LEG) : working);
  }

  /** The angle and where the sling points, instead of two legs. */
  private static List<Change> angleInstead(double slingDown) {
    return List.of(
        Change.unsaid(Slot.ANCHOR_LEG),
        Change.unsaid(Slot.WORKING_LEG),
        Changes.slingPoints(-slingDown, STEM));
  }

  private static Change angle(Slot slot, Level level, Lots lots) {
    int step = level.of(30, 10, 5);
    return degrees(slot, lots.stepped(level.of(30, 20, 10), level.of(150, 160, 170), step));
  }

  private static Matter bendOrInside(Level level, Wanted wanted, Lots lots) {
    return switch (wanted.asking()) {
      case BEND -> new OneRig(List.of(angle(Slot.INSIDE_ANGLE, level, lots)), angleInstead(90));
      case INSIDE_OF_BEND -> new OneRig(List.of(angle(Slot.BEND, level, lots)), angleInstead(90));
      default ->
          new TwoRigs(
              List.of(angle(Slot.INSIDE_ANGLE, level, lots)),
              List.of(angle(Slot.BEND, level, lots)),
              angleInstead(90));
    };
  }

  private static Matter factor(Level level, Lots lots) {
    return switch (level) {
      case FIRST -> new OneRig(List.of(angle(Slot.INSIDE_ANGLE, level, lots)), angleInstead(90));
      case SECOND ->
          new OneRig(
              List.of(angle(lots.of(Slot.INSIDE_ANGLE, Slot.BEND), level, lots)), angleInstead(90));
      case THIRD ->
          new OneRig(
              List.of(
                  leg(Slot.ANCHOR_LEG, lots.stepped(0, 80, 10), STEM),
                  leg(Slot.WORKING_LEG, -lots.stepped(30, 90, 10), lots.of(TIP, STEM))),
              List.of());
    };
  }

  private static Matter where(Level level, Wanted wanted, Lots lots) {
    int step = step(level);
    Change limb = degrees(Slot.LIMB_RISE, lots.stepped(level == Level.FIRST ? 0 : -30, 90, step));
    Change anchor =
        leg(
            Slot.ANCHOR_LEG,
            lots.stepped(level == Level.FIRST ? 0 : -30, 75, step),
            hour(level, lots));
    Change working = leg(Slot.WORKING_LEG, -lots.stepped(0, 90, step), hour(level, lots));
    return new OneRig(
        List.of(
            limb,
            anchor,
            wanted.is(Choice.NOBODY_CAN_SAY) ? Change.unsaid(Slot.WORKING_LEG) : working),
        List.of());
  }

  // ---- the plan and the lanyard ----

  private static Matter readBack(Wanted wanted, Lots lots) {
    List<Slot> slots =
        new ArrayList<>(
            List.of(Slot.LIMB_DIAMETER, Slot.OUT, Slot.WRAPS, Slot.LIMB_RISE, Slot.BARK));
    List<Change> plan = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      plan.add(item(slots.remove(lots.below(slots.size())), lots));
    }
    List<Change> heard = new ArrayList<>(plan);
    int wrong = List.of(Choice.FIRST, Choice.SECOND, Choice.THIRD).indexOf(wanted.choice().get());
    if (wrong >= 0) {
      heard.set(wrong, item(plan.get(wrong).slot(), lots));
    }
    return new TwoRigs(plan, heard, List.of());
  }

  private static Change item(Slot slot, Lots lots) {
    return switch (slot) {
      case LIMB_DIAMETER -> inches(slot, lots.stepped(5, 12, 1));
      case OUT -> feet(slot, lots.stepped(1, 9, 1));
      case WRAPS -> Changes.wraps(lots.stepped(1, 5, 1));
      case LIMB_RISE -> degrees(slot, lots.of(NUMBERS_WITH_TWINS));
      default -> word(slot, lots.of(Value.Bark.values()));
    };
  }

  private static Matter changeOver(Wanted wanted, Lots lots) {
    if (wanted.asking() == Asking.LANYARD) {
      return new Matter.Lanyard(lots.of(Outcome.values()), lots.of(Loading.values()));
    }
    List<Step> named = new ArrayList<>();
    if (lots.below(3) == 0) {
      named.add(lots.of(Step.CHECK, Step.LOAD));
      named.add(lots.below(2), Step.RELEASE);
    } else {
      named.add(lots.of(AFTER_CLIPPING_IN));
      if (wanted.is(Choice.THIRD) || lots.below(2) == 0) {
        named.add(lots.below(2), Step.RELEASE);
      }
      named.add(lots.below(named.size() + 1), Step.CLIP_IN);
    }
    return new Matter.Steps(named);
  }

  // ---- limbs and unions ----

  private static Matter unions(Level level, Lots lots) {
    return new TwoRigs(union(level, lots), union(level, lots), List.of(feet(Slot.OUT, 3)));
  }

  private static List<Change> union(Level level, Lots lots) {
    int limb = lots.stepped(5, 11, 1);
    List<Change> union = new ArrayList<>();
    union.add(inches(Slot.LIMB_DIAMETER, limb));
    union.add(inches(Slot.STEM_DIAMETER, limb + lots.stepped(level.of(2, 1, 0), 14, 1)));
    if (level != Level.FIRST && lots.below(3) == 0) {
      union.add(
          word(
              Slot.UNION,
              lots.of(
                  Value.Union.of(Value.UnionCondition.SOUND, Value.UnionCondition.CODOMINANT),
                  Value.Union.of(Value.UnionCondition.INCLUDED_BARK))));
      if (!((Value.Union) union.get(2).said().orElseThrow().value())
          .has(Value.UnionCondition.SOUND)) {
        union.add(word(Slot.CAVITY, new Value.Share(0)));
      }
    }
    return union;
  }

  private static Matter inchOrFoot(Level level, Lots lots) {
    int limb = lots.stepped(4, level.of(8, 10, 12), 1);
    int out = lots.stepped(2, level.of(6, 8, 10), 1);
    List<Change> before = List.of(inches(Slot.LIMB_DIAMETER, limb), feet(Slot.OUT, out));
    int inches = level == Level.THIRD ? lots.of(1, 2, -1) : 1;
    int feet = level == Level.THIRD ? lots.of(-1, -2, 1) : -1;
    List<Change> after =
        lots.below(2) == 0
            ? List.of(inches(Slot.LIMB_DIAMETER, limb + inches), before.get(1))
            : List.of(before.get(0), feet(Slot.OUT, Math.max(1, out + feet)));
    List<Change> beside = new ArrayList<>(angleInstead(90));
    beside.add(degrees(Slot.INSIDE_ANGLE, 120));
    beside.add(inches(Slot.STEM_DIAMETER, 30));
    return new TwoRigs(before, after, beside);
  }

  // ---- the sling ----

  /** The sling hangs free and points straight down, so the slope alone pushes it along. */
  private static Matter slide(Level level, Lots lots, List<Change> wraps) {
    int rise = lots.stepped(5, 60, 5) * (level == Level.FIRST ? 1 : lots.of(1, -1));
    List<Change> told =
        new ArrayList<>(
            List.of(degrees(Slot.LIMB_RISE, rise), word(Slot.BARK, lots.of(Value.Bark.values()))));
    told.addAll(wraps);
    List<Change> beside = new ArrayList<>(angleInstead(90));
    beside.add(degrees(Slot.INSIDE_ANGLE, 120));
    beside.add(word(Slot.SEAT, Value.Seat.FREE));
    return new OneRig(told, beside);
  }

  private static Matter fall(Level level, Lots lots) {
    int step = step(level);
    int lengths = level.of(10, 5, 1);
    Change anchor =
        leg(
            Slot.ANCHOR_LEG,
            lots.stepped(level.of(30, 15, 10), level.of(60, 75, 80), step),
            hour(level, lots),
            lots.stepped(10, 30, lengths));
    Change working =
        level == Level.FIRST
            ? leg(Slot.WORKING_LEG, -90, TIP, lots.stepped(10, 30, lengths))
            : leg(
                Slot.WORKING_LEG,
                -lots.stepped(45, 90, step),
                hour(level, lots),
                lots.stepped(10, 30, lengths));
    return new OneRig(List.of(anchor, working), List.of());
  }

  // ---- go or refuse ----

  private static Matter goOrRefuse(Level level, Wanted wanted, Lots lots) {
    List<Change> told = new ArrayList<>();
    boolean go = wanted.is(Choice.GO);
    told.add(inches(Slot.LIMB_DIAMETER, lots.stepped(go ? 7 : 3, go ? 12 : 8, 1)));
    told.add(feet(Slot.OUT, lots.stepped(1, go ? 3 : 10, 1)));
    if (wanted.is(Choice.NOBODY_CAN_SAY)) {
      told.add(Change.unsaid(lots.of(Slot.UNION, Slot.WOOD, Slot.STEM_DIAMETER, Slot.WORKING_LEG)));
    } else if (wanted.is(Choice.REFUSE) && lots.below(3) == 0) {
      told.add(fault(lots));
    } else if (level != Level.FIRST) {
      told.add(degrees(Slot.LIMB_RISE, lots.stepped(-30, 60, 15)));
    }
    return new OneRig(told, List.of());
  }

  private static Change fault(Lots lots) {
    return lots.of(
        word(Slot.WOOD, Value.Wood.DEAD),
        word(Slot.UNION, Value.Union.of(Value.UnionCondition.CRACKED)),
        word(Slot.CONNECTOR_LIES, Value.ConnectorLies.OVER_EDGE));
  }
}
