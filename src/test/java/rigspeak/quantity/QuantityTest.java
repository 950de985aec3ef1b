package rigspeak.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityTest {
  private static final List<Double> NO_NUMBERS =
      List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

  static Stream<Arguments> factories() {
    return Stream.of(
        factory("metres", Length::ofMetres, false),
        factory("feet", Length::ofFeet, false),
        factory("inches", Length::ofInches, false),
        factory("centimetres", Length::ofCentimetres, false),
        factory("kilograms", Mass::ofKilograms, false),
        factory("pounds", Mass::ofPounds, false),
        factory("newtons", Force::ofNewtons, true),
        factory("kilonewtons", Force::ofKilonewtons, true),
        factory("pounds-force", Force::ofPoundsForce, true),
        factory("radians", Angle::ofRadians, true),
        factory("degrees", Angle::ofDegrees, true),
        factory("pascals", Stress::ofPascals, true),
        factory("megapascals", Stress::ofMegapascals, true),
        factory("pounds a square inch", Stress::ofPoundsPerSquareInch, true),
        factory("interval at", Interval::at, true),
        factory("low end", v -> Interval.of(v, 1e9), true),
        factory("high end", v -> Interval.of(-1e9, v), true));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("factories")
  void refusesWhatIsNoNumber(String unit, DoubleFunction<Object> factory, boolean signed) {
    for (double value : NO_NUMBERS) {
      IllegalArgumentException refusal =
          assertThrows(IllegalArgumentException.class, () -> factory.apply(value), unit);
      assertTrue(refusal.getMessage().contains(String.valueOf(value)), refusal.getMessage());
    }
    if (signed) {
      assertFalse(factory.apply(-2).equals(factory.apply(2)));
    } else {
      assertThrows(IllegalArgumentException.class, () -> factory.apply(-0.001), unit);
      assertThrows(IllegalArgumentException.class, () -> factory.apply(-Double.MIN_VALUE * 200));
    }
    assertEquals(factory.apply(0), factory.apply(0));
  }

  @Test
  void theLargestNumbersAreStillNumbers() {
    assertEquals(Double.MAX_VALUE, Force.ofNewtons(Double.MAX_VALUE).newtons());
    assertEquals(-Double.MAX_VALUE, Force.ofNewtons(-Double.MAX_VALUE).newtons());
    assertEquals(Double.MAX_VALUE, Length.ofMetres(Double.MAX_VALUE).metres());
    assertThrows(IllegalArgumentException.class, () -> Force.ofKilonewtons(Double.MAX_VALUE));
  }

  @Test
  void ordersBySize() {
    assertEquals(-1, Length.ofFeet(3).compareTo(Length.ofMetres(1)));
    assertEquals(1, Length.ofInches(40).compareTo(Length.ofMetres(1)));
    assertEquals(0, Mass.ofKilograms(2).compareTo(Mass.ofKilograms(2)));
    assertEquals(-1, Mass.ofPounds(2).compareTo(Mass.ofKilograms(1)));
    assertEquals(1, Force.ofPoundsForce(1).compareTo(Force.ofNewtons(4)));
    assertEquals(-1, Angle.ofDegrees(57).compareTo(Angle.ofRadians(1)));
    assertEquals(1, Stress.ofMegapascals(1).compareTo(Stress.ofPoundsPerSquareInch(145)));
  }

  @Test
  void intervalHoldsItsEndsAndNothingBeyond() {
    Interval interval = Interval.of(-1, 3);
    assertEquals(4, interval.width());
    assertTrue(interval.contains(-1));
    assertTrue(interval.contains(3));
    assertTrue(interval.contains(0));
    assertFalse(interval.contains(Math.nextDown(-1.0)));
    assertFalse(interval.contains(Math.nextUp(3.0)));
    assertFalse(interval.contains(Double.NaN));
    assertEquals(0, Interval.at(5).width());
    assertEquals(5, Interval.at(5).low());
  }

  @Test
  void intervalDoesNotRunBackward() {
    assertThrows(IllegalArgumentException.class, () -> Interval.of(1, 0));
  }

  private static Arguments factory(String unit, DoubleFunction<Object> factory, boolean signed) {
    return Arguments.of(unit, factory, signed);
  }
}
