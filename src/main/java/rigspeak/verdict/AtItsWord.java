package rigspeak.verdict;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Trial.Held;

/**
 * One support of a rope with every value at its word: what {@link Judge} says of it in the middle
 * of all that may be true, without its search for the worst. Quick, and nothing can be called good
 * by it.
 */
public final class AtItsWord {
  private final RopePath path;
  private final Place place;
  private final Supports supports;
  private final ResolvedRig rig;

  private AtItsWord(RopePath path, Place place, Supports supports, ResolvedRig rig) {
    this.path = path;
    this.place = place;
    this.supports = supports;
    this.rig = rig;
  }

  /**
   * What one check uses of its limit.
   *
   * @param demand in the kind's unit, at the peak of movement
   * @param capacity in the kind's unit, after every reduction
   * @param share demand over capacity; above 1 is over the limit
   */
  public record Use(double demand, double capacity, double share) {}

  /** Nothing where a number is missing, or what was said cannot be, or is refused without one. */
  public static Optional<AtItsWord> of(Catalogue catalogue, RopePath path, Place place) {
    Supports supports = Supports.of(catalogue, path);
    return Optional.ofNullable(supports.known().get(place))
        .map(rig -> new AtItsWord(path, place, supports, rig));
  }

  /** What a still climber puts on it; every range is a single number. */
  public Load load() {
    return LoadAsSaid.of(rig).load();
  }

  /** What each check demands and what there is, each under the friction that is worst for it. */
  public Map<CheckKind, Use> uses() {
    Map<CheckKind, Use> uses = new EnumMap<>(CheckKind.class);
    for (Held held : Survey.worstFriction(rig, rig.nominal())) {
      uses.put(held.kind(), new Use(held.demand(), held.capacity(), held.utilisation()));
    }
    return uses;
  }

  /** How much of its limit the check uses that uses most. */
  public double mostUsed() {
    return Survey.asSaid(rig);
  }

  /**
   * The most that one check may use of its limit over all that may be true.
   *
   * @param samples points that are tried before the search for the worst
   */
  public double worst(CheckKind kind, int samples) {
    return Survey.worst(rig, kind, samples);
  }

  /** The most that any check may use of its limit over all that may be true. */
  public double worst(int samples) {
    return Survey.worst(rig, samples);
  }

  /** What happens if it lets go. */
  public Loss ifLost() {
    return new IfLost(path, supports.known(), 0).at(place);
  }
}
