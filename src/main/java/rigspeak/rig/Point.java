package rigspeak.rig;

import java.util.List;
import java.util.Map;

/** One possible truth: a single number for every measure of a rig, each in its measure's unit. */
// An array by ordinal is what an EnumMap is, without boxing ten thousand points of numbers.
@SuppressWarnings("EnumOrdinal")
public final class Point {
  private static final int SIZE = Measure.values().length;

  private final double[] values;

  private Point(double[] values) {
    this.values = values;
  }

  /** What was said, taken at its word. */
  public static Point nominal(Map<Measure, Estimate> measures) {
    double[] values = new double[SIZE];
    measures.forEach((measure, estimate) -> values[measure.ordinal()] = estimate.nominal());
    return new Point(values);
  }

  /**
   * The corner or inner point of the box of measures.
   *
   * @param shares for each measure in iteration order, 0 for its low end to 1 for its high end
   */
  public static Point at(Map<Measure, Estimate> measures, double[] shares) {
    double[] values = new double[SIZE];
    int next = 0;
    for (Map.Entry<Measure, Estimate> measure : measures.entrySet()) {
      values[measure.getKey().ordinal()] = measure.getValue().at(shares[next++]);
    }
    return new Point(values);
  }

  /** This point with some of its numbers changed, in the order of the measures. */
  public Point with(List<Measure> measures, double[] numbers) {
    double[] changed = values.clone();
    for (int i = 0; i < numbers.length; i++) {
      changed[measures.get(i).ordinal()] = numbers[i];
    }
    return new Point(changed);
  }

  public double get(Measure measure) {
    return values[measure.ordinal()];
  }

  public Point with(Measure measure, double value) {
    double[] changed = values.clone();
    changed[measure.ordinal()] = value;
    return new Point(changed);
  }
}
