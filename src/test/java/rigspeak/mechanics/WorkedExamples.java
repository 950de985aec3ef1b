package rigspeak.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.WorkedValue;
import rigspeak.catalogue.Reductions;
import rigspeak.mechanics.PublishedTable.Row;
import rigspeak.quantity.Force;

/**
 * Every row of the tables of values from outside, with what the program makes of it.
 *
 * <p>A new table needs an entry in {@link #ALL}; a test refuses a table that has none. A new row
 * needs nothing.
 */
public final class WorkedExamples {
  private static final double G = Force.STANDARD_GRAVITY;
  private static final Set<String> NAMES = Set.of("what", "unit");
  private static final Set<String> UNITS = Set.of("deg", "m", "mm", "kg", "percent");

  private WorkedExamples() {}

  /**
   * A table of values from outside.
   *
   * @param file beside this class
   * @param title what it is about
   * @param given the columns that a row starts from
   * @param results the columns that are compared
   * @param why ours is not always the printed figure; empty where it is
   */
  private record Table(
      String file, String title, List<String> given, List<Result> results, String why) {

    /** The rows as values, a row of several results in several. */
    List<WorkedValue> values() {
      List<WorkedValue> values = new ArrayList<>();
      for (Row row : PublishedTable.Reader.rows(file)) {
        for (Result result : results) {
          if (row.has(result.column())) {
            values.add(
                new WorkedValue(
                    String.join(", ", describe(row, result.name())),
                    row.text(result.column()),
                    result.ours().applyAsDouble(row),
                    row.text("source"),
                    result.provenance(row),
                    result.bound().test(row)));
          }
        }
      }
      return values;
    }

    private List<String> describe(Row row, String result) {
      List<String> parts = new ArrayList<>();
      for (String column : given) {
        if (row.has(column)) {
          parts.add(named(column, row.text(column)));
        }
      }
      if (!result.isEmpty()) {
        parts.add(result);
      }
      return parts;
    }

    /** The unit of a column's name goes behind its value: {@code inside_deg} is inside 60 deg. */
    private static String named(String column, String value) {
      if (NAMES.contains(column)) {
        return value;
      }
      int last = column.lastIndexOf('_');
      return UNITS.contains(column.substring(last + 1))
          ? column.substring(0, last).replace('_', ' ')
              + " "
              + value
              + " "
              + column.substring(last + 1)
          : column.replace('_', ' ') + " " + value;
    }
  }

  /**
   * A column that is compared.
   *
   * @param name with its unit
   * @param provenance empty where it is that of the row
   * @param bound whether ours is meant to be on the weak side of the row's value, not to meet it
   */
  private record Result(
      String column,
      String name,
      ToDoubleFunction<Row> ours,
      String provenance,
      Predicate<Row> bound) {
    Result(String column, String name, ToDoubleFunction<Row> ours) {
      this(column, name, ours, "");
    }

    Result(String column, String name, ToDoubleFunction<Row> ours, String provenance) {
      this(column, name, ours, provenance, row -> false);
    }

    static Result bound(
        String column, String name, ToDoubleFunction<Row> ours, Predicate<Row> bound) {
      return new Result(column, name, ours, "", bound);
    }

    String provenance(Row row) {
      return provenance.isEmpty() ? row.text("provenance") : provenance;
    }
  }

