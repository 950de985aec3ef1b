package rigspeak.verdict;

import rigspeak.rig.Place;

/**
 * The swing of a climber who slips where they work, with everything holding.
 *
 * @param from the support that the climber hangs from
 * @param offPlumbDeg of the leg to the climber, degrees
 * @param offsetM horizontal distance from the plumb line of that support, metres
 * @param lowestSpeedMS at the lowest point, metres a second
 * @param equivalentFallM height of a free fall that ends with that speed, metres
 * @param obstacle the stem or other wood in the way
 * @param promptDeg from here on, or with wood in the way, a second attachment is common practice
 */
public record Swing(
    Place from,
    Spread offPlumbDeg,
    Spread offsetM,
    Spread lowestSpeedMS,
    Spread equivalentFallM,
    Obstacle obstacle,
    double promptDeg) {

  /** Whether a second attachment is worth a word. */
  public boolean callsForSecondAttachment() {
    return offPlumbDeg.high() >= promptDeg || obstacle instanceof Obstacle.Reached;
  }
}
