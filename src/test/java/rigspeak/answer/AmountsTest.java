package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

class AmountsTest {
  private static final int SAMPLES = 2048;

  /** Far below an inch or a pound; what conversions and the last step leave. */
  private static final double SLIP = 1e-5;

  @ParameterizedTest
  @CsvFileSource(resources = "amounts.csv", numLinesToSkip = 1)
  void sayAmountsInTheUnitsTheyWereSaidIn(String amount, double number, String unit, String words) {
    UnitSystem units =
        switch (unit) {
          case "inch", "foot", "pound" -> UnitSystem.INCH_POUND;
          default -> UnitSystem.METRIC;
        };
    String said =
        switch (amount) {
          case "diameter" -> Amounts.diameter(new Value.Distance(length(number, unit), units));
          case "distance" -> Amounts.distance(new Value.Distance(length(number, unit), units));
          case "thickness" -> Amounts.thickness(new Value.Distance(length(number, unit), units));
          case "fall" -> Amounts.fall(length(number, unit).metres(), units);
          case "weight" -> Amounts.weight(new Value.Weight(mass(number, unit), units));
          default -> Amounts.rating(new Value.Rating(force(number, unit), units));
        };
    assertEquals(words, said);
  }

  private static Length length(double number, String unit) {
    return switch (unit) {
      case "inch" -> Length.ofInches(number);
      case "foot" -> Length.ofFeet(number);
      case "centimetre" -> Length.ofCentimetres(number);
      case "millimetre" -> Length.ofCentimetres(number / 10);
      default -> Length.ofMetres(number);
    };
  }

  private static Mass mass(double number, String unit) {
    return unit.equals("pound") ? Mass.ofPounds(number) : Mass.ofKilograms(number);
  }

  private static Force force(double number, String unit) {
    return unit.equals("pound") ? Force.ofPoundsForce(number) : Force.ofKilonewtons(number);
  }

  @ParameterizedTest
  @EnumSource
  void aLargestDistanceIsNeverSaidLarger(UnitSystem units) {
    Speech.evenly(
        1,
        SAMPLES,
        point -> {
          double metres = 15 * point[0];
          String words = Amounts.distance(Length.ofMetres(metres), units, Round.DOWN);
          double said = metres(Slot.OUT, "out " + words);
          assertTrue(said <= metres + SLIP && said > metres - 0.0255, words + " for " + metres);
        });
  }

  @ParameterizedTest
  @EnumSource
  void aLeastDiameterIsNeverSaidSmaller(UnitSystem units) {
    Speech.evenly(
        1,
        SAMPLES,
        point -> {
          double metres = 0.03 + 1.4 * point[0];
          String words = Amounts.diameter(Length.ofMetres(metres), units, Round.UP);
          double said = metres(Slot.LIMB_DIAMETER, "limb " + words);
          assertTrue(said >= metres - SLIP && said < metres + 0.0128, words + " for " + metres);
        });
  }

  @ParameterizedTest
  @EnumSource
  void aFallIsNeverSaidSmaller(UnitSystem units) {
    Speech.evenly(
        1,
        SAMPLES,
        point -> {
          double metres = 0.01 + 15 * point[0];
          String words = Amounts.fall(metres, units);
          double said = metres(Slot.OUT, "out " + words);
          assertTrue(said >= metres - SLIP && said < metres + 0.3049, words + " for " + metres);
        });
  }

  private static double metres(Slot slot, String text) {
    return Speech.value(slot, Value.Distance.class, text).length().metres();
  }

  @Test
  void aDemandIsNeverSaidSmallerAndACapacityNeverLarger() {
    Speech.evenly(
        1,
        SAMPLES,
        point -> {
          double pounds = 1 + 950 * point[0];
          double newtons = Force.ofPoundsForce(pounds).newtons();
          double up = pounds(Amounts.force(newtons, UnitSystem.INCH_POUND, Round.UP));
          double down = pounds(Amounts.force(newtons, UnitSystem.INCH_POUND, Round.DOWN));
          assertTrue(up >= pounds - SLIP && up < pounds + 10, up + " for " + pounds);
          assertTrue(down <= pounds + SLIP && down > pounds - 10, down + " for " + pounds);
        });
  }

  private static double pounds(String words) {
    String plural = words.endsWith("pound") ? words + "s" : words;
    return Speech.value(Slot.ALL_UP, Value.Weight.class, "all up " + plural).mass().pounds();
  }

  @Test
  void metricForcesAreSaidInKilonewtonsOnTheirCautiousSide() {
    Speech.evenly(
        1,
        SAMPLES,
        point -> {
          double kilonewtons = 1.11 + 60 * point[0];
          double newtons = 1000 * kilonewtons;
          double up = kilonewtons(Amounts.force(newtons, UnitSystem.METRIC, Round.UP));
          double down = kilonewtons(Amounts.force(newtons, UnitSystem.METRIC, Round.DOWN));
          assertTrue(up >= kilonewtons - SLIP && up < kilonewtons + step(kilonewtons), up + "");
          assertTrue(
              down <= kilonewtons + SLIP && down > kilonewtons - step(kilonewtons), down + "");
        });
  }

  private static double step(double kilonewtons) {
    return kilonewtons < 10 ? 0.1 + SLIP : 1 + SLIP;
  }

  private static double kilonewtons(String words) {
    return Speech.value(Slot.SLING_RATING, Value.Rating.class, "sling rated " + words)
        .force()
        .kilonewtons();
  }

  @Test
  void aShareIsNeverSaidSmaller() {
    Speech.evenly(
        1,
        SAMPLES,
        point -> {
          double share = 3 * point[0];
          String percent = Amounts.shareOf(share, "all").replace(" percent of all", " degrees");
          double said =
              Speech.value(Slot.BEND, Value.Turned.class, "bend " + singular(percent))
                  .angle()
                  .degrees();
          assertTrue(said >= 100 * share - SLIP && said < 100 * share + 1, said + "");
        });
  }

  private static String singular(String degrees) {
    return degrees.equals("one degrees") ? "one degree" : degrees;
  }

  @ParameterizedTest
  @CsvSource({
    "1.0, one hundred percent of it",
    "1.0004, one hundred one percent of it",
    "1.1, one hundred ten percent of it",
    "3.01, more than three times it",
    "4.0, more than three times it",
    "4.01, more than four times it",
    "1e9, more than ten times it"
  })
  void sharesPastTheWholeAreSaidAsPercentAndThenAsTimes(double share, String words) {
    assertEquals(words, Amounts.shareOf(share, "it"));
  }

  @ParameterizedTest
  @CsvSource({
    "650, newtons, six five zero newtons",
    "1500, newtons, one and a half kilonewtons",
    "1001, newtons, one point one kilonewtons"
  })
  void smallMetricForcesAreSaidInNewtons(double newtons, String unit, String words) {
    assertEquals(words, Amounts.force(newtons, UnitSystem.METRIC, Round.UP));
  }
}
