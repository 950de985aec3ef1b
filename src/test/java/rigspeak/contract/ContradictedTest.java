package rigspeak.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rigspeak.contract.SaidRope.Line;
import rigspeak.dialogue.Reply;
import rigspeak.meaning.Meaning;
import rigspeak.rig.CsvTable;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.verdict.Sieve;

/** Two values for one thing, values that no rig has, and the same number with another unit. */
class ContradictedTest {
  private static final Place REDIRECT = Place.redirectNumber(1);

  /** The anchor leg rises 61 degrees toward the stem, the working leg is plumb: 90 and 61 more. */
  private static final double BETWEEN_THE_LEGS = 151;

  /** By tape the two legs and the angle may each be off by three degrees. */
  private static final double TAPED = 9;

  /** Two values for a slot in one breath: neither is taken, and without it nothing is good. */
  @Test
  void twoValuesInABreath() {
    int tried = 0;
    Map<Slot, Set<String>> others = others(400);
    for (SaidRope rope : Ropes.good().values()) {
      for (Line line : rope.lines()) {
        for (String other : others.getOrDefault(line.slot(), Set.of())) {
          boolean addsUp = line.slot() == Slot.UNION;
          if (other.equals(line.said()) || addsUp || means(other, line.said())) {
            continue;
          }
          Talk talk = Talk.with(Talk.BRIEF).sayAll(rope.without(line.place(), line.slot()));
          talk.turnTo(line.place());
          Talk.Step step = talk.type(line.said() + " " + other);
          assertTrue(
              step.has(Reply.SaidTwice.class) || step.has(Reply.Implausible.class),
              line.said() + " " + other + ": " + step.replies());
          talk.turnTo(rope.last());
          assertNotGood(talk, line.said() + " " + other);
          tried++;
        }
      }
    }
    System.out.println("never wrongly good, two values in a breath: " + tried + " cases");
    assertTrue(tried >= 120, tried + " tried");
  }

  private static boolean means(String one, String other) {
    return Talk.meaning(one, false, Optional.empty())
        .equals(Talk.meaning(other, false, Optional.empty()));
  }

  /** What is said of each slot of other ropes; at most a few for each. */
  private static Map<Slot, Set<String>> others(int ropes) {
    Map<Slot, Set<String>> others = new TreeMap<>();
    Iterator<SaidRope> drawn = Ropes.drawn().iterator();
    for (int i = 0; i < ropes; i++) {
      for (Line line : drawn.next().lines()) {
        Set<String> said = others.computeIfAbsent(line.slot(), slot -> new TreeSet<>());
        if (said.size() < 3) {
          said.add(line.said());
        }
      }
    }
    return others;
  }

  /** Said one after the other the later one stands, aloud; what it makes of the rope is judged. */
  @Test
  void oneValueAfterAnother() {
    int tried = 0;
    int good = 0;
    Map<Slot, Set<String>> others = others(400);
    for (SaidRope rope : Ropes.good().values()) {
      Talk whole = Talk.with(Talk.BRIEF).sayAll(rope);
      whole.type("check redirect");
      for (Line line : rope.lines()) {
        for (String other : others.getOrDefault(line.slot(), Set.of())) {
          for (String way : List.of("", "correction ")) {
            Talk talk = whole.fork();
            talk.turnTo(line.place());
            talk.type(way + other);
            if (!way.isEmpty()) {
              talk.type("affirm");
            }
            talk.turnTo(rope.last());
            tried++;
            if (Sieve.mayBeGood(talk.rope())) {
              good += talk.type("check redirect").good().size();
            }
          }
        }
      }
    }
    System.out.printf(
        "never wrongly good, one value after another: %d cases, %d good by the later one%n",
        tried, good);
    assertTrue(tried >= 250 && good >= 20, tried + " tried, good " + good);
  }

  /** An angle beside two legs between which it does not lie. */
  @Test
  void anAngleThatTheLegsDoNotMake() {
    SaidRope rope = Ropes.good().get("by its legs").without(REDIRECT, Slot.INSIDE_ANGLE);
    int tried = 0;
    for (int angle = 0; angle <= 180; angle++) {
      for (Slot slot : List.of(Slot.INSIDE_ANGLE, Slot.BEND)) {
        double inside = slot == Slot.BEND ? 180 - angle : angle;
        String name = slot == Slot.BEND ? "bend" : "inside angle";
        String said = "%s %d by tape".formatted(name, angle);
        Talk talk = Talk.with(Talk.BRIEF).sayAll(rope.with(REDIRECT, slot, said));
        if (Math.abs(inside - BETWEEN_THE_LEGS) > TAPED + 1) {
          assertNotGood(talk, said);
          tried++;
        }
      }
    }
    System.out.println("never wrongly good, angles beside other legs: " + tried + " cases");
    assertTrue(tried >= 300, tried + " tried");
  }

  /** Beyond the plausible range of a slot, by little and by much. */
  @Test
  void valuesThatNoRigHas() {
    int tried = 0;
    for (CsvTable.Row row : CsvTable.Reader.rows("/rigspeak/catalogue/ranges.csv")) {
      Slot slot = Slot.of(row.text("slot")).orElseThrow();
      for (double factor : new double[] {0.3, 0.9, 1.1, 3}) {
        boolean low = factor < 1;
        double value = factor * Double.parseDouble(row.text(low ? "low" : "high"));
        Optional<String> words = words(slot, row.text("unit"), value);
        if (value <= 0 || words.isEmpty()) {
          continue;
        }
        for (SaidRope rope : Ropes.good().values()) {
          Place place = slot.scope() == Slot.Scope.CLIMB ? Place.MAIN_POINT : REDIRECT;
          Talk talk = Talk.with(Talk.BRIEF).sayAll(rope.with(place, slot, words.get()));
          assertNotGood(talk, words.get());
          tried++;
        }
      }
    }
    System.out.println("never wrongly good, values out of range: " + tried + " cases");
    assertTrue(tried >= 60, tried + " tried");
  }

