package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hills whose top is known by their formula. */
class ClimbTest {
  /** The last step of the search. */
  private static final double STEP = 1.0 / 128;

  private static double round(double[] at, double x, double y) {
    return -(at[0] - x) * (at[0] - x) - 3 * (at[1] - y) * (at[1] - y);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0.3, 0.7",
    "1, 1, 0.3, 0.7",
    "0.5, 0.5, 0.061, 0.939",
    "0.9, 0.1, 0.5, 0.5",
    "0.2, 0.8, 0.2, 0.8"
  })
  void theTopOfARoundHill(double fromX, double fromY, double x, double y) {
    double[] top = Climb.from(new double[] {fromX, fromY}, at -> round(at, x, y));
    assertArrayEquals(new double[] {x, y}, top, STEP);
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0.4, 1, 1, 1, 1", "0.3, 0.4, -1, 2, 0, 1", "1, 1, -1, -1, 0, 0"})
  void theTopOfASlopeIsACorner(
      double fromX, double fromY, double east, double north, double x, double y) {
    double[] top = Climb.from(new double[] {fromX, fromY}, at -> east * at[0] + north * at[1]);
    assertArrayEquals(new double[] {x, y}, top);
  }

  /** The higher of two tops at the ends is found from the foot of the lower one. */
  @Test
  void bothEndsAreTried() {
    double[] top = Climb.from(new double[] {0.1}, at -> Math.abs(at[0] - 0.3));
    assertArrayEquals(new double[] {1}, top);
    top = Climb.from(new double[] {0.9}, at -> Math.abs(at[0] - 0.7));
    assertArrayEquals(new double[] {0}, top);
  }

  @Test
  void onThePlainItStaysWhereItIs() {
    double[] start = {0.25, 0.5};
    assertArrayEquals(start, Climb.from(start, at -> 7));
  }

  @Test
  void itNeverLeavesTheBoxAndNeverMovesItsStart() {
    List<double[]> tried = new ArrayList<>();
    double[] start = {0.95, 0.02};
    Climb.from(
        start,
        at -> {
          tried.add(at);
          return at[0] - at[1];
        });
    assertTrue(tried.stream().allMatch(at -> at[0] >= 0 && at[0] <= 1 && at[1] >= 0 && at[1] <= 1));
    assertArrayEquals(new double[] {0.95, 0.02}, start);
    assertEquals(0.95, tried.get(0)[0]);
  }
}
