package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigspeak.audio.Meter;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;

/** The same recording, made fainter, louder and noisier. */
final class SoundCheckTest {
  private static final Path LIMB = Path.of("demo-data/one-day/02-climber-limb.wav");

  @Test
  void aVoiceNearTheMicrophoneIsFine() throws IOException {
    assertEquals(SoundCheck.Finding.FINE, finding(1, 0));
  }

  /** A thousandth of the amplitude is 60 dB less. */
  @Test
  void aFaintVoiceIsTooQuiet() throws IOException {
    assertEquals(SoundCheck.Finding.TOO_QUIET, finding(0.003, 0));
  }

  @Test
  void anOverdrivenMicrophoneClips() throws IOException {
    assertEquals(SoundCheck.Finding.CLIPPED, finding(30, 0));
  }

  @Test
  void aVoiceInNoiseIsDrowned() throws IOException {
    assertEquals(SoundCheck.Finding.TOO_NOISY, finding(1, 6_000));
  }

  @Test
  void hissThatComesAndGoesIsNoVoice() throws IOException {
    Random hiss = new Random(1);
    short[] samples = new short[3 * Sound.RATE];
    for (int i = Sound.RATE; i < 2 * Sound.RATE; i++) {
      samples[i] = (short) Math.round(3_000 * hiss.nextGaussian());
    }
    assertEquals(
        SoundCheck.Finding.NO_VOICE, SoundCheck.of(Sound.of(samples).stream(), 3).finding());
  }

  /** Wind rumbles slowly, so a moment later it is like itself, as a voice is after a period. */
  @Test
  void windIsNoVoice() throws IOException {
    double[] wind = Noise.WIND.samples(5 * Sound.RATE, 1);
    short[] samples = new short[wind.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) Math.round(600 * wind[i]);
    }
    VoiceDetector voice = new VoiceDetector();
    UtteranceSource.Frames frames = UtteranceSource.framesOf(Sound.of(samples));
    for (short[] frame = frames.next(); frame != null; frame = frames.next()) {
      voice.take(frame);
    }
    assertEquals(SoundCheck.Finding.NO_VOICE, SoundCheck.finding(0, -20, -50, voice, -60));
  }

  @Test
  void nothingAtAllIsNotFine() throws IOException {
    SoundCheck check = SoundCheck.of(Sound.silence(0).stream(), 5);
    assertEquals(SoundCheck.Finding.TOO_QUIET, check.finding());
    assertEquals(Meter.NO_SOUND, check.peakDecibels());
  }

  private static SoundCheck.Finding finding(double gain, double noise) throws IOException {
    short[] samples = WavFile.read(LIMB).samples();
    Random random = new Random(1);
    for (int i = 0; i < samples.length; i++) {
      double value = gain * samples[i] + noise * random.nextGaussian();
      samples[i] = (short) Math.round(Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, value)));
    }
    return SoundCheck.of(Sound.of(samples).stream(), 10).finding();
  }
}
