package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Two legs, a limb, and what must not change when the whole scene is turned or mirrored. */
class WholeRigTest {
  private static final double[] RIGS = {
    -90, 90, -180, 180, -90, 90, -180, 180, 100, 3000, 100, 3000, -90, 90, -180, 180
  };

  @Test
  void mirroringTheLegsMirrorsTheLoad() {
    Samples.over(RIGS)
        .each(
            p -> {
              LimbLoad here = load(p, 1);
              LimbLoad there = load(p, -1);
              assertEquals(here.alongN(), there.alongN(), 1e-9);
              assertEquals(here.topN(), there.topN(), 1e-9);
              assertEquals(here.sideN(), -there.sideN(), 1e-9);
            });
  }

  /**
   * Another library turns legs and limb to any heading in the world; read back as bearings from the
   * limb's heading, they load it as before.
   */
  @Test
  void turningTheRigInPlanChangesNothing() {
    Samples.over(RIGS)
        .each(
            p -> {
              var turn =
                  QuaternionRotation.fromAxisAngle(
                      org.apache.commons.geometry.euclidean.threed.Vector3D.Unit.PLUS_Z,
                      Math.toRadians(p[7]));
              double[] turned = p.clone();
              for (int leg = 0; leg < 2; leg++) {
                Vector3D u =
                    Directions.unit(Math.toRadians(p[2 * leg]), Math.toRadians(p[2 * leg + 1]));
                var world =
                    turn.apply(
                        org.apache.commons.geometry.euclidean.threed.Vector3D.of(
                            u.getX(), u.getY(), u.getZ()));
                Vector3D seen = new Vector3D(world.getX(), world.getY(), world.getZ());
                turned[2 * leg] = Math.toDegrees(Directions.elevationRad(seen));
                turned[2 * leg + 1] = Math.toDegrees(Directions.bearingRad(seen)) - p[7];
              }
              LimbLoad here = load(p, 1);
              LimbLoad there = load(turned, 1);
              assertEquals(here.alongN(), there.alongN(), 1e-6);
              assertEquals(here.topN(), there.topN(), 1e-6);
              assertEquals(here.sideN(), there.sideN(), 1e-6);
            });
  }

  @Test
  void splittingKeepsTheSize() {
    Samples.over(RIGS)
        .each(
            p -> {
              LimbLoad load = load(p, 1);
              double inside =
                  Resultant.insideRad(
                      Directions.unit(Math.toRadians(p[0]), Math.toRadians(p[1])),
                      Directions.unit(Math.toRadians(p[2]), Math.toRadians(p[3])));
              assertEquals(Resultant.sizeN(p[4], p[5], inside), load.sizeN(), 1e-5);
              double shares =
                  load.alongShare() * load.alongShare()
                      + load.topShare() * load.topShare()
                      + load.sideShare() * load.sideShare();
              assertEquals(1, shares, 1e-12);
            });
  }

  private static LimbLoad load(double[] p, int hand) {
    return LimbAxes.ofRise(Math.toRadians(p[6]))
        .split(
            Resultant.ofLegsN(
                p[4],
                Directions.unit(Math.toRadians(p[0]), hand * Math.toRadians(p[1])),
                p[5],
                Directions.unit(Math.toRadians(p[2]), hand * Math.toRadians(p[3]))));
  }
}
