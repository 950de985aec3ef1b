package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;
import rigspeak.rig.Value;
import rigspeak.verdict.Verdict.Rating;

/** A change for the worse never makes a verdict better, nor a limb or a sling hold more. */
class NeverBetterTest {
  private static final int PLACES = 40;

  /** Two ways to the same sum may differ by so much of it. */
  private static final double ROUNDING = 1e-9;

  private static final Set<CheckKind> LIMB =
      EnumSet.of(
          CheckKind.LIMB_AT_UNION,
          CheckKind.LIMB_AT_SLING,
          CheckKind.LIMB_BETWEEN,
          CheckKind.SHEAR_AT_UNION,
          CheckKind.SHEAR_AT_SLING,
          CheckKind.COLUMN);
  private static final Set<CheckKind> SLIP = EnumSet.of(CheckKind.SLIP);

  /**
   * What is made worse.
   *
   * @param shows the checks that must show it, or at least not deny it
   */
  record Change(String name, Set<CheckKind> shows, UnaryOperator<Rig> worse) {
    /**
     * Of the union alone: farther out less of the limb hangs beyond the sling, so where its own
     * weight counts the limb is better off there; and where a thick end is said, as thick a limb
     * farther out is another, stouter one.
     */
    private static final String ANY_LIMB = "longer lever of any limb";

    /** Rigs that this change says nothing of are left as they are. */
    static Stream<Change> all() {
      return Stream.of(
          new Change(
              "thinner limb",
              LIMB,
              rig ->
                  distance(
                      distance(rig, Slot.THICK_END, metres -> 0.9 * metres),
                      Slot.LIMB_DIAMETER,
                      metres -> 0.9 * metres)),
          new Change(
              "longer lever",
              EnumSet.of(CheckKind.LIMB_AT_UNION),
              rig -> rig.has(Slot.LIMB_LENGTH) || rig.has(Slot.THICK_END) ? rig : fartherOut(rig)),
          new Change(ANY_LIMB, EnumSet.of(CheckKind.LIMB_AT_UNION), Change::fartherOut),
          new Change(
              "more weight",
              EnumSet.complementOf(EnumSet.of(CheckKind.SHELL)),
              rig ->
                  change(
                      rig,
                      Slot.ALL_UP,
                      Value.Weight.class,
                      w ->
                          new Value.Weight(
                              Mass.ofKilograms(1.1 * w.mass().kilograms()), w.said()))),
          new Change(
              "more hollow",
              LIMB,
              rig ->
                  rig.has(Slot.CAVITY_SHAPE)
                      ? change(
                          rig,
                          Slot.CAVITY,
                          Value.Share.class,
                          s -> new Value.Share(s.ofDiameter() + 0.15))
                      : rig),
          new Change(
              "fewer wraps",
              SLIP,
              rig ->
                  change(
                      rig,
                      Slot.WRAPS,
                      Value.Wraps.class,
                      w -> new Value.Wraps(Math.max(1, w.turns() - 1)))),
          new Change("less grip", SLIP, Change::smoother),
          new Change("own weight", LIMB, Change::withOwnWeight));
    }

    @Override
    public String toString() {
      return name;
    }

    /** The rig made worse, or nothing if this change does not apply to it. */
    Optional<Rig> of(Rig rig) {
      Rig changed = worse.apply(rig);
      return changed.equals(rig) ? Optional.empty() : Optional.of(changed);
    }

    /** "At the union" is a place of its own, a hand wide; from anywhere else farther is farther. */
    private static Rig fartherOut(Rig rig) {
      double now = rig.value(Slot.OUT, Value.Distance.class).orElseThrow().length().metres();
      return now == 0 ? rig : distance(rig, Slot.OUT, metres -> 1.2 * metres);
    }

    /** A limb that is said to be long weighs something, whichever way it is pulled. */
    private static Rig withOwnWeight(Rig rig) {
      return rig.has(Slot.LIMB_LENGTH) ? rig : Spoken.with(rig, "limb length 6 meters by tape");
    }

    private static Rig smoother(Rig rig) {
      return change(
          rig,
          Slot.BARK,
          Value.Bark.class,
          bark -> bark == Value.Bark.ROUGH ? Value.Bark.SMOOTH : Value.Bark.WET);
    }
  }

  private static Rig distance(Rig rig, Slot slot, UnaryOperator<Double> change) {
    return change(
        rig,
        slot,
        Value.Distance.class,
        d -> new Value.Distance(Length.ofMetres(change.apply(d.length().metres())), d.said()));
  }

  private static <V extends Value> Rig change(
      Rig rig, Slot slot, Class<V> type, UnaryOperator<V> change) {
    return rig.said(slot)
        .map(s -> rig.with(slot, new Said(change.apply(type.cast(s.value())), s.how())))
        .orElse(rig);
  }

  static Stream<Change> changes() {
    return Change.all();
  }

  static Stream<Change> changesOfTheVerdict() {
    return Change.all().filter(change -> !change.name().equals(Change.ANY_LIMB));
  }

