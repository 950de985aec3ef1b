package rigspeak.hearing;

import edu.cmu.sphinx.decoder.search.SimpleBreadthFirstSearchManager;
import edu.cmu.sphinx.result.Result;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sphinx4's search, beside which a second one may go on: frame by frame in step, so that what both
 * compare with a frame is compared once, and so that both are over when the utterance is.
 */
public final class Search extends SimpleBreadthFirstSearchManager {
  private Optional<Search> beside = Optional.empty();
  private boolean over;

  /** For Sphinx4's configuration. */
  public Search() {}

  /** Begins another search, which goes on whenever this one does. */
  void begin(Search other) {
    other.startRecognition();
    other.over = false;
    beside = Optional.of(other);
  }

  /** No other search goes on beside this one. */
  void alone() {
    beside = Optional.empty();
  }

  /** What this one has found, once there is no more to hear; nothing if no path is left. */
  Optional<Result> found() {
    while (!over) {
      step();
    }
    Result found = recognize(0);
    stopRecognition();
    return Optional.ofNullable(found);
  }

  /**
   * What was found is handed out; what led there is held no longer, until somebody speaks again.
   */
  @Override
  protected void localStop() {
    super.localStop();
    activeList = activeListFactory.newInstance();
    resultList = List.of();
    setBestTokenMap(Map.of());
  }

  private void step() {
    over = over || super.recognize();
  }

  @Override
  protected boolean recognize() {
    boolean done = super.recognize();
    beside.ifPresent(Search::step);
    return done;
  }
}
