package rigspeak.app;

import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigspeak.app.HostilePlaces.Place;

/** Lets hostile input loose on every place for some minutes, and prints how much and what came. */
final class HostileMeasurement {
  private static final int AT_ONCE = 50;

  private HostileMeasurement() {}

  /**
   * @param arguments minutes, the first seed
   */
  public static void main(String[] arguments) throws IOException {
    long seed = Long.parseLong(arguments[1]);
    List<Place> places = new HostilePlaces(Files.createTempDirectory("hostile")).all();
    Map<String, Long> tried = new LinkedHashMap<>();
    Map<String, Integer> found = new LinkedHashMap<>();
    long each = Long.parseLong(arguments[0]) * 60_000_000_000L / places.size();
    for (Place place : places) {
      long end = System.nanoTime() + each;
      for (long at = seed; System.nanoTime() < end; at++) {
        try {
          place.attack().quietly(place.hostile(), at, AT_ONCE);
          at += AT_ONCE - 1;
          tried.merge(place.name(), (long) AT_ONCE, Long::sum);
        } catch (AssertionError e) {
          int times = found.merge(place.name(), 1, Integer::sum);
          if (times <= 10) {
            System.out.println(e.getMessage());
          }
          at += AT_ONCE - 1;
        }
      }
      System.out.printf(
          "%-8s %,12d inputs, %d findings; %s%n",
          place.name(),
          tried.getOrDefault(place.name(), 0L),
          found.getOrDefault(place.name(), 0),
          place.attack());
    }
    System.out.printf("in all   %,12d%n", tried.values().stream().mapToLong(n -> n).sum());
  }
}
