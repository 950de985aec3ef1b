package rigspeak.verdict;

import rigspeak.quantity.Length;

/** A change after which the same rig is good to load; each has been judged with the change made. */
public sealed interface Remedy {

  /** Wrap the sling this often in all. */
  record Wraps(int turns) implements Remedy {}

  /** Slide the sling in until it sits against the union. */
  record SeatAtTheUnion() implements Remedy {}

  /** Hang the sling no farther out than this. */
  record NearerTheUnion(Length atMost) implements Remedy {}

  /** Choose a place where the limb is at least this thick, all else alike. */
  record ThickerLimb(Length atLeast) implements Remedy {}
}
