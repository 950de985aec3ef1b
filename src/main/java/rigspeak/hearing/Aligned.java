package rigspeak.hearing;

import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.linguist.HMMSearchState;
import edu.cmu.sphinx.linguist.acoustic.HMMState;
import java.util.ArrayDeque;
import java.util.Deque;
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

  /**
   * What a search found.
   *
   * @param end the last step of its path
   */
  static Aligned along(Token end) {
    Deque<Frame> frames = new ArrayDeque<>();
    for (Token token = end; token != null; token = token.getPredecessor()) {
      if (token.isEmitting()) {
        HMMState state = ((HMMSearchState) token.getSearchState()).getHMMState();
        if (!state.getHMM().getBaseUnit().isFiller()) {
          frames.push(
              new Frame(
                  FloatData.toFloatData(token.getData()).getValues(), (int) state.getMixtureId()));
        }
      }
    }
    return new Aligned(
        List.of(end.getWordPathNoFiller().strip().split("\\s+", -1)), List.copyOf(frames));
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

    /** What it was before it was mapped. */
    Frame before(CepstrumMap.Inverse map) {
      return new Frame(map.undo(feature), state);
    }

    float feature(int stream, int number) {
      return feature[stream * CepstrumMap.SIZE + number];
    }

    int state() {
      return state;
    }
  }
}
