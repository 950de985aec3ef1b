package rigspeak.verdict;

import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.rig.Direction;

/**
 * A change after which the same support is good to load; each has been judged with the change made.
 */
public sealed interface Remedy {

  /** Wrap the sling this often in all. */
  record Wraps(int turns) implements Remedy {}

  /** Choke the sling with this many turns instead. */
  record Choke(int turns) implements Remedy {}

  /** Hang the sling as a basket instead. */
  record Basket() implements Remedy {}

  /** Take a sling that breaks at no less than this. */
  record StrongerSling(Force rating) implements Remedy {}

  /** Slide the sling in until it sits against the union. */
  record SeatAtTheUnion() implements Remedy {}

  /** Hang the sling no farther out than this. */
  record NearerTheUnion(Length atMost) implements Remedy {}

  /** Let the rope leave toward the climber this way. */
  record WorkingLeg(Direction direction) implements Remedy {}

  /** Open the angle between the legs, with the sling pointing as it does. */
  record WiderAngle(Angle atLeast) implements Remedy {}

  /**
   * Set one more redirect that leads the rope on this way, so that the load presses the limb into
   * its union.
   */
  record SecondRedirect(Direction direction) implements Remedy {}

  /** Choose a place where the limb is at least this thick, all else alike. */
  record ThickerLimb(Length atLeast) implements Remedy {}
}
