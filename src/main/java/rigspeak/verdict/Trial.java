package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import rigspeak.mechanics.CantileverLimb;
import rigspeak.mechanics.EulerColumn;
import rigspeak.mechanics.HangingLegs;
import rigspeak.mechanics.Impact;
import rigspeak.mechanics.LimbLoad;
import rigspeak.mechanics.LoadedSupport;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.mechanics.OwnWeight;
import rigspeak.mechanics.RoundSection;
import rigspeak.mechanics.SectionLoad;
import rigspeak.mechanics.SectionStress;
import rigspeak.mechanics.SlingGrip;
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
      double hollow =
          Math.min(MOST_HOLLOW, point.get(Measure.CAVITY) * rig.hollow().widening().value());
      double outM = point.get(Measure.OUT);
      RoundSection section = new RoundSection(diameterM, hollow);
      OwnWeight weight = ownWeight(diameterM);
      CantileverLimb limb =
          rig.grip() instanceof Grip.Choked
              ? CantileverLimb.choked(outM, diameterM, weight)
              : CantileverLimb.basket(outM, weight);
      double union = rig.union().factor(diameterM / point.get(Measure.STEM_DIAMETER));
      double growth = bendingGrowth(section, outM);

      List<SectionStress> atUnion =
          limb.atUnion(peak).stream()
              .map(load -> section.under(acrossTheUnion(load, rig.union())))
              .toList();
      List<SectionStress> atSling = limb.atSling(peak).stream().map(section::under).toList();
      holdBending(CheckKind.LIMB_AT_UNION, atUnion, growth, union);
      holdBending(CheckKind.LIMB_AT_SLING, atSling, growth, 1);
      double shearPa = rig.wood().shear().allowed();
      hold(CheckKind.SHEAR_AT_UNION, atUnion.get(0).shearPa(), shearPa * union);
      hold(CheckKind.SHEAR_AT_SLING, atSling.get(0).shearPa(), shearPa);
      hold(CheckKind.COLUMN, pushN(), columnN(section, outM));
      if (rig.has(Measure.CAVITY)) {
        hold(CheckKind.SHELL, hollow, rig.hollow().limit().value());
      }
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

    private OwnWeight ownWeight(double diameterM) {
      if (!rig.has(Measure.LIMB_LENGTH)) {
        return OwnWeight.UNSTATED;
      }
      return new OwnWeight(
          point.get(Measure.LIMB_LENGTH),
          diameterM,
          rig.wood().density().value(),
          point.get(Measure.LIMB_RISE));
    }

    private double pushN() {
      return Math.max(0, -peak.alongN());
    }

    /** The push that the limb is trusted with; without a length there is nothing to buckle. */
    private double columnN(RoundSection section, double outM) {
      return criticalN(section, outM) * rig.wood().design().value();
    }

    private double criticalN(RoundSection section, double outM) {
      return EulerColumn.criticalLoadN(
          section, rig.wood().stiffness().allowed(), Math.max(outM, section.diameterM()));
    }

    /** A pushed limb bends more than its side loads alone would bend it. */
    private double bendingGrowth(RoundSection section, double outM) {
      double left = EulerColumn.stiffnessLeft(pushN(), criticalN(section, outM));
      return 1 / Math.max(left, LEAST_STIFFNESS_LEFT);
    }

    void holdSling() {
      double pullN = peak.sizeN();
      rig.gear()
          .sling()
          .ifPresent(sling -> hold(CheckKind.SLING, pullN, sling.allowed() * slingLegs()));
      rig.gear()
          .connector()
          .ifPresent(connector -> hold(CheckKind.CONNECTOR, pullN, connector.allowed()));
      if (rig.seat() != Value.Seat.STUB) {
        hold(CheckKind.SLIP, slidingN(), gripN());
      }
    }

    /** What a sling carries over what one straight leg of it would: a basket hangs on two. */
    private double slingLegs() {
      return rig.grip() instanceof Grip.Laid
          ? HangingLegs.basketFactor(point.get(Measure.BASKET_ANGLE))
          : 1;
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
