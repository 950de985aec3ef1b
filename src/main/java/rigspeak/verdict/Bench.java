package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.mechanics.CantileverLimb;
import rigspeak.mechanics.EulerColumn;
import rigspeak.mechanics.HangingLegs;
import rigspeak.mechanics.LimbAxes;
import rigspeak.mechanics.LimbLoad;
import rigspeak.mechanics.LoadedSupport;
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
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.Grip;
import rigspeak.rig.Value;
import rigspeak.verdict.Trial.Held;

/** Where demands and capacities of one trial are put side by side. */
final class Bench {
  /** A push this close to buckling is over its limit anyway; bending grows no further. */
  private static final double LEAST_STIFFNESS_LEFT = 0.05;

  /** The leg's length matters only where the rope goes on to the base; then it must be said. */
  private static final double UNKNOWN_LEG_M = 1;

  /** Beyond this share a hollow leaves no wood to reckon with. */
  private static final double MOST_HOLLOW = 0.98;

  private final ResolvedRig rig;
  private final Point point;
  private final LimbLoad peak;
  private final double anchorTensionN;
  private final double tightestN;

  private final double outM;
  private final double buttM;
  private final double slingM;
  private final double hollow;
  private final TaperedLimb taper;
  private final CantileverLimb limb;
  private final double criticalN;
  private final double bendingGrowth;

  /** Empty until they are asked for. */
  private List<SectionStress> atUnion = List.of();

  private List<SectionStress> atSling = List.of();

  Bench(Trial trial) {
    rig = trial.rig();
    point = trial.point();
    double peakFactor = trial.peakFactor();
    peak = trial.support().onLimb().times(peakFactor);
    anchorTensionN = trial.support().anchorTensionN() * peakFactor;
    tightestN = Math.max(anchorTensionN, trial.support().workingTensionN() * peakFactor);
    outM = point.get(Measure.OUT);
    double diameterM = point.get(Measure.LIMB_DIAMETER);
    buttM = rig.has(Measure.THICK_END) ? point.get(Measure.THICK_END) : diameterM;
    // No limb grows thicker outward, whatever the bounds of two diameters allow.
    slingM = Math.min(diameterM, buttM);
    hollow = Math.min(MOST_HOLLOW, point.get(Measure.CAVITY) * rig.hollow().widening().value());
    taper = new TaperedLimb(section(buttM), slingM);
    limb =
        rig.grip() instanceof Grip.Choked
            ? CantileverLimb.choked(outM, slingM, ownWeight())
            : CantileverLimb.basket(outM, ownWeight());
    criticalN = criticalN();
    bendingGrowth = bendingGrowth();
  }

  Held hold(CheckKind kind) {
    double bendingPa = rig.wood().bending().allowed();
    double shearPa = rig.wood().shear().allowed();
    return switch (kind) {
      case LIMB_AT_UNION -> new Held(kind, bendingPa(atUnion()), bendingPa * unionLeaves());
      case LIMB_AT_SLING -> new Held(kind, bendingPa(atSling()), bendingPa);
      case LIMB_BETWEEN -> new Held(kind, bendingPa(between()), bendingPa);
      case SHEAR_AT_UNION -> new Held(kind, atUnion().get(0).shearPa(), shearPa * unionLeaves());
      case SHEAR_AT_SLING -> new Held(kind, atSling().get(0).shearPa(), shearPa);
      case STEM_BETWEEN -> new Held(kind, straightSumPa(atStem(), 1), bendingPa);
      case COLUMN -> new Held(kind, pushN(), criticalN * rig.wood().design().value());
      case SHELL -> new Held(kind, hollowAtThinnestWall(), rig.hollow().limit().value());
      case SLING -> new Held(kind, peak.sizeN(), slingN());
      case SLIP -> new Held(kind, slidingN(), gripN());
      case CONNECTOR ->
          new Held(kind, peak.sizeN(), rig.gear().connector().orElseThrow().allowed());
      case ROPE -> new Held(kind, tightestN, rig.gear().rope().allowed());
    };
  }

  /* ---- the limb ---- */

  private Section section(double diameterM) {
    return switch (rig.hollow().shape()) {
      case CENTERED -> new RoundSection(diameterM, hollow);
      case OFF_CENTER -> new OffCentreSection(diameterM, hollow, rig.hollow().shift().value());
      case OPEN -> new OpenSection(diameterM, hollow, rig.hollow().openRad().value());
    };
  }

