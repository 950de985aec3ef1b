package rigspeak.verdict;

import rigspeak.mechanics.LoadClass;

/**
 * What a still climber puts on the support, in the frame of the sling.
 *
 * @param resultantN newtons
 * @param elevationDeg up positive
 * @param bearingDeg 0 toward the tip, 90 left; its ends may pass half a turn
 * @param alongN newtons along the limb; positive pulls away from the union
 * @param topN newtons square to the limb; positive lifts it
 * @param sideN newtons sideways; positive is left
 * @param loadClass what dominates at the values as said
 * @param insideDeg angle between the legs
 * @param angleFactor load over tension, with both legs alike
 * @param anchorLegN newtons
 * @param workingLegN newtons
 * @param peakFactor from still to the peak of movement
 */
public record Load(
    Spread resultantN,
    Spread elevationDeg,
    Spread bearingDeg,
    Spread alongN,
    Spread topN,
    Spread sideN,
    LoadClass loadClass,
    Spread insideDeg,
    Spread angleFactor,
    Spread anchorLegN,
    Spread workingLegN,
    Spread peakFactor) {}
