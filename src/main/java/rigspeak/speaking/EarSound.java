package rigspeak.speaking;

import java.util.Collections;
import java.util.List;
import rigspeak.audio.Sound;

/**
 * The sounds that say something without any word: four that come before words or in their place,
 * and a softer one after which nothing comes. All lie between 500 and 3000 Hz, where a small
 * loudspeaker and a worn ear are good, and each is told from the others within 0.3 s by how many
 * tones it has and which way they go.
 */
public enum EarSound {
  /** One short tone: the tool listens. */
  LISTENING,
  /** Two tones up: what was said has been taken. */
  TAKEN,
  /** Two tones down: it was not understood. */
  NOT_UNDERSTOOD,
  /** A quick high warble: danger. */
  DANGER,
  /** Three short tones down, soft: from now on only the call is heard. */
  ASLEEP;

  /** Half of full scale: clearly heard, never clipped. */
  private static final double LOUD = 16_000;

  /** 12 dB less, which is under any voice. */
  private static final double SOFT = LOUD / 4;

  /** Each tone fades in and out for so long, so that it does not click. */
  private static final double FADE_SECONDS = 0.008;

  /** How it sounds. */
  public Sound sound() {
    double loudness = this == ASLEEP ? SOFT : LOUD;
    return Sound.joined(tones().stream().map(tone -> tone.sound(loudness)).toList());
  }

  private List<Tone> tones() {
    return switch (this) {
      case LISTENING -> List.of(new Tone(880, 0.12));
      case TAKEN -> List.of(new Tone(784, 0.09), new Tone(1175, 0.13));
      case NOT_UNDERSTOOD -> List.of(new Tone(740, 0.12), new Tone(523, 0.17));
      case DANGER ->
          Collections.nCopies(3, List.of(new Tone(1568, 0.07), new Tone(2350, 0.07))).stream()
              .flatMap(List::stream)
              .toList();
      case ASLEEP -> List.of(new Tone(932, 0.07), new Tone(740, 0.07), new Tone(587, 0.09));
    };
  }

  private record Tone(double hertz, double seconds) {
    Sound sound(double loudness) {
      short[] samples = new short[(int) Math.round(seconds * Sound.RATE)];
      for (int i = 0; i < samples.length; i++) {
        double sinceStart = i / (double) Sound.RATE;
        double toEnd = (samples.length - i) / (double) Sound.RATE;
        double fade = Math.min(1, Math.min(sinceStart, toEnd) / FADE_SECONDS);
        double wave = Math.sin(2 * Math.PI * hertz * sinceStart);
        samples[i] = (short) Math.round(loudness * fade * wave);
      }
      return Sound.of(samples);
    }
  }
}
