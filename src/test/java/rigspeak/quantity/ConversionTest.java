package rigspeak.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import si.uom.NonSI;
import tech.units.indriya.unit.Units;

/** Named units against exact definitions, printed conversions and another library's arithmetic. */
class ConversionTest {
  private static final double ROUNDING = 1e-14;

  // Whole numbers only, from the definitions: the other library does the arithmetic.
  private static final Unit<javax.measure.quantity.Length> FOOT =
      Units.METRE.multiply(3048).divide(10_000);
  private static final Unit<javax.measure.quantity.Length> INCH = FOOT.divide(12);
  private static final Unit<javax.measure.quantity.Mass> POUND =
      Units.KILOGRAM.multiply(45_359_237).divide(100_000_000);
  private static final Unit<javax.measure.quantity.Force> POUND_FORCE =
      POUND
          .multiply(Units.METRE)
          .divide(Units.SECOND.pow(2))
          .multiply(980_665)
          .divide(100_000)
          .asType(javax.measure.quantity.Force.class);
  private static final Unit<Pressure> PSI = POUND_FORCE.divide(INCH.pow(2)).asType(Pressure.class);

  static Stream<Arguments> factories() {
    return Stream.of(
        into("feet", v -> Length.ofFeet(v).metres(), FOOT.getConverterTo(Units.METRE)::convert),
        into("inches", v -> Length.ofInches(v).metres(), INCH.getConverterTo(Units.METRE)::convert),
        into("centimetres", v -> Length.ofCentimetres(v).metres(), v -> v / 100),
        into("metres", v -> Length.ofMetres(v).metres(), v -> v),
        into(
            "pounds",
            v -> Mass.ofPounds(v).kilograms(),
            POUND.getConverterTo(Units.KILOGRAM)::convert),
        into("kilograms", v -> Mass.ofKilograms(v).kilograms(), v -> v),
        into("newtons", v -> Force.ofNewtons(v).newtons(), v -> v),
        into("kilonewtons", v -> Force.ofKilonewtons(v).newtons(), v -> v * 1000),
        into(
            "pounds-force",
            v -> Force.ofPoundsForce(v).newtons(),
            POUND_FORCE.getConverterTo(Units.NEWTON)::convert),
        into(
            "degrees",
            v -> Angle.ofDegrees(v).radians(),
            NonSI.DEGREE_ANGLE.getConverterTo(Units.RADIAN)::convert),
        into("radians", v -> Angle.ofRadians(v).radians(), v -> v),
        into("pascals", v -> Stress.ofPascals(v).pascals(), v -> v),
        into("megapascals", v -> Stress.ofMegapascals(v).pascals(), v -> v * 1e6),
        into(
            "pounds a square inch",
            v -> Stress.ofPoundsPerSquareInch(v).pascals(),
            PSI.getConverterTo(Units.PASCAL)::convert));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("factories")
  void factoryAgreesWithAnotherLibrary(
      String unit, DoubleUnaryOperator ours, DoubleUnaryOperator other) {
    for (double value : new double[] {0, 0.001, 1, 7.25, 123.456, 54_321}) {
      double expected = other.applyAsDouble(value);
      assertEquals(expected, ours.applyAsDouble(value), ROUNDING * expected, unit);
    }
  }

  static Stream<Arguments> thereAndBack() {
    return Stream.of(
        into("feet", v -> Length.ofFeet(v).feet(), v -> v),
        into("inches", v -> Length.ofInches(v).inches(), v -> v),
        into("centimetres", v -> Length.ofCentimetres(v).centimetres(), v -> v),
        into("pounds", v -> Mass.ofPounds(v).pounds(), v -> v),
        into("kilonewtons", v -> Force.ofKilonewtons(v).kilonewtons(), v -> v),
        into("pounds-force", v -> Force.ofPoundsForce(v).poundsForce(), v -> v),
        into("degrees", v -> Angle.ofDegrees(v).degrees(), v -> v),
        into("megapascals", v -> Stress.ofMegapascals(v).megapascals(), v -> v),
        into(
            "pounds a square inch",
            v -> Stress.ofPoundsPerSquareInch(v).poundsPerSquareInch(),
            v -> v));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("thereAndBack")
  void thereAndBackIsTheSame(String unit, DoubleUnaryOperator ours, DoubleUnaryOperator same) {
    factoryAgreesWithAnotherLibrary(unit, ours, same);
  }

  /** Printed conversions to the printed figure; source 11 and equipment minima of source 21. */
  @ParameterizedTest
  @CsvSource({"540, 2.4020", "5400, 24.0204", "5000, 22.2411", "1800, 8.0068"})
  void printedForces(double poundsForce, double kilonewtons) {
    assertEquals(kilonewtons, Force.ofPoundsForce(poundsForce).kilonewtons(), 0.00005);
    assertEquals(poundsForce, Force.ofKilonewtons(kilonewtons).poundsForce(), 0.012);
  }

  /**
   * Green strengths of source 12, which prints both units: pounds a square inch and megapascals.
   */
  @ParameterizedTest
  @CsvSource({"8300, 57.2", "3560, 24.5", "3780, 26.1", "9400, 64.8", "5100, 35.2", "1460, 10.1"})
  void printedStrengths(double psi, double megapascals) {
    assertEquals(megapascals, Stress.ofPoundsPerSquareInch(psi).megapascals(), 0.05);
  }

  @Test
  void exactDefinitions() {
    assertEquals(0.3048, Length.ofFeet(1).metres());
    assertEquals(0.0254, Length.ofInches(1).metres());
    assertEquals(0.45359237, Mass.ofPounds(1).kilograms());
    assertEquals(4.4482216152605, Force.ofPoundsForce(1).newtons());
    assertEquals(6894.757293, Stress.ofPoundsPerSquareInch(1).pascals(), 5e-7);
    assertEquals(Math.PI / 2, Angle.ofDegrees(90).radians());
    assertEquals(9.80665, Force.STANDARD_GRAVITY);
  }

  /** A pound weighs a pound-force and a kilogram 9.80665 newtons, by definition. */
  @Test
  void weights() {
    assertEquals(9.80665, Mass.ofKilograms(1).weight().newtons());
    assertEquals(180, Mass.ofPounds(180).weight().poundsForce(), 1e-12);
  }

  private static Arguments into(String unit, DoubleUnaryOperator ours, DoubleUnaryOperator other) {
    return Arguments.of(unit, ours, other);
  }
}
