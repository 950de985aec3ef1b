package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.HowGot;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.Rating;

/**
 * What is offered is what a patient person would find who tried every step in turn: one wrap more,
 * the next label, a hand nearer to the union, a finger thicker, and had each judged in full.
 */
class TriedOutTest {
  private static final int SAMPLES = 1_000;
  private static final int MOST_WRAPS = 6;
  private static final double STRONGEST_KN = 60;
  private static final double STRONGEST_LBF = 13_000;

  @ParameterizedTest
  @CsvSource({
    // Too few wraps; where two more legs of rope would hold it, and where nothing but a stub does.
    "sling free / bark smooth / two wraps / limb rises 10 by tape, Wraps SeatAtTheUnion",
    "sling free / bark smooth / one wrap, SeatAtTheUnion",
    "sling free / two wraps / limb rises 30 by tape, SeatAtTheUnion",
    "sling free / bark smooth / sling basket / limb rises 10 by tape, Choke SeatAtTheUnion",
    // Too weak a sling, its label in either unit.
    "sling rated 12 kilonewtons, Basket StrongerSling",
    "sling rated 10 kilonewtons / all up 120 kilograms, Basket StrongerSling",
    "sling rated 2500 pounds, Basket StrongerSling",
    "sling rated 2500 pounds / all up 250 pounds, Basket StrongerSling",
    "sling rated 10 kilonewtons / sling basket / all up 140 kilograms, StrongerSling ThickerLimb",
    // Too far out on too thin a limb, in either unit and by a little or much.
    "limb 8 inches by tape / out 8 feet by tape, SeatAtTheUnion NearerTheUnion ThickerLimb",
    "limb 20 centimeters by tape / out 250 centimeters by tape, "
        + "SeatAtTheUnion NearerTheUnion ThickerLimb",
    "limb 9 inches by eye / out 4 feet by eye, SeatAtTheUnion NearerTheUnion ThickerLimb",
    "limb 5 inches by tape / out 2 meters by tape / stem 24 inches by tape, "
        + "SeatAtTheUnion NearerTheUnion ThickerLimb",
    "limb 16 centimeters by tape / out 90 centimeters by tape, "
        + "SeatAtTheUnion NearerTheUnion ThickerLimb",
    "limb 10 centimeters by tape / out 10 centimeters by tape, ThickerLimb",
    // Nothing of this kind helps.
    "limb 4 centimeters by tape / stem 5 centimeters by tape / out 2 meters by tape, ''"
  })
  void everyStepTriedInTurn(String said, String kinds) {
    Rig rig = Spoken.with(Spoken.rig(Spoken.STOUT), said.replace(" / ", "\n"));
    assertFalse(isGood(rig), "nothing to mend");
    List<Remedy> tried = new ArrayList<>();
    wraps(rig).ifPresent(tried::add);
    hitch(rig).ifPresent(tried::add);
    label(rig).ifPresent(tried::add);
    if (isGood(seated(rig))) {
      tried.add(new Remedy.SeatAtTheUnion());
    }
    nearer(rig).ifPresent(tried::add);
    thicker(rig).ifPresent(tried::add);
    assertEquals(kinds, kinds(tried), "what trying finds");
    List<Remedy> offered = QuickLook.remedies(rig).stream().filter(TriedOutTest::isTried).toList();
    assertEquals(kinds, kinds(offered));
    for (int i = 0; i < tried.size(); i++) {
      assertEquals(howMuch(tried.get(i)), howMuch(offered.get(i)), 1e-9, kinds);
    }
  }

  private static String kinds(List<Remedy> remedies) {
    return String.join(" ", remedies.stream().map(one -> one.getClass().getSimpleName()).toList());
  }

  private static double howMuch(Remedy remedy) {
    if (remedy instanceof Remedy.Wraps wraps) {
      return wraps.turns();
    }
    if (remedy instanceof Remedy.Choke choke) {
      return choke.turns();
    }
    if (remedy instanceof Remedy.StrongerSling stronger) {
      return stronger.rating().newtons();
    }
    if (remedy instanceof Remedy.NearerTheUnion nearer) {
      return nearer.atMost().metres();
    }
    return remedy instanceof Remedy.ThickerLimb thicker ? thicker.atLeast().metres() : 0;
  }

  /** Where else the rope could go is tried in {@link LegRemediesTest}. */
  private static boolean isTried(Remedy remedy) {
    return !(remedy instanceof Remedy.WorkingLeg
        || remedy instanceof Remedy.SecondRedirect
        || remedy instanceof Remedy.WiderAngle);
  }

