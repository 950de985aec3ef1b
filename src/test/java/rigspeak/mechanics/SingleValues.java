package rigspeak.mechanics;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.catalogue.Reductions;
import rigspeak.quantity.Force;

/** What the program makes of each of the values that stand alone, by the names of their table. */
final class SingleValues {
  static final String TABLE = "single-values.csv";

  private static final Map<String, DoubleSupplier> OURS = new LinkedHashMap<>();

  private SingleValues() {}

  /**
   * @param row of {@link #TABLE}
   * @throws IllegalArgumentException if the table has a name that nothing is known of
   */
  static double ours(PublishedTable.Row row) {
    DoubleSupplier ours = OURS.get(row.text("what"));
    if (ours == null) {
      throw new IllegalArgumentException("nothing is worked out for " + row.text("what"));
    }
    return ours.getAsDouble();
  }

  static {
    cables();
    sections();
    slings();
    falls();
  }

  private static void cables() {
    Vector3D first = new Vector3D(-16, 8, 11).normalize();
    Vector3D second = new Vector3D(-16, 8, -16).normalize();
    Vector3D alone = Resultant.ofLegsN(840, first, 0, second);
    OURS.put("first cable of two on one stake: x", alone::getX);
    OURS.put("first cable of two on one stake: y", alone::getY);
    OURS.put("first cable of two on one stake: z", alone::getZ);
    Vector3D both = Resultant.ofLegsN(840, first, 1200, second);
    OURS.put("both cables on one stake: x", both::getX);
    OURS.put("both cables on one stake: y", both::getY);
    OURS.put("both cables on one stake: z", both::getZ);
    OURS.put("both cables on one stake: size", both::getNorm);
    OURS.put("both cables on one stake: angle from x", () -> degrees(both, Vector3D.PLUS_I));
    OURS.put("both cables on one stake: angle from y", () -> degrees(both, Vector3D.PLUS_J));
    OURS.put("both cables on one stake: angle from z", () -> degrees(both, Vector3D.PLUS_K));
    OURS.put(
        "quarter turn with friction 0.2: tight over slack",
        () -> Capstan.largestRatio(0.2, Math.PI / 2));
  }

  private static double degrees(Vector3D one, Vector3D other) {
    return Math.toDegrees(Vector3D.angle(one, other));
  }

  private static void sections() {
    RoundSection limb = RoundSection.solid(0.15);
    OURS.put("section modulus of 100 mm", () -> RoundSection.solid(0.1).sectionModulusM3() * 1e9);
    OURS.put(
        "deflection of 150 mm with 1 kN at 1.5 m and 8.6 GPa",
        () -> 1e3 * 1000 * Math.pow(1.5, 3) / (3 * 8.6e9 * limb.secondMomentM4()));
    OURS.put(
        "shear of 1 kN across 150 mm",
        () -> limb.under(new SectionLoad(0, 0, 0, 0, 1000, 0)).shearPa() / 1e6);
    OURS.put(
        "shear of 100 N m of twist on 150 mm",
        () -> limb.under(new SectionLoad(0, 0, 0, 0, 0, 100)).shearPa() / 1e6);
    OURS.put(
        "doubled diameter: times as strong",
        () -> RoundSection.solid(0.3).sectionModulusM3() / limb.sectionModulusM3());
    OURS.put("shaft for 12 kN m and 50 kN m within 80 MPa of shear", SingleValues::shaftMm);
    OURS.put(
        "Euler load of 150 mm and 8.6 GPa over 3 m",
        () -> EulerColumn.criticalLoadN(limb, 8.6e9, 3) / 1000);
  }

  private static double shaftMm() {
    return 1000
        * new BrentSolver(1e-9)
            .solve(
                100,
                d -> {
                  SectionStress stress =
                      RoundSection.solid(d).under(new SectionLoad(0, 12e3, 0, 0, 0, 50e3));
                  return PrincipalStress.of(stress.bendingPa(), stress.shearPa()).largestShearPa()
                      - 80e6;
                },
                0.05,
                0.5);
  }

  private static void slings() {
    OURS.put("choke of 0.75 at 10 degrees", () -> 0.75 * Reductions.choke(10));
    OURS.put("choke of 0.80 at 100 degrees", () -> 0.80 * Reductions.choke(100));
    OURS.put(
        "sling leg of 120 over a height of 96 with 1200",
        () -> 1200 * HangingLegs.tensionFactor(2 * Math.acos(96.0 / 120)));
    OURS.put(
        "sling leg of 10 over a height of 5 with 500",
        () -> 500 * HangingLegs.tensionFactor(2 * Math.acos(5.0 / 10)));
    OURS.put(
        "choked sling of one turn at friction 0.2 holds of 1 kN",
        () -> SlingGrip.chokeN(1000, 0.2, 1, Math.PI / 2));
    OURS.put(
        "basket with parallel legs at friction 0.3 holds of 1 kN",
        () -> SlingGrip.basketN(1000, 0.3, 0));
  }

  private static void falls() {
    OURS.put("fall factor of 4.6 m on 2.6 m", () -> Impact.fallFactor(4.6, 2.6));
    OURS.put(
        "load let go without slack: times its weight", () -> Impact.peakN(900, 40_000, 0) / 900);
    OURS.put(
        "peak of 1 kN at factor 0.3 with 4 % of stretch",
        () -> Impact.peakN(1000, Impact.modulusN(1000, 0.04), 0.3));
    OURS.put(
        "modulus of a climbing line of 7 % at 540 lbf",
        () -> Impact.modulusN(Force.ofPoundsForce(540).newtons(), 0.07) / 1000);
    Pendulum swing = new Pendulum(10, 0, 4.2);
    double weightN = 56 * 9.8;
    String problem = "56 kg at 4.2 m/s on 10.0 m: ";
    OURS.put(problem + "end of the swing", () -> Math.toDegrees(swing.end().fromPlumbRad()));
    OURS.put(
        problem + "tension at the end",
        () -> weightN * swing.tensionInWeights(swing.end().fromPlumbRad()));
    OURS.put(
        problem + "tension at the lowest point", () -> weightN * swing.lowestTensionInWeights());
    OURS.put(
        "passing plumb at v^2 = 3 g L: leaves the circle at",
        () ->
            Math.toDegrees(
                new Pendulum(10, 0, Math.sqrt(3 * Force.STANDARD_GRAVITY * 10))
                    .end()
                    .fromPlumbRad()));
  }
}
