package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

class NumbersTest {
  @ParameterizedTest
  @CsvFileSource(resources = "numbers.csv", numLinesToSkip = 1)
  void sayNumbersNaturallyButTeensAndTensInDigits(double number, String words) {
    assertEquals(words, Numbers.exact(number));
  }

  @Test
  void noTwoWholeNumbersSoundAlike() {
    Map<String, Integer> heard = new HashMap<>();
    for (int number = 0; number < 10_000; number++) {
      Integer other = heard.put(Numbers.exact(number), number);
      assertEquals(null, other, () -> "two numbers in the same words");
    }
  }

  @Test
  void noNumberBelowAThousandHasAWordThatIsBothTeenAndTen() {
    for (int number = 0; number < 1000; number++) {
      String words = Numbers.exact(number);
      assertTrue(!words.endsWith("teen"), words);
      assertTrue(!words.matches(".*(twen|thir|for|fif|six|seven|eigh|nine)ty"), words);
    }
  }

  @Test
  void wordsOfANumberMeanThatNumber() {
    for (int eighths = 0; eighths < 8 * 1000; eighths++) {
      double number = eighths / 8.0;
      Value.Turned turned =
          Speech.value(Slot.BEND, Value.Turned.class, "bend " + Numbers.exact(number) + " degrees");
      assertEquals(number, turned.angle().degrees(), 1e-9);
    }
  }

  @Test
  void enormousNumbersAreOnlyCalledLarge() {
    assertEquals("more than a million", Numbers.exact(1e300));
    assertEquals("more than a million", Numbers.label(1e18));
  }

  @Test
  void negativeNumbersHaveNoWords() {
    assertThrows(IllegalArgumentException.class, () -> Numbers.whole(-1));
  }
}
