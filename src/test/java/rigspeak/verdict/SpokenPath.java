package rigspeak.verdict;

import java.util.TreeMap;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Spoken;

/**
 * Ropes in the words of the trade, for tests: what belongs to the climb first, then a line such as
 * {@code @ main point} or {@code @ redirect 1} before what is said of each support.
 */
final class SpokenPath {
  private static final String REDIRECT = "redirect ";

  private SpokenPath() {}

  static RopePath of(String lines) {
    String[] parts = lines.split("(?m)^@ ", -1);
    Rig climb = Spoken.rig(parts[0]);
    TreeMap<Place, Rig> supports = new TreeMap<>();
    for (int i = 1; i < parts.length; i++) {
      int end = parts[i].indexOf('\n');
      supports.put(place(parts[i].substring(0, end)), Spoken.with(climb, parts[i].substring(end)));
    }
    return RopePath.of(supports);
  }

  static Place place(String words) {
    String name = words.strip();
    return name.equals("main point")
        ? Place.MAIN_POINT
        : Place.redirectNumber(Integer.parseInt(name.substring(REDIRECT.length())));
  }

  /** The same rope with more said of one support, or said otherwise; the climb's goes to all. */
  static RopePath with(RopePath path, Place place, String lines) {
    RopePath said = path.with(place, Spoken.with(path.at(place), lines));
    for (Place other : path.places()) {
      said = said.with(other, said.at(other).withClimbOf(said.at(place)));
    }
    return said;
  }

  static RopePath without(RopePath path, Place place, Slot slot) {
    return path.with(place, path.at(place).without(slot));
  }
}
