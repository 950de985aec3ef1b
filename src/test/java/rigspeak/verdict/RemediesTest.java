package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.catalogue.Resolution;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;

/** Whatever is offered helps, and asks for no more than it must. */
class RemediesTest {
  private static final int EVERYDAY = 80;
  private static final int LONG = 1_500;

  /** The cheapest first: rope around a limb, then a place nearer in, then another limb. */
  private static final List<Class<? extends Remedy>> BY_COST =
      List.of(
          Remedy.Wraps.class,
          Remedy.Choke.class,
          Remedy.Basket.class,
          Remedy.StrongerSling.class,
          Remedy.SeatAtTheUnion.class,
          Remedy.NearerTheUnion.class,
          Remedy.WorkingLeg.class,
          Remedy.WiderAngle.class,
          Remedy.SecondRedirect.class,
          Remedy.ThickerLimb.class);

  @Test
  @Tag("sampled")
  void whatIsOfferedMakesTheRigGood() {
    whatIsOfferedMakesTheRigGood(QuickLook.everyday(), EVERYDAY);
  }

  @Test
  @Tag("long")
  void whatIsOfferedToManyMakesTheRigGood() {
    whatIsOfferedMakesTheRigGood(QuickLook.atAll(SampledRigs.first(QuickLook.LONG_RIGS)), LONG);
  }

  private static void whatIsOfferedMakesTheRigGood(List<QuickLook> looks, int most) {
    List<String> idle = new ArrayList<>();
    Set<Class<?>> kinds = new HashSet<>();
    int offered = 0;
    for (QuickLook look : looks) {
      if (look.rating() == Rating.GOOD || offered >= most) {
        continue;
      }
      List<Remedy> remedies = QuickLook.judged(look.rig()).remedies();
      assertEquals(
          remedies,
          remedies.stream()
              .sorted((one, other) -> Integer.compare(cost(one), cost(other)))
              .toList());
      for (Remedy remedy : remedies) {
        offered++;
        kinds.add(remedy.getClass());
        if (rating(remedy, look.rig()) != Rating.GOOD) {
          idle.add(remedy + " does not help " + look.rig());
        }
      }
    }
    assertTrue(offered >= most, offered + " offered");
    // A basket rarely helps alone, for it slides; it has a rig of its own below.
    kinds.add(Remedy.Basket.class);
    assertEquals(Set.copyOf(BY_COST), kinds, "each kind was offered");
    assertEquals(List.of(), idle);
  }

  /** Two legs carry more than one choked one, where a stub keeps the sling from sliding. */
  @Test
  void aBasketIsOfferedWhereTheChokedSlingIsTooWeak() {
    Rig weak = Spoken.with(Spoken.rig(Spoken.STOUT), "sling rated 12 kilonewtons");
    assertTrue(QuickLook.wholeRating(weak) != Rating.GOOD);
    List<Remedy> remedies = QuickLook.judged(weak).remedies();
    assertTrue(remedies.contains(new Remedy.Basket()), remedies.toString());
    assertEquals(Rating.GOOD, QuickLook.wholeRating(with(new Remedy.Basket(), weak)));
  }

  /** With the remedy; a second redirect hangs between this one and the climber. */
  private static Rating rating(Remedy remedy, Rig rig) {
    Rig mended = with(remedy, rig);
    if (!(remedy instanceof Remedy.SecondRedirect)) {
      return QuickLook.wholeRating(mended);
    }
    RopePath goingOn = RopePath.alone(mended).with(Place.redirectNumber(2), mended.climbOnly());
    Resolution resolution = QuickLook.CATALOGUE.resolve(goingOn, Place.redirectNumber(1));
    ResolvedRig resolved = ((Resolution.Known) resolution).rig();
    Estimate friction = resolved.measures().get(Measure.ROPE_FRICTION);
    // The capstan equation (source 4) over a quarter of a turn, either way.
    double most = Math.exp(friction.high() * Math.PI / 2);
    Estimate beyond = new Estimate(1 / most, 1, most, HowGot.ASSUMED, friction.source());
    return Judge.rating(
        Survey.whole(resolved.with(Measure.BEYOND, beyond), QuickLook.WHOLE_SAMPLES).checks());
  }

  private static int cost(Remedy remedy) {
    return BY_COST.indexOf(remedy.getClass());
  }

  private static Rig with(Remedy remedy, Rig rig) {
    if (remedy instanceof Remedy.Wraps wraps) {
      return changed(rig, Slot.WRAPS, new Value.Wraps(wraps.turns()));
    }
    if (remedy instanceof Remedy.SeatAtTheUnion) {
      return out(rig, Length.ofMetres(0))
          .with(Slot.SEAT, new Said(Value.Seat.UNION, HowGot.BY_EYE));
    }
    if (remedy instanceof Remedy.NearerTheUnion nearer) {
      return out(rig, nearer.atMost());
    }
    if (remedy instanceof Remedy.Choke choke) {
      return changed(rig, Slot.HITCH, Value.Hitch.CHOKED)
          .without(Slot.BASKET_ANGLE)
          .with(Slot.WRAPS, new Said(new Value.Wraps(choke.turns()), HowGot.BY_EYE));
    }
    if (remedy instanceof Remedy.Basket) {
      return changed(rig, Slot.HITCH, Value.Hitch.BASKET).without(Slot.CHOKE_ANGLE);
    }
    if (remedy instanceof Remedy.StrongerSling stronger) {
      return rig.with(
          Slot.SLING_RATING,
          new Said(new Value.Rating(stronger.rating(), UnitSystem.METRIC), HowGot.BY_EYE));
    }
    if (remedy instanceof Remedy.WorkingLeg leg) {
      return leaving(rig, leg.direction());
    }
    if (remedy instanceof Remedy.SecondRedirect second) {
      return leaving(rig, second.direction());
    }
    if (remedy instanceof Remedy.WiderAngle wider) {
      return rig.has(Slot.INSIDE_ANGLE)
          ? changed(rig, Slot.INSIDE_ANGLE, new Value.Turned(wider.atLeast()))
          : changed(
              rig, Slot.BEND, new Value.Turned(Angle.ofDegrees(180 - wider.atLeast().degrees())));
    }
    return diameter(rig, ((Remedy.ThickerLimb) remedy).atLeast());
  }

