package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.mechanics.CantileverLimb;
import rigspeak.mechanics.Directions;
import rigspeak.mechanics.EulerColumn;
import rigspeak.mechanics.HangingLegs;
import rigspeak.mechanics.Impact;
import rigspeak.mechanics.LimbAxes;
import rigspeak.mechanics.LimbLoad;
import rigspeak.mechanics.LoadedSupport;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.mechanics.OffCentreSection;
import rigspeak.mechanics.OpenSection;
import rigspeak.mechanics.OwnWeight;
import rigspeak.mechanics.RoundSection;
import rigspeak.mechanics.Section;
import rigspeak.mechanics.SectionLoad;
import rigspeak.mechanics.SectionStress;
import rigspeak.mechanics.SlingGrip;
import rigspeak.mechanics.StemBetween;
import rigspeak.mechanics.TaperedLimb;
import rigspeak.quantity.Force;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.Grip;
import rigspeak.rig.ResolvedRig.UnionRule;
import rigspeak.rig.Value;

/**
 * Every check of a rig at one point of its box and one state of the rope's friction.
 *
 * @param support the still load
 * @param peakFactor from still to the peak of movement
 * @param held which checks there are depends on the rig alone, not on the point
 */
record Trial(LoadedSupport support, double peakFactor, List<Held> held) {

  /**
   * A demand held against a capacity, both in the kind's unit.
   *
   * @param demand at least zero
   * @param capacity above zero
   */
  record Held(CheckKind kind, double demand, double capacity) {
    /** So small a capacity is none; it keeps the ratio finite. */
    private static final double NO_CAPACITY = 1e-9;

    double utilisation() {
      return demand / Math.max(capacity, NO_CAPACITY);
    }
  }

  static Trial of(ResolvedRig rig, Point point, Creep creep) {
    LoadedSupport support = LoadedSupport.of(rig, point, creep);
    return of(rig, point, support, peakFactor(rig, point));
  }

  /**
   * The support when it catches a climber.
   *
   * @param workingN tension of its working leg at the peak, newtons
   */
  static Trial caught(ResolvedRig rig, Point point, Creep creep, double workingN) {
    return of(rig, point, LoadedSupport.pulled(rig, point, creep, workingN), 1);
  }

  private static Trial of(ResolvedRig rig, Point point, LoadedSupport support, double peakFactor) {
    Bench bench = new Bench(rig, point, support.onLimb().times(peakFactor));
    bench.holdLimb();
    if (rig.stemBetween()) {
      bench.holdStem(support.anchorTensionN() * peakFactor);
    }
    bench.holdSling();
    double tightestN = Math.max(support.anchorTensionN(), support.workingTensionN());
    bench.hold(CheckKind.ROPE, tightestN * peakFactor, rig.gear().rope().allowed());
    return new Trial(support, peakFactor, List.copyOf(bench.held));
  }

  /** Ordinary movement, or the fall through the stated slack if that is worse. */
  private static double peakFactor(ResolvedRig rig, Point point) {
    double working = rig.movement().workingPeak().value();
    if (!rig.has(Measure.SLACK)) {
      return working;
    }
    double climberN = point.get(Measure.ALL_UP) * Force.STANDARD_GRAVITY * rig.tensionShare();
    double fallFactor = Impact.fallFactor(point.get(Measure.SLACK), point.get(Measure.ROPE_OUT));
    double arrestN = Impact.peakN(climberN, rig.movement().ropeModulus().value(), fallFactor);
    return Math.max(working, arrestN / climberN);
  }

  /** Where demands and capacities are put side by side. */
  private static final class Bench {
    /** A push this close to buckling is over its limit anyway; bending grows no further. */
    private static final double LEAST_STIFFNESS_LEFT = 0.05;

    /** The leg's length matters only where the rope goes on to the base; then it must be said. */
    private static final double UNKNOWN_LEG_M = 1;

    /** Beyond this share a hollow leaves no wood to reckon with. */
    private static final double MOST_HOLLOW = 0.98;

    private final ResolvedRig rig;
    private final Point point;
    private final LimbLoad peak;
    private final List<Held> held = new ArrayList<>();

    Bench(ResolvedRig rig, Point point, LimbLoad peak) {
      this.rig = rig;
      this.point = point;
      this.peak = peak;
    }

    void hold(CheckKind kind, double demand, double capacity) {
      held.add(new Held(kind, demand, capacity));
    }