  private static final List<Table> ALL =
      List.of(
          new Table(
              "angle-factors.csv",
              "Load on a support over the rope's tension, both legs alike",
              List.of("inside_deg"),
              List.of(
                  new Result("printed", "factor as printed", WorkedExamples::angleFactor),
                  new Result("exact", "factor, exact", WorkedExamples::angleFactor, "computed")),
              "The catalogues print two decimals and cut some of them off: 1.8794 becomes 1.87,"
                  + " 0.8452 becomes 0.84. At 40 degrees that is the largest gap, 0.0094. Ours is"
                  + " the exact figure."),
          new Table(
              "block-examples.csv",
              "Load on a block",
              List.of("what"),
              List.of(
                  new Result(
                      "answer",
                      "load",
                      row ->
                          Resultant.sizeN(
                              row.number("tension"),
                              row.number("tension"),
                              row.degrees("inside_deg")))),
              "The printed answers use the catalogues' factors of two decimals, or say \"about\"."),
          new Table(
              "two-leg-shares.csv",
              "Share of a load on each of two legs",
              List.of("included_deg"),
              List.of(
                  new Result(
                      "share_percent",
                      "percent",
                      row -> 100 / Resultant.angleFactor(row.degrees("included_deg")))),
              "The article gives about 70 percent for a right angle; 1 / (2 cos 45) is 70.71."),
          new Table(
              "plane-forces.csv",
              "Resultant of forces in a plane",
              List.of("what"),
              List.of(
                  new Result("answer", "size", row -> planeForce(row).getNorm()),
                  new Result("answer_deg", "degrees", WorkedExamples::planeDegrees)),
              "The first answer is put together from components printed to three figures."),
          new Table(
              "friction.csv",
              "Load on a support with friction",
              List.of("friction", "inside_deg"),
              List.of(
                  new Result("slack_over_tight", "slack over tight leg", WorkedExamples::slack),
                  new Result(
                      "load_over_tight",
                      "load over tight leg",
                      row -> Resultant.sizeN(1, slack(row), row.degrees("inside_deg"))),
                  new Result(
                      "lean_deg",
                      "degrees from tight leg",
                      row ->
                          Math.toDegrees(
                              Resultant.leanRad(1, slack(row), row.degrees("inside_deg"))))),
              ""),
          new Table(
              "capstan.csv",
              "Tight over slack leg round a limb",
              List.of("friction", "turns"),
              List.of(
                  new Result(
                      "ratio",
                      "ratio",
                      row ->
                          Capstan.largestRatio(
                              row.number("friction"), 2 * Math.PI * row.number("turns")))),
              ""),
          new Table(
              "hardware-friction.csv",
              "Friction that loses as much as hardware over half a turn",
              List.of("what"),
              List.of(
                  new Result(
                      "friction",
                      "coefficient",
                      row -> Capstan.equivalentFriction(row.number("efficiency")))),
              ""),
          new Table(
              "bending.csv",
              "Bending stress",
              List.of("what"),
              List.of(new Result("stress_mpa", "MPa", WorkedExamples::bendingMpa)),
              "The moment of the first row is printed to three figures; 50 MPa is the exact"
                  + " question behind it."),
          new Table(
              "hollow-loss.csv",
              "What a hollow in the middle takes",
              List.of("hollow_ratio"),
              List.of(
                  new Result(
                      "area_loss_percent",
                      "percent of the area",
                      row -> 100 - 100 * hollow(row).areaM2() / RoundSection.solid(0.4).areaM2()),
                  new Result(
                      "modulus_loss_percent",
                      "percent of the section modulus",
                      row ->
                          100
                              - 100
                                  * hollow(row).sectionModulusM3()
                                  / RoundSection.solid(0.4).sectionModulusM3())),
              ""),
          new Table(
              "cavity-losses.csv",
              "What real cavities take",
              List.of("what", "hollow_ratio"),
              List.of(
                  new Result(
                      "coder_percent",
                      "percent of the second moment by Coder's formula",
                      row -> secondMomentLoss(inCavity(row, 0))),
                  Result.bound(
                      "second_moment_percent",
                      "percent of the second moment",
                      row -> secondMomentLoss(inCavity(row, isCentred(row) ? 0 : 1)),
                      row -> !isCentred(row)),
                  new Result(
                      "area_percent", "percent of the area", row -> areaLoss(inCavity(row, 0)))),
              "Wagener's column is not compared: the hollow ratio is worked back from it. The real"
                  + " hollows are not round. Section A's lies in the middle. Of section B it is not"
                  + " known where the hollow lies; ours is the most that it can take, touching the"
                  + " bark."),
          new Table(
              "off-centre-sections.csv",
              "Sections with a hollow off the middle",
              List.of("diameter_mm", "hollow_ratio", "shift_ratio"),
              List.of(
                  new Result("area_cm2", "area cm2", row -> offCentre(row).areaM2() * 1e4),
                  new Result(
                      "centroid_shift_mm",
                      "centroid off the axis mm",
                      row -> offCentre(row).centroidShiftM() * 1e3),
                  new Result(
                      "least_cm4",
                      "least second moment cm4",
                      row -> offCentre(row).secondMomentM4() * 1e8),
                  new Result(
                      "greatest_cm4",
                      "greatest second moment cm4",
                      row -> offCentre(row).greatestSecondMomentM4() * 1e8),
                  new Result(
                      "modulus_cm3",
                      "least modulus cm3",
                      row -> offCentre(row).leastModulusM3() * 1e6)),
              ""),
          new Table(
              "off-centre-torsion.csv",
              "Shear of 1 N m of twist on 200 mm with a hollow off the middle",
              List.of("hollow_ratio", "shift_ratio"),
              List.of(
                  Result.bound(
                      "stress_pa",
                      "Pa",
                      row ->
                          twistedPa(
                              new OffCentreSection(
                                  0.2, row.number("hollow_ratio"), row.number("shift_ratio"))),
                      row -> true)),
              "Ours is a bound on the weak side; how far above the solution it may be stands in the"
                  + " rows. The mesh gives two thousandths."),
          new Table(
              "open-sections.csv",
              "Sections with an open cavity",
              List.of("diameter_mm", "hollow_ratio", "open_deg"),
              List.of(
                  new Result("area_cm2", "area cm2", row -> open(row).areaM2() * 1e4),
                  new Result(
                      "centroid_shift_mm",
                      "centroid off the axis mm",
                      row -> open(row).centroidShiftM() * 1e3),
                  new Result(
                      "least_cm4",
                      "least second moment cm4",
                      row -> open(row).secondMomentM4() * 1e8),
                  new Result(
                      "greatest_cm4",
                      "greatest second moment cm4",
                      row -> open(row).greatestSecondMomentM4() * 1e8),
                  new Result(
                      "modulus_cm3", "least modulus cm3", row -> open(row).leastModulusM3() * 1e6)),
              "The script turned the load round in steps, so its least modulus is a little too"
                  + " large."),
          new Table(
              "open-torsion.csv",
              "Shear of 1 N m of twist on 200 mm with an open cavity",
              List.of("hollow_ratio", "open_deg"),
              List.of(
                  Result.bound(
                      "stress_pa",
                      "Pa",
                      row ->
                          twistedPa(
                              new OpenSection(
                                  0.2, row.number("hollow_ratio"), row.degrees("open_deg"))),
                      row -> true)),
              "Ours is a bound on the weak side. The rows also have the shear centre, which no"
                  + " number of ours shows by itself; a test holds the shear of a force against"
                  + " it."),
          new Table(
              "stem-between.csv",
              "The stem between a redirect and the main point",
              List.of("what"),
              List.of(
                  new Result("axial_n", "axial N", row -> stemBetween(row).axialN()),
                  new Result("bending_nm", "bending N m", row -> stemBetween(row).bendingNm()),
                  new Result("shear_n", "shear N", row -> stemBetween(row).shearN()),
                  new Result("torsion_nm", "torsion N m", row -> stemBetween(row).torsionNm())),
              ""),
          new Table(
              "combined-stress.csv",
              "Bending, axial load and torsion together",
              List.of("what"),
              List.of(
                  new Result("normal_mpa", "normal MPa", r -> stress(r).mostStretchedPa() / 1e6),
                  new Result("shear_mpa", "shear MPa", r -> stress(r).shearPa() / 1e6),
                  new Result("largest_mpa", "largest MPa", r -> principal(r).largestPa() / 1e6),
                  new Result("smallest_mpa", "smallest MPa", r -> principal(r).smallestPa() / 1e6),
                  new Result(
                      "largest_shear_mpa",
                      "largest shear MPa",
                      r -> principal(r).largestShearPa() / 1e6)),
              ""),
          new Table(
              "sling-legs.csv",
              "Legs of a sling",
              List.of("horizontal_deg"),
              List.of(
                  new Result(
                      "tension_factor",
                      "tension over share",
                      row -> HangingLegs.tensionFactor(included(row))),
                  new Result(
                      "basket_percent",
                      "basket percent of one leg",
                      row -> 100 * HangingLegs.basketFactor(included(row)))),
              "The printed basket ratings are rounded down to tens, which is the safe way; ours is"
                  + " exact. Three printed tension factors (65, 40 and 35 degrees) are off in their"
                  + " last figure."),
          new Table(
              "choke-angles.csv",
              "Strength of a choke by its angle",
              List.of("choke_deg"),
              List.of(new Result("factor", "factor", r -> Reductions.choke(r.number("choke_deg")))),
              ""),
          new Table(
              "bend-strength.csv",
              "Strength left over a bend",
              List.of("bend_over_rope"),
              List.of(
                  new Result(
                      "percent",
                      "percent",
                      r -> 100 * Reductions.bend(r.number("bend_over_rope")))),
              ""),
          new Table(
              "impact.csv",
              "Peak of a fall stopped by the rope",
              List.of("what"),
              List.of(new Result("peak_kn", "kN", WorkedExamples::impactKn)),
              "One listed figure (3 % at factor 0.3) is 0.005 above its own formula."),
          new Table(
              "rope-modulus.csv",
              "Modulus of a rope by its stretch",
              List.of("added_kg", "strain_percent"),
              List.of(
                  new Result(
                      "modulus_kn",
                      "kN",
                      row ->
                          Impact.modulusN(
                                  row.number("added_kg") * G, row.number("strain_percent") / 100)
                              / 1000)),
              ""),
          new Table(
              "lost-support.csv",
              "Slack that a lost support leaves",
              List.of("anchor_leg_m", "climber_leg_m", "inside_deg"),
              List.of(
                  new Result(
                      "slack_m",
                      "m",
                      row ->
                          LostSupport.slackM(
                              row.number("anchor_leg_m"),
                              row.number("climber_leg_m"),
                              row.degrees("inside_deg")))),
              ""),
          new Table(
              "letting-go.csv",
              "Fall, catch and swing when a support lets go",
              List.of("previous_leg_m", "climber_leg_m", "inside_deg"),
              List.of(
                  new Result("slack_m", "slack m", row -> letGo(row).rope().slackM()),
                  new Result("free_fall_m", "free fall m", row -> letGo(row).rope().freeFallM()),
                  new Result(
                      "taut_deg",
                      "degrees from plumb at the catch",
                      row -> Math.toDegrees(letGo(row).rope().tautFromPlumbRad())),
                  new Result("drop_m", "drop m", row -> letGo(row).dropM()),
                  new Result("out_m", "out m", row -> letGo(row).rope().outM()),
                  new Result("lowest_ms", "m/s when lowest", r -> letGo(r).swing().lowestSpeedMS()),
                  new Result(
                      "equivalent_fall_m",
                      "equivalent fall m",
                      row -> letGo(row).swing().lowestEquivalentFallM()),
                  new Result(
                      "lowest_weights",
                      "weights when lowest",
                      row -> letGo(row).swing().lowestTensionInWeights()),
                  new Result("catch_kn", "catch kN", row -> letGo(row).catchTensionN() / 1000)),
              ""),
          new Table(
              "swing-tension.csv",
              "Tension at the lowest point of a swing",
              List.of("what"),
              List.of(new Result("tension_n", "N", WorkedExamples::swingTensionN)),
              ""),
          new Table(
              "swing-speed.csv",
              "Speed at the lowest point of a swing",
              List.of("what"),
              List.of(
                  new Result(
                      "speed_ms",
                      "m/s",
                      row ->
                          new Pendulum(row.number("rope_m"), row.degrees("start_deg"), 0)
                              .lowestSpeedMS())),
              "31.0 m was worked out with 9.81 m/s2, ours with 9.80665."),
          new Table(
              "swing-period.csv",
              "Period of a swing over that of a small one (up to 90 degrees)",
              List.of("what"),
              List.of(new Result("over_small", "ratio", WorkedExamples::periodOverSmall)),
              "What starts above the height of the support falls first, so that nothing of ours"
                  + " swings from 120 or 150 degrees; there the elliptic integral of the test"
                  + " stands, which the other rows check."),
          new Table(
              "swing-time.csv",
              "Time of a swing",
              List.of("what", "quarters"),
              List.of(new Result("time_s", "s", WorkedExamples::swingS)),
              ""),
          new Table(
              SingleValues.TABLE,
              "Values that stand alone",
              List.of("what", "unit"),
              List.of(new Result("value", "", SingleValues::ours)),
              "The section modulus was printed with its last figures cut off; the size of the two"
                  + " cables' pull is 1649.7."));

