package rigspeak.drawing;

import java.util.Optional;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.verdict.LoadAsSaid;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/**
 * One support on its way to a picture, as far as it is known.
 *
 * @param place where on the rope it is
 * @param said what was said of it, perhaps nothing yet
 * @param loaded its numbers and its load, where they are known
 * @param verdict what can be said of it and its rope; none while nobody has asked
 */
public record Subject(
    Place place, Rig said, Optional<LoadAsSaid> loaded, Optional<PathVerdict> verdict) {

  /** A support that was judged; its load is drawn with all that may be true. */
  public static Subject judged(PathVerdict verdict, Place place) {
    Optional<LoadAsSaid> loaded =
        verdict.supports().get(place) instanceof Verdict.Judged judged
            ? Optional.of(new LoadAsSaid(judged.rig(), judged.load()))
            : Optional.empty();
    return new Subject(place, verdict.path().at(place), loaded, Optional.of(verdict));
  }

  /**
   * A support while its values come in.
   *
   * @param loaded of {@link LoadAsSaid#of}, where it is known already
   */
  public static Subject asSaid(RopePath path, Place place, Optional<LoadAsSaid> loaded) {
    return new Subject(place, path.at(place), loaded, Optional.empty());
  }
}
