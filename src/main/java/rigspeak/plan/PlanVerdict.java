package rigspeak.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigspeak.verdict.Judge;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.PathVerdict.Outcome;

/**
 * What can be said of a plan before anyone climbs: every rope that hangs in the course of it, every
 * redirect that it only speaks of, and every step.
 *
 * @param refused the lines that were not taken; if there are any nothing is judged
 * @param ropes in the order of the plan
 * @param steps in the order of the plan
 */
public record PlanVerdict(Plan plan, List<Told> refused, List<Hanging> ropes, List<Step> steps) {
  public PlanVerdict {
    refused = List.copyOf(refused);
    ropes = List.copyOf(ropes);
    steps = List.copyOf(steps);
  }

  /**
   * A rope as it hangs for a while.
   *
   * @param until the last line that says something of it
   * @param set whether the plan sets it, and does not only speak of it
   * @param verdict on it, asked for its redirect nearest the climber
   */
  public record Hanging(Plan.Line until, boolean set, PathVerdict verdict) {}

  public static PlanVerdict of(Plan plan, Walk walk, Judge judge) {
    List<Told> refused = walk.refused().stream().filter(told -> !isOnlyOutOfOrder(told)).toList();
    List<Hanging> ropes = refused.isEmpty() ? Course.of(walk, judge) : List.of();
    return new PlanVerdict(plan, refused, ropes, Steps.of(walk));
  }

  /** That a rope was loaded without the lanyard is told with the steps. */
  private static boolean isOnlyOutOfOrder(Told told) {
    return told.turn().replies().stream()
            .filter(Told::isRefusal)
            .allMatch(Told::isLoadedWithoutLanyard)
        && !Told.isRefused(told.meaning());
  }

  public boolean isInOrder() {
    return steps.stream().allMatch(Step::isInOrder);
  }

  /** The worst of all; a step out of order is as bad as a support that must not be loaded. */
  public Outcome outcome() {
    if (!isInOrder()) {
      return Outcome.REFUSE;
    }
    Optional<Outcome> worst =
        ropes.stream().map(hanging -> hanging.verdict().outcome()).max(Comparator.naturalOrder());
    boolean known = refused.isEmpty();
    return worst.filter(outcome -> known || outcome == Outcome.REFUSE).orElse(Outcome.CANNOT_SAY);
  }
}
