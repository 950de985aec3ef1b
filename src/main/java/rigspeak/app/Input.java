package rigspeak.app;

import rigspeak.meaning.Meaning;

/**
 * What comes from the climber, before it means anything. The whole conversation follows from these:
 * the same, in the same order, lead to the same rig, gate and question.
 */
sealed interface Input {
  /** As typed or heard; empty if there were no words. */
  String words();

  /** From a keyboard, so figures may be among them. */
  record Typed(String words) implements Input {}

  /** From the ear, which may have taken a teen for its ten. */
  record Heard(String words) implements Input {}

  /** From the ear, which is not sure of it. */
  record Doubtful(String words) implements Input {}

  /** A call, by voice or key, while something waits for an affirm, which then comes first. */
  record Called(String words) implements Input {}

  /**
   * No words.
   *
   * @param why nothing said, nothing like a sentence, or a noise
   */
  record Unheard(Meaning why) implements Input {
    @Override
    public String words() {
      return "";
    }
  }
}
