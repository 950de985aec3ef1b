package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.rig.Slot;

/** What the tables of hearing count as taken wrong. */
class ConsequenceTest {
  @ParameterizedTest
  @CsvSource({
    // asked, how sure the ear was, said, heard, what comes of it
    "-, sure, stem nine inches, stem five inches, STANDS",
    "-, sure, slack two feet, tell me why, STANDS",
    "-, sure, rope loaded, rope unloaded, STANDS",
    "-, sure, stem fifteen inches, stem fifty inches, WAITS",
    "-, sure, stem sixty inches, stem fifty inches, WAITS",
    "-, sure, correction stem nine inches, correction stem five inches, WAITS",
    "-, sure, lanyard released, clipped in, WAITS",
    "-, sure, sling thickness one point five centimeters, sling thickness one four eight five centimeters,"
        + " ASKED_AGAIN",
    // What else was said in the same breath is taken, and was said.
    "-, sure, species red oak stem fifteen inches, species red oak stem fifty inches, WAITS",
    "-, sure, species red oak stem fifteen inches, species white oak stem fifty inches, STANDS",
    // Talk.
    "-, sure, '', out twenty feet, STANDS",
    "-, sure, '', bend forty, WAITS",
    "-, sure, '', bend four bend forty, ASKED_AGAIN",
    "-, sure, all up two hundred sixty pounds, all up two hundred sixty five pounds, STANDS",
    // Asked for, a value needs no name.
    "bend, sure, seven, ten, STANDS",
    "bend, sure, fifteen, fifty, WAITS",
    // In doubt.
    "-, doubtful, out two feet, out ten feet, WAITS",
    "-, doubtful, union sound, union cracked, WAITS",
    "-, doubtful, lanyard released, clipped in, WAITS",
    "-, doubtful, rope unloaded, rope loaded, ASKED_AGAIN",
    "-, doubtful, '', out twenty feet, WAITS",
    "-, doubtful, '', check redirect, ASKED_AGAIN",
    "bend, doubtful, seven, ten, WAITS",
    "-, doubtful, seven, ten, ASKED_AGAIN",
  })
  void whatStandsIsOnlyWhatWasSaid(
      String asked, String surety, String said, String heard, Consequence consequence) {
    boolean doubtful = surety.equals("doubtful");
    assertEquals(consequence, Consequence.of(Slot.of(asked), said, heard, doubtful));
  }
}
