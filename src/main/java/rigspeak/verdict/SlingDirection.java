package rigspeak.verdict;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.catalogue.Conflict;
import rigspeak.mechanics.Directions;
import rigspeak.mechanics.LoadedSupport;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.quantity.Angle;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;

/** Where the climber sees the sling point, against where two legs pull it. */
final class SlingDirection {
  private static final int SAMPLES = 512;

  private SlingDirection() {}

  /** A loaded sling lies along its load; if it was said to lie elsewhere, something is wrong. */
  static Optional<Conflict> conflict(ResolvedRig rig) {
    Estimate said = rig.measures().get(Measure.SLING_ELEVATION);
    if (said == null || rig.turn() != ResolvedRig.Turn.LEGS) {
      return Optional.empty();
    }
    double saidBearing = rig.measures().get(Measure.SLING_BEARING).nominal();
    Vector3D seen = Directions.unit(said.nominal(), saidBearing);
    double allowed = Math.max(said.high() - said.nominal(), said.nominal() - said.low());
    Box box = new Box(rig);
    double nearest = Math.PI;
    for (double[] shares : box.evenly(SAMPLES)) {
      for (Creep creep : Creep.values()) {
        Vector3D pull = LoadedSupport.of(rig, box.at(shares), creep).pullN();
        nearest = Math.min(nearest, Vector3D.angle(seen, pull));
      }
    }
    if (nearest <= allowed) {
      return Optional.empty();
    }
    Vector3D pull = LoadedSupport.of(rig, rig.nominal(), Creep.NONE).pullN();
    return Optional.of(
        new Conflict.SlingElsewhere(
            Angle.ofRadians(Vector3D.angle(seen, pull)),
            Angle.ofRadians(Directions.elevationRad(pull)),
            Angle.ofRadians(Directions.bearingRad(pull)),
            Angle.ofRadians(said.nominal()),
            Angle.ofRadians(saidBearing)));
  }
}