  private OwnWeight ownWeight() {
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

  private List<SectionStress> atUnion() {
    if (atUnion.isEmpty()) {
      List<SectionLoad> loads = new ArrayList<>(limb.atUnion(peak));
      loads.replaceAll(this::acrossTheUnion);
      atUnion = stresses(taper.butt(), loads);
    }
    return atUnion;
  }

  private List<SectionStress> atSling() {
    if (atSling.isEmpty()) {
      atSling = stresses(thinnest(), limb.atSling(peak));
    }
    return atSling;
  }

  private List<SectionStress> between() {
    List<SectionStress> stresses = new ArrayList<>();
    for (double place : taper.places()) {
      Section section = taper.sectionAt(place);
      stresses.addAll(stresses(section, limb.at(place, peak)));
    }
    return stresses;
  }

  private static List<SectionStress> stresses(Section section, List<SectionLoad> loads) {
    List<SectionStress> stresses = new ArrayList<>(loads.size());
    for (SectionLoad load : loads) {
      stresses.add(section.under(load));
    }
    return stresses;
  }

  private Section thinnest() {
    return taper.sectionAt(1);
  }

  private double unionLeaves() {
    return rig.union().factor(buttM / point.get(Measure.STEM_DIAMETER));
  }

  /** A union holds less against lifting and side load than against load from above. */
  private SectionLoad acrossTheUnion(SectionLoad load) {
    double across = rig.union().across().value();
    double topNm = load.topMomentNm() > 0 ? load.topMomentNm() / across : load.topMomentNm();
    return new SectionLoad(
        load.axialN(),
        topNm,
        load.sideMomentNm() / across,
        load.eccentricMomentNm(),
        load.shearN(),
        load.torsionNm());
  }

  private double bendingPa(List<SectionStress> cases) {
    double worstPa = 0;
    for (SectionStress stress : cases) {
      worstPa = Math.max(worstPa, straightSumPa(stress, bendingGrowth));
    }
    return worstPa;
  }

  /**
   * Bending and axial stress add up in a straight line, each as a share of its own strength; for
   * tension along the grain the bending strength stands, which clear wood exceeds in tension (Wood
   * Handbook, chapter 5).
   */
  private double straightSumPa(SectionStress stress, double growth) {
    double pushShare = rig.wood().bending().allowed() / rig.wood().compression().allowed();
    double axialPa = stress.axialPa() < 0 ? -stress.axialPa() * pushShare : stress.axialPa();
    return stress.bendingPa() * growth + axialPa;
  }

  /** A pushed limb bends more than its side loads alone would bend it, and so does an open one. */
  private double bendingGrowth() {
    double left = EulerColumn.stiffnessLeft(pushN(), criticalN);
    double warping =
        rig.hollow().shape() == Value.CavityShape.OPEN ? rig.hollow().warping().value() : 1;
    return warping / Math.max(left, LEAST_STIFFNESS_LEFT);
  }

  private double pushN() {
    return Math.max(0, -peak.alongN());
  }

  /** Without a length there is nothing to buckle: no limb counts as shorter than it is thick. */
  private double criticalN() {
    return EulerColumn.criticalLoadN(
        thinnest(), rig.wood().stiffness().allowed(), Math.max(outM, slingM));
  }

  /** The centered hollow whose wall is as thin all round as this one's is at its thinnest. */
  private double hollowAtThinnestWall() {
    return rig.hollow().shape() == Value.CavityShape.OFF_CENTER
        ? 1 - (1 - hollow) * (1 - rig.hollow().shift().value())
        : hollow;
  }

  /** The stem at this union, bent by what pulls at the main point above it. */
  private SectionStress atStem() {
    LimbAxes axes = LimbAxes.ofRise(point.get(Measure.LIMB_RISE));
    // Where it was not said how the rope comes, the most that it can do is square to the limb.
    Vector3D toMain =
        rig.has(Measure.ANCHOR_LEG_ELEVATION) ? LoadedSupport.anchorLeg(point) : axes.top();
    double legM =
        rig.has(Measure.ANCHOR_LEG_LENGTH) ? point.get(Measure.ANCHOR_LEG_LENGTH) : UNKNOWN_LEG_M;
    StemBetween stem = new StemBetween(axes.along(), outM, toMain, legM);
    SectionLoad load =
        rig.has(Measure.BASE_LEG_RATIO)
            ? stem.throughMain(
                anchorTensionN,
                anchorTensionN * point.get(Measure.BASE_LEG_RATIO),
                point.get(Measure.BASE_LEG_ELEVATION))
            : stem.endedAtMain(anchorTensionN);
    return RoundSection.solid(point.get(Measure.STEM_DIAMETER)).under(load);
  }

  /* ---- the sling ---- */

  private double slingN() {
    return rig.gear().sling().orElseThrow().allowed() * hitchLeaves() * bendLeaves();
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
