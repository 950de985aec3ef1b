package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Resolution;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.meaning.Understanding;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;

/** From a rig as said to the load on its support. */
class LoadedSupportTest {
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Catalogue CATALOGUE = Catalogue.bundled();

  /** 100 kg by standard gravity. */
  private static final double WEIGHT_N = 980.665;

  private static ResolvedRig rig(String rope) {
    String all =
        "all up one hundred kilograms species unknown live wood limb twelve inches limb level"
            + " out two feet stem twenty inches union sound sling choked two wraps over carabiner "
            + rope;
    Meaning.Values values = (Meaning.Values) UNDERSTANDING.understand(all, Optional.empty());
    Rig said = Rig.empty();
    for (Statement statement : values.statements()) {
      Statement.Value value = (Statement.Value) statement;
      said = said.with(value.slot(), value.said());
    }
    return ((Resolution.Known) CATALOGUE.resolve(RopePath.alone(said), Place.redirectNumber(1)))
        .rig();
  }

  /**
   * Load over the tight leg's tension, and its angle from that leg, where the other leg is slacker
   * by exp(-mu beta): computed from the capstan equation and the law of cosines (the friction table
   * of docs/sources.md, source 4).
   */
  @ParameterizedTest
  @CsvSource({
    "0,   60, 1.7321, 30.00",
    "0,   90, 1.4142, 45.00",
    "0,  120, 1.0000, 60.00",
    "0.1, 60, 1.5712, 26.55",
    "0.2, 90, 1.2383, 36.14",
    "0.3,120, 0.8962, 44.90",
    "0.5, 60, 1.2141, 14.50",
  })
  void frictionSlackensTheAnchorLeg(
      double friction, double insideDeg, double loadOverTension, double fromTightLegDeg) {
    ResolvedRig rig = rig("stationary rope anchor leg up sixty left working leg straight down");
    var point =
        rig.nominal()
            .with(Measure.ROPE_FRICTION, friction)
            .with(Measure.ANCHOR_LEG_ELEVATION, Math.toRadians(insideDeg - 90));
    LoadedSupport support = LoadedSupport.of(rig, point, Creep.TOWARD_CLIMBER);
    assertEquals(WEIGHT_N, support.workingTensionN(), 1e-9);
    assertEquals(insideDeg, Math.toDegrees(support.insideRad().orElseThrow()), 1e-9);
    assertEquals(loadOverTension, support.pullN().getNorm() / WEIGHT_N, 0.5e-4);
    double fromWorkingLeg = Vector3D.angle(support.pullN(), Vector3D.MINUS_K);
    assertEquals(fromTightLegDeg, Math.toDegrees(fromWorkingLeg), 0.005);
  }

  @Test
  void frictionTowardTheAnchorTightensTheAnchorLeg() {
    ResolvedRig rig = rig("stationary rope anchor leg level left working leg straight down");
    var point = rig.nominal().with(Measure.ROPE_FRICTION, 0.2);
    LoadedSupport support = LoadedSupport.of(rig, point, Creep.TOWARD_ANCHOR);
    // A quarter turn with friction 0.2: exp(0.2 pi / 2) = 1.3691.
    assertEquals(1.3691 * WEIGHT_N, support.anchorTensionN(), 0.5e-4 * WEIGHT_N);
    assertEquals(1.3691 * WEIGHT_N, support.onLimb().sideN(), 0.5e-4 * WEIGHT_N);
    assertEquals(-WEIGHT_N, support.onLimb().topN(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "stationary rope, 1",
    "moving rope both parts, 1",
    "moving rope single part, 0.5",
    "stationary rope single part, 1"
  })
  void aSinglePartOfAMovingRopeCarriesHalf(String rope, double share) {
    ResolvedRig rig = rig(rope + " anchor leg level left working leg straight down");
    LoadedSupport support = LoadedSupport.of(rig, rig.nominal(), Creep.NONE);
    assertEquals(share * WEIGHT_N, support.workingTensionN(), 1e-9);
    assertEquals(share * WEIGHT_N, support.anchorTensionN(), 1e-9);
  }

  @Test
  void anAngleAndASlingMakeTheSameLoadAsTheirLegs() {
    LoadedSupport legs = still("anchor leg level toward the stem working leg straight down");
    LoadedSupport angle = still("inside angle ninety sling points down forty five toward the stem");
    LoadedSupport bend = still("bend ninety sling points down forty five toward the stem");
    assertTrue(Vector3D.distance(legs.pullN(), angle.pullN()) < 1e-6, angle.toString());
    assertTrue(Vector3D.distance(legs.pullN(), bend.pullN()) < 1e-6, bend.toString());
  }

  /** Said by its angle, a rope carries as much in each leg as one whose legs were said. */
  @ParameterizedTest
  @CsvSource({"TOWARD_ANCHOR, 1.3691", "TOWARD_CLIMBER, 0.7304", "NONE, 1"})
  void frictionActsOnAnAngleAsOnLegs(Creep creep, double anchorOverWorking) {
    ResolvedRig rig =
        rig("stationary rope inside angle ninety sling points down forty five toward the stem");
    var point = rig.nominal().with(Measure.ROPE_FRICTION, 0.2);
    LoadedSupport support = LoadedSupport.of(rig, point, creep);
    assertEquals(WEIGHT_N, support.workingTensionN(), 1e-9);
    // A quarter turn with friction 0.2: exp(0.2 pi / 2) = 1.3691, and 1 / 1.3691 = 0.7304.
    assertEquals(anchorOverWorking * WEIGHT_N, support.anchorTensionN(), 0.5e-4 * WEIGHT_N);
    // Legs square to each other: Pythagoras.
    assertEquals(
        Math.hypot(1, anchorOverWorking) * WEIGHT_N, support.pullN().getNorm(), 1e-4 * WEIGHT_N);
  }

  private static LoadedSupport still(String rope) {
    ResolvedRig rig = rig("stationary rope " + rope);
    return LoadedSupport.of(rig, rig.nominal(), Creep.NONE);
  }

  @Test
  void aSlideIsLikeliestBetweenTheEndsWhereTheLegsLieEitherSideOfTheLimb() {
    // Both legs lie 80 degrees off the limb, left and right of it: with the same tension in both,
    // what is across the limb cancels and all the load pulls along it.
    ResolvedRig rig = rig("stationary rope anchor leg down ten left working leg down ten right");
    var point =
        rig.nominal()
            .with(Measure.ANCHOR_LEG_ELEVATION, 0)
            .with(Measure.WORKING_LEG_ELEVATION, 0)
            .with(Measure.ANCHOR_LEG_BEARING, Math.toRadians(80))
            .with(Measure.WORKING_LEG_BEARING, Math.toRadians(-80));
    LimbLoad between = LoadedSupport.of(rig, point, Creep.NEAREST_THE_LIMB).onLimb();
    assertEquals(1, between.alongShare(), 1e-6);
    // Friction 0.2 over the turn of 20 degrees: k = exp(0.2 * 0.34907) = 1.07231; along the limb
    // (1 + k) cos 80 = 0.35985, across it (k - 1) sin 80 = 0.07121, so a share of 0.98097.
    for (Creep end : new Creep[] {Creep.TOWARD_ANCHOR, Creep.TOWARD_CLIMBER}) {
      LimbLoad atEnd = LoadedSupport.of(rig, point, end).onLimb();
      assertEquals(0.98097, atEnd.alongShare(), 1e-4, end.toString());
    }
  }
}
