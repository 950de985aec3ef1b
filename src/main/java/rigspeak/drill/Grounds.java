package rigspeak.drill;

import java.util.List;
import rigspeak.rig.Slot;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Load;
import rigspeak.verdict.Refusal;

/** Why an answer is right, as numbers; each question has the grounds that belong to it. */
public sealed interface Grounds {

  /** Where the load goes. */
  record OfLoad(Load load) implements Grounds {}

  /** The loads of two rigs. */
  record OfLoads(Load first, Load second) implements Grounds {}

  /**
   * What two rigs use of what the limb at the union holds.
   *
   * @param first share of the limit
   * @param second share of the limit
   */
  record OfUnions(double first, double second) implements Grounds {}

  /**
   * A sling that may slide.
   *
   * @param pushN along the limb at the peak of movement, newtons
   * @param heldN what the sling holds at least at its word, newtons
   */
  record OfGrip(double pushN, double heldN) implements Grounds {}

  /**
   * A fall.
   *
   * @param slackM free fall until the rope is taut, metres
   * @param dropM down to the lowest point, metres
   * @param bearingDeg the way of the swing
   * @param asHardAsM a free fall that ends as fast as the lowest point, metres
   */
  record OfFall(double slackM, double dropM, double bearingDeg, double asHardAsM)
      implements Grounds {}

  /**
   * The check that decides, and what it uses of its limit: at worst of a good rig, else as said.
   */
  record OfCheck(CheckKind kind, double share) implements Grounds {}

  /** Refused without any number. */
  record Outright(Refusal refusal) implements Grounds {}

  /** What is missing. */
  record Unsaid(List<Slot> slots) implements Grounds {
    public Unsaid {
      slots = List.copyOf(slots);
    }
  }

  /** The question says it all. */
  record Itself() implements Grounds {}
}
