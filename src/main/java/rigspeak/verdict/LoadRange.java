package rigspeak.verdict;

import rigspeak.mechanics.Directions;
import rigspeak.mechanics.LoadClass;
import rigspeak.mechanics.Resultant;

/** How far the load's numbers range over a survey. */
final class LoadRange {

  /** One number's range so far. */
  private static final class Range {
    private final double nominal;
    private double low;
    private double high;

    Range(double nominal) {
      this.nominal = nominal;
      this.low = nominal;
      this.high = nominal;
    }

    void take(double value) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }

    Spread spread() {
      return new Spread(low, nominal, high);
    }
  }

  private static final double FULL_TURN = 360;

  private final LoadClass loadClass;
  private final Range resultant;
  private final Range elevation;
  private final Range bearing;
  private final Range along;
  private final Range top;
  private final Range side;
  private final Range inside;
  private final Range angleFactor;
  private final Range anchorLeg;
  private final Range workingLeg;
  private final Range peak;

  LoadRange(Trial nominal) {
    var support = nominal.support();
    loadClass = support.onLimb().dominant();
    resultant = new Range(support.pullN().getNorm());
    elevation = new Range(elevationDeg(nominal));
    bearing = new Range(bearingDeg(nominal));
    along = new Range(support.onLimb().alongN());
    top = new Range(support.onLimb().topN());
    side = new Range(support.onLimb().sideN());
    inside = new Range(Math.toDegrees(support.insideRad()));
    angleFactor = new Range(Resultant.angleFactor(support.insideRad()));
    anchorLeg = new Range(support.anchorTensionN());
    workingLeg = new Range(support.workingTensionN());
    peak = new Range(nominal.peakFactor());
  }

  void take(Trial trial) {
    var support = trial.support();
    resultant.take(support.pullN().getNorm());
    elevation.take(elevationDeg(trial));
    bearing.take(near(bearingDeg(trial), bearing.nominal));
    along.take(support.onLimb().alongN());
    top.take(support.onLimb().topN());
    side.take(support.onLimb().sideN());
    inside.take(Math.toDegrees(support.insideRad()));
    angleFactor.take(Resultant.angleFactor(support.insideRad()));
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
        inside.spread(),
        angleFactor.spread(),
        anchorLeg.spread(),
        workingLeg.spread(),
        peak.spread());
  }

  private static double elevationDeg(Trial trial) {
    return Math.toDegrees(Directions.elevationRad(trial.support().pullN()));
  }

  private static double bearingDeg(Trial trial) {
    return Math.toDegrees(Directions.bearingRad(trial.support().pullN()));
  }

  /** The same bearing, counted on past half a turn so that it lies next to the nominal one. */
  private static double near(double bearing, double nominal) {
    return nominal + Math.IEEEremainder(bearing - nominal, FULL_TURN);
  }
}