  /** The files that have an entry. */
  static List<String> files() {
    return ALL.stream().map(Table::file).toList();
  }

  /** All tables in Markdown. */
  public static String markdown() {
    StringBuilder text = new StringBuilder();
    for (Table table : ALL) {
      text.append("\n## ").append(table.title()).append("\n\n`").append(table.file());
      text.append("`\n\n").append(WorkedValue.table(table.values()));
      if (!table.why().isEmpty()) {
        text.append('\n').append(table.why()).append('\n');
      }
    }
    return text.toString();
  }

  /** All values of all tables. */
  public static List<WorkedValue> values() {
    return ALL.stream().flatMap(table -> table.values().stream()).toList();
  }

  private static double angleFactor(Row row) {
    return Resultant.angleFactor(row.degrees("inside_deg"));
  }

  private static Vector3D planeForce(Row row) {
    Vector3D two =
        Resultant.ofLegsN(
            row.number("first"),
            Directions.unit(0, row.degrees("first_deg")),
            row.number("second"),
            Directions.unit(0, row.degrees("second_deg")));
    return Resultant.ofLegsN(
        two.getNorm(),
        two.normalize(),
        row.number("third"),
        Directions.unit(0, row.degrees("third_deg")));
  }

  /** Counted on past half a turn, as the answer may be. */
  private static double planeDegrees(Row row) {
    double answer = row.number("answer_deg");
    double ours = Math.toDegrees(Directions.bearingRad(planeForce(row)));
    return answer + Math.IEEEremainder(ours - answer, 360);
  }

