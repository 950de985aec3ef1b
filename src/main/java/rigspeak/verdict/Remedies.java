package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.IntPredicate;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.HowGot;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Strength;
import rigspeak.rig.Value;

/** The simplest changes that would make a support good, each judged before it is named. */
final class Remedies {
  private static final int MOST_WRAPS = 6;
  private static final int SEARCH_SAMPLES = 64;
  private static final int MOST_STEPS = 60;

  /** Finer than anybody can place a sling. */
  private static final double ACCURACY_M = 0.002;

  private static final Force RATING_STEP_METRIC = Force.ofKilonewtons(1);
  private static final Force RATING_STEP_POUNDS = Force.ofPoundsForce(500);

  /** Beyond this a label is of another kind of gear. */
  private static final double STRONGEST_N = 60_000;

  private static final Length OUT_STEP_INCHES = Length.ofInches(3);
  private static final Length OUT_STEP_METRIC = Length.ofCentimetres(5);
  private static final Length DIAMETER_STEP_INCHES = Length.ofInches(0.5);
  private static final Length DIAMETER_STEP_METRIC = Length.ofCentimetres(1);

  private final Probe probe;
  private final Rig said;

  Remedies(Probe probe) {
    this.probe = probe;
    this.said = probe.said();
  }

  List<Remedy> cheapestFirst() {
    List<Remedy> remedies = new ArrayList<>();
    wraps().ifPresent(remedies::add);
    otherHitch().ifPresent(remedies::add);
    strongerSling().ifPresent(remedies::add);
    seatAtTheUnion().ifPresent(remedies::add);
    nearerTheUnion().ifPresent(remedies::add);
    remedies.addAll(new LegRemedies(probe).cheapestFirst());
    thickerLimb().ifPresent(remedies::add);
    return List.copyOf(remedies);
  }

  private Optional<Remedy> wraps() {
    Optional<Value.Wraps> now =
        said.value(Slot.HITCH, Value.Hitch.class)
            .filter(hitch -> hitch == Value.Hitch.CHOKED)
            .flatMap(hitch -> said.value(Slot.WRAPS, Value.Wraps.class));
    for (int turns = now.map(Value.Wraps::turns).orElse(MOST_WRAPS) + 1;
        turns <= MOST_WRAPS;
        turns++) {
      if (isGood(changed(Slot.WRAPS, new Value.Wraps(turns)))) {
        return Optional.of(new Remedy.Wraps(turns));
      }
    }
    return Optional.empty();
  }

  /** A basket is the stronger, a choke holds better on the limb. */
  private Optional<Remedy> otherHitch() {
    Optional<Value.Hitch> now = said.value(Slot.HITCH, Value.Hitch.class);
    if (now.isEmpty()) {
      return Optional.empty();
    }
    Rig basket = hitched(Value.Hitch.BASKET).without(Slot.CHOKE_ANGLE);
    if (now.get() != Value.Hitch.BASKET && isGood(basket)) {
      return Optional.of(new Remedy.Basket());
    }
    for (int turns = 2; now.get() != Value.Hitch.CHOKED && turns <= MOST_WRAPS; turns++) {
      Said wraps = new Said(new Value.Wraps(turns), HowGot.BY_EYE);
      if (isGood(hitched(Value.Hitch.CHOKED).without(Slot.BASKET_ANGLE).with(Slot.WRAPS, wraps))) {
        return Optional.of(new Remedy.Choke(turns));
      }
    }
    return Optional.empty();
  }

  /** The worst use of a sling falls with its rating, so the rating that is needed is known. */
  private Optional<Remedy> strongerSling() {
    Optional<Strength> sling = probe.now().gear().sling();
    Optional<Double> worst =
        sling.flatMap(strength -> probe.worst(said, CheckKind.SLING, SEARCH_SAMPLES));
    if (worst.isEmpty() || worst.get() <= Check.WELL_WITHIN) {
      return Optional.empty();
    }
    boolean metric =
        said.value(Slot.SLING_RATING, Value.Rating.class)
                .map(Value.Rating::said)
                .orElse(units(Slot.OUT))
            == UnitSystem.METRIC;
    double stepN = (metric ? RATING_STEP_METRIC : RATING_STEP_POUNDS).newtons();
    double neededN = sling.get().base().value() * worst.get() / Check.WELL_WITHIN;
    // A step more than the quick search asks for will do: the whole one finds a little more.
    double mostN = Math.min(STRONGEST_N, neededN + 2 * stepN);
    for (int steps = (int) Math.ceil(neededN / stepN); steps * stepN <= mostN; steps++) {
      Force rating = Force.ofNewtons(steps * stepN);
      Value label = new Value.Rating(rating, metric ? UnitSystem.METRIC : UnitSystem.INCH_POUND);
      if (isGood(said.with(Slot.SLING_RATING, new Said(label, HowGot.BY_EYE)))) {
        return Optional.of(new Remedy.StrongerSling(rating));
      }
    }
    return Optional.empty();
  }

