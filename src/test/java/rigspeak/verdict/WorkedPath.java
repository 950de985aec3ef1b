package rigspeak.verdict;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;

/**
 * A rope and what it comes to by a calculation apart from the program, as a file of such blocks has
 * it: what is said, a line of two dashes, what is expected.
 *
 * @param expected of the whole rope, by the names of the file
 * @param supports the same of each support
 */
record WorkedPath(
    String name,
    RopePath path,
    Map<String, String> expected,
    SortedMap<Place, Map<String, String>> supports) {

  /** The blocks of a file beside this class. */
  static List<WorkedPath> in(String file) throws IOException {
    List<WorkedPath> paths = new ArrayList<>();
    try (InputStream stream =
        WorkedPath.class.getResourceAsStream("/rigspeak/verdict/" + file + ".txt")) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      for (String block : text.split("(?m)^== ", -1)) {
        if (!block.startsWith("#")) {
          paths.add(of(block));
        }
      }
    }
    return paths;
  }

  private static WorkedPath of(String block) {
    String name = block.lines().findFirst().orElseThrow().strip();
    String[] halves = block.substring(block.indexOf('\n') + 1).split("(?m)^--$", 2);
    Map<String, String> whole = new TreeMap<>();
    SortedMap<Place, Map<String, String>> supports = new TreeMap<>();
    Map<String, String> here = whole;
    for (String line : halves[1].lines().map(String::strip).toList()) {
      if (line.startsWith("@ ")) {
        here = new TreeMap<>();
        supports.put(SpokenPath.place(line.substring(2)), here);
      } else if (line.contains(" = ") && !line.startsWith("#")) {
        String[] sides = line.split(" = ", 2);
        here.put(sides[0], sides[1]);
      }
    }
    return new WorkedPath(name, SpokenPath.of(halves[0]), whole, supports);
  }

  boolean has(Place place, String key) {
    return supports.get(place).containsKey(key);
  }

  String text(Place place, String key) {
    return supports.get(place).get(key);
  }

  double number(Place place, String key) {
    return Double.parseDouble(text(place, key));
  }

  @Override
  public String toString() {
    return name;
  }
}