  private static double slack(Row row) {
    return Capstan.tensionRatio(
            row.number("friction"), Resultant.wrapRad(row.degrees("inside_deg")))
        .low();
  }

  private static double bendingMpa(Row row) {
    double diameter = row.number("diameter_mm");
    return new RoundSection(diameter / 1000, row.number("hollow_mm") / diameter)
            .under(new SectionLoad(0, -row.number("moment_nm"), 0, 0, 0, 0))
            .bendingPa()
        / 1e6;
  }

  private static RoundSection hollow(Row row) {
    return new RoundSection(0.4, row.number("hollow_ratio"));
  }

  private static boolean isCentred(Row row) {
    return row.text("concentric").equals("yes");
  }

  private static Section inCavity(Row row, double shift) {
    return new OffCentreSection(0.4, row.number("hollow_ratio"), shift);
  }

  private static double secondMomentLoss(Section section) {
    return 100 - 100 * section.secondMomentM4() / RoundSection.solid(0.4).secondMomentM4();
  }

  private static double areaLoss(Section section) {
    return 100 - 100 * section.areaM2() / RoundSection.solid(0.4).areaM2();
  }

  private static OffCentreSection offCentre(Row row) {
    return new OffCentreSection(
        row.number("diameter_mm") / 1000, row.number("hollow_ratio"), row.number("shift_ratio"));
  }

