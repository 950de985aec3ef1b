package rigspeak.hearing;

import rigspeak.audio.Sound;

/**
 * Tells whether there is a voice in a sound at all, frame by frame.
 *
 * <p>Model: vowels repeat with the pitch of the voice, between {@value #LOWEST_PITCH} and {@value
 * #HIGHEST_PITCH} Hz; hiss, rain, wind and a click do not. A frame is voiced if the sound 40 ms
 * around it is like itself one period later (normalised autocorrelation, at 4 kHz). An engine that
 * hums is voiced too, so this keeps broadband noise out and nothing else. A whisper has no voice
 * and is not heard.
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
      recent[recent.length - added + i] = sum / EVERY;
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
}
