package rigspeak.hearing;

import edu.cmu.sphinx.linguist.SearchGraph;
import edu.cmu.sphinx.linguist.flat.CIPhoneLoop;
import edu.cmu.sphinx.linguist.flat.FlatLinguist;
import edu.cmu.sphinx.linguist.flat.SentenceHMMState;
import edu.cmu.sphinx.linguist.language.grammar.GrammarNode;
import edu.cmu.sphinx.util.Cache;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sphinx4's search network, of which the last few are kept when the open words change. */
public final class KeptLinguist extends FlatLinguist {
  private static final int MOST_KEPT = 3;

  private final Map<GrammarNode, SearchGraph> kept = lastFew();

  /** For Sphinx4's configuration. */
  public KeptLinguist() {}

  @Override
  public void startRecognition() {
    SearchGraph known = kept.get(grammar.getInitialNode());
    if (known != null) {
      searchGraph = known;
      initialGrammarState = grammar.getInitialNode();
      return;
    }
    super.startRecognition();
    kept.put(grammar.getInitialNode(), searchGraph);
  }

  /**
   * Builds the network for the words that are open: the states of each word among its neighbours,
   * their connections, and beside them the loop of all phones.
   *
   * @return nothing; Sphinx4 would list all states only to count them, which takes longer than to
   *     build them
   */
  @Override
  protected Collection<SentenceHMMState> compileGrammar() {
    initialGrammarState = grammar.getInitialNode();
    nodeStateMap = new HashMap<>();
    arcPool = new Cache<>();
    List<GState> words = new ArrayList<>();
    for (GrammarNode node : grammar.getGrammarNodes()) {
      words.add(createGState(node));
    }
    addStartingPath();
    words.forEach(GState::collectContexts);
    words.forEach(GState::expand);
    words.forEach(GState::connect);
    SentenceHMMState start = findStartingState();
    if (addOutOfGrammarBranch) {
      CIPhoneLoop phones = new CIPhoneLoop(phoneLoopAcousticModel, logPhoneInsertionProbability);
      SentenceHMMState first = (SentenceHMMState) phones.getSearchGraph().getInitialState();
      start.connect(getArc(first, logOne, logOutOfGrammarBranchProbability));
    }
    searchGraph = new FlatSearchGraph(start);
    nodeStateMap = null;
    arcPool = null;
    return List.of();
  }

  /** A map that forgets what has not been asked for for the longest time. */
  static <K, V> Map<K, V> lastFew() {
    return new LinkedHashMap<>(8, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > MOST_KEPT;
      }
    };
  }
}