  private static OpenSection open(Row row) {
    return new OpenSection(
        row.number("diameter_mm") / 1000, row.number("hollow_ratio"), row.degrees("open_deg"));
  }

  private static double twistedPa(Section section) {
    return section.under(new SectionLoad(0, 0, 0, 0, 0, 1)).shearPa();
  }

  private static SectionLoad stemBetween(Row row) {
    return new StemBetween(
            LimbAxes.ofRise(row.degrees("rise_deg")).along(),
            row.number("out_m"),
            Directions.unit(row.degrees("leg_elevation_deg"), row.degrees("leg_bearing_deg")),
            row.number("leg_m"))
        .throughMain(
            row.number("tension_n"),
            row.number("anchor_tension_n"),
            row.degrees("anchor_elevation_deg"));
  }

  private static SectionStress stress(Row row) {
    return RoundSection.solid(row.number("diameter_mm") / 1000)
        .under(
            new SectionLoad(
                row.number("axial_n"), 0, row.number("moment_nm"), 0, 0, row.number("torsion_nm")));
  }

  private static PrincipalStress principal(Row row) {
    SectionStress stress = stress(row);
    return PrincipalStress.of(stress.mostStretchedPa(), stress.shearPa());
  }

  private static double included(Row row) {
    return Math.PI - 2 * row.degrees("horizontal_deg");
  }

  private static double impactKn(Row row) {
    double modulusN =
        row.has("modulus_n")
            ? row.number("modulus_n")
            : Impact.modulusN(100 * G, row.number("strain_percent") / 100);
    return Impact.peakN(row.number("mass_kg") * G, modulusN, row.number("fall_factor")) / 1000;
  }

  /** The working leg plumb, 90 kg, a rope of 25 kN, as the rows say. */
  private static LettingGo letGo(Row row) {
    FreedRope rope =
        FreedRope.ofLegs(
            Directions.unit(row.degrees("inside_deg") - Math.PI / 2, 0),
            row.number("previous_leg_m"),
            Directions.unit(-Math.PI / 2, 0),
            row.number("climber_leg_m"));
    return LettingGo.of(rope, 90 * G, 25_000);
  }

  private static double swingTensionN(Row row) {
    double startRad =
        row.has("start_deg")
            ? row.degrees("start_deg")
            : Math.acos(1 - row.number("drop_m") / row.number("rope_m"));
    return row.number("weight_n")
        * new Pendulum(row.number("rope_m"), startRad, 0).lowestTensionInWeights();
  }

  private static double periodOverSmall(Row row) {
    double amplitudeRad = row.degrees("amplitude_deg");
    return amplitudeRad <= Math.PI / 2
        ? quarterS(7, amplitudeRad) / (Math.PI / 2 * Math.sqrt(7 / G))
        : TimedMotionTest.overSmall(amplitudeRad);
  }

  private static double swingS(Row row) {
    return row.number("quarters")
        * quarterS(row.number("rope_m"), row.degrees("amplitude_deg"))
        * Math.sqrt(G / row.number("gravity_ms2"));
  }

  private static double quarterS(double ropeM, double amplitudeRad) {
    return TimedMotion.of(Falls.taut(ropeM, amplitudeRad))
        .first(TimedMotion.What.LOWEST)
        .orElseThrow()
        .timeS();
  }
}
