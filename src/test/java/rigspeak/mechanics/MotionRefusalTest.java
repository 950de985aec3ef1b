package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What goes into a fall or a swing: no number, no length, out of reach, above the support. */
class MotionRefusalTest {
  private static final double PI = Math.PI;
  private static final Vector3D DOWN = Vector3D.MINUS_K;
  private static final FreedRope ROPE = new FreedRope(10, 3, 4, 0);
  private static final LettingGo FALL = LettingGo.of(ROPE, 900, 25_000);

  record Entry(String what, DoubleFunction<Object> call, List<Double> taken, List<Double> refused) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Entry> entries() {
    return Stream.of(
        entry("rope", v -> new FreedRope(v, 0, 0, 0), List.of(1e-3, 100.0), 0, -1),
        entry("out", v -> new FreedRope(10, v, 0, 0), List.of(0.0, 10.0), -1e-9, 10.1),
        entry("below", v -> new FreedRope(10, 0, v, 0), List.of(-10.0, 0.0, 10.0), -10.1, 10.1),
        entry("reach", v -> new FreedRope(10, 6, v, 0), List.of(-8.0, 8.0), -8.1, 8.1),
        entry("bearing", v -> new FreedRope(10, 6, 0, v), List.of(-PI, 0.0, PI), -3.2, 3.2),
        entry("previous leg", v -> FreedRope.ofLegs(DOWN, v, DOWN, 1), List.of(1e-3, 50.0), 0, -1),
        entry("climber leg", v -> FreedRope.ofLegs(DOWN, 1, DOWN, v), List.of(1e-3, 50.0), 0, -1),
        entry(
            "toward A",
            v -> FreedRope.ofLegs(new Vector3D(0, 0, v), 1, DOWN, 1),
            List.of(-1.0, 1.0),
            0,
            1.01),
        entry(
            "toward the climber",
            v -> FreedRope.ofLegs(DOWN, 1, new Vector3D(0, 0, v), 1),
            List.of(-1.0, 1.0),
            0,
            1.01),
        entry("leg", ROPE::leg, List.of(-PI, 0.0, PI), -3.2, 3.2),
        entry("weight", v -> LettingGo.of(ROPE, v, 1), List.of(1e-3, 1e6), 0, -1),
        entry("modulus", v -> LettingGo.of(ROPE, 1, v), List.of(1e-3, 1e9), 0, -1),
        entry("obstacle of a fall", FALL::arrivalAt, List.of(0.0, 100.0), -1e-9),
        entry("share", FALL::peakPullN, List.of(0.0, 1.0), -0.01, 1.01),
        entry("pendulum", v -> new Pendulum(v, 0, 0), List.of(1e-3, 100.0), 0, -1),
        entry("start", v -> new Pendulum(1, v, 0), List.of(0.0, PI / 2), -0.01, 1.58),
        entry("start speed", v -> new Pendulum(1, 0, v), List.of(0.0, 50.0), -0.01),
        entry("at", new Pendulum(1, 1, 0)::tensionInWeights, List.of(-PI, PI), -3.2, 3.2),
        entry("obstacle", new Pendulum(1, 1, 0)::arrivalAt, List.of(0.0, 100.0), -1e-9),
        entry("working rope", v -> WorkingSwing.ofOffset(v, 0), List.of(1e-3, 100.0), 0, -1),
        entry("offset", v -> WorkingSwing.ofOffset(5, v), List.of(0.0, 5.0), -0.01, 5.01),
        entry("rope of a leg", v -> WorkingSwing.ofLeg(v, DOWN), List.of(1e-3, 100.0), 0, -1),
        entry(
            "rise of a leg",
            v -> WorkingSwing.ofLeg(5, Directions.unit(v, 0.3)),
            List.of(-PI / 2, -1.0, 0.0),
            0.01,
            PI / 2),
        entry(
            "working leg",
            v -> WorkingSwing.ofLeg(5, new Vector3D(0, 0, -v)),
            List.of(1.0),
            0.99,
            1.01),
        entry("obstacle in time", v -> TimedMotion.of(ROPE, v), List.of(0.0, 100.0), -1e-9));
  }

  @ParameterizedTest
  @MethodSource("entries")
  void takesItsWholeRange(Entry entry) {
    for (double value : entry.taken()) {
      assertDoesNotThrow(() -> entry.call().apply(value), () -> "for " + value);
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

  private static Entry entry(
      String what, DoubleFunction<Object> call, List<Double> taken, double... refused) {
    Stream<Double> never =
        Stream.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
    return new Entry(
        what, call, taken, Stream.concat(never, java.util.Arrays.stream(refused).boxed()).toList());
  }
}
