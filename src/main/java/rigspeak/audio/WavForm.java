package rigspeak.audio;

/**
 * How the samples of a WAV file are written.
 *
 * @param rate samples a second
 * @param channels side by side in each frame
 * @param bits bits a sample
 * @param floating whether the samples are floating-point numbers, full scale 1
 */
record WavForm(int rate, int channels, int bits, boolean floating) {
  private static final int FULL_SCALE = 32_768;

  int bytesPerFrame() {
    return channels * bits / 8;
  }

  /**
   * The mean of the channels of one frame, full scale 32768. A floating-point sample that is not a
   * number counts as silence.
   */
  double frame(byte[] bytes, int at) {
    double sum = 0;
    for (int channel = 0; channel < channels; channel++) {
      sum += sample(bytes, at + channel * bits / 8);
    }
    return sum / channels;
  }

  private double sample(byte[] bytes, int at) {
    if (floating) {
      double value =
          bits == 32
              ? Float.intBitsToFloat((int) little(bytes, at, 4))
              : Double.longBitsToDouble(little(bytes, at, 8));
      return Double.isNaN(value) ? 0 : Math.max(-4, Math.min(4, value)) * FULL_SCALE;
    }
    return switch (bits) {
      case 8 -> ((bytes[at] & 0xff) - 128) * 256.0;
      case 16 -> (short) little(bytes, at, 2);
      case 24 -> ((int) little(bytes, at, 3) << 8) / 65_536.0;
      default -> (int) little(bytes, at, 4) / 65_536.0;
    };
  }

  /** An unsigned little-endian number of some bytes. */
  static long little(byte[] bytes, int at, int count) {
    long value = 0;
    for (int i = count - 1; i >= 0; i--) {
      value = value << 8 | (bytes[at + i] & 0xff);
    }
    return value;
  }
}
