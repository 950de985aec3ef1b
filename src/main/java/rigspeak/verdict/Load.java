package rigspeak.verdict;

import java.util.Optional;
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
 * @param insideDeg angle between the legs; none where there is one leg
 * @param angleFactor load over tension, with both legs alike; none where there is one leg
 * @param anchorLegN newtons; 0 where there is no such leg
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
    Optional<Spread> insideDeg,
    Optional<Spread> angleFactor,
    Spread anchorLegN,
    Spread workingLegN,
    Spread peakFactor) {}
