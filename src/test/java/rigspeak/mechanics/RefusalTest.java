package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number that comes in: what is no number is refused, and the range ends where it says. */
class RefusalTest {
  private static final double UP = 1 + 1e-12;
  private static final double PI = Math.PI;
  private static final double TINY = Double.MIN_VALUE;
  private static final double HUGE = Double.MAX_VALUE;
  private static final Vector3D X = Vector3D.PLUS_I;
  private static final RoundSection LIMB = RoundSection.solid(0.2);
  private static final StemBetween STEM = new StemBetween(X, 1, Vector3D.PLUS_K, 5);

  record Entry(String what, DoubleFunction<Object> call, List<Double> taken, List<Double> refused) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Entry> entries() {
    return Stream.of(
        within("elevation", v -> Directions.unit(v, 0), -PI, PI),
        within("bearing", v -> Directions.unit(0, v), -4 * PI, 4 * PI),
        within("rise", LimbAxes::ofRise, -PI * 2 / 3, PI * 2 / 3),
        within("along", v -> new LimbLoad(v, 0, 0), -1e9, 1e9),
        within("top", v -> new LimbLoad(0, v, 0), -1e9, 1e9),
        within("side", v -> new LimbLoad(0, 0, v), -1e9, 1e9),
        notNegative("first tension", v -> Resultant.ofLegsN(v, X, 1, X)),
        notNegative("second tension", v -> Resultant.ofLegsN(1, X, v, X)),
        notNegative("first tension of size", v -> Resultant.sizeN(v, 1, 1)),
        notNegative("second tension of size", v -> Resultant.sizeN(1, v, 1)),
        within("inside of size", v -> Resultant.sizeN(1, 1, v), 0, PI),
        notNegative("first tension of lean", v -> Resultant.leanRad(v, 1, 1)),
        notNegative("second tension of lean", v -> Resultant.leanRad(1, v, 1)),
        within("inside of lean", v -> Resultant.leanRad(1, 1, v), 0, PI),
        within("inside of factor", Resultant::angleFactor, 0, PI),
        within("inside of wrap", Resultant::wrapRad, 0, PI),
        within("friction", v -> Capstan.tensionRatio(v, 1), 0, 2),
        within("friction of ratio", v -> Capstan.largestRatio(v, 1), 0, 2),
        within("turn", v -> Capstan.tensionRatio(0.1, v), 0, 40 * PI),
        within("turn of ratio", v -> Capstan.largestRatio(0.1, v), 0, 40 * PI),
        entry("efficiency", Capstan::equivalentFriction, List.of(0.002, 1.0), 0.001, 0, UP, -1),
        within("diameter", RoundSection::solid, 0.001, 10),
        entry("hollow", v -> new RoundSection(1, v), List.of(0.0, 1 - 1e-12), 1, -TINY, 2),
        within("off-centre diameter", v -> new OffCentreSection(v, 0.5, 0.5), 0.001, 10),
        entry(
            "off-centre hollow",
            v -> new OffCentreSection(1, v, 0.5),
            List.of(0.0, 1 - 1e-12),
            1,
            -TINY,
            2),
        within("shift", v -> new OffCentreSection(1, 0.5, v), 0, 1),
        within("open diameter", v -> new OpenSection(v, 0.5, 0.5), 0.001, 10),
        entry("open hollow", v -> new OpenSection(1, v, 0.5), List.of(0.0, 1 - 1e-12), 1, -TINY, 2),
        within("opening", v -> new OpenSection(1, 0.5, v), 0, PI),
        within("another diameter", new OpenSection(1, 0.5, 1)::withDiameter, 0.001, 10),
        finite("axial force", v -> new SectionLoad(v, 0, 0, 0, 0, 0)),
        finite("top moment", v -> new SectionLoad(0, v, 0, 0, 0, 0)),
        finite("side moment", v -> new SectionLoad(0, 0, v, 0, 0, 0)),
        notNegative("eccentric moment", v -> new SectionLoad(0, 0, 0, v, 0, 0)),
        notNegative("shear", v -> new SectionLoad(0, 0, 0, 0, v, 0)),
        notNegative("torsion", v -> new SectionLoad(0, 0, 0, 0, 0, v)),
        finite("axial stress", v -> new SectionStress(v, 0, 0)),
        entry("largest stress", v -> new SectionStress(0, v, 0), List.of(HUGE), -TINY),
        notNegative("bending stress", v -> new SectionStress(0, v, 0)),
        notNegative("shear stress", v -> new SectionStress(0, 0, v)),
        entry("normal", v -> PrincipalStress.of(v, 0), List.of(-1e300, 0.0, 1e300)),
        entry("shear of circle", v -> PrincipalStress.of(0, v), List.of(-1e300, 0.0, 1e300)),
        entry("largest", v -> new PrincipalStress(v, -HUGE), List.of(-HUGE, 0.0, HUGE)),
        entry("smallest", v -> new PrincipalStress(HUGE, v), List.of(-HUGE, 0.0, HUGE)),
        within("length", v -> new OwnWeight(v, 0.1, 1000, 0), 0, 100),
        within("limb diameter", v -> new OwnWeight(1, v, 1000, 0), 0, 10),
        within("density", v -> new OwnWeight(1, 0.1, v, 0), 0, 2000),
        within("weight's rise", v -> new OwnWeight(1, 0.1, 1000, v), -PI * 2 / 3, PI * 2 / 3),
        notNegative("distance", v -> new OwnWeight(1, 0.1, 1000, 0).beyond(v)),
        notNegative("distance of moment", v -> new OwnWeight(1, 0.1, 1000, 0).topMomentNm(v)),
        within("sling of a weight", v -> new OwnWeight(1, 0.1, v, 0.1, 1000, 0), 0, 100),
        within("weight at the sling", v -> new OwnWeight(1, 0.1, 1, v, 1000, 0), 0, 10),
        within("diameter at the sling", v -> new TaperedLimb(LIMB, v), 0.001, 10),
        within("place", new TaperedLimb(LIMB, 0.1)::sectionAt, 0, 1),
        within(
            "place of a load",
            v -> CantileverLimb.basket(1, OwnWeight.UNSTATED).at(v, new LimbLoad(1, 1, 1)),
            0,
            1),
        within("stem's limb", v -> new StemBetween(X, v, X, 1), 0, 100),
        entry("stem's leg", v -> new StemBetween(X, 1, X, v), List.of(0.01, 100.0), 0, -1, 101),
        notNegative("stem's tension", STEM::endedAtMain),
        notNegative("stem's anchor tension", v -> STEM.throughMain(1, v, 0)),
        within("stem's anchor", v -> STEM.throughMain(1, 1, v), -PI, PI),
        within("arm", v -> CantileverLimb.basket(v, OwnWeight.UNSTATED), 0, 100),
        within("choked arm", v -> CantileverLimb.choked(v, 0.1, OwnWeight.UNSTATED), 0, 100),
        within("choked limb", v -> CantileverLimb.choked(1, v, OwnWeight.UNSTATED), 0, 10),
        within("eccentricity", v -> new CantileverLimb(1, v, OwnWeight.UNSTATED), 0, 5),
        entry("modulus", v -> EulerColumn.criticalLoadN(LIMB, v, 1), List.of(1.0, 1e12), 0, -1),
        entry(
            "column",
            v -> EulerColumn.criticalLoadN(LIMB, 1e9, v),
            List.of(0.001, 99.0),
            0,
            -1,
            1e-300,
            1e300),
        notNegative("push", v -> EulerColumn.stiffnessLeft(v, 1)),
        entry("critical", v -> EulerColumn.stiffnessLeft(1, v), List.of(1.0, HUGE), 0, -1),
        notNegative("choke's pull", v -> SlingGrip.chokeN(v, 0.2, 1, 1)),
        within("choke's friction", v -> SlingGrip.chokeN(1, v, 1, 1), 0, 2),
        within("choke's turns", v -> SlingGrip.chokeN(1, 0.2, v, 1), 1, 20),
        within("choke's loop", v -> SlingGrip.chokeN(1, 0.2, 1, v), 0, PI / 2),
        notNegative("basket's pull", v -> SlingGrip.basketN(v, 0.2, 1)),
        within("basket's friction", v -> SlingGrip.basketN(1, v, 1), 0, 2),
        entry(
            "basket's angle", v -> SlingGrip.basketN(1, 0.2, v), List.of(0.0, 3.14), PI, -TINY, 4),
        notNegative("counted load", v -> SlingGrip.capstanCountN(v, 0.2, 1)),
        within("counted friction", v -> SlingGrip.capstanCountN(1, v, 1), 0, 2),
        within("counted turns", v -> SlingGrip.capstanCountN(1, 0.2, v), 0, 20),
        entry("included", HangingLegs::basketFactor, List.of(0.0, 3.14), PI, -TINY, 4),
        entry("included of tension", HangingLegs::tensionFactor, List.of(0.0, 3.14), PI, -TINY, 4),
        positive("weight", v -> Impact.peakN(v, 1, 1)),
        positive("rope", v -> Impact.peakN(1, v, 1)),
        notNegative("fall factor", v -> Impact.peakN(1, 1, v)),
        notNegative("fall", v -> Impact.fallFactor(v, 1)),
        positive("rope's length", v -> Impact.fallFactor(0, v)),
        positive("added load", v -> Impact.modulusN(v, 1)),
        entry("strain", v -> Impact.modulusN(1, v), List.of(1e-6, 1.0), 0, UP, -1),
        entry("anchor leg", v -> LostSupport.slackM(v, 1, 1), List.of(0.01, 90.0), 0, -1),
        entry("climber leg", v -> LostSupport.slackM(1, v, 1), List.of(0.01, 90.0), 0, -1),
        within("inside of slack", v -> LostSupport.slackM(1, 1, v), 0, PI));
  }