    void holdLimb() {
      double diameterM = point.get(Measure.LIMB_DIAMETER);
      double buttM = rig.has(Measure.LIMB_BUTT) ? point.get(Measure.LIMB_BUTT) : diameterM;
      // No limb grows thicker outward, whatever the bounds of two diameters allow.
      double slingM = Math.min(diameterM, buttM);
      double hollow =
          Math.min(MOST_HOLLOW, point.get(Measure.CAVITY) * rig.hollow().widening().value());
      double outM = point.get(Measure.OUT);
      TaperedLimb taper = new TaperedLimb(section(buttM, hollow), slingM);
      OwnWeight weight = ownWeight(buttM, outM, slingM);
      CantileverLimb limb =
          rig.grip() instanceof Grip.Choked
              ? CantileverLimb.choked(outM, slingM, weight)
              : CantileverLimb.basket(outM, weight);
      double union = rig.union().factor(buttM / point.get(Measure.STEM_DIAMETER));
      Section thinnest = taper.sectionAt(1);
      double growth = bendingGrowth(thinnest, outM) * warping();

      List<SectionStress> atUnion =
          limb.atUnion(peak).stream()
              .map(load -> taper.butt().under(acrossTheUnion(load, rig.union())))
              .toList();
      List<SectionStress> atSling = limb.atSling(peak).stream().map(thinnest::under).toList();
      holdBending(CheckKind.LIMB_AT_UNION, atUnion, growth, union);
      holdBending(CheckKind.LIMB_AT_SLING, atSling, growth, 1);
      if (rig.has(Measure.LIMB_BUTT)) {
        holdBending(CheckKind.LIMB_BETWEEN, between(taper, limb), growth, 1);
      }
      double shearPa = rig.wood().shear().allowed();
      hold(CheckKind.SHEAR_AT_UNION, atUnion.get(0).shearPa(), shearPa * union);
      hold(CheckKind.SHEAR_AT_SLING, atSling.get(0).shearPa(), shearPa);
      hold(CheckKind.COLUMN, pushN(), columnN(thinnest, outM));
      if (rig.has(Measure.CAVITY)) {
        hold(CheckKind.SHELL, hollowAtThinnestWall(hollow), rig.hollow().limit().value());
      }
    }

    private Section section(double diameterM, double hollow) {
      return switch (rig.hollow().shape()) {
        case CENTERED -> new RoundSection(diameterM, hollow);
        case OFF_CENTER -> new OffCentreSection(diameterM, hollow, rig.hollow().shift().value());
        case OPEN -> new OpenSection(diameterM, hollow, rig.hollow().openRad().value());
      };
    }

    private double warping() {
      return rig.hollow().shape() == Value.CavityShape.OPEN ? rig.hollow().warping().value() : 1;
    }

    /** The centered hollow whose wall is as thin all round as this one's is at its thinnest. */
    private double hollowAtThinnestWall(double hollow) {
      return rig.hollow().shape() == Value.CavityShape.OFF_CENTER
          ? 1 - (1 - hollow) * (1 - rig.hollow().shift().value())
          : hollow;
    }

    private List<SectionStress> between(TaperedLimb taper, CantileverLimb limb) {
      List<SectionStress> stresses = new ArrayList<>();
      for (double place : taper.places()) {
        Section section = taper.sectionAt(place);
        limb.at(place, peak).forEach(load -> stresses.add(section.under(load)));
      }
      return stresses;
    }

    /** The stem at this union, bent by what pulls at the main point above it. */
    void holdStem(double tensionN) {
      LimbAxes axes = LimbAxes.ofRise(point.get(Measure.LIMB_RISE));
      // Where it was not said how the rope comes, the most that it can do is square to the limb.
      Vector3D toMain =
          rig.has(Measure.ANCHOR_LEG_ELEVATION)
              ? Directions.unit(
                  point.get(Measure.ANCHOR_LEG_ELEVATION), point.get(Measure.ANCHOR_LEG_BEARING))
              : axes.top();
      double legM =
          rig.has(Measure.ANCHOR_LEG_LENGTH) ? point.get(Measure.ANCHOR_LEG_LENGTH) : UNKNOWN_LEG_M;
      StemBetween stem = new StemBetween(axes.along(), point.get(Measure.OUT), toMain, legM);
      SectionLoad load =
          rig.has(Measure.BASE_LEG_RATIO)
              ? stem.throughMain(
                  tensionN,
                  tensionN * point.get(Measure.BASE_LEG_RATIO),
                  point.get(Measure.BASE_LEG_ELEVATION))
              : stem.endedAtMain(tensionN);
      SectionStress stress = RoundSection.solid(point.get(Measure.STEM_DIAMETER)).under(load);
      holdBending(CheckKind.STEM_BETWEEN, List.of(stress), 1, 1);
    }

