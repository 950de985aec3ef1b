package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimbLoadTest {
  /** By hand: 2, 3 and 6 make 7; 3 and 6 make the root of 45. */
  @Test
  void sizesAndShares() {
    LimbLoad load = new LimbLoad(-2, 3, -6);
    assertEquals(7, load.sizeN(), 1e-12);
    assertEquals(6.708203932499369, load.perpendicularN(), 1e-12);
    assertEquals(2.0 / 7, load.alongShare(), 1e-15);
    assertEquals(3.0 / 7, load.topShare(), 1e-15);
    assertEquals(6.0 / 7, load.sideShare(), 1e-15);
  }

  @Test
  void growsAndShrinksWhole() {
    assertEquals(new LimbLoad(-3, 4.5, -9), new LimbLoad(-2, 3, -6).times(1.5));
    assertEquals(3.5, new LimbLoad(-2, 3, -6).times(-0.5).sizeN(), 1e-12);
  }

  @Test
  void noLoadHasNoShares() {
    LimbLoad none = new LimbLoad(0, -0.0, 0);
    assertEquals(0, none.sizeN());
    assertEquals(0, none.alongShare());
    assertEquals(0, none.topShare());
    assertEquals(0, none.sideShare());
    assertSame(LoadClass.NONE, none.dominant());
  }

  @ParameterizedTest
  @CsvSource({
    "-10, 9, 9, INTO_UNION",
    "10, 9, 9, PULL",
    "9, -10, 9, LEVER",
    "-9, 10, -9, LIFT",
    "9, 9, -10, SIDE",
    "-9, -9, 10, SIDE",
    "-0.001, 0, 0, INTO_UNION",
    "0.001, 0, 0, PULL",
    "0, -0.001, 0, LEVER",
    "0, 0.001, 0, LIFT",
    "0, 0, 0.001, SIDE",
    // Equal parts: the harder one on the union.
    "-5, -5, 1, LEVER",
    "-5, 5, 1, LIFT",
    "1, -5, 5, SIDE",
    "-5, 1, -5, SIDE",
    "5, 5, 5, SIDE"
  })
  void theLargestPartNamesTheClass(double alongN, double topN, double sideN, LoadClass expected) {
    assertSame(expected, new LimbLoad(alongN, topN, sideN).dominant());
  }
}
