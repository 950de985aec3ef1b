package rigspeak.hearing;

import edu.cmu.sphinx.decoder.scorer.ScoreProvider;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.linguist.HMMSearchState;
import edu.cmu.sphinx.linguist.SearchStateArc;
import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.HMMState;
import edu.cmu.sphinx.linguist.acoustic.HMMStateArc;
import edu.cmu.sphinx.util.LogMath;
import java.util.function.Supplier;

/** One state of a phone's sound at one place of the search network; the last makes no sound. */
final class Moment extends NetworkState implements HMMSearchState, ScoreProvider {
  private final Row row;
  private final HMMState state;

  private Moment(Row row, HMMState state) {
    this.row = row;
    this.state = state;
  }

  /** The states of one phone. */
  static final class Row {
    private final HMM sound;
    private final Moment[] moments;
    private final Supplier<SearchStateArc[]> after;

    /**
     * @param after where its end leads
     */
    Row(HMM sound, Supplier<SearchStateArc[]> after) {
      this.sound = sound;
      this.moments = new Moment[sound.getOrder() + 1];
      this.after = after;
    }

    Moment moment(int which) {
      if (moments[which] == null) {
        moments[which] = new Moment(this, sound.getState(which));
      }
      return moments[which];
    }
  }

  @Override
  SearchStateArc[] leads() {
    if (!state.isEmitting()) {
      return row.after.get();
    }
    HMMStateArc[] arcs = state.getSuccessors();
    SearchStateArc[] ways = new SearchStateArc[arcs.length];
    for (int i = 0; i < ways.length; i++) {
      Moment next = row.moment(arcs[i].getHMMState().getState());
      ways[i] = new Way(next, LogMath.LOG_ONE, arcs[i].getLogProbability());
    }
    return ways;
  }

  @Override
  public HMMState getHMMState() {
    return state;
  }

  @Override
  public boolean isEmitting() {
    return state.isEmitting();
  }

  @Override
  public float getScore(Data frame) {
    return state.getScore(frame);
  }

  @Override
  public float[] getComponentScore(Data frame) {
    return state.calculateComponentScore(frame);
  }
}
