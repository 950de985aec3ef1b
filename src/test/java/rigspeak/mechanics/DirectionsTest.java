package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.geometry.euclidean.threed.SphericalCoordinates;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DirectionsTest {
  private static final double ROUNDING = 1e-12;

  @ParameterizedTest
  @CsvSource({
    "0, 0, 1, 0, 0",
    "0, 90, 0, 1, 0",
    "0, -90, 0, -1, 0",
    "0, 180, -1, 0, 0",
    "90, 0, 0, 0, 1",
    "-90, 37, 0, 0, -1",
    "30, 0, 0.8660254037844387, 0, 0.5",
    "-30, 60, 0.4330127018922193, 0.75, -0.5"
  })
  void pointsWhereTheFrameSays(
      double elevationDeg, double bearingDeg, double x, double y, double z) {
    Vector3D unit = Directions.unit(Math.toRadians(elevationDeg), Math.toRadians(bearingDeg));
    assertEquals(0, unit.distance(new Vector3D(x, y, z)), ROUNDING);
  }

  @Test
  void overTheTopComesDownOnTheOtherSide() {
    Vector3D over = Directions.unit(Math.toRadians(96), Math.toRadians(20));
    assertEquals(84, Math.toDegrees(Directions.elevationRad(over)), 1e-9);
    assertEquals(-160, Math.toDegrees(Directions.bearingRad(over)), 1e-9);
  }

  @Test
  void plumbHasNoBearing() {
    assertEquals(0, Directions.bearingRad(new Vector3D(0, 0, -3)));
    assertEquals(0, Directions.bearingRad(new Vector3D(1e-14, 2e-14, 1)));
    assertEquals(0, Directions.bearingRad(new Vector3D(0, 1e-9, 5000)));
    assertEquals(Math.PI / 2, Directions.bearingRad(new Vector3D(0, 1e-14, 1e-5)), ROUNDING);
    assertEquals(-Math.PI / 2, Directions.elevationRad(new Vector3D(0, 0, -3)), ROUNDING);
    assertEquals(Math.PI / 2, Directions.bearingRad(new Vector3D(0, 1e-9, 1)), ROUNDING);
  }

  @Test
  void towardTheStemIsHalfATurnFromEitherSide() {
    assertEquals(Math.PI, Directions.bearingRad(new Vector3D(-1, 0.0, 0)));
    assertEquals(Math.PI, Directions.bearingRad(new Vector3D(-1, -0.0, 0)));
  }

  @Test
  void agreesWithAnotherLibraryThereAndBack() {
    Samples.over(-89.9, 89.9, -179.9, 179.9, 0.01, 5000)
        .each(
            p -> {
              double elevation = Math.toRadians(p[0]);
              double bearing = Math.toRadians(p[1]);
              var other = SphericalCoordinates.of(1, bearing, Math.PI / 2 - elevation).toVector();
              Vector3D unit = Directions.unit(elevation, bearing);
              assertEquals(other.getX(), unit.getX(), ROUNDING);
              assertEquals(other.getY(), unit.getY(), ROUNDING);
              assertEquals(other.getZ(), unit.getZ(), ROUNDING);
              Vector3D scaled = unit.scalarMultiply(p[2]);
              assertEquals(elevation, Directions.elevationRad(scaled), 1e-9);
              assertEquals(bearing, Directions.bearingRad(scaled), 1e-9);
            });
  }

  @Test
  void refusesWhatPointsNowhere() {
    for (Vector3D nowhere :
        new Vector3D[] {
          Vector3D.ZERO, Vector3D.NaN, Vector3D.POSITIVE_INFINITY, new Vector3D(1, Double.NaN, 0)
        }) {
      assertThrows(IllegalArgumentException.class, () -> Directions.elevationRad(nowhere));
      assertThrows(IllegalArgumentException.class, () -> Directions.bearingRad(nowhere));
    }
  }
}
