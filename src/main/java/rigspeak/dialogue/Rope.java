package rigspeak.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.verdict.PathVerdict;

/**
 * The supports of a climb, the main point first, then the redirects in the order in which they were
 * begun, which is their order along the rope.
 *
 * @param all at least the main point and one redirect
 * @param present which one the talk is about
 */
public record Rope(List<Support> all, Place present) {
  public Rope {
    all = List.copyOf(all);
    if (present.redirect() >= all.size()) {
      throw new IllegalArgumentException("no " + present.key() + " of " + all.size());
    }
  }

  static Rope begin() {
    Support nothing = Support.of(Rig.empty());
    return new Rope(List.of(nothing, nothing), Place.redirectNumber(1));
  }

  Support support() {
    return at(present);
  }

  public Support at(Place place) {
    return all.get(place.redirect());
  }

  int redirects() {
    return all.size() - 1;
  }

  public boolean has(Place place) {
    return place.redirect() < all.size();
  }

  Rope turnedTo(Place place) {
    return new Rope(all, place);
  }

  /** One more redirect, which knows of the climb what the present support knows, nothing else. */
  Rope begun() {
    List<Support> more = new ArrayList<>(all);
    more.add(Support.of(support().said().climbOnly()));
    return new Rope(more, Place.redirectNumber(all.size()));
  }

  /** The present one changed; what belongs to the climb changes for all of them. */
  Rope with(Support support) {
    List<Support> changed = new ArrayList<>();
    for (Support other : all) {
      Rig said = other.said().withClimbOf(support.said());
      changed.add(said.equals(other.said()) ? other : other.with(said));
    }
    changed.set(present.redirect(), support);
    return new Rope(changed, present);
  }

  /** Verdicts that fell: they stay down, even when the rope comes to be as it was. */
  Rope unjudged(List<Place> fallen) {
    List<Support> changed = new ArrayList<>(all);
    fallen.forEach(place -> changed.set(place.redirect(), at(place).unjudged()));
    return new Rope(changed, present);
  }

  /** What the rope runs over when it runs over this support too. */
  public RopePath path(Place place) {
    Map<Place, Rig> supports = new TreeMap<>();
    for (Place other : places()) {
      if (other.isMainPoint() || other.equals(place) || at(other).state() != Support.State.OFF) {
        supports.put(other, at(other).said());
      }
    }
    return RopePath.of(supports);
  }

  /** The verdict on this support, if nothing on its rope has changed since. */
  public Optional<PathVerdict> standing(Place place) {
    return at(place).verdict().filter(verdict -> verdict.path().equals(path(place)));
  }

  /** Those on which the rope was said to be loaded. */
  public List<Place> loaded() {
    return places(place -> at(place).state() == Support.State.LOADED);
  }

  /** Those whose verdict stands. */
  List<Place> judged() {
    return places(place -> standing(place).isPresent());
  }

  private List<Place> places(Predicate<Place> which) {
    return places().stream().filter(which).toList();
  }

  private List<Place> places() {
    return IntStream.range(0, all.size()).mapToObj(Place::new).toList();
  }
}
