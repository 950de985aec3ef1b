package rigspeak.speaking;

import rigspeak.audio.Sound;

/** Something that turns words into sound. */
public interface Voice {
  /**
   * Says the words.
   *
   * @param words plain words; a comma makes a short pause, a full stop (or colon, semicolon,
   *     question mark, exclamation mark) a longer one
   * @param pace how fast
   * @return the sound, from the first word to the last without silence around them; no sound at all
   *     if there are no words
   */
  Sound speak(String words, Pace pace);
}
