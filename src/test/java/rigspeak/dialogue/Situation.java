package rigspeak.dialogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A piece of conversation from a data file.
 *
 * @param theme the file
 * @param title what it is about
 * @param exchanges what is said and what is replied, in order
 */
record Situation(String theme, String title, List<Exchange> exchanges) {
  static final List<String> THEMES =
      List.of(
          "taking-values",
          "twins",
          "in-doubt",
          "correcting",
          "asking",
          "verdicts",
          "lanyard",
          "redirects",
          "rope-path",
          "falls",
          "not-understood",
          "the-talk-itself",
          "the-call");

  /**
   * One thing said.
   *
   * @param line number of the line in the file
   * @param replies all of them, in the file's words
   * @param states how things stand then
   */
  record Exchange(int line, String said, List<String> replies, List<String> states) {}

  @Override
  public String toString() {
    return theme + ": " + title;
  }

  static Stream<Situation> all() {
    return THEMES.stream().flatMap(theme -> read(theme).stream());
  }

  private static List<Situation> read(String theme) {
    List<Situation> situations = new ArrayList<>();
    List<String> lines = lines(theme);
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.startsWith("# ")) {
        situations.add(new Situation(theme, line.substring(2), new ArrayList<>()));
      } else if (line.startsWith("> ")) {
        last(situations)
            .exchanges()
            .add(new Exchange(i + 1, line.substring(2), new ArrayList<>(), new ArrayList<>()));
      } else if (line.startsWith("< ")) {
        last(last(situations).exchanges()).replies().add(line.substring(2));
      } else if (line.startsWith("= ")) {
        last(last(situations).exchanges()).states().add(line.substring(2));
      } else if (!line.isEmpty() && !situations.isEmpty()) {
        throw new IllegalArgumentException(theme + ", line " + (i + 1) + ": " + line);
      }
    }
    return situations;
  }

  /** The lines that say a whole rig, by its name. */
  static Map<String, List<String>> rigs() {
    Map<String, List<String>> rigs = new LinkedHashMap<>();
    List<String> rig = new ArrayList<>();
    for (String line : lines("rigs")) {
      if (line.startsWith("rig: ")) {
        rig = new ArrayList<>();
        rigs.put(line.substring("rig: ".length()), rig);
      } else if (line.startsWith("> ")) {
        rig.add(line.substring(2));
      }
    }
    return rigs;
  }

  private static List<String> lines(String name) {
    try (InputStream in = Situation.class.getResourceAsStream(name + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <T> T last(List<T> list) {
    return list.get(list.size() - 1);
  }
}
