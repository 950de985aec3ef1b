package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A limb that tapers: its sections, the worst of them, and its weight. */
class TaperTest {
  private static final double NEWTONS_PER_M3 = 9806.65;

  /**
   * Source 6: a cone twice as thick at the union as at the load has its largest stress halfway,
   * 128/27 F l / (pi d^3), and 4 F l / (pi d^3) at the union.
   */
  @Test
  void theTextbookCone() {
    TaperedLimb limb = new TaperedLimb(RoundSection.solid(0.2), 0.1);
    assertEquals(0.5, limb.worstShare(), 1e-12);
    double unit = 1000 * 2 / (Math.PI * 0.001);
    assertEquals(128.0 / 27 * unit, endLoadPa(limb, 0.5), 1e-6 * unit);
    assertEquals(4 * unit, endLoadPa(limb, 0), 1e-6 * unit);
    assertEquals(0, endLoadPa(limb, 1));
  }

  /** A kilonewton square to the limb, 2 m out. */
  private static double endLoadPa(TaperedLimb limb, double share) {
    List<SectionLoad> cases =
        CantileverLimb.basket(2, OwnWeight.UNSTATED).at(share, new LimbLoad(0, -1000, 0));
    assertEquals(1, cases.size());
    return limb.sectionAt(share).under(cases.get(0)).bendingPa();
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0.1, 0.75", "0.15, 0.1, 0", "0.12, 0.1, 0", "0.1, 0.1, 0", "0.1, 0.2, 0"})
  void worstPlaceByHand(double butt, double sling, double share) {
    assertEquals(share, new TaperedLimb(RoundSection.solid(butt), sling).worstShare(), 1e-12);
  }

  @Test
  void noPlaceIsWorseThanTheWorst() {
    Samples.over(0.1, 1, 0.1, 1.2, 0, 0.9)
        .first(
            512,
            p -> {
              TaperedLimb limb = new TaperedLimb(new RoundSection(p[0], p[2]), p[0] * p[1]);
              double worst = endLoadPa(limb, limb.worstShare());
              for (int i = 0; i <= 500; i++) {
                assertTrue(endLoadPa(limb, i / 500.0) <= worst * (1 + 1e-12));
              }
            });
  }

  @Test
  void placesRunFromTheUnionToTheSling() {
    Samples.over(0.05, 1, 0.05, 1.5)
        .first(
            512,
            p -> {
              TaperedLimb limb = new TaperedLimb(RoundSection.solid(p[0]), p[0] * p[1]);
              List<Double> places = limb.places();
              assertEquals(0, places.get(0));
              assertEquals(1, places.get(places.size() - 1));
              assertEquals(p[0], limb.diameterM(0));
              assertEquals(p[0] * p[1], limb.diameterM(1));
              for (int i = 1; i < places.size(); i++) {
                assertTrue(places.get(i) > places.get(i - 1));
                double ratio = limb.diameterM(places.get(i)) / limb.diameterM(places.get(i - 1));
                assertTrue(Math.max(ratio, 1 / ratio) <= 1.06 + 1e-9);
              }
            });
    assertEquals(List.of(0.0, 1.0), new TaperedLimb(RoundSection.solid(0.2), 0.2).places());
    assertEquals(13, new TaperedLimb(RoundSection.solid(0.2), 0.1).places().size());
  }

  /** Any load, any hollow, with the limb's own weight: a fine scan finds no 0.3 % more. */
  @Test
  void thePlacesMissLessThanAThirdOfAPercent() {
    Samples.over(
            0.05, 1, 0.1, 1.3, 0, 0.95, 0, 1, 0.1, 8, 0, 12, -90, 90, -6000, 6000, -6000, 6000,
            -6000, 6000)
        .first(
            1024,
            p -> {
              OffCentreSection butt = new OffCentreSection(p[0], p[2], p[3]);
              double sling = p[0] * p[1];
              TaperedLimb limb = new TaperedLimb(butt, sling);
              OwnWeight weight = new OwnWeight(p[5], p[0], p[4], sling, 1000, Math.toRadians(p[6]));
              CantileverLimb lever = CantileverLimb.choked(p[4], sling, weight);
              LimbLoad load = new LimbLoad(p[7], p[8], p[9]);
              assertHardlyMissed(
                  limb, share -> worst(limb, lever, share, load, TaperTest::fibrePa));
              assertHardlyMissed(
                  limb, share -> worst(limb, lever, share, load, SectionStress::shearPa));
            });
  }

  private static double fibrePa(SectionStress stress) {
    return stress.bendingPa() + Math.abs(stress.axialPa());
  }

  private static double worst(
      TaperedLimb limb,
      CantileverLimb lever,
      double share,
      LimbLoad load,
      ToDoubleFunction<SectionStress> part) {
    return lever.at(share, load).stream()
        .map(limb.sectionAt(share)::under)
        .mapToDouble(part)
        .max()
        .orElseThrow();
  }

  private static void assertHardlyMissed(TaperedLimb limb, DoubleUnaryOperator stress) {
    double looked = limb.places().stream().mapToDouble(stress::applyAsDouble).max().orElseThrow();
    for (int i = 0; i <= 1000; i++) {
      double there = stress.applyAsDouble(i / 1000.0);
      assertTrue(there <= looked * 1.003, there / looked + " at " + i);
    }
  }

  @Test
  void aSectionBetweenCarriesWhatIsFartherOut() {
    OwnWeight weight = new OwnWeight(4, 0.2, 1000, 0);
    SectionLoad halfway =
        CantileverLimb.choked(2, 0.2, weight).at(0.25, new LimbLoad(-100, -500, 200)).get(0);
    double perMetre = Math.PI * 0.01 * NEWTONS_PER_M3;
    assertEquals(-100, halfway.axialN(), 1e-9);
    assertEquals(-500 * 1.5 - perMetre * 3.5 * 3.5 / 2, halfway.topMomentNm(), 1e-6);
    assertEquals(200 * 1.5, halfway.sideMomentNm(), 1e-9);
    assertEquals(10, halfway.eccentricMomentNm(), 1e-9);
    assertEquals(Math.hypot(500 + 3.5 * perMetre, 200), halfway.shearN(), 1e-6);
    assertEquals(Math.hypot(500, 200) * 0.1, halfway.torsionNm(), 1e-9);
  }

  /**
   * By hand: from 300 to 100 mm over 2 m and 1 m more of 100 mm is 0.0759218 m3, its first moment
   * 0.0667588 m4.
   */
  @Test
  void aCutConeAndTheRestOfTheLimb() {
    OwnWeight weight = new OwnWeight(3, 0.3, 2, 0.1, 1000, 0);
    assertEquals(-0.0759218224 * NEWTONS_PER_M3, weight.beyond(0).topN(), 1e-5);
    assertEquals(-0.0667588439 * NEWTONS_PER_M3, weight.topMomentNm(0), 1e-5);
    assertEquals(-0.0078539816 * NEWTONS_PER_M3, weight.beyond(2).topN(), 1e-5);
    assertEquals(-0.0039269908 * NEWTONS_PER_M3, weight.topMomentNm(2), 1e-5);
    assertEquals(0, weight.beyond(3).topN(), 0.0);
  }

  /** A cone weighs a third of its cylinder and has its middle at a quarter of its length. */
  @Test
  void aWholeCone() {
    OwnWeight cone = new OwnWeight(4, 0.2, 4, 0, 1000, 0);
    OwnWeight cylinder = new OwnWeight(4, 0.2, 1000, 0);
    assertEquals(cylinder.beyond(0).topN() / 3, cone.beyond(0).topN(), 1e-9);
    assertEquals(cone.beyond(0).topN() * 1, cone.topMomentNm(0), 1e-9);
  }

  @Test
  void agreesWithAddingUpSlices() {
    Samples.over(0, 10, 0.05, 1, 0.01, 10, 0.02, 1, 300, 1100, -100, 100, 0, 10)
        .first(
            256,
            p -> {
              double rise = Math.toRadians(p[5]);
              OwnWeight weight = new OwnWeight(p[0], p[1], p[2], p[3], p[4], rise);
              double from = p[6];
              int slices = 20000;
              double step = Math.max(0, p[0] - from) / slices;
              double newtons = 0;
              double moment = 0;
              for (int i = 0; i < slices; i++) {
                double out = (i + 0.5) * step;
                double share = Math.min(1, (from + out) / p[2]);
                double diameter = p[1] * (1 - share) + p[3] * share;
                double slice = p[4] * 9.80665 * Math.PI * diameter * diameter / 4 * step;
                newtons += slice;
                moment += slice * out;
              }
              LimbLoad beyond = weight.beyond(from);
              assertEquals(-newtons * Math.sin(rise), beyond.alongN(), 1e-6 * (1 + newtons));
              assertEquals(-newtons * Math.cos(rise), beyond.topN(), 1e-6 * (1 + newtons));
              assertEquals(-moment * Math.cos(rise), weight.topMomentNm(from), 1e-6 * (1 + moment));
            });
  }

  @Test
  void taperNeverMakesALimbHeavierAndAThickerSlingNeverLighter() {
    Samples.over(0, 10, 0.05, 1, 0, 10, 0, 1, 0, 10)
        .each(
            p -> {
              OwnWeight even = new OwnWeight(p[0], p[1], 1000, 0);
              OwnWeight tapered = new OwnWeight(p[0], p[1], p[2], p[1] * p[3], 1000, 0);
              OwnWeight thinner = new OwnWeight(p[0], p[1], p[2], 0.9 * p[1] * p[3], 1000, 0);
              assertLighter(tapered, even, p[4]);
              assertLighter(thinner, tapered, p[4]);
            });
  }

  private static void assertLighter(OwnWeight light, OwnWeight heavy, double from) {
    assertTrue(light.beyond(from).topN() >= heavy.beyond(from).topN() - 1e-9);
    assertTrue(light.topMomentNm(from) >= heavy.topMomentNm(from) - 1e-9);
  }

  @Test
  void aLimbWithoutASectionIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new TaperedLimb(null, 0.1));
  }
}
