package rigspeak.audio;

import javax.sound.sampled.SourceDataLine;

/** A loudspeaker of this machine. */
final class LineLoudspeaker implements Loudspeaker {
  private static final int FRAMES_AT_ONCE = 512;

  private final String name;
  private final SourceDataLine line;
  private volatile boolean hushed;

  LineLoudspeaker(String name, SourceDataLine openLine) {
    this.name = name;
    this.line = openLine;
    line.start();
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void play(Sound sound) {
    hushed = false;
    byte[] bytes = bytes(sound);
    int step = FRAMES_AT_ONCE * line.getFormat().getFrameSize();
    for (int at = 0; at < bytes.length && !hushed; at += step) {
      line.write(bytes, at, Math.min(step, bytes.length - at));
    }
    if (hushed) {
      line.flush();
    } else {
      line.drain();
    }
  }

  @Override
  public void hush() {
    hushed = true;
  }

  @Override
  public void close() {
    hush();
    line.stop();
    line.close();
  }

  /** The sound at the line's own rate, the same on every channel, low byte first. */
  private byte[] bytes(Sound sound) {
    double[] values = new double[sound.length()];
    for (int i = 0; i < values.length; i++) {
      values[i] = sound.sample(i);
    }
    int rate = (int) line.getFormat().getSampleRate();
    Resampler resampler = Resampler.between(Sound.RATE, rate);
    double[] first = resampler.push(values, values.length);
    double[] last = resampler.flush();
    int channels = line.getFormat().getChannels();
    byte[] bytes = new byte[2 * channels * (first.length + last.length)];
    int at = 0;
    for (double[] part : new double[][] {first, last}) {
      for (double value : part) {
        int step = (int) Math.round(Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, value)));
        for (int channel = 0; channel < channels; channel++) {
          bytes[at++] = (byte) step;
          bytes[at++] = (byte) (step >> 8);
        }
      }
    }
    return bytes;
  }
}
