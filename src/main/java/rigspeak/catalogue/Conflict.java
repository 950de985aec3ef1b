package rigspeak.catalogue;

import rigspeak.quantity.Angle;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** Something said that cannot be, or not beside something else that was said. */
public sealed interface Conflict {

  /**
   * A value that no climber's rig has; it is asked again.
   *
   * @param value in the unit of the range
   * @param said the units it was said in
   */
  record OutOfRange(Slot slot, double value, UnitSystem said, Range range) implements Conflict {}

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

  /** Decay was said, but not how much of the limb it takes. */
  record DecayWithoutExtent() implements Conflict {}

  /**
   * A leg was said to go where it cannot, beside this inside angle and where the sling points: a
   * loaded sling lies between the legs, half the inside angle from each but for friction.
   *
   * @param apart from the leg to the sling, as said
   * @param halfInside what it should about be
   */
  record LegAwayFromSling(Slot leg, Angle apart, Angle halfInside) implements Conflict {}

  /** The sling was said to sit at the union and to hang out on the limb. */
  record SeatedButOut() implements Conflict {}

  /** The sling is farther out than the limb is long. */
  record OutBeyondLimb() implements Conflict {}

  /** A stationary rope has one part; nothing else can be captured. */
  record BothPartsOfStationaryRope() implements Conflict {}

  /** Slack was said, but not the length of both legs that would take it up. */
  record SlackWithoutLengths() implements Conflict {}

  /** The limb was said to be thinner at its union than under the sling. */
  record ThickEndThinnerThanLimb() implements Conflict {}

  /** It was said where a cavity lies, but there is none. */
  record ShapeOfNoCavity() implements Conflict {}

  /** An angle of a choke was said of a basket, or the other way round; or wraps of a girth. */
  record NotOfThisHitch(Slot slot) implements Conflict {}

  /** The rope runs over bare bark, and it was said how the connector lies. */
  record ConnectorOverBark() implements Conflict {}

  /** Both ends of a moving rope are with the climber: none is at the base of the tree. */
  record MovingRopeFromBase() implements Conflict {}

  /** The main point has two legs, which bend the stem below it: how far up it is must be known. */
  record AnchorLegWithoutLength() implements Conflict {}

  /**
   * Two supports share a leg that was said to rise by one angle and by another.
   *
   * @param nearer the support toward the anchor
   * @param elevation of the leg there
   * @param farther the support toward the climber
   * @param elevationBack of the same leg there; it should be the opposite
   */
  record SharedLegTurns(Place nearer, Angle elevation, Place farther, Angle elevationBack)
      implements Conflict {}

  /** Two supports share a leg that was said to have two lengths. */
  record SharedLegLengths(Place nearer, Value.Distance one, Place farther, Value.Distance other)
      implements Conflict {}
}
