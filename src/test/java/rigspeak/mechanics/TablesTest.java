package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.catalogue.Reductions;

class TablesTest {
  @ParameterizedTest
  @PublishedTable("choke-angles.csv")
  void chokeAngle(PublishedTable.Row row) {
    assertEquals(row.number("factor"), Reductions.choke(row.number("choke_deg")));
  }

  /** Sources 7 and 8: the choker rating is 0.75 or 0.80 of the vertical one. */
  @ParameterizedTest
  @CsvSource({"0.75, 10, 0.3675", "0.80, 10, 0.392", "0.75, 130, 0.75", "0.80, 100, 0.696"})
  void chokeRatingTimesChokeAngle(double rating, double chokeDeg, double product) {
    assertEquals(product, rating * Reductions.choke(chokeDeg), 1e-12);
  }

  @Test
  void aWiderChokeAngleIsNeverWeaker() {
    Samples.over(0, 180, 0, 180)
        .each(
            p -> {
              double low = Reductions.choke(Math.min(p[0], p[1]));
              double high = Reductions.choke(Math.max(p[0], p[1]));
              assertEquals(Math.max(low, high), high);
            });
  }

  @ParameterizedTest
  @PublishedTable("bend-strength.csv")
  void bend(PublishedTable.Row row) {
    assertEquals(row.number("percent"), 100 * Reductions.bend(row.number("bend_over_rope")), 1e-12);
  }

  /** Below the table half of its first figure is a judgement; it is never above it. */
  @Test
  void aTightBendIsNeverStronger() {
    assertEquals(0.25, Reductions.bend(0.99));
    Samples.over(0.1, 60, 0.1, 60)
        .each(
            p -> {
              double tight = Reductions.bend(Math.min(p[0], p[1]));
              double wide = Reductions.bend(Math.max(p[0], p[1]));
              assertTrue(tight <= wide, p[0] + " and " + p[1]);
            });
  }

  @Test
  void chokeTableHasItsEnds() {
    assertEquals(0.49, Reductions.choke(0));
    assertEquals(1.00, Reductions.choke(180));
    assertEquals(0.87, Reductions.choke(120));
    assertEquals(1.00, Reductions.choke(Math.nextUp(120.0)));
    assertThrows(IllegalArgumentException.class, () -> Reductions.choke(-1));
  }

  @ParameterizedTest
  @PublishedTable("sling-legs.csv")
  void slingLegs(PublishedTable.Row row) {
    double included = Math.PI - 2 * row.degrees("horizontal_deg");
    if (row.has("tension_factor")) {
      assertEquals(
          row.number("tension_factor"),
          HangingLegs.tensionFactor(included),
          row.number("tolerance_factor"));
    }
    if (row.has("basket_percent")) {
      assertEquals(
          row.number("basket_percent"),
          100 * HangingLegs.basketFactor(included),
          row.number("tolerance_percent"));
    }
  }

  /** Source 7, worked examples: length over height, 120 by 96 and 10 by 5. */
  @ParameterizedTest
  @CsvSource({"120, 96, 1200, 1500", "10, 5, 500, 1000"})
  void tensionOfALegByLengthAndHeight(double length, double height, double share, double tension) {
    double included = 2 * Math.acos(height / length);
    assertEquals(tension, share * HangingLegs.tensionFactor(included), 1e-6);
  }

  @Test
  void legsSharedByTwoCarryTheWhole() {
    Samples.over(0, 179)
        .each(
            p -> {
              double included = Math.toRadians(p[0]);
              assertEquals(
                  2,
                  HangingLegs.basketFactor(included) * HangingLegs.tensionFactor(included),
                  1e-12);
              assertEquals(
                  HangingLegs.basketFactor(included), Resultant.sizeN(1, 1, included), 1e-12);
            });
  }
}
