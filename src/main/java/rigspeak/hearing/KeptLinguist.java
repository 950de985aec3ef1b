package rigspeak.hearing;

import edu.cmu.sphinx.linguist.SearchGraph;
import edu.cmu.sphinx.linguist.flat.FlatLinguist;
import edu.cmu.sphinx.linguist.language.grammar.GrammarNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** Sphinx4's search network, of which the last few are kept when the open words change. */
public final class KeptLinguist extends FlatLinguist {
  private static final int MOST_KEPT = 3;

  private final Map<GrammarNode, SearchGraph> kept =
      new LinkedHashMap<>(8, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<GrammarNode, SearchGraph> eldest) {
          return size() > MOST_KEPT;
        }
      };

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
}
