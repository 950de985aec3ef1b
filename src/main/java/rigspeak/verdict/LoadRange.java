package rigspeak.verdict;

import java.util.Optional;
import rigspeak.mechanics.Directions;
import rigspeak.mechanics.LoadClass;
import rigspeak.mechanics.LoadedSupport;
import rigspeak.mechanics.Resultant;

/** How far the load's numbers range over a survey. */
final class LoadRange {
  private final LoadClass loadClass;
  private final boolean hasInside;
  private final Spreading resultant = new Spreading();
  private final Spreading elevation = new Spreading();
  private final Spreading bearing = Spreading.ofDegreesRound();
  private final Spreading along = new Spreading();
  private final Spreading top = new Spreading();
  private final Spreading side = new Spreading();
  private final Spreading inside = new Spreading();
  private final Spreading angleFactor = new Spreading();
  private final Spreading anchorLeg = new Spreading();
  private final Spreading workingLeg = new Spreading();
  private final Spreading peak = new Spreading();

  LoadRange(Trial nominal) {
    loadClass = nominal.support().onLimb().dominant();
    hasInside = nominal.support().insideRad().isPresent();
    take(nominal);
  }

  void take(Trial trial) {
    LoadedSupport support = trial.support();
    resultant.take(support.pullN().getNorm());
    elevation.take(Math.toDegrees(Directions.elevationRad(support.pullN())));
    bearing.take(Math.toDegrees(Directions.bearingRad(support.pullN())));
    along.take(support.onLimb().alongN());
    top.take(support.onLimb().topN());
    side.take(support.onLimb().sideN());
    if (hasInside) {
      double insideRad = support.insideRad().orElseThrow();
      inside.take(Math.toDegrees(insideRad));
      angleFactor.take(Resultant.angleFactor(insideRad));
    }
    anchorLeg.take(support.anchorTensionN());
    workingLeg.take(support.workingTensionN());
    peak.take(trial.peakFactor());
  }

  Load load() {
    return new Load(
        resultant.spread(),
        elevation.spread(),
        bearing.spread(),
        along.spread(),
        top.spread(),
        side.spread(),
        loadClass,
        hasInside ? Optional.of(inside.spread()) : Optional.empty(),
        hasInside ? Optional.of(angleFactor.spread()) : Optional.empty(),
        anchorLeg.spread(),
        workingLeg.spread(),
        peak.spread());
  }
}
