package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ProfileTest {
  private static final Profile WREN =
      new Profile("wren", "0123abcd", 30, new Levels(-21.5, -63.2), bent());

  private static CepstrumMap bent() {
    double[][] rows = CepstrumMap.none().toArray();
    rows[0][3] = -0.25;
    rows[12][13] = 1.5;
    return CepstrumMap.of(rows);
  }

  @Test
  void whatIsWrittenIsRead() {
    assertEquals(Optional.of(WREN), Profile.read(WREN.text()));
  }

  @Test
  void anyChangedCharacterIsDamage() {
    String text = WREN.text();
    for (int i = 0; i < text.length(); i++) {
      char other = text.charAt(i) == '7' ? '8' : '7';
      String damaged = text.substring(0, i) + other + text.substring(i + 1);
      assertEquals(Optional.empty(), Profile.read(damaged), "at " + i);
    }
  }

  @Test
  void aPartIsDamage() {
    String text = WREN.text();
    for (int length = 0; length < text.length(); length++) {
      assertEquals(Optional.empty(), Profile.read(text.substring(0, length)), "of " + length);
    }
  }

  @Test
  void aNumberThatIsNoneIsDamageEvenWithTheRightSum() {
    String lines = WREN.text().replace("speech_db -21.5", "speech_db NaN");
    String unsigned = lines.substring(0, lines.lastIndexOf("check "));
    java.util.zip.CRC32 sum = new java.util.zip.CRC32();
    sum.update(unsigned.getBytes(java.nio.charset.StandardCharsets.UTF_8));

    assertEquals(
        Optional.empty(), Profile.read(unsigned + String.format("check %08x\n", sum.getValue())));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "two words", "a/b", "../a", "-a", ".a"})
  void aNameThatIsNoFileNameIsRefused(String name) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Profile(name, "0123abcd", 30, WREN.levels(), WREN.map()));
  }

  /** What the ear held before there were profiles: docs/hearing.md was measured with it. */
  @Test
  void withoutAProfileTheLevelsAreTheOldOnes() {
    assertEquals(-55, Levels.unknown().firstGuess());
    assertEquals(-60, Levels.unknown().leastLevel());
  }

  @Test
  void aQuietRoomDoesNotLowerTheFirstGuessAndANoisyOneRaisesIt() {
    assertEquals(-55, new Levels(-20, -70).firstGuess());
    assertEquals(-38, new Levels(-20, -38).firstGuess());
  }
}
