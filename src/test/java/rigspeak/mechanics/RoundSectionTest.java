package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundSectionTest {
  @ParameterizedTest
  @PublishedTable("bending.csv")
  void bending(PublishedTable.Row row) {
    double diameter = row.number("diameter_mm") / 1000;
    RoundSection section =
        new RoundSection(diameter, row.number("hollow_mm") / row.number("diameter_mm"));
    SectionStress stress = section.under(new SectionLoad(0, -row.number("moment_nm"), 0, 0, 0, 0));
    assertEquals(row.number("stress_mpa"), stress.bendingPa() / 1e6, row.number("tolerance_mpa"));
  }

  /** Source 6: 98,170 mm3 is printed for 100 mm, cut off after four figures. */
  @Test
  void modulusOfAHundredMillimetres() {
    assertEquals(98170, RoundSection.solid(0.1).sectionModulusM3() * 1e9, 5);
  }

  /**
   * Source 6: a limb of 150 mm and 8.6 GPa with 1 kN at 1.5 m hangs down F L^3 / 3 E I = 5.264 mm.
   */
  @Test
  void secondMomentByAKnownDeflection() {
    double deflection =
        1000 * 1.5 * 1.5 * 1.5 / (3 * 8.6e9 * RoundSection.solid(0.15).secondMomentM4());
    assertEquals(5.264, deflection * 1000, 0.0005);
  }

  /** Source 6: 1 kN across 150 mm makes 0.0755 MPa, and 100 N m of twist 0.1509 MPa. */
  @Test
  void shearOfAForceAndOfATwist() {
    RoundSection limb = RoundSection.solid(0.15);
    double across = limb.under(new SectionLoad(0, 0, 0, 0, 1000, 0)).shearPa();
    double twist = limb.under(new SectionLoad(0, 0, 0, 0, 0, 100)).shearPa();
    assertEquals(0.0755, across / 1e6, 0.00005);
    assertEquals(0.1509, twist / 1e6, 0.00005);
    assertEquals(
        across + twist, limb.under(new SectionLoad(0, 0, 0, 0, 1000, 100)).shearPa(), 1e-6);
  }

  @ParameterizedTest
  @PublishedTable("hollow-loss.csv")
  void whatAHollowTakes(PublishedTable.Row row) {
    RoundSection solid = RoundSection.solid(0.4);
    RoundSection hollow = new RoundSection(0.4, row.number("hollow_ratio"));
    double tolerance = row.number("tolerance");
    assertEquals(
        row.number("area_loss_percent"), 100 - 100 * hollow.areaM2() / solid.areaM2(), tolerance);
    assertEquals(
        row.number("modulus_loss_percent"),
        100 - 100 * hollow.sectionModulusM3() / solid.sectionModulusM3(),
        tolerance);
    assertEquals(
        row.number("modulus_loss_percent"),
        100 - 100 * hollow.secondMomentM4() / solid.secondMomentM4(),
        tolerance);
  }

  /** Source 6: twice the diameter, an eighth of the stress, eight times the strength. */
  @Test
  void doublingTheDiameter() {
    SectionLoad bent = new SectionLoad(0, -900, 300, 0, 0, 40);
    SectionStress thin = new RoundSection(0.12, 0.3).under(bent);
    SectionStress thick = new RoundSection(0.24, 0.3).under(bent);
    assertEquals(8, thin.bendingPa() / thick.bendingPa(), 1e-12);
    assertEquals(8, thin.shearPa() / thick.shearPa(), 1e-12);
    SectionLoad straight = new SectionLoad(-900, 0, 0, 0, 900, 0);
    assertEquals(
        4,
        RoundSection.solid(0.12).under(straight).axialPa()
            / RoundSection.solid(0.24).under(straight).axialPa(),
        1e-12);
  }

  /** Area, second moment and half-ring first moment, integrated strip by strip. */
  @ParameterizedTest
  @CsvSource({"0.1, 0", "0.15, 0.2", "0.3, 0.5", "0.45, 0.7", "0.6, 0.9", "0.2, 0.99"})
  void agreesWithIntegratingStrips(double diameter, double hollow) {
    RoundSection section = new RoundSection(diameter, hollow);
    double outer = diameter / 2;
    double inner = outer * hollow;
    double area = strips(outer, 0) - strips(inner, 0);
    double second = strips(outer, 2) - strips(inner, 2);
    double first = (strips(outer, 1) - strips(inner, 1)) / 2;
    assertEquals(area, section.areaM2(), 1e-9 * area);
    assertEquals(second, section.secondMomentM4(), 1e-9 * second);
    assertEquals(second / outer, section.sectionModulusM3(), 1e-9 * second / outer);
    assertEquals(2 * second / outer, section.polarModulusM3(), 1e-9 * second / outer);
    double shearOfOneNewton = first / (second * 2 * (outer - inner));
    assertEquals(shearOfOneNewton * area, section.shearFactor(), 1e-8);
    assertEquals(
        shearOfOneNewton,
        section.under(new SectionLoad(0, 0, 0, 0, 1, 0)).shearPa(),
        1e-8 * shearOfOneNewton);
  }

  /** V Q(y) / I b(y) at every other height is less than at the neutral axis. */
  @ParameterizedTest
  @CsvSource({"0", "0.3", "0.7", "0.95"})
  void noOtherCutHasMoreShear(double hollow) {
    RoundSection section = new RoundSection(2, hollow);
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(8, 1e-6, 1e-10);
    UnivariateFunction width =
        y -> 2 * (Math.sqrt(1 - y * y) - Math.sqrt(Math.max(0, hollow * hollow - y * y)));
    for (double y = 0.05; y < 0.95; y += 0.05) {
      double first = integrator.integrate(1_000_000, h -> h * width.value(h), y, 1);
      double shear = first / (section.secondMomentM4() * width.value(y));
      assertTrue(shear * section.areaM2() < section.shearFactor(), "at height " + y);
    }
  }

  @Test
  void shearFactorRunsFromSolidToThinRing() {
    assertEquals(4.0 / 3, RoundSection.solid(0.2).shearFactor(), 1e-15);
    assertEquals(2, new RoundSection(0.2, 0.999999).shearFactor(), 1e-9);
  }

  @Test
  void aVanishingHollowIsSolid() {
    Samples.over(0.05, 1.5, -9000, 9000, -9000, 9000, -9000, 9000, 0, 9000, 0, 9000)
        .each(
            p -> {
              SectionLoad load = new SectionLoad(p[1], p[2], p[3], 0, p[4], p[5]);
              SectionStress solid = RoundSection.solid(p[0]).under(load);
              SectionStress nearly = new RoundSection(p[0], 1e-9).under(load);
              assertEquals(solid.bendingPa(), nearly.bendingPa(), 1e-8 * (1 + solid.bendingPa()));
              assertEquals(
                  solid.axialPa(), nearly.axialPa(), 1e-8 * (1 + Math.abs(solid.axialPa())));
              assertEquals(solid.shearPa(), nearly.shearPa(), 1e-8 * (1 + solid.shearPa()));
            });
  }

  /**
   * The integral of |y|^power over a disc; with y = radius sin t there is no edge to stumble on.
   */
  private static double strips(double radius, int power) {
    if (radius == 0) {
      return 0;
    }
    return 2
        * new IterativeLegendreGaussIntegrator(10, 1e-13, 1e-16)
            .integrate(
                1_000_000,
                t -> {
                  double half = radius * Math.cos(t);
                  return Math.pow(radius * Math.sin(t), power) * 2 * half * half;
                },
                0,
                Math.PI / 2);
  }
}
