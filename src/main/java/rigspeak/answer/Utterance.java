package rigspeak.answer;

/**
 * What is spoken and printed in one go.
 *
 * @param text words, with commas and full stops for pauses
 * @param danger announced by the danger sound, spoken twice, and begun again when it is interrupted
 */
public record Utterance(String text, boolean danger) {
  static Utterance calm(String text) {
    return new Utterance(text, false);
  }

  static Utterance danger(String text) {
    return new Utterance(text, true);
  }
}
