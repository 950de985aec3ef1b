package rigspeak.contract;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/**
 * A whole rope as a climber says it: for each support, what is said of each slot.
 *
 * @param words an utterance for each slot; what belongs to the climb is said at the main point
 */
record SaidRope(SortedMap<Place, Map<Slot, String>> words) {

  /** One slot of one support, and what is said of it. */
  record Line(Place place, Slot slot, String said) {}

  static SaidRope of(Map<Place, Map<Slot, String>> words) {
    return new SaidRope(new TreeMap<>(words));
  }

  /** All of it, from the main point on. */
  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    words.forEach(
        (place, slots) -> slots.forEach((slot, said) -> lines.add(new Line(place, slot, said))));
    return lines;
  }

  Place last() {
    return words.lastKey();
  }

  Optional<String> at(Place place, Slot slot) {
    return Optional.ofNullable(words.get(place).get(slot));
  }

  SaidRope with(Place place, Slot slot, String said) {
    SaidRope changed = copy();
    changed.words.get(place).put(slot, said);
    return changed;
  }

  SaidRope without(Place place, Slot slot) {
    SaidRope changed = copy();
    changed.words.get(place).remove(slot);
    return changed;
  }

  private SaidRope copy() {
    SortedMap<Place, Map<Slot, String>> copy = new TreeMap<>();
    words.forEach((place, slots) -> copy.put(place, new EnumMap<>(slots)));
    return new SaidRope(copy);
  }
}
