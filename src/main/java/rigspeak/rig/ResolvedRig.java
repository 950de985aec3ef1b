package rigspeak.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A rig of which every number is known within bounds, each with its source.
 *
 * @param said the rig as it was said
 * @param measures the box of what may be true
 * @param turn how the turn of the rope is known
 * @param tensionShare of the climber's weight that one captured leg carries: 1 or one half
 * @param gripTurns turns of the sling that hold it along the limb; a basket has half a turn
 * @param wood strength of the limb's wood
 * @param union how the union weakens it
 * @param gear strength of sling, connector and rope
 * @param working factor from a still climber's load to the peak of ordinary movement
 * @param assumptions what nobody said and what was taken instead
 */
public record ResolvedRig(
    Rig said,
    Map<Measure, Estimate> measures,
    Turn turn,
    double tensionShare,
    double gripTurns,
    Wood wood,
    UnionRule union,
    Gear gear,
    Sourced working,
    List<Assumption> assumptions) {

  public ResolvedRig {
    measures = Collections.unmodifiableMap(new EnumMap<>(measures));
    assumptions = List.copyOf(assumptions);
  }

  /** How the turn of the rope is known. */
  public enum Turn {
    /** By where its two legs go. */
    LEGS,
    /** By the angle between them and where the sling points. */
    ANGLE_AND_SLING
  }

  /**
   * Strength of the green wood before the union is looked at.
   *
   * @param bending pascals
   * @param compression along the grain, pascals
   * @param shear along the grain, pascals
   * @param stiffness modulus of elasticity in bending, pascals
   * @param density of the green wood, kilograms a cubic metre
   */
  public record Wood(
      String species,
      Strength bending,
      Strength compression,
      Strength shear,
      Strength stiffness,
      Sourced density) {}

  /**
   * How much strength the union leaves to the limb.
   *
   * @param fullRatio limb over stem diameter up to which the union counts in full
   * @param codominantRatio from which it counts as codominant
   * @param codominantFactor what is left then; in between it falls in a straight line
   * @param condition what its stated condition leaves
   * @param acrossFactor what is left against lifting and side load
   * @param decayed the hollow counts as lying in the outer wood
   * @param outerDecayFactor how much larger a hollow of the same effect is then, in diameter
   */
  public record UnionRule(
      Sourced fullRatio,
      Sourced codominantRatio,
      Sourced codominantFactor,
      Sourced condition,
      Sourced acrossFactor,
      boolean decayed,
      Sourced outerDecayFactor) {}

  /** Strength in newtons of what the climber brought. */
  public record Gear(Strength sling, Strength connector, Strength rope) {}

  /**
   * Something taken for granted.
   *
   * @param slot what was not said
   * @param source why this was taken
   */
  public record Assumption(Slot slot, Source source) {}

  public Point nominal() {
    return Point.nominal(measures);
  }
}