  private Rig hitched(Value.Hitch hitch) {
    return said.with(Slot.HITCH, new Said(hitch, HowGot.BY_EYE));
  }

  private Optional<Remedy> seatAtTheUnion() {
    Rig seated =
        withLength(Slot.OUT, 0, units(Slot.OUT))
            .with(Slot.SEAT, new Said(Value.Seat.UNION, HowGot.BY_EYE));
    return !seated.equals(said) && isGood(seated)
        ? Optional.of(new Remedy.SeatAtTheUnion())
        : Optional.empty();
  }

  private Optional<Remedy> nearerTheUnion() {
    UnitSystem units = units(Slot.OUT);
    double step = (units == UnitSystem.METRIC ? OUT_STEP_METRIC : OUT_STEP_INCHES).metres();
    double now = metres(Slot.OUT);
    DoubleFunction<Rig> at = metres -> withLength(Slot.OUT, metres, units);
    if (now == 0 || over(at.apply(0)) > 0) {
      return Optional.empty();
    }
    int farthest = (int) Math.ceil(now / step) - 1;
    int guess = (int) Math.floor(meeting(at, 0, now) / step);
    return largestGood(0, farthest, guess, steps -> isGood(at.apply(steps * step)))
        .map(steps -> new Remedy.NearerTheUnion(Length.ofMetres(steps * step)));
  }

  private Optional<Remedy> thickerLimb() {
    UnitSystem units = units(Slot.LIMB_DIAMETER);
    double step =
        (units == UnitSystem.METRIC ? DIAMETER_STEP_METRIC : DIAMETER_STEP_INCHES).metres();
    double now = metres(Slot.LIMB_DIAMETER);
    double stem = metres(Slot.STEM_DIAMETER);
    DoubleFunction<Rig> at = metres -> withLength(Slot.LIMB_DIAMETER, metres, units);
    if (now >= stem || over(at.apply(stem)) > 0) {
      return Optional.empty();
    }
    int thickest = (int) Math.floor(stem / step);
    int thinnest = (int) Math.floor(now / step) + 1;
    int guess = (int) Math.ceil(meeting(at, stem, now) / step);
    return largestGood(-thickest, -thinnest, -guess, steps -> isGood(at.apply(-steps * step)))
        .map(steps -> new Remedy.ThickerLimb(Length.ofMetres(-steps * step)));
  }

  /**
   * The largest number of steps that is good, where good ones come before bad ones. From a guess it
   * is mostly a step away.
   */
  private static Optional<Integer> largestGood(
      int least, int most, int guess, IntPredicate isGood) {
    if (least > most) {
      return Optional.empty();
    }
    int start = Math.max(least, Math.min(most, guess));
    if (isGood.test(start)) {
      int good = start;
      while (good < most && isGood.test(good + 1)) {
        good++;
      }
      return Optional.of(good);
    }
    if (start == least || !isGood.test(least)) {
      return Optional.empty();
    }
    int good = least;
    int bad = start;
    while (bad - good > 1) {
      int middle = (good + bad) / 2;
      if (isGood.test(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return Optional.of(good);
  }

  /** Where the worst utilisation just meets its limit, as far as a quick search sees. */
  private double meeting(DoubleFunction<Rig> at, double easy, double hard) {
    UnivariateFunction over = metres -> over(at.apply(metres));
    double low = Math.min(easy, hard);
    double high = Math.max(easy, hard);
    // Nowhere over its limit: only the whole survey sees that it is, and only just.
    return over.value(low) * over.value(high) > 0
        ? hard
        : new BrentSolver(ACCURACY_M).solve(MOST_STEPS, over, low, high);
  }

  /** By how much the worst utilisation is over its limit; a rig that cannot be is far over. */
  private double over(Rig rig) {
    return probe.worst(rig, SEARCH_SAMPLES).orElse(Double.MAX_VALUE) - Check.WELL_WITHIN;
  }

  private boolean isGood(Rig rig) {
    return probe.isGood(rig);
  }

  private Rig withLength(Slot slot, double metres, UnitSystem units) {
    return changed(slot, new Value.Distance(Length.ofMetres(metres), units));
  }

  private Rig changed(Slot slot, Value value) {
    return said.with(slot, new Said(value, said.said(slot).orElseThrow().how()));
  }

  private double metres(Slot slot) {
    return said.value(slot, Value.Distance.class).orElseThrow().length().metres();
  }

  private UnitSystem units(Slot slot) {
    return said.value(slot, Value.Distance.class).orElseThrow().said();
  }
}