  /** Nothing where the words of the grammar do not reach so far. */
  private static Optional<String> words(Slot slot, String unit, double value) {
    String number = number(value);
    String words =
        switch (slot) {
          case ALL_UP -> "all up " + number + " kilograms";
          case LIMB_DIAMETER -> "limb " + centimetres(value) + " centimeters";
          case THICK_END -> "thick end " + centimetres(value) + " centimeters";
          case STEM_DIAMETER -> "stem " + centimetres(value) + " centimeters";
          case LIMB_RISE -> "limb rises " + number;
          case LIMB_LENGTH -> "limb length " + number + " meters";
          case OUT -> "out " + number + " meters";
          case SLACK -> "slack " + number + " meters";
          case STEM_CLEAR -> "stem clear by " + number + " meters";
          case SLING_THICKNESS -> "sling thickness " + number(1000 * value) + " millimeters";
          case SLING_RATING -> "sling rated %d kilonewtons".formatted(Math.round(value / 1000));
          case INSIDE_ANGLE -> "inside angle " + number;
          case BEND -> "bend " + number;
          case CHOKE_ANGLE -> "choke angle " + number;
          case BASKET_ANGLE -> "basket angle " + number;
          case ANCHOR_LEG -> "anchor leg up 61 toward the stem " + number + " meters";
          case WORKING_LEG -> "working leg straight down " + number + " meters";
          default -> throw new AssertionError("a range of " + slot + " in " + unit);
        };
    boolean sayable = Talk.meaning(words, false, Optional.empty()) instanceof Meaning.Values;
    return sayable ? Optional.of(words) : Optional.empty();
  }

  private static String centimetres(double metres) {
    return number(100 * metres);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
  }

  private static void assertNotGood(Talk talk, String said) {
    if (Sieve.mayBeGood(talk.rope())) {
      assertEquals(List.of(), talk.type("check redirect").good(), said);
    }
  }

  // ---- units ----

  private static final List<List<String>> UNITS =
      List.of(
          List.of("inches", "feet", "centimeters", "meters", "millimeters"),
          List.of("pounds", "kilograms", "kilonewtons"));

  /** The same words with another unit: judged as it was heard back, or not taken. */
  @Test
  void theSameNumberWithAnotherUnit() {
    int tried = 0;
    int taken = 0;
    int good = 0;
    Map<Slot, Integer> turnedGood = new TreeMap<>();
    List<SaidRope> ropes = new ArrayList<>(Ropes.good().values());
    Iterator<SaidRope> drawn = Ropes.drawn().iterator();
    for (int i = 0; i < 24; i++) {
      ropes.add(drawn.next());
    }
    for (SaidRope rope : ropes) {
      boolean was = Sieve.mayBeGood(Talk.with(Talk.BRIEF).sayAll(rope).rope());
      for (Line line : rope.lines()) {
        for (String other : inOtherUnits(line.said())) {
          Talk talk = Talk.with(Talk.BRIEF).sayAll(rope.with(line.place(), line.slot(), other));
          tried++;
          taken += talk.rope().at(line.place()).has(line.slot()) ? 1 : 0;
          if (Sieve.mayBeGood(talk.rope()) && !talk.type("check redirect").good().isEmpty()) {
            good++;
            if (!was) {
              turnedGood.merge(line.slot(), 1, Integer::sum);
            }
          }
        }
      }
    }
    System.out.printf(
        "never wrongly good, other units: %d cases, %d taken, %d good, not good before: %s%n",
        tried, taken, good, turnedGood);
    assertTrue(tried >= 300, tried + " tried");
  }

  private static List<String> inOtherUnits(String said) {
    List<String> others = new ArrayList<>();
    for (List<String> units : UNITS) {
      for (String unit : units) {
        for (String other : units) {
          String changed = (" " + said + " ").replace(" " + unit + " ", " " + other + " ").strip();
          if (!changed.equals(said)
              && Talk.meaning(changed, false, Optional.empty()) instanceof Meaning.Values) {
            others.add(changed);
          }
        }
      }
    }
    return others;
  }

  /** Said again in the other system in mid-talk, value by value: as good, and heard back anew. */
  @Test
  void theSystemOfUnitsChangedInMidTalk() {
    List<String> again =
        List.of(
            "all up 90.5 kilograms by tape",
            "limb 30.5 centimeters by tape",
            "thick end 35.5 centimeters by tape",
            "limb length 3.7 meters by tape",
            "stem 61 centimeters by tape",
            "sling thickness 25 millimeters by tape",
            "sling rated 26 kilonewtons",
            "anchor leg up 61 toward the stem 3.7 meters by tape",
            "working leg straight down 6.1 meters by tape",
            "stem clear by 2.4 meters by tape");
    Talk talk = Talk.with(Talk.BRIEF).sayAll(Ropes.good().get("by its legs"));
    assertEquals(1, talk.type("check redirect").good().size());
    for (String words : again) {
      Talk.Step step = talk.type(words);
      assertTrue(step.has(Reply.VerdictCancelled.class), words);
      assertEquals(1, talk.type("check redirect").good().size(), words);
    }
  }
}
