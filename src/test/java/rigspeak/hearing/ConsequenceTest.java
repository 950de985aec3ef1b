package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the tables of hearing count as taken wrong. */
class ConsequenceTest {
  @ParameterizedTest
  @CsvSource({
    // said, heard, what comes of it
    "stem nine inches, stem five inches, STANDS",
    "slack two feet, tell me why, STANDS",
    "rope loaded, rope unloaded, STANDS",
    "stem fifteen inches, stem fifty inches, WAITS",
    "stem sixty inches, stem fifty inches, WAITS",
    "correction stem nine inches, correction stem five inches, WAITS",
    "lanyard released, clipped in, WAITS",
    "sling thickness one point five centimeters, sling thickness one four eight five centimeters,"
        + " ASKED_AGAIN",
    // What else was said in the same breath is taken, and was said.
    "species red oak stem fifteen inches, species red oak stem fifty inches, WAITS",
    "species red oak stem fifteen inches, species white oak stem fifty inches, STANDS",
    // Talk.
    "'', out twenty feet, STANDS",
    "'', bend forty, WAITS",
    "'', bend four bend forty, ASKED_AGAIN",
    "all up two hundred sixty pounds, all up two hundred sixty five pounds, STANDS",
  })
  void whatStandsIsOnlyWhatWasSaid(String said, String heard, Consequence consequence) {
    assertEquals(consequence, Consequence.of(Optional.empty(), said, heard, false));
  }

  @ParameterizedTest
  @CsvSource({
    "out two feet, out ten feet, WAITS",
    "union sound, union cracked, WAITS",
    "lanyard released, clipped in, WAITS",
    "rope unloaded, rope loaded, ASKED_AGAIN",
    "'', out twenty feet, WAITS",
    "'', check redirect, ASKED_AGAIN",
  })
  void ofWhatIsInDoubtNothingStands(String said, String heard, Consequence consequence) {
    assertEquals(consequence, Consequence.of(Optional.empty(), said, heard, true));
  }
}
