package rigspeak.audio;

import javax.sound.sampled.TargetDataLine;

/** A microphone of this machine. */
final class LineMicrophone implements Microphone {
  /** How often the line is read: often, so that nothing waits for it. */
  private static final int READS_A_SECOND = 100;

  private final String name;
  private final TargetDataLine line;
  private final WavForm form;
  private final byte[] bytes;
  private final Object gate = new Object();
  private Resampler resampler;
  private double[] ready = new double[0];
  private int readyFrom;
  private boolean shut;
  private boolean closed;

  LineMicrophone(String name, TargetDataLine openLine) {
    this.name = name;
    this.line = openLine;
    int rate = (int) openLine.getFormat().getSampleRate();
    this.form = new WavForm(rate, openLine.getFormat().getChannels(), 16, false);
    this.bytes = new byte[rate / READS_A_SECOND * form.bytesPerFrame()];
    this.resampler = Resampler.between(rate, Sound.RATE);
    line.start();
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int read(short[] into, int from, int most) throws LostDevice {
    while (true) {
      synchronized (gate) {
        while (shut && !closed) {
          try {
            gate.wait();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return END;
          }
        }
        if (closed) {
          return END;
        }
        if (readyFrom < ready.length) {
          int count = Math.min(most, ready.length - readyFrom);
          for (int i = 0; i < count; i++) {
            double value = Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, ready[readyFrom++]));
            into[from + i] = (short) Math.round(value);
          }
          return count;
        }
      }
      int got = line.read(bytes, 0, bytes.length);
      synchronized (gate) {
        if (!shut && !closed) {
          if (got <= 0 && !line.isOpen()) {
            throw new LostDevice("The microphone " + name + " is gone.");
          }
          take(got);
        }
      }
    }
  }

  private void take(int byteCount) {
    int frames = Math.max(0, byteCount) / form.bytesPerFrame();
    double[] values = new double[frames];
    for (int i = 0; i < frames; i++) {
      values[i] = form.frame(bytes, i * form.bytesPerFrame());
    }
    ready = resampler.push(values, frames);
    readyFrom = 0;
  }

  @Override
  public void shut() {
    synchronized (gate) {
      shut = true;
      line.stop();
      line.flush();
    }
  }

  @Override
  public void reopen() {
    synchronized (gate) {
      ready = new double[0];
      readyFrom = 0;
      resampler = Resampler.between(form.rate(), Sound.RATE);
      line.flush();
      line.start();
      shut = false;
      gate.notifyAll();
    }
  }

  @Override
  public void close() {
    synchronized (gate) {
      closed = true;
      gate.notifyAll();
    }
    line.stop();
    line.close();
  }
}
