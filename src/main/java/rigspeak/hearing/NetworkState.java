package rigspeak.hearing;

import edu.cmu.sphinx.linguist.SearchState;
import edu.cmu.sphinx.linguist.SearchStateArc;
import edu.cmu.sphinx.linguist.WordSequence;

/**
 * A state of the search network. Where it leads is worked out when the search first comes to it: of
 * a network that knows every sentence, little is ever reached.
 */
abstract class NetworkState implements SearchState {
  private SearchStateArc[] ways;

  /** Where it leads, always in the same order. */
  abstract SearchStateArc[] leads();

  @Override
  public final SearchStateArc[] getSuccessors() {
    if (ways == null) {
      ways = leads();
    }
    return ways;
  }

  @Override
  public boolean isEmitting() {
    return false;
  }

  @Override
  public boolean isFinal() {
    return false;
  }

  @Override
  public String toPrettyString() {
    return toString();
  }

  @Override
  public String getSignature() {
    return toString();
  }

  @Override
  public WordSequence getWordHistory() {
    return WordSequence.EMPTY;
  }

  @Override
  public Object getLexState() {
    return this;
  }

  @Override
  public int getOrder() {
    return 0;
  }

  /** A way to another state; what it costs in Sphinx4's logarithm. */
  static final class Way implements SearchStateArc {
    private final SearchState state;
    private final float language;
    private final float insertion;

    Way(SearchState state, float language, float insertion) {
      this.state = state;
      this.language = language;
      this.insertion = insertion;
    }

    @Override
    public SearchState getState() {
      return state;
    }

    @Override
    public float getProbability() {
      return language + insertion;
    }

    @Override
    public float getLanguageProbability() {
      return language;
    }

    @Override
    public float getInsertionProbability() {
      return insertion;
    }
  }
}
