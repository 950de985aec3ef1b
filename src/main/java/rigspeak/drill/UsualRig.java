package rigspeak.drill;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/**
 * What every question begins with: one climber, one tree, one stout main point, and a redirect of
 * which the question says what is other than here.
 */
public final class UsualRig {
  /** The redirect that is asked about. */
  public static final Place PLACE = Place.redirectNumber(1);

  private static final Rig CLIMB =
      with(
          Rig.empty(),
          Changes.of(Slot.ALL_UP, new Value.Weight(Mass.ofPounds(200), UnitSystem.INCH_POUND)),
          Changes.word(Slot.SPECIES, new Value.Species(Set.of("northern", "red", "oak"))),
          Changes.word(Slot.ROPE_SYSTEM, Value.RopeSystem.STATIONARY),
          Changes.word(Slot.ANCHOR, Value.Anchor.CANOPY));

  private static final Rig SOUND =
      with(
          CLIMB,
          Changes.word(Slot.WOOD, Value.Wood.LIVE),
          Changes.word(Slot.UNION, Value.Union.of(Value.UnionCondition.SOUND)),
          Changes.word(Slot.HITCH, Value.Hitch.CHOKED),
          Changes.wraps(3),
          Changes.word(Slot.BARK, Value.Bark.ROUGH),
          Changes.word(Slot.RUNNING_OVER, Value.RunningOver.RING));

  private static final Rig MAIN_POINT =
      with(
          SOUND,
          Changes.inches(Slot.LIMB_DIAMETER, 12),
          Changes.degrees(Slot.LIMB_RISE, 90),
          Changes.feet(Slot.OUT, 0),
          Changes.inches(Slot.STEM_DIAMETER, 20),
          Changes.word(Slot.SEAT, Value.Seat.UNION));

  private static final Rig REDIRECT =
      with(
          SOUND,
          Changes.inches(Slot.LIMB_DIAMETER, 8),
          Changes.degrees(Slot.LIMB_RISE, 0),
          Changes.feet(Slot.OUT, 2),
          Changes.inches(Slot.STEM_DIAMETER, 18),
          Changes.word(Slot.SEAT, Value.Seat.STUB),
          Changes.leg(Slot.ANCHOR_LEG, 60, Changes.STEM, 15),
          Changes.leg(Slot.WORKING_LEG, -90, Changes.TIP, 20));

  private UsualRig() {}

  /** The main point and the redirect, before anything is changed. */
  public static RopePath path() {
    return RopePath.of(Map.of(Place.MAIN_POINT, MAIN_POINT, PLACE, REDIRECT));
  }

  /** The same with changes made to the redirect; what belongs to the climb changes everywhere. */
  public static RopePath with(List<Change> changes, List<Change> beside) {
    Rig redirect = REDIRECT;
    for (Change change : beside) {
      redirect = change.in(redirect);
    }
    for (Change change : changes) {
      redirect = change.in(redirect);
    }
    Rig main = MAIN_POINT.withClimbOf(redirect);
    return RopePath.of(Map.of(Place.MAIN_POINT, main, PLACE, redirect));
  }

  private static Rig with(Rig rig, Change... changes) {
    Rig changed = rig;
    for (Change change : changes) {
      changed = change.in(changed);
    }
    return changed;
  }
}
