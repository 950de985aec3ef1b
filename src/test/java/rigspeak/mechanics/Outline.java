package rigspeak.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The edge of a cross-section, walked with the wood on the left; what it encloses follows from
 * integrals along it (Green's theorem). A second opinion on the closed formulas: it shares none.
 */
final class Outline {
  private static final int POINTS = 48;

  /** A stretch of the edge: place and its change with a parameter from 0 to 1. */
  private record Stretch(
      DoubleUnaryOperator x,
      DoubleUnaryOperator y,
      DoubleUnaryOperator dx,
      DoubleUnaryOperator dy) {}

  private interface Term {
    double at(double x, double y, double dx, double dy);
  }

  private final List<Stretch> stretches = new ArrayList<>();
  private final GaussIntegrator integrator = new GaussIntegratorFactory().legendre(POINTS, 0, 1);

  /** Part of a circle about a middle, from one angle to another. */
  Outline arc(double middleX, double middleY, double radius, double from, double to) {
    double turn = to - from;
    stretches.add(
        new Stretch(
            t -> middleX + radius * Math.cos(from + turn * t),
            t -> middleY + radius * Math.sin(from + turn * t),
            t -> -radius * turn * Math.sin(from + turn * t),
            t -> radius * turn * Math.cos(from + turn * t)));
    return this;
  }

  Outline line(double fromX, double fromY, double toX, double toY) {
    stretches.add(
        new Stretch(
            t -> fromX + (toX - fromX) * t,
            t -> fromY + (toY - fromY) * t,
            t -> toX - fromX,
            t -> toY - fromY));
    return this;
  }

  double area() {
    return along((x, y, dx, dy) -> x * dy);
  }

  double centroidX() {
    return along((x, y, dx, dy) -> x * x / 2 * dy) / area();
  }

  double centroidY() {
    return along((x, y, dx, dy) -> -y * y / 2 * dx) / area();
  }

  /** Second moments about the centroid, the least and the greatest. */
  double[] principal() {
    double area = area();
    double middleX = centroidX();
    double middleY = centroidY();
    double xx = along((x, y, dx, dy) -> x * x * x / 3 * dy) - area * middleX * middleX;
    double yy = along((x, y, dx, dy) -> -y * y * y / 3 * dx) - area * middleY * middleY;
    double xy = along((x, y, dx, dy) -> x * x * y / 2 * dy) - area * middleX * middleY;
    double spread = Math.hypot((xx - yy) / 2, xy);
    return new double[] {(xx + yy) / 2 - spread, (xx + yy) / 2 + spread};
  }

  /**
   * The largest stress that a moment of one can make, by turning it round in steps of a degree and
   * looking at many places of the edge.
   */
  double worstBending() {
    double area = area();
    double middleX = centroidX();
    double middleY = centroidY();
    double xx = along((x, y, dx, dy) -> x * x * x / 3 * dy) - area * middleX * middleX;
    double yy = along((x, y, dx, dy) -> -y * y * y / 3 * dx) - area * middleY * middleY;
    double xy = along((x, y, dx, dy) -> x * x * y / 2 * dy) - area * middleX * middleY;
    double worst = 0;
    for (int degree = 0; degree < 180; degree++) {
      double cosine = Math.cos(Math.toRadians(degree));
      double sine = Math.sin(Math.toRadians(degree));
      // The strain is a plane a x + b y whose moment is (cosine, sine).
      double determinant = xx * yy - xy * xy;
      double a = (cosine * yy - sine * xy) / determinant;
      double b = (sine * xx - cosine * xy) / determinant;
      for (Stretch stretch : stretches) {
        for (int i = 0; i <= 180; i++) {
          double x = stretch.x().applyAsDouble(i / 180.0) - middleX;
          double y = stretch.y().applyAsDouble(i / 180.0) - middleY;
          worst = Math.max(worst, Math.abs(a * x + b * y));
        }
      }
    }
    return worst;
  }

  private double along(Term term) {
    double sum = 0;
    for (Stretch s : stretches) {
      sum +=
          integrator.integrate(
              t ->
                  term.at(
                      s.x().applyAsDouble(t),
                      s.y().applyAsDouble(t),
                      s.dx().applyAsDouble(t),
                      s.dy().applyAsDouble(t)));
    }
    return sum;
  }
}