  @ParameterizedTest
  @MethodSource("entries")
  void takesItsWholeRange(Entry entry) {
    for (double value : entry.taken()) {
      assertNotNull(assertDoesNotThrow(() -> entry.call().apply(value), () -> "for " + value));
    }
  }

  @ParameterizedTest
  @MethodSource("entries")
  void refusesWhatIsOutside(Entry entry) {
    for (double value : entry.refused()) {
      IllegalArgumentException refusal =
          assertThrows(
              IllegalArgumentException.class,
              () -> entry.call().apply(value),
              () -> "took " + value);
      assertFalse(refusal.getMessage().isBlank());
    }
  }

  private static Entry within(String what, DoubleFunction<Object> call, double low, double high) {
    double width = (high - low) * 1e-9;
    return entry(what, call, List.of(low, (low + high) / 2, high), low - width, high + width);
  }

  private static Entry notNegative(String what, DoubleFunction<Object> call) {
    return entry(what, call, List.of(0.0, TINY, 1e9), -TINY, -1, -HUGE);
  }

  private static Entry positive(String what, DoubleFunction<Object> call) {
    return entry(what, call, List.of(TINY, 1e9), 0, -TINY, -1);
  }

  private static Entry finite(String what, DoubleFunction<Object> call) {
    return entry(what, call, List.of(-HUGE, 0.0, HUGE));
  }

  private static Entry entry(
      String what, DoubleFunction<Object> call, List<Double> taken, double... refused) {
    Stream<Double> never =
        Stream.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
    return new Entry(
        what, call, taken, Stream.concat(never, java.util.Arrays.stream(refused).boxed()).toList());
  }
}
