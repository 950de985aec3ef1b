package rigspeak.catalogue;

import rigspeak.quantity.Angle;
import rigspeak.rig.Slot;

/** Something said that cannot be, or not beside something else that was said. */
public sealed interface Conflict {

  /**
   * A value that no climber's rig has; it is asked again.
   *
   * @param value in the unit of the range
   */
  record OutOfRange(Slot slot, double value, Range range) implements Conflict {}

  /** The two legs, or inside angle and bend, tell different angles. */
  record AnglesDisagree(Slot one, Angle first, Slot other, Angle second) implements Conflict {}

  /** The legs lie on one another: such a rope is not redirected. */
  record LegsCoincide() implements Conflict {}

  /** The legs are one straight line: such a rope does not load its sling. */
  record LegsInLine() implements Conflict {}

  /** The leg that the climber hangs on points up. */
  record WorkingLegUp() implements Conflict {}

  /** The sling was said to point where the rope does not pull it. */
  record SlingElsewhere(
      Angle apart, Angle pullElevation, Angle pullBearing, Angle saidElevation, Angle saidBearing)
      implements Conflict {}

  /** The limb is thicker than the stem that bears it. */
  record LimbThickerThanStem() implements Conflict {}

  /** The union was called sound and faulty. */
  record SoundAndFaulty() implements Conflict {}

  /** The sling was said to sit at the union and to hang out on the limb. */
  record SeatedButOut() implements Conflict {}

  /** The sling is farther out than the limb is long. */
  record OutBeyondLimb() implements Conflict {}

  /** A stationary rope has one part; nothing else can be captured. */
  record BothPartsOfStationaryRope() implements Conflict {}

  /** Slack was said, but not the length of both legs that would take it up. */
  record SlackWithoutLengths() implements Conflict {}
}
