package rigspeak.contract;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/** Ropes in words: those of the data file, and others drawn evenly. */
final class Ropes {
  private Ropes() {}

  /** Good ropes of which all is said that can be said, by their names. */
  static Map<String, SaidRope> good() {
    return read("good-ropes.txt");
  }

  /** The ropes of a data file, by their names. */
  static Map<String, SaidRope> read(String name) {
    Map<String, SaidRope> ropes = new LinkedHashMap<>();
    SortedMap<Place, Map<Slot, String>> rope = new TreeMap<>();
    Map<Slot, String> support = new EnumMap<>(Slot.class);
    for (String line : lines(name)) {
      if (line.startsWith("rope: ")) {
        rope = new TreeMap<>();
        ropes.put(line.substring("rope: ".length()), new SaidRope(rope));
      } else if (line.startsWith("@ ")) {
        support = new EnumMap<>(Slot.class);
        rope.put(line.equals("@ main point") ? Place.MAIN_POINT : Place.redirectNumber(1), support);
      } else if (!rope.isEmpty() && line.contains(": ")) {
        String[] parts = line.split(": ", 2);
        support.put(Slot.of(parts[0]).orElseThrow(), parts[1]);
      }
    }
    return ropes;
  }

  /** Evenly drawn, the same ones every time. */
  static Iterable<SaidRope> drawn() {
    return () -> {
      SobolSequenceGenerator sobol = new SobolSequenceGenerator(RopeDraw.SIDES);
      // The first point is a corner.
      sobol.nextVector();
      return Stream.generate(() -> RopeDraw.of(sobol.nextVector())).iterator();
    };
  }

  /** The rows of a table beside this class, without their heading; marks of quotation are off. */
  static List<String[]> rows(String name) {
    return lines(name).stream().skip(1).map(line -> line.replace("\"", "").split(",", 3)).toList();
  }

  private static List<String> lines(String name) {
    try (InputStream in = Ropes.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
