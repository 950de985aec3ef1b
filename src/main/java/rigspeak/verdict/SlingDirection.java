package rigspeak.verdict;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.catalogue.Conflict;
import rigspeak.mechanics.Capstan;
import rigspeak.mechanics.Directions;
import rigspeak.mechanics.LoadedSupport;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.mechanics.Resultant;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Interval;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;

/** Where the climber sees the sling point, against the rest of what was said of the rope. */
final class SlingDirection {
  private static final int SAMPLES = 512;

  private SlingDirection() {}

  /** Why where the sling points cannot go with the rest of what was said, if it cannot. */
  static Optional<Conflict> conflict(ResolvedRig rig) {
    if (!rig.has(Measure.SLING_ELEVATION)) {
      return Optional.empty();
    }
    return switch (rig.turn()) {
      case LEGS, ONE_LEG -> besideLegs(rig);
      case ANGLE_AND_SLING -> besideAnAngle(rig);
    };
  }

  /** A loaded sling lies along its load; if it was said to lie elsewhere, something is wrong. */
  private static Optional<Conflict> besideLegs(ResolvedRig rig) {
    Cone sling = Cone.of(rig, Measure.SLING_ELEVATION, Measure.SLING_BEARING);
    Box box = Box.ofChecks(rig);
    double nearest = Math.PI;
    for (double[] shares : box.evenly(SAMPLES)) {
      for (Creep creep : Creep.values()) {
        Vector3D pull = LoadedSupport.of(rig, box.at(shares), creep).pullN();
        nearest = Math.min(nearest, Vector3D.angle(sling.axis(), pull));
      }
    }
    if (nearest <= sling.halfRad()) {
      return Optional.empty();
    }
    Vector3D pull = LoadedSupport.of(rig, rig.nominal(), Creep.NONE).pullN();
    return Optional.of(
        new Conflict.SlingElsewhere(
            Angle.ofRadians(Vector3D.angle(sling.axis(), pull)),
            Angle.ofRadians(Directions.elevationRad(pull)),
            Angle.ofRadians(Directions.bearingRad(pull)),
            Angle.ofRadians(rig.measures().get(Measure.SLING_ELEVATION).nominal()),
            Angle.ofRadians(rig.measures().get(Measure.SLING_BEARING).nominal())));
  }

  /** Each leg leans from the sling by what the angle and the rope's friction allow. */
  private static Optional<Conflict> besideAnAngle(ResolvedRig rig) {
    Cone sling = Cone.of(rig, Measure.SLING_ELEVATION, Measure.SLING_BEARING);
    Interval lean = lean(rig);
    if (rig.has(Measure.WORKING_LEG_ELEVATION)) {
      Cone leg = Cone.of(rig, Measure.WORKING_LEG_ELEVATION, Measure.WORKING_LEG_BEARING);
      if (!leg.canLean(sling, lean)) {
        return Optional.of(away(rig, Slot.WORKING_LEG, leg, sling));
      }
    } else {
      double lowest = Directions.elevationRad(sling.axis()) - sling.halfRad() - lean.high();
      if (lowest > 0) {
        return Optional.of(new Conflict.WorkingLegUp());
      }
    }
    if (rig.has(Measure.ANCHOR_LEG_ELEVATION)) {
      Cone leg = Cone.of(rig, Measure.ANCHOR_LEG_ELEVATION, Measure.ANCHOR_LEG_BEARING);
      if (!leg.canLean(sling, lean)) {
        return Optional.of(away(rig, Slot.ANCHOR_LEG, leg, sling));
      }
    }
    return Optional.empty();
  }

  private static Conflict away(ResolvedRig rig, Slot slot, Cone leg, Cone sling) {
    return new Conflict.LegAwayFromSling(
        slot,
        Angle.ofRadians(Vector3D.angle(leg.axis(), sling.axis())),
        Angle.ofRadians(rig.measures().get(Measure.INSIDE_ANGLE).nominal() / 2));
  }

  /** Angles from either leg to the load: half the inside angle, less or more by friction. */
  private static Interval lean(ResolvedRig rig) {
    Estimate inside = rig.measures().get(Measure.INSIDE_ANGLE);
    double friction = rig.measures().get(Measure.ROPE_FRICTION).high();
    double least = Math.PI;
    double most = 0;
    for (double angle : new double[] {inside.low(), inside.nominal(), inside.high()}) {
      double ratio = Capstan.largestRatio(friction, Resultant.wrapRad(angle));
      least = Math.min(least, Resultant.leanRad(ratio, 1, angle));
      most = Math.max(most, Resultant.leanRad(1, ratio, angle));
    }
    return Interval.of(least, most);
  }

  /** A direction as said, and how far off it can be. */
  private record Cone(Vector3D axis, double halfRad) {
    static Cone of(ResolvedRig rig, Measure elevation, Measure bearing) {
      Estimate rise = rig.measures().get(elevation);
      return new Cone(
          Directions.unit(rise.nominal(), rig.measures().get(bearing).nominal()),
          Math.max(rise.high() - rise.nominal(), rise.nominal() - rise.low()));
    }

    boolean canLean(Cone sling, Interval lean) {
      double apart = Vector3D.angle(axis, sling.axis());
      double doubt = halfRad + sling.halfRad();
      return apart >= lean.low() - doubt && apart <= lean.high() + doubt;
    }
  }
}
