package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers on a radio: each digit by itself. */
class DigitsTest {
  private static final List<String> WORDS =
      List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Limb, fourteen inches, by tape. | Limb, one four inches, by tape.",
        "All up, two hundred ten pounds. | All up, two one zero pounds.",
        "Sling rated five thousand four hundred pounds. | Sling rated five four zero zero pounds.",
        "Out, eight and a half feet. | Out, eight point five feet.",
        "Limb, twenty five point four centimeters. | Limb, two five point four centimeters.",
        "Limb, one two inches. | Limb, one two inches.",
        "Cavity one third. | Cavity one third.",
        "Cavity two thirds. | Cavity two thirds.",
        "Half an inch. | Half an inch.",
        "Up sixty five degrees at eleven o'clock. | Up six five degrees at one one o'clock.",
        "Ten to go. | One zero to go.",
        "All ten items. Twenty. | All one zero items. Two zero.",
        "The stone is often tender. | The stone is often tender.",
      })
  void speaksThemSingly(String text, String spoken) {
    assertEquals(spoken, Digits.singly(text));
  }

  @Test
  void everyWholeNumberIsItsFigures() {
    for (int number = 0; number < 10_000; number++) {
      String figures =
          Integer.toString(number)
              .chars()
              .mapToObj(figure -> WORDS.get(figure - '0'))
              .collect(Collectors.joining(" "));
      assertEquals(figures, Digits.singly(Numbers.whole(number)));
      assertEquals(figures, Digits.singly(Numbers.label(number)));
    }
  }
}
