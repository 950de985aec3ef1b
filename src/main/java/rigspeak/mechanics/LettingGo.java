package rigspeak.mechanics;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rigspeak.quantity.Force;

/**
 * What happens to a climber at rest when a support lets go, from geometry and energy alone.
 *
 * <p>Model, three parts in the upright plane through the previous support A and the climber:
 *
 * <ol>
 *   <li>Fall straight down by {@code h} until the rope is taut about A at the angle {@code t} from
 *       plumb, {@code sin t = out / L}; speed {@code v^2 = 2 g h}.
 *   <li>Catch. The part of the speed along the rope, {@code v cos t}, is taken by its stretch. With
 *       {@code F = W cos t + m (v sin t)^2 / L} pulling along the rope and the rope a spring whose
 *       force is k for each unit of strain, the peak is {@code F + S} with {@code S = sqrt(F^2 + 2
 *       W k cos^2 t h / L)}. Plumb this is the standard impact force of {@link Impact}. Holding the
 *       angle still can find a little more than the whole drop has to give; that much is cut off.
 *   <li>Swing with the part square to the rope, {@code v sin t}, as {@link Pendulum}.
 * </ol>
 *
 * <p>The catch holds the angle still. In truth the climber swings on while the rope stretches, and
 * a rope that loses nothing adds its bounce to the swing. {@link #peakTensionN} covers that: the
 * swing lets the pull along the rope rise from F to its value {@code B} at the lowest point, a
 * spring answers a rise with at most twice that rise, so the tension stays below {@code F + S + 2
 * (B - F)} until the rope is slack again; and no tension at any time can exceed that of a plumb
 * fall through the whole drop, {@code W + sqrt(W^2 + 2 W k drop / L)}. The lower of the two counts.
 * A climber above A falls far enough to be thrown back and caught again; there the second counts
 * alone. A climber not above A may be thrown back too, and for that the first ceiling has no proof,
 * only the tests: with a modulus of 5 to 100 weights the way out exceeds it by no more than 1 %. It
 * is meant for judging what is left; catch and swing are the likelier figures, for a real rope
 * damps its bounce.
 *
 * <p>Left out: damping, slip of hitch or device, give of limb and body (each makes the tension
 * less); friction at A, which shortens the rope that stretches (more); rope beyond A, which
 * stretches too (less tension, more drop); what is struck during the fall; energy that a springy
 * rope gives back to the swing: with none lost, samples cross the plumb line up to half as fast
 * again as stated. No equivalent fall can be more than the height lost since the loss of the
 * support. A moving rope that holds the climber by two parts has twice the modulus of one. Source:
 * free fall and pendulum, source 22; impact force, source 10; the two ceilings are derived here.
 * Units: SI, directions in the frame of the lost support. Range: weight and modulus above 0, rope
 * as {@link FreedRope}.
 *
 * <p>This is the function to judge by; {@link TimedMotion} is its independent check by integration
 * and gives the times. Tested against that; against a stretching rope moved by another library; and
 * by the legs of source 1 worked out apart by coordinates.
 *
 * @param rope how rope and climber lie
 * @param swing what follows the catch
 * @param catchTensionN peak of the catch with the angle held still
 * @param swingTensionN at the lowest point, rope without stretch
 * @param peakTensionN what the tension stays below on the way out
 * @param stretchM the rope's stretch at that peak, by which everything may be lower
 */
public record LettingGo(
    FreedRope rope,
    Pendulum swing,
    double catchTensionN,
    double swingTensionN,
    double peakTensionN,
    double stretchM) {

  /**
   * @param rope how rope and climber lie
   * @param weightN of the climber with all gear, above 0
   * @param modulusN force in the rope for each unit of strain, above 0
   * @throws IllegalArgumentException outside the range
   */
  public static LettingGo of(FreedRope rope, double weightN, double modulusN) {
    Refuse.unlessPositive("weight", weightN);
    Refuse.unlessPositive("modulus of a rope", modulusN);
    double ropeM = rope.ropeM();
    double atRad = rope.tautFromPlumbRad();
    double fallFactor = Impact.fallFactor(rope.freeFallM(), ropeM);
    double fallMS = Math.sqrt(2 * Force.STANDARD_GRAVITY * rope.freeFallM());
    Pendulum swing = new Pendulum(ropeM, atRad, fallMS * Math.sin(atRad));

    double alongN = weightN * swing.tensionInWeights(atRad);
    double down = Math.cos(atRad);
    double bounceN = Math.sqrt(alongN * alongN + 2 * weightN * modulusN * down * down * fallFactor);
    double ceilingN = Impact.peakN(weightN, modulusN, rope.dropM() / ropeM);
    double catchN = Math.min(alongN + bounceN, ceilingN);
    double lowestN = weightN * swing.lowestTensionInWeights();
    double peakN =
        rope.belowM() >= 0 ? Math.min(bounceN + 2 * lowestN - alongN, ceilingN) : ceilingN;
    return new LettingGo(rope, swing, catchN, lowestN, peakN, peakN / modulusN * ropeM);
  }

  /** Height from the climber to the lowest point, without the rope's stretch. */
  public double dropM() {
    return rope.dropM();
  }

  /** Whether and how hard the swing reaches something in its way, see {@link Pendulum}. */
  public Arrival arrivalAt(double distanceM) {
    return swing.arrivalAt(distanceM);
  }

  /** The pull of the rope on A at the catch: toward the climber. */
  public Vector3D catchPullN() {
    return rope.leg(rope.tautFromPlumbRad()).scalarMultiply(catchTensionN);
  }

  /** The pull of the rope on A when the climber swings through the lowest point. */
  public Vector3D lowestPullN() {
    return rope.leg(0).scalarMultiply(swingTensionN);
  }

  /**
   * The largest pull of the rope on A, with the rope at an angle; it may come anywhere between the
   * catch and the lowest point.
   *
   * @param share of the angle from the lowest point (0) back to the catch (1)
   * @throws IllegalArgumentException outside 0 to 1
   */
  public Vector3D peakPullN(double share) {
    Refuse.unlessWithin("share of an angle", share, 0, 1);
    return rope.leg(share * rope.tautFromPlumbRad()).scalarMultiply(peakTensionN);
  }
}