  @ParameterizedTest
  @MethodSource("changesOfTheVerdict")
  @Tag("sampled")
  void aChangeForTheWorse(Change change) {
    neverBetter(change, QuickLook.everyday());
  }

  @ParameterizedTest
  @MethodSource("changesOfTheVerdict")
  @Tag("long")
  void aChangeForTheWorseOfManyRigs(Change change) {
    neverBetter(change, QuickLook.atAll(SampledRigs.first(QuickLook.LONG_RIGS)));
  }

  private static void neverBetter(Change change, List<QuickLook> looks) {
    List<String> better = new ArrayList<>();
    int applied = 0;
    int worse = 0;
    for (QuickLook look : looks) {
      Optional<Rig> changed = change.of(look.rig());
      // What is far beyond its limit in its worst does not come back.
      if (changed.isEmpty() || !(look.refused() || look.nearItsLimit())) {
        continue;
      }
      applied++;
      Rating after = QuickLook.at(changed.get()).rating();
      worse += isBetter(look.rating(), after) ? 1 : 0;
      if (isBetter(after, look.rating())
          && isBetter(QuickLook.wholeRating(changed.get()), QuickLook.wholeRating(look.rig()))) {
        better.add(look.rating() + " became " + after + ": " + look.rig());
      }
    }
    assertTrue(applied >= looks.size() / 20, "applied to " + applied);
    assertTrue(worse > 0, "it made no verdict worse");
    assertEquals(List.of(), better);
  }

  /** The same place in the boxes of both rigs, so that nothing hangs on how the worst is found. */
  @ParameterizedTest
  @MethodSource("changes")
  void noCheckIsEasierAtTheSamePlace(Change change) {
    RandomGenerator random = new MersenneTwister(20);
    List<String> easier = new ArrayList<>();
    int harder = 0;
    for (QuickLook look : QuickLook.everyday()) {
      Rig rig = look.rig();
      Optional<Rig> changed = change.of(rig);
      if (changed.isEmpty()) {
        continue;
      }
      // A thinner limb weighs less itself and is better held by its stem: of its own weight alone
      // it may bear more. Only the whole verdict is held to the rule then.
      if (change.name().equals("thinner limb") && rig.has(Slot.LIMB_LENGTH)) {
        continue;
      }
      ResolvedRig before = look.resolved();
      ResolvedRig after = QuickLook.resolved(changed.get());
      for (int i = 0; i < PLACES; i++) {
        Place place = Place.anywhere(random);
        Map<CheckKind, Double> was = place.utilisations(before);
        Map<CheckKind, Double> is = place.utilisations(after);
        for (CheckKind kind : change.shows) {
          if (was.containsKey(kind)) {
            harder += is.get(kind) > was.get(kind) ? 1 : 0;
            if (is.get(kind) < was.get(kind) * (1 - ROUNDING)) {
              easier.add(kind.key() + " " + was.get(kind) + " to " + is.get(kind) + ": " + rig);
            }
          }
        }
      }
    }
    assertTrue(harder >= QuickLook.EVERYDAY_RIGS, "harder " + harder + " times");
    assertEquals(
        List.of(), easier.subList(0, Math.min(3, easier.size())), easier.size() + " got easier");
  }

  private static boolean isBetter(Rating after, Rating before) {
    return after.compareTo(before) < 0;
  }

  /** With the working leg plumb, the anchor leg rises from beside it to far over it. */
  @Test
  void openingTheInsideAngleOfTwoLegsNeverRaisesTheLoad() {
    for (String over : List.of("carabiner", "ring", "pulley", "bark")) {
      Spread before = new Spread(0, Double.MAX_VALUE, Double.MAX_VALUE);
      for (int rise = -75; rise <= 75; rise += 10) {
        String leg = rise < 0 ? "down " + -rise : rise == 0 ? "level" : "up " + rise;
        Rig rig =
            Spoken.with(
                Spoken.rig(Spoken.STOUT),
                "over %s\nanchor leg %s left by tape".formatted(over, leg));
        Spread load = QuickLook.at(rig).load().resultantN();
        assertTrue(load.nominal() < before.nominal(), over + " " + leg);
        assertTrue(load.high() <= before.high(), over + " " + leg);
        before = load;
      }
    }
  }

  @Test
  void openingTheInsideAngleAtASlingNeverRaisesTheLoad() {
    for (String over : List.of("carabiner", "ring", "pulley", "bark")) {
      Spread before = new Spread(0, Double.MAX_VALUE, Double.MAX_VALUE);
      for (int inside = 10; inside <= 170; inside += 10) {
        Rig rig =
            Spoken.with(
                Spoken.rig(Spoken.STOUT).without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG),
                "over %s\ninside angle %d by tape\nsling points straight down by tape"
                    .formatted(over, inside));
        Spread load = QuickLook.at(rig).load().resultantN();
        assertTrue(load.nominal() < before.nominal(), over + " " + inside);
        assertTrue(load.high() <= before.high(), over + " " + inside);
        before = load;
      }
    }
  }
}
