package rigspeak.verdict;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/** What happens if a support lets go, or is taken off with weight on the rope. */
public sealed interface Loss {

  /** Nothing else holds the rope; the lanyard is all there is. */
  record NothingElseHolds() implements Loss {}

  /**
   * It cannot be worked out before these have been said: both legs with their lengths.
   *
   * @param place the support they belong to
   * @param legs the legs that are not known, or not their length
   */
  record NotKnown(Place place, List<Slot> legs) implements Loss {
    public NotKnown {
      legs = List.copyOf(legs);
    }
  }

  /**
   * The climber falls until the rope is taut on another support, and swings.
   *
   * @param catching the support that catches
   * @param freeFallM until the rope is taut, metres
   * @param dropM from the climber down to the lowest point, without the rope's stretch, metres
   * @param bearingDeg the way of the swing from the climber in the frame of the support that the
   *     climber hung from, degrees; its ends may pass half a turn
   * @param lowestSpeedMS at the lowest point, metres a second
   * @param lowestAfterS seconds until the climber swings through the lowest point, as said; none
   *     where the rope goes slack again before
   * @param obstacle the stem or other wood in the way
   * @param peakN the most tension that the rope may come to, newtons
   * @param left what that peak does to the catching support, where its legs are known
   */
  record Falls(
      Place catching,
      Spread freeFallM,
      Spread dropM,
      Spread bearingDeg,
      Spread lowestSpeedMS,
      OptionalDouble lowestAfterS,
      Obstacle obstacle,
      Spread peakN,
      Optional<Left> left)
      implements Loss {}

  /**
   * The check of the catching support that comes nearest to its limit, or goes farthest beyond.
   *
   * @param utilisation with the design factor that everything else is held to
   */
  record Left(CheckKind kind, Spread utilisation) {
    /** Within its limit whatever may be true. */
    public boolean holds() {
      return utilisation.high() <= Check.WELL_WITHIN;
    }
  }
}
