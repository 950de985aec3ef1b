package rigspeak.answer;

import java.util.Comparator;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rigspeak.rig.Value;

/** The words of a species' name in the order in which they are spoken. */
final class SpeciesName {
  /** Said before a colour: "northern red oak", "swamp white oak". */
  private static final Set<String> PLACES =
      Set.of("eastern", "western", "northern", "southern", "swamp");

  /** Said last. */
  private static final Set<String> KINDS =
      Set.of(
          "alder",
          "ash",
          "aspen",
          "basswood",
          "beech",
          "birch",
          "cherry",
          "cottonwood",
          "elm",
          "hackberry",
          "hickory",
          "locust",
          "magnolia",
          "maple",
          "oak",
          "sycamore",
          "tupelo",
          "walnut",
          "willow",
          "cypress",
          "cedar",
          "fir",
          "hemlock",
          "larch",
          "pine",
          "redwood",
          "spruce",
          "tamarack");

  /** Names that the tables write in one word or in small letters. */
  private static final Map<String, String> SPOKEN =
      Map.of(
          "american", "American",
          "baldcypress", "bald cypress",
          "douglas-fir", "Douglas fir",
          "engelmann", "Engelmann",
          "honeylocust", "honey locust",
          "sitka", "Sitka",
          "sweetgum", "sweet gum",
          "virginia", "Virginia",
          "yellow-poplar", "yellow poplar");

  /** By itself "beech" sounds like "birch", so nobody can say it by itself. */
  private static final Map<Set<String>, String> LONGER = Map.of(Set.of("beech"), "American beech");

  private SpeciesName() {}

  static String of(Value.Species species) {
    if (species.isUnknown()) {
      return "unknown";
    }
    String longer = LONGER.get(species.words());
    return longer != null ? longer : inOrder(species);
  }

  private static String inOrder(Value.Species species) {
    return species.words().stream()
        .sorted(Comparator.comparingInt(SpeciesName::rank).thenComparing(word -> word))
        .map(word -> SPOKEN.getOrDefault(word, word))
        .collect(Collectors.joining(" "));
  }

  private static int rank(String word) {
    if (PLACES.contains(word)) {
      return 0;
    }
    return KINDS.contains(word) ? 2 : 1;
  }
}
