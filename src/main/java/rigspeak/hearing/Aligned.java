package rigspeak.hearing;

import java.util.List;

/**
 * An utterance whose words are known, frame by frame.
 *
 * @param words what was said
 * @param frames of the words; pauses are left out
 */
record Aligned(List<String> words, List<Frame> frames) {
  Aligned {
    words = List.copyOf(words);
    frames = List.copyOf(frames);
  }

  /** 10 ms of a word. */
  static final class Frame {
    private final float[] feature;
    private final int state;

    /**
     * A frame.
     *
     * @param feature the cepstrum, its first and its second differences
     * @param state the number of the state of the sound
     */
    Frame(float[] feature, int state) {
      this.feature = feature.clone();
      this.state = state;
    }

    float feature(int stream, int number) {
      return feature[stream * CepstrumMap.SIZE + number];
    }

    int state() {
      return state;
    }
  }
}