  private static Rig leaving(Rig rig, Direction direction) {
    Value.Leg leg = rig.value(Slot.WORKING_LEG, Value.Leg.class).orElseThrow();
    return changed(rig, Slot.WORKING_LEG, new Value.Leg(direction, leg.length()));
  }

  private static Rig out(Rig rig, Length length) {
    return changed(rig, Slot.OUT, new Value.Distance(length, UnitSystem.METRIC));
  }

  private static Rig diameter(Rig rig, Length length) {
    return changed(rig, Slot.LIMB_DIAMETER, new Value.Distance(length, UnitSystem.METRIC));
  }

  private static Rig changed(Rig rig, Slot slot, Value value) {
    return rig.with(slot, new Said(value, rig.said(slot).orElseThrow().how()));
  }

  /** One step less than what is asked for is not enough: 5 cm nearer or 1 cm thicker a step. */
  @Test
  @Tag("sampled")
  void noMoreIsAskedForThanIsNeeded() {
    int tried = 0;
    for (QuickLook look : QuickLook.everyday()) {
      if (look.rating() == Rating.GOOD || tried >= 25) {
        continue;
      }
      Rig rig = look.rig();
      for (Remedy remedy : QuickLook.judged(rig).remedies()) {
        less(remedy, rig).ifPresent(lesser -> notGood(lesser, remedy + " of " + rig));
        tried += less(remedy, rig).isPresent() ? 1 : 0;
      }
    }
    assertTrue(tried >= 25, tried + " tried");
  }

  private static void notGood(Rig rig, String remedy) {
    assertTrue(QuickLook.wholeRating(rig) != Rating.GOOD, remedy);
  }

  private static Optional<Rig> less(Remedy remedy, Rig rig) {
    if (remedy instanceof Remedy.Wraps wraps) {
      int now = rig.value(Slot.WRAPS, Value.Wraps.class).orElseThrow().turns();
      return wraps.turns() - 1 > now
          ? Optional.of(changed(rig, Slot.WRAPS, new Value.Wraps(wraps.turns() - 1)))
          : Optional.empty();
    }
    if (remedy instanceof Remedy.NearerTheUnion nearer) {
      double farther = nearer.atMost().metres() + 0.05;
      return farther < metres(rig, Slot.OUT)
          ? Optional.of(out(rig, Length.ofMetres(farther)))
          : Optional.empty();
    }
    if (remedy instanceof Remedy.ThickerLimb thicker) {
      double thinner = thicker.atLeast().metres() - 0.01;
      return thinner > metres(rig, Slot.LIMB_DIAMETER)
          ? Optional.of(diameter(rig, Length.ofMetres(thinner)))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static double metres(Rig rig, Slot slot) {
    return rig.value(slot, Value.Distance.class).orElseThrow().length().metres();
  }

  @Test
  void aGoodRigNeedsNoHelp() {
    Judged judged = QuickLook.judged(Spoken.rig(Spoken.STOUT));
    assertEquals(Rating.GOOD, judged.rating());
    assertEquals(List.of(), judged.remedies());
    assertEquals(Optional.empty(), judged.measureAgain());
  }

  /** Steps that can be said and placed: 3 inches or 5 cm along the limb, half an inch or 1 cm. */
  @ParameterizedTest
  @CsvSource({
    "limb 8 inches by tape / out 8 feet by tape, OUT, 0.0762",
    "limb 20 centimeters by tape / out 250 centimeters by tape, OUT, 0.05",
    "limb 5 inches by tape / out 2 meters by tape, LIMB_DIAMETER, 0.0127",
    "limb 13 centimeters by tape / out 2 meters by tape, LIMB_DIAMETER, 0.01"
  })
  void whatIsAskedForCanBeSaid(String said, Slot slot, double step) {
    Rig weak = Spoken.with(Spoken.rig(Spoken.STOUT), said.replace(" / ", "\n"));
    List<Length> asked = new ArrayList<>();
    for (Remedy remedy : QuickLook.judged(weak).remedies()) {
      if (slot == Slot.OUT && remedy instanceof Remedy.NearerTheUnion nearer) {
        asked.add(nearer.atMost());
      }
      if (slot == Slot.LIMB_DIAMETER && remedy instanceof Remedy.ThickerLimb thicker) {
        asked.add(thicker.atLeast());
      }
    }
    assertEquals(1, asked.size());
    double steps = asked.get(0).metres() / step;
    assertEquals(Math.rint(steps), steps, 1e-9);
  }
}
