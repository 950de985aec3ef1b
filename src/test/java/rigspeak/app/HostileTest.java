package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.app.HostilePlaces.Place;
import rigspeak.hostile.Hostile;
import rigspeak.verdict.PathVerdict.Outcome;

/** Hostile input in every place that takes input, see {@link HostilePlaces}. */
class HostileTest {
  @TempDir static Path folder;

  static List<Place> places() {
    return new HostilePlaces(folder).all();
  }

  @Test
  void theRigOfWhichSomethingIsLeftOutIsGoodWithIt() {
    assertEquals(Outcome.GOOD, HostilePlaces.wholeRig());
  }

  @Test
  void aSeedAlwaysMakesTheSameInput() {
    Hostile hostile = Hostile.ofTexts(List.of("limb eight inches by tape", "check redirect"));
    for (long seed = 0; seed < 1_000; seed++) {
      assertArrayEquals(hostile.input(seed), hostile.input(seed));
    }
  }

  @ParameterizedTest
  @MethodSource("places")
  @Timeout(value = 300, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void hostileInputComesToNothing(Place place) {
    place.attack().run(place.hostile(), 1, place.few());
  }

  @ParameterizedTest
  @MethodSource("places")
  @Tag("long")
  void muchMoreOfItComesToNothing(Place place) {
    place.attack().run(place.hostile(), 1_000_000, place.many());
  }
}
