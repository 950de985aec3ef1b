package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.mechanics.BandTable.Band;
import rigspeak.mechanics.LinearTable.Point;

class TablesTest {
  /** Source 8, as printed: the top band is what is above 120, 90 to 120 includes both. */
  static final BandTable CHOKE =
      new BandTable(
          List.of(
              Band.from(0, 0.49),
              Band.from(30, 0.62),
              Band.from(60, 0.74),
              Band.from(90, 0.87),
              Band.above(120, 1.00)),
          180);

  /** Source 9. */
  static final LinearTable BEND =
      new LinearTable(
          List.of(
              new Point(1, 50),
              new Point(2, 65),
              new Point(5, 77),
              new Point(10, 86),
              new Point(25, 95)));

  @ParameterizedTest
  @PublishedTable("choke-angles.csv")
  void chokeAngle(PublishedTable.Row row) {
    assertEquals(row.number("factor"), CHOKE.factor(row.number("choke_deg")));
  }

  /** Sources 7 and 8: the choker rating is 0.75 or 0.80 of the vertical one. */
  @ParameterizedTest
  @CsvSource({"0.75, 10, 0.3675", "0.80, 10, 0.392", "0.75, 130, 0.75", "0.80, 100, 0.696"})
  void chokeRatingTimesChokeAngle(double rating, double chokeDeg, double product) {
    assertEquals(product, rating * CHOKE.factor(chokeDeg), 1e-12);
  }

  @Test
  void aWiderChokeAngleIsNeverWeaker() {
    Samples.over(0, 180, 0, 180)
        .each(
            p -> {
              double low = CHOKE.factor(Math.min(p[0], p[1]));
              double high = CHOKE.factor(Math.max(p[0], p[1]));
              assertEquals(Math.max(low, high), high);
            });
  }

  @ParameterizedTest
  @PublishedTable("bend-strength.csv")
  void bend(PublishedTable.Row row) {
    assertEquals(row.number("percent"), BEND.factor(row.number("bend_over_rope")), 1e-12);
  }

  @Test
  void linearTableKnowsWhereItStarts() {
    assertEquals(1, BEND.lowest());
    assertEquals(50, BEND.factor(1));
    assertThrows(IllegalArgumentException.class, () -> BEND.factor(Math.nextDown(1.0)));
    LinearTable one = new LinearTable(List.of(new Point(3, 7)));
    assertEquals(7, one.factor(3));
    assertEquals(7, one.factor(4));
  }

  @Test
  void bandTableEndsWhereItSays() {
    assertEquals(0.49, CHOKE.factor(0));
    assertEquals(1.00, CHOKE.factor(180));
    assertEquals(0.87, CHOKE.factor(120));
    assertEquals(1.00, CHOKE.factor(Math.nextUp(120.0)));
    BandTable point = new BandTable(List.of(Band.from(2, 5)), 2);
    assertEquals(5, point.factor(2));
  }

  @Test
  void refusesTablesThatAreNone() {
    assertThrows(IllegalArgumentException.class, () -> new BandTable(List.of(), 1));
    assertThrows(IllegalArgumentException.class, () -> new BandTable(List.of(Band.above(0, 1)), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BandTable(List.of(Band.from(1, 1), Band.from(1, 2)), 9));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BandTable(List.of(Band.from(2, 1), Band.from(1, 2)), 9));
    assertThrows(
        IllegalArgumentException.class, () -> new BandTable(List.of(Band.from(2, 1)), 1.9));
    assertThrows(IllegalArgumentException.class, () -> new LinearTable(List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new LinearTable(List.of(new Point(1, 1), new Point(1, 2))));
    assertThrows(
        IllegalArgumentException.class,
        () -> new LinearTable(List.of(new Point(2, 1), new Point(1, 2))));
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
