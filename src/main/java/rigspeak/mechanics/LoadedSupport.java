package rigspeak.mechanics;

import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.quantity.Force;
import rigspeak.quantity.Interval;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;

/**
 * What the rope does to one support while the climber hangs still.
 *
 * <p>Model: the working leg carries the climber's weight, or half of it where only one part of a
 * moving rope is captured, times what the friction of supports nearer the climber makes of it;
 * friction here lets the anchor leg carry more or less again (Euler-Eytelwein). Where all that the
 * rope carries leaves along one leg, that leg alone pulls. Left out: the rope's own weight, and
 * what the climber pulls or braces with hands and feet.
 *
 * @param workingTensionN newtons in the working leg
 * @param anchorTensionN newtons in the anchor leg; 0 where there is none
 * @param insideRad angle between the legs; none where there is one leg
 * @param pullN the load on the sling in the frame of the sling, newtons
 * @param onLimb the same on the limb's own axes
 */
public record LoadedSupport(
    double workingTensionN,
    double anchorTensionN,
    OptionalDouble insideRad,
    Vector3D pullN,
    LimbLoad onLimb) {

  /** How the rope's friction at the support stands. */
  public enum Creep {
    /** Both legs carry the same. */
    NONE,
    /** The rope is about to run toward the anchor: the anchor leg carries more. */
    TOWARD_ANCHOR,
    /** The rope is about to run toward the climber: the anchor leg carries less. */
    TOWARD_CLIMBER,
    /** Somewhere between: as the load lies nearest to the limb, where a sling slides first. */
    NEAREST_THE_LIMB
  }

  /** The support of this rig, with every number as at this point. */
  public static LoadedSupport of(ResolvedRig rig, Point point, Creep creep) {
    double climberN = point.get(Measure.ALL_UP) * Force.STANDARD_GRAVITY * rig.tensionShare();
    double beyond = rig.has(Measure.BEYOND) ? point.get(Measure.BEYOND) : 1;
    return pulled(rig, point, creep, climberN * beyond);
  }

  /**
   * The same support with another tension in its working leg.
   *
   * @param workingN newtons, at least 0
   */
  public static LoadedSupport pulled(ResolvedRig rig, Point point, Creep creep, double workingN) {
    LimbAxes axes = LimbAxes.ofRise(point.get(Measure.LIMB_RISE));
    return switch (rig.turn()) {
      case LEGS -> ofLegs(point, creep, workingN, axes);
      case ANGLE_AND_SLING -> ofAngle(point, creep, workingN, axes);
      case ONE_LEG -> ofOneLeg(point, workingN, axes);
    };
  }

  /** Unit vector along the anchor leg, away from the support. */
  public static Vector3D anchorLeg(Point point) {
    return Directions.unit(
        point.get(Measure.ANCHOR_LEG_ELEVATION), point.get(Measure.ANCHOR_LEG_BEARING));
  }

  /** Unit vector along the working leg, away from the support. */
  public static Vector3D workingLeg(Point point) {
    return Directions.unit(
        point.get(Measure.WORKING_LEG_ELEVATION), point.get(Measure.WORKING_LEG_BEARING));
  }

  private static LoadedSupport ofOneLeg(Point point, double workingN, LimbAxes axes) {
    Vector3D pull = workingLeg(point).scalarMultiply(workingN);
    return new LoadedSupport(workingN, 0, OptionalDouble.empty(), pull, axes.split(pull));
  }

  private static LoadedSupport ofLegs(Point point, Creep creep, double workingN, LimbAxes axes) {
    Vector3D anchor = anchorLeg(point);
    Vector3D working = workingLeg(point);
    double insideRad = Resultant.insideRad(anchor, working);
    Interval allowed = allowedRatio(point, insideRad);
    double ratio =
        creep == Creep.NEAREST_THE_LIMB
            ? Resultant.ratioNearestAxis(axes.along(), working, anchor, allowed)
            : ratio(allowed, creep);
    double anchorN = workingN * ratio;
    Vector3D pull = Resultant.ofLegsN(anchorN, anchor, workingN, working);
    return new LoadedSupport(
        workingN, anchorN, OptionalDouble.of(insideRad), pull, axes.split(pull));
  }

  private static LoadedSupport ofAngle(Point point, Creep creep, double workingN, LimbAxes axes) {
    double insideRad = point.get(Measure.INSIDE_ANGLE);
    double anchorN = workingN * ratio(allowedRatio(point, insideRad), creep);
    Vector3D sling =
        Directions.unit(point.get(Measure.SLING_ELEVATION), point.get(Measure.SLING_BEARING));
    Vector3D pull = sling.scalarMultiply(Resultant.sizeN(workingN, anchorN, insideRad));
    return new LoadedSupport(
        workingN, anchorN, OptionalDouble.of(insideRad), pull, axes.split(pull));
  }

  private static Interval allowedRatio(Point point, double insideRad) {
    return Capstan.tensionRatio(point.get(Measure.ROPE_FRICTION), Resultant.wrapRad(insideRad));
  }

  /** Where the sling is seen to point, the ratio turns nothing; both legs alike will do. */
  private static double ratio(Interval allowed, Creep creep) {
    return switch (creep) {
      case NONE, NEAREST_THE_LIMB -> 1;
      case TOWARD_ANCHOR -> allowed.high();
      case TOWARD_CLIMBER -> allowed.low();
    };
  }
}
