package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.audio.Sound;
import rigspeak.audio.Wind;
import rigspeak.speaking.EarSound;

/** Speaks what a drill has to say, with wind behind it where that is wished. */
final class DrillVoice {
  private final Mouth mouth;
  private final Optional<Wind> wind;

  /**
   * @param noiseDb how far the wind is below the voice, if there is any
   */
  DrillVoice(Mouth mouth, Optional<Double> noiseDb) {
    this.mouth = mouth;
    this.wind = noiseDb.map(Wind::below);
  }

  /** Piece by piece, each made when it is asked for. */
  Iterable<Sound> parts(DrillTalk talk) {
    EarSound before = talk.missed() ? EarSound.NOT_UNDERSTOOD : EarSound.TAKEN;
    Iterable<Sound> parts = mouth.speak(before, talk.toSay(), talk.pace());
    // Wind blows on between the words.
    return wind.<Iterable<Sound>>map(blowing -> List.of(blowing.behind(joined(parts))))
        .orElse(parts);
  }

  /** The same as one sound. */
  Sound whole(DrillTalk talk) {
    return joined(parts(talk));
  }

  private static Sound joined(Iterable<Sound> parts) {
    List<Sound> all = new ArrayList<>();
    parts.forEach(all::add);
    return Sound.joined(all);
  }
}
