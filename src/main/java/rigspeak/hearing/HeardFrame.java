package rigspeak.hearing;

import edu.cmu.sphinx.frontend.FloatData;
import java.util.Arrays;

/**
 * A frame of what was heard that remembers which densities fit it best: two searches and the rows
 * beside each other ask for the same.
 */
final class HeardFrame extends FloatData {
  private static final int BOOKS_AT_FIRST = 42;

  private CodeBook.Best[] best = new CodeBook.Best[BOOKS_AT_FIRST];

  private HeardFrame(FloatData frame) {
    super(
        frame.getValues(),
        frame.getSampleRate(),
        frame.getCollectTime(),
        frame.getFirstSampleNumber());
  }

  static HeardFrame of(FloatData frame) {
    return new HeardFrame(frame);
  }

  /** What fits it best of one code book. */
  CodeBook.Best best(CodeBook book) {
    if (book.id() >= best.length) {
      best = Arrays.copyOf(best, book.id() + 1);
    }
    if (best[book.id()] == null) {
      best[book.id()] = book.bestFor(getValues());
    }
    return best[book.id()];
  }
}
