package rigspeak.hearing;

import rigspeak.audio.Sound;

/**
 * Tells whether there is a voice in a sound at all, frame by frame.
 *
 * <p>Model: vowels repeat with the pitch of the voice, between {@value #LOWEST_PITCH} and {@value
 * #HIGHEST_PITCH} Hz; hiss, rain, wind and a click do not. A frame is voiced if the sound 40 ms
 * around it is like itself one period later (normalised autocorrelation, at 4 kHz), without what is
 * below {@value #RUMBLE} Hz: the rumble of wind is slow, and so like itself a moment later, while a
 * low voice repeats in its harmonics too. An engine that hums is voiced, so this keeps broadband
 * noise and gusts out and nothing else. A whisper has no voice and is not heard.
 */
final class VoiceDetector {
  private static final int LOWEST_PITCH = 60;
  private static final int HIGHEST_PITCH = 400;
  private static final int EVERY = 4;
  private static final int RATE = Sound.RATE / EVERY;
  private static final int SPAN = RATE / 25;
  private static final int SHORTEST = RATE / HIGHEST_PITCH;
  private static final int LONGEST = RATE / LOWEST_PITCH;

  /** How alike two periods must be, 0 to 1. White noise of this span never gets there. */
  private static final double ALIKE = 0.6;

  private static final double RUMBLE = 150;

  private final HighPass withoutRumble = new HighPass(RUMBLE / RATE);
  private final double[] recent = new double[SPAN + LONGEST];
  private int voicedFrames;

  /** Takes the next frame. */
  void take(short[] frame) {
    int added = frame.length / EVERY;
    System.arraycopy(recent, added, recent, 0, recent.length - added);
    for (int i = 0; i < added; i++) {
      double sum = 0;
      for (int k = 0; k < EVERY; k++) {
        sum += frame[EVERY * i + k];
      }
      recent[recent.length - added + i] = withoutRumble.take(sum / EVERY);
    }
    if (isVoiced()) {
      voicedFrames++;
    }
  }

  /** How many frames of 10 ms were voiced so far. */
  int voicedFrames() {
    return voicedFrames;
  }

  private boolean isVoiced() {
    double own = energy(0);
    // Hiss of a few steps is not looked at.
    if (own < SPAN * 400.0) {
      return false;
    }
    for (int lag = SHORTEST; lag <= LONGEST; lag++) {
      double product = 0;
      for (int i = 0; i < SPAN; i++) {
        product += recent[i] * recent[i + lag];
      }
      if (product > ALIKE * Math.sqrt(own * energy(lag))) {
        return true;
      }
    }
    return false;
  }

  private double energy(int from) {
    double sum = 0;
    for (int i = from; i < from + SPAN; i++) {
      sum += recent[i] * recent[i];
    }
    return sum;
  }

  /** Butterworth's, of the second order, made digital by the bilinear transform. */
  private static final class HighPass {
    private final double gain;
    private final double first;
    private final double second;
    private double in1;
    private double in2;
    private double out1;
    private double out2;

    /**
     * @param corner as a share of the sample rate
     */
    HighPass(double corner) {
      double k = Math.tan(Math.PI * corner);
      double scale = 1 / (1 + Math.sqrt(2) * k + k * k);
      gain = scale;
      first = 2 * scale * (k * k - 1);
      second = scale * (1 - Math.sqrt(2) * k + k * k);
    }

    double take(double in) {
      double out = gain * (in - 2 * in1 + in2) - first * out1 - second * out2;
      in2 = in1;
      in1 = in;
      out2 = out1;
      out1 = out;
      return out;
    }
  }
}
