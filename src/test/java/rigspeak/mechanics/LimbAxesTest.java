package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimbAxesTest {
  private static final org.apache.commons.geometry.euclidean.threed.Vector3D Y =
      org.apache.commons.geometry.euclidean.threed.Vector3D.Unit.PLUS_Y;

  /** A plumb kilonewton by hand: sin and cos of the rise. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, -1000",
    "30, -500, -866.0254037844386",
    "45, -707.1067811865476, -707.1067811865476",
    "90, -1000, 0",
    "-30, 500, -866.0254037844386"
  })
  void splitsAPlumbPull(double riseDeg, double alongN, double topN) {
    LimbLoad load = LimbAxes.ofRise(Math.toRadians(riseDeg)).split(new Vector3D(0, 0, -1000));
    assertEquals(alongN, load.alongN(), 1e-9);
    assertEquals(topN, load.topN(), 1e-9);
    assertEquals(0, load.sideN());
  }

  @Test
  void signsAreThoseOfTheFrame() {
    LimbAxes level = LimbAxes.ofRise(0);
    assertEquals(new LimbLoad(7, 0, 0), level.split(new Vector3D(7, 0, 0)));
    assertEquals(new LimbLoad(0, 7, 0), level.split(new Vector3D(0, 0, 7)));
    assertEquals(new LimbLoad(0, 0, 7), level.split(new Vector3D(0, 7, 0)));
  }

  @Test
  void topOfAVerticalLeaderFacesItsParent() {
    LimbAxes leader = LimbAxes.ofRise(Math.PI / 2);
    assertEquals(0, leader.top().distance(new Vector3D(-1, 0, 0)), 1e-15);
    assertEquals(0, leader.along().distance(Vector3D.PLUS_K), 1e-15);
    LimbLoad away = leader.split(Directions.unit(0, 0).scalarMultiply(100));
    assertEquals(-100, away.topN(), 1e-12);
  }

  @Test
  void axesAreSquareAndRightHanded() {
    Samples.over(-120, 120)
        .each(
            p -> {
              LimbAxes axes = LimbAxes.ofRise(Math.toRadians(p[0]));
              assertEquals(Math.toRadians(p[0]), axes.riseRad());
              assertEquals(1, axes.along().getNorm(), 1e-12);
              assertEquals(0, axes.along().crossProduct(axes.side()).distance(axes.top()), 1e-12);
            });
  }

  @Test
  void topIsOnTheUpperSideUntilPlumb() {
    Samples.over(-89.99, 89.99)
        .each(p -> assertTrue(LimbAxes.ofRise(Math.toRadians(p[0])).top().getZ() > 0));
  }

  /**
   * Another library turns the whole scene until the limb lies level; then the parts are x, z, y.
   */
  @Test
  void agreesWithTurningTheSceneLevel() {
    Samples.over(-120, 120, -5000, 5000, -5000, 5000, -5000, 5000)
        .each(
            p -> {
              double rise = Math.toRadians(p[0]);
              var level =
                  QuaternionRotation.fromAxisAngle(Y, rise)
                      .apply(
                          org.apache.commons.geometry.euclidean.threed.Vector3D.of(
                              p[1], p[2], p[3]));
              LimbLoad load = LimbAxes.ofRise(rise).split(new Vector3D(p[1], p[2], p[3]));
              assertEquals(level.getX(), load.alongN(), 1e-8);
              assertEquals(level.getY(), load.sideN(), 1e-8);
              assertEquals(level.getZ(), load.topN(), 1e-8);
            });
  }

  @Test
  void axesGiveTheForceBack() {
    Samples.over(-120, 120, -5000, 5000, -5000, 5000, -5000, 5000)
        .each(
            p -> {
              LimbAxes axes = LimbAxes.ofRise(Math.toRadians(p[0]));
              Vector3D force = new Vector3D(p[1], p[2], p[3]);
              LimbLoad load = axes.split(force);
              Vector3D back =
                  new Vector3D(
                      load.alongN(),
                      axes.along(),
                      load.topN(),
                      axes.top(),
                      load.sideN(),
                      axes.side());
              assertEquals(0, back.distance(force), 1e-8);
            });
  }

  @Test
  void refusesAForceThatIsNone() {
    LimbAxes axes = LimbAxes.ofRise(0.3);
    assertThrows(IllegalArgumentException.class, () -> axes.split(Vector3D.NaN));
    assertThrows(IllegalArgumentException.class, () -> axes.split(Vector3D.POSITIVE_INFINITY));
  }
}
