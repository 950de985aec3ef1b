package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;

/**
 * Everything that may be true of a rig: one side for each measure, from its low to its high end.
 */
final class Box {
  private final ResolvedRig rig;
  private final List<Measure> sides;

  Box(ResolvedRig rig) {
    this.rig = rig;
    this.sides = new ArrayList<>(rig.measures().keySet());
  }

  List<Measure> sides() {
    return sides;
  }

  Point at(double[] shares) {
    return Point.at(rig.measures(), shares);
  }

  /** Where on its sides the nominal point lies. */
  double[] nominalShares() {
    return sides.stream()
        .map(rig.measures()::get)
        .mapToDouble(e -> e.isExact() ? 0 : (e.nominal() - e.low()) / (e.high() - e.low()))
        .toArray();
  }

  /** Shares that fill the box evenly (Sobol's sequence, without its first point, a corner). */
  double[][] evenly(int samples) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(sides.size());
    sobol.nextVector();
    double[][] shares = new double[samples][];
    for (int i = 0; i < samples; i++) {
      shares[i] = sobol.nextVector();
    }
    return shares;
  }
}
