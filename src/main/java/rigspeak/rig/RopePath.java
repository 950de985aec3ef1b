package rigspeak.rig;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The supports that a rope runs over on its way from the anchor to the climber, each as it was
 * said. The leg between two neighbours is one leg: the working leg of the one is the anchor leg of
 * the other.
 *
 * @param supports at least one, in the order of the rope
 */
public record RopePath(SortedMap<Place, Rig> supports) {
  public RopePath {
    if (supports.isEmpty()) {
      throw new IllegalArgumentException("a rope without a support holds nobody");
    }
    supports = Collections.unmodifiableSortedMap(new TreeMap<>(supports));
  }

  public static RopePath of(Map<Place, Rig> supports) {
    return new RopePath(new TreeMap<>(supports));
  }

  /** One redirect by itself, as if nothing were known of the rest of the rope. */
  public static RopePath alone(Rig redirect) {
    return of(Map.of(Place.redirectNumber(1), redirect));
  }

  /** From the anchor to the climber. */
  public List<Place> places() {
    return List.copyOf(supports.keySet());
  }

  public boolean has(Place place) {
    return supports.containsKey(place);
  }

  /**
   * @throws IllegalArgumentException if the path has no such place
   */
  public Rig at(Place place) {
    Rig rig = supports.get(place);
    if (rig == null) {
      throw new IllegalArgumentException("no " + place.key() + " on this rope");
    }
    return rig;
  }

  /** The neighbour toward the anchor. */
  public Optional<Place> before(Place place) {
    SortedMap<Place, Rig> nearer = supports.headMap(place);
    return nearer.isEmpty() ? Optional.empty() : Optional.of(nearer.lastKey());
  }

  /** The neighbour toward the climber. */
  public Optional<Place> after(Place place) {
    return places().stream().filter(other -> other.compareTo(place) > 0).findFirst();
  }

  /** The support that the climber hangs from. */
  public Place last() {
    return supports.lastKey();
  }

  public RopePath with(Place place, Rig rig) {
    SortedMap<Place, Rig> changed = new TreeMap<>(supports);
    changed.put(place, rig);
    return new RopePath(changed);
  }
}
