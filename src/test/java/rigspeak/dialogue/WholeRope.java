package rigspeak.dialogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What a rope must have been told before anybody calls it good, written down a second time. */
final class WholeRope {
  private static final List<Slot> ALWAYS =
      List.of(
          Slot.ALL_UP,
          Slot.SPECIES,
          Slot.ROPE_SYSTEM,
          Slot.WOOD,
          Slot.LIMB_DIAMETER,
          Slot.LIMB_RISE,
          Slot.OUT,
          Slot.STEM_DIAMETER,
          Slot.UNION,
          Slot.RUNNING_OVER);

  /** The most that two guesses of one angle, or of one distance, may be apart. */
  private static final double FAR_APART_RAD = Math.toRadians(40);

  private static final double FAR_APART = 0.7;
  private static final double FAR_APART_M = 0.6;

  private WholeRope() {}

  /** The main point and every redirect are known, nothing was called wrong, and legs meet. */
  static void assertWhole(SortedMap<Place, Rig> rope) {
    assertTrue(rope.containsKey(Place.MAIN_POINT));
    List<Place> places = List.copyOf(rope.keySet());
    for (int i = 0; i < places.size(); i++) {
      Rig rig = rope.get(places.get(i));
      Optional<Rig> next =
          i + 1 < places.size() ? Optional.of(rope.get(places.get(i + 1))) : Optional.empty();
      List<Slot> unsaid = new ArrayList<>(ALWAYS);
      unsaid.removeIf(rig::has);
      assertEquals(List.of(), unsaid, places.get(i).key());
      assertEquals(Set.of(), rig.withdrawn(), places.get(i).key());
      assertTurns(places.get(i), rig, next);
      next.ifPresent(farther -> assertMeet(rig, farther));
    }
  }

  /** Where the rope comes from and where it goes. */
  private static void assertTurns(Place place, Rig rig, Optional<Rig> next) {
    boolean working =
        rig.has(Slot.WORKING_LEG) || next.filter(far -> far.has(Slot.ANCHOR_LEG)).isPresent();
    boolean byAngle =
        rig.has(Slot.SLING_POINTS) && (rig.has(Slot.INSIDE_ANGLE) || rig.has(Slot.BEND));
    boolean anchor = rig.has(Slot.ANCHOR_LEG) || place.isMainPoint();
    assertTrue((anchor && working) || byAngle, () -> place.key() + " of " + rig);
  }

  /** Two words for one leg are not far apart. */
  private static void assertMeet(Rig nearer, Rig farther) {
    Optional<Value.Leg> one = nearer.value(Slot.WORKING_LEG, Value.Leg.class);
    Optional<Value.Leg> other = farther.value(Slot.ANCHOR_LEG, Value.Leg.class);
    if (one.isEmpty() || other.isEmpty()) {
      return;
    }
    double up =
        one.get().direction().elevation().radians() + other.get().direction().elevation().radians();
    assertTrue(Math.abs(up) <= FAR_APART_RAD, () -> one + " and " + other);
    if (one.get().length().isPresent() && other.get().length().isPresent()) {
      double here = one.get().length().get().length().metres();
      double there = other.get().length().get().length().metres();
      double allowed = FAR_APART * (here + there) / 2 + FAR_APART_M;
      assertTrue(Math.abs(here - there) <= allowed, () -> one + " and " + other);
    }
  }
}