  private static boolean isGood(Rig rig) {
    return Judge.rating(Survey.whole(QuickLook.resolved(rig), SAMPLES).checks()) == Rating.GOOD;
  }

  private static Optional<Integer> firstGood(int from, int to, IntFunction<Rig> step) {
    for (int i = from; i <= to; i++) {
      if (isGood(step.apply(i))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static Optional<Remedy> wraps(Rig rig) {
    if (rig.value(Slot.HITCH, Value.Hitch.class).orElseThrow() != Value.Hitch.CHOKED) {
      return Optional.empty();
    }
    int now = rig.value(Slot.WRAPS, Value.Wraps.class).orElseThrow().turns();
    return firstGood(now + 1, MOST_WRAPS, turns -> changed(rig, Slot.WRAPS, new Value.Wraps(turns)))
        .map(Remedy.Wraps::new);
  }

  private static Optional<Remedy> hitch(Rig rig) {
    if (rig.value(Slot.HITCH, Value.Hitch.class).orElseThrow() == Value.Hitch.CHOKED) {
      return isGood(byEye(rig, Slot.HITCH, Value.Hitch.BASKET))
          ? Optional.of(new Remedy.Basket())
          : Optional.empty();
    }
    Rig choked = byEye(rig, Slot.HITCH, Value.Hitch.CHOKED);
    return firstGood(2, MOST_WRAPS, turns -> byEye(choked, Slot.WRAPS, new Value.Wraps(turns)))
        .map(Remedy.Choke::new);
  }

  private static Optional<Remedy> label(Rig rig) {
    Value.Rating now = rig.value(Slot.SLING_RATING, Value.Rating.class).orElseThrow();
    boolean metric = now.said() == UnitSystem.METRIC;
    double step = metric ? 1_000 : Force.ofPoundsForce(500).newtons();
    double most = metric ? STRONGEST_KN * 1_000 : Force.ofPoundsForce(STRONGEST_LBF).newtons();
    int first = (int) Math.floor(now.force().newtons() / step) + 1;
    return firstGood(first, (int) Math.floor(most / step), steps -> labelled(rig, steps * step))
        .map(steps -> new Remedy.StrongerSling(Force.ofNewtons(steps * step)));
  }

  private static Rig labelled(Rig rig, double newtons) {
    Value.Rating now = rig.value(Slot.SLING_RATING, Value.Rating.class).orElseThrow();
    return byEye(rig, Slot.SLING_RATING, new Value.Rating(Force.ofNewtons(newtons), now.said()));
  }

  private static Rig seated(Rig rig) {
    return byEye(length(rig, Slot.OUT, 0), Slot.SEAT, Value.Seat.UNION);
  }

  private static Optional<Remedy> nearer(Rig rig) {
    double step = inches(rig, Slot.OUT) ? 0.0762 : 0.05;
    int steps = (int) Math.ceil(metres(rig, Slot.OUT) / step) - 1;
    return firstGood(-steps, 0, less -> length(rig, Slot.OUT, -less * step))
        .map(less -> new Remedy.NearerTheUnion(Length.ofMetres(-less * step)));
  }

  private static Optional<Remedy> thicker(Rig rig) {
    double step = inches(rig, Slot.LIMB_DIAMETER) ? 0.0127 : 0.01;
    int from = (int) Math.floor(metres(rig, Slot.LIMB_DIAMETER) / step) + 1;
    int to = (int) Math.floor(metres(rig, Slot.STEM_DIAMETER) / step);
    return firstGood(from, to, steps -> length(rig, Slot.LIMB_DIAMETER, steps * step))
        .map(steps -> new Remedy.ThickerLimb(Length.ofMetres(steps * step)));
  }

  private static double metres(Rig rig, Slot slot) {
    return rig.value(slot, Value.Distance.class).orElseThrow().length().metres();
  }

  private static boolean inches(Rig rig, Slot slot) {
    return rig.value(slot, Value.Distance.class).orElseThrow().said() == UnitSystem.INCH_POUND;
  }

  private static Rig length(Rig rig, Slot slot, double metres) {
    UnitSystem units = rig.value(slot, Value.Distance.class).orElseThrow().said();
    return changed(rig, slot, new Value.Distance(Length.ofMetres(metres), units));
  }

  private static Rig changed(Rig rig, Slot slot, Value value) {
    return rig.with(slot, new Said(value, rig.said(slot).orElseThrow().how()));
  }

  private static Rig byEye(Rig rig, Slot slot, Value value) {
    return rig.with(slot, new Said(value, HowGot.BY_EYE));
  }
}
