package rigspeak.verdict;

import java.util.List;
import rigspeak.rig.Source;

/**
 * One demand against one capacity.
 *
 * @param demand in the kind's unit, at the peak of movement
 * @param capacity in the kind's unit, after every reduction
 * @param utilisation demand over capacity; above 1 is over the limit
 * @param utilisation95 exceeded by five in a hundred of all that may be true
 * @param sources of the capacity
 */
public record Check(
    CheckKind kind,
    Spread demand,
    Spread capacity,
    Spread utilisation,
    double utilisation95,
    List<Source> sources) {
  public Check {
    sources = List.copyOf(sources);
  }

  /**
   * How much of its limit a check may use in its worst case and still be good. A search over a box
   * can miss a little; what it may leave over must not reach the limit. A judgement.
   */
  public static final double WELL_WITHIN = 0.98;

  /** Within its limit whatever may be true. */
  public boolean staysWithin() {
    return utilisation.high() <= WELL_WITHIN;
  }
}
