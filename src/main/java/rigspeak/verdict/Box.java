package rigspeak.verdict;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;

/**
 * Everything that may be true of a rig: one side for each measure that is not exact, from its low
 * to its high end.
 */
final class Box {
  private final Point nominal;
  private final List<Measure> sides;
  private final List<Estimate> estimates;

  private Box(ResolvedRig rig, Predicate<Measure> counts) {
    List<Map.Entry<Measure, Estimate>> open =
        rig.measures().entrySet().stream()
            .filter(entry -> counts.test(entry.getKey()) && !entry.getValue().isExact())
            .toList();
    this.nominal = rig.nominal();
    this.sides = open.stream().map(Map.Entry::getKey).toList();
    this.estimates = open.stream().map(Map.Entry::getValue).toList();
  }

  /** Of all that was said. */
  static Box whole(ResolvedRig rig) {
    return new Box(rig, measure -> true);
  }

  /** Of what a check looks at. */
  static Box ofChecks(ResolvedRig rig) {
    return new Box(rig, measure -> Trial.looksAt(rig, measure));
  }

  List<Measure> sides() {
    return sides;
  }

  /**
   * @param shares for each side, 0 for its low end to 1 for its high end
   */
  Point at(double[] shares) {
    double[] numbers = new double[sides.size()];
    for (int side = 0; side < numbers.length; side++) {
      numbers[side] = estimates.get(side).at(shares[side]);
    }
    return nominal.with(sides, numbers);
  }

  /** Where on its sides the nominal point lies. */
  double[] nominalShares() {
    return estimates.stream()
        .mapToDouble(e -> (e.nominal() - e.low()) / (e.high() - e.low()))
        .toArray();
  }

  /** Shares that fill the box evenly (Sobol's sequence, without its first point, a corner). */
  double[][] evenly(int samples) {
    double[][] shares = new double[samples][sides.size()];
    if (sides.isEmpty()) {
      return shares;
    }
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(sides.size());
    sobol.nextVector();
    for (int i = 0; i < samples; i++) {
      shares[i] = sobol.nextVector();
    }
    return shares;
  }
}
