package rigspeak.speaking;

import java.util.function.Supplier;
import java.util.stream.Stream;
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
  default Sound speak(String words, Pace pace) {
    return Sound.joined(phrases(words, pace).map(Supplier::get).toList());
  }

  /**
   * The same sound in pieces, each made when it is asked for: a long answer begins to be heard
   * while its end has not been made.
   */
  Stream<Supplier<Sound>> phrases(String words, Pace pace);
}