    /**
     * Bending and axial stress add up in a straight line, each as a share of its own strength; for
     * tension along the grain the bending strength stands, which clear wood exceeds in tension
     * (Wood Handbook, chapter 5).
     */
    private void holdBending(
        CheckKind kind, List<SectionStress> cases, double growth, double union) {
      double bendingPa = rig.wood().bending().allowed();
      double pushShare = bendingPa / rig.wood().compression().allowed();
      double worstPa = 0;
      for (SectionStress stress : cases) {
        double axialPa = stress.axialPa() < 0 ? -stress.axialPa() * pushShare : stress.axialPa();
        worstPa = Math.max(worstPa, stress.bendingPa() * growth + axialPa);
      }
      hold(kind, worstPa, bendingPa * union);
    }

    /** A union holds less against lifting and side load than against load from above. */
    private static SectionLoad acrossTheUnion(SectionLoad load, UnionRule union) {
      double across = union.across().value();
      double topNm = load.topMomentNm() > 0 ? load.topMomentNm() / across : load.topMomentNm();
      return new SectionLoad(
          load.axialN(),
          topNm,
          load.sideMomentNm() / across,
          load.eccentricMomentNm(),
          load.shearN(),
          load.torsionNm());
    }

    private OwnWeight ownWeight(double buttM, double outM, double slingM) {
      if (!rig.has(Measure.LIMB_LENGTH)) {
        return OwnWeight.UNSTATED;
      }
      return new OwnWeight(
          point.get(Measure.LIMB_LENGTH),
          buttM,
          outM,
          slingM,
          rig.wood().density().value(),
          point.get(Measure.LIMB_RISE));
    }

    private double pushN() {
      return Math.max(0, -peak.alongN());
    }

    /** The push that the limb is trusted with; without a length there is nothing to buckle. */
    private double columnN(Section section, double outM) {
      return criticalN(section, outM) * rig.wood().design().value();
    }

    private double criticalN(Section section, double outM) {
      return EulerColumn.criticalLoadN(
          section, rig.wood().stiffness().allowed(), Math.max(outM, section.diameterM()));
    }

    /** A pushed limb bends more than its side loads alone would bend it. */
    private double bendingGrowth(Section section, double outM) {
      double left = EulerColumn.stiffnessLeft(pushN(), criticalN(section, outM));
      return 1 / Math.max(left, LEAST_STIFFNESS_LEFT);
    }

    void holdSling() {
      double pullN = peak.sizeN();
      rig.gear()
          .sling()
          .ifPresent(
              sling ->
                  hold(CheckKind.SLING, pullN, sling.allowed() * hitchLeaves() * bendLeaves()));
      rig.gear()
          .connector()
          .ifPresent(connector -> hold(CheckKind.CONNECTOR, pullN, connector.allowed()));
      if (rig.seat() != Value.Seat.STUB) {
        hold(CheckKind.SLIP, slidingN(), gripN());
      }
    }

    /** What a sling carries over what one straight leg of it would: a basket hangs on two. */
    private double hitchLeaves() {
      return rig.grip() instanceof Grip.Laid
          ? HangingLegs.basketFactor(point.get(Measure.BASKET_ANGLE))
          : rig.gear().choke().factor(Math.toDegrees(point.get(Measure.CHOKE_ANGLE)));
    }

    private double bendLeaves() {
      double ratio = point.get(Measure.LIMB_DIAMETER) / point.get(Measure.SLING_THICKNESS);
      return rig.gear().bend().factor(ratio);
    }

    /** A sling that sits against the union can only slide outward. */
    private double slidingN() {
      return rig.seat() == Value.Seat.UNION ? Math.max(0, peak.alongN()) : Math.abs(peak.alongN());
    }

    private double gripN() {
      double friction = point.get(Measure.BARK_FRICTION);
      double acrossN = peak.perpendicularN();
      if (rig.grip() instanceof Grip.Choked choked) {
        return SlingGrip.chokeN(acrossN, friction, choked.turns(), SlingGrip.SNUG_LOOP_RAD);
      }
      return SlingGrip.basketN(acrossN, friction, point.get(Measure.BASKET_ANGLE));
    }
  }
}
