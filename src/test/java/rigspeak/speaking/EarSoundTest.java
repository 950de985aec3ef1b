package rigspeak.speaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;

final class EarSoundTest {
  /** Frequencies a small loudspeaker has, Hz. */
  private static final int LOWEST = 500;

  private static final int HIGHEST = 3_000;

  /** Mean levels, dB below full scale: beside a voice, and under it. */
  private static final double LOUD = -15;

  private static final double SOFT = -27;

  @ParameterizedTest
  @EnumSource
  void itsEnergyLiesWhereASmallLoudspeakerIsGood(EarSound earSound) {
    Sound sound = earSound.sound();
    double inside = 0;
    double all = 0;
    for (int hertz = 25; hertz < 8_000; hertz += 25) {
      double energy = energyAt(sound, 0, sound.length(), hertz);
      all += energy;
      inside += hertz >= LOWEST && hertz <= HIGHEST ? energy : 0;
    }

    assertTrue(inside > 0.97 * all, "inside: " + inside / all);
    assertEquals(0, Meter.of(sound).clippedShare());
    double loudness = Meter.of(sound).meanDecibels();
    assertTrue(loudness > (earSound == EarSound.ASLEEP ? SOFT : LOUD), "loud enough: " + loudness);
  }

  @Test
  void eachIsToldFromTheOthersWithinThreeTenthsOfASecond() {
    Map<String, EarSound> known = new HashMap<>();
    for (EarSound earSound : EarSound.values()) {
      Sound start = earSound.sound().part(0, 3 * Sound.RATE / 10);
      EarSound other = known.put(contour(start), earSound);
      assertEquals(null, other, earSound + " sounds like " + other + ": " + contour(start));
    }
    // Four come with an answer or in its place, and more could not be kept apart; the soft one
    // comes when nobody has spoken.
    assertEquals(4, known.size() - 1, "no more than four");
  }

  /** How many tones there are and which way they go: the strongest pitch every 20 ms. */
  private static String contour(Sound sound) {
    StringBuilder contour = new StringBuilder("tone");
    int before = 0;
    int step = Sound.RATE / 50;
    for (int at = 0; at + step <= sound.length(); at += step) {
      int strongest = 0;
      double most = 1e9;
      for (int hertz = 450; hertz <= 3_000; hertz += 50) {
        double energy = energyAt(sound, at, at + step, hertz);
        if (energy > most) {
          most = energy;
          strongest = hertz;
        }
      }
      // A fifth of the pitch is a step that nobody misses.
      if (before > 0 && strongest > 1.2 * before) {
        contour.append(" up");
      } else if (before > 0 && strongest > 0 && strongest < before / 1.2) {
        contour.append(" down");
      }
      before = strongest > 0 ? strongest : before;
    }
    return contour.toString();
  }

  private static double energyAt(Sound sound, int from, int to, double hertz) {
    double real = 0;
    double imaginary = 0;
    for (int i = from; i < to; i++) {
      double turn = 2 * Math.PI * hertz * i / Sound.RATE;
      real += sound.sample(i) * Math.cos(turn);
      imaginary += sound.sample(i) * Math.sin(turn);
    }
    return real * real + imaginary * imaginary;
  }
}
