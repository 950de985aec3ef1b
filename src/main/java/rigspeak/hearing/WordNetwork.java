package rigspeak.hearing;

import edu.cmu.sphinx.linguist.dictionary.Dictionary;
import edu.cmu.sphinx.linguist.language.grammar.GrammarNode;
import edu.cmu.sphinx.util.LogMath;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The words that can be heard now, in the form that Sphinx4 searches: its nodes are words, between
 * them lie our places. A pause may be made at every place.
 *
 * <p>Sphinx4 has a reader for grammar files of its own; it drops the tags, prints to standard
 * output and always takes all public rules. This one takes what our own reader has read, so that
 * the recogniser and the matcher cannot disagree.
 */
public final class WordNetwork extends edu.cmu.sphinx.linguist.language.grammar.Grammar {
  /** What it costs to pass from a place to a pause or to the end. */
  private static final float SURE = 0;

  private WordGraph graph;
  private final Map<WordGraph, Built> built = KeptLinguist.lastFew();
  private Set<GrammarNode> nodes = Set.of();

  /** For Sphinx4's configuration. */
  public WordNetwork() {}

  private record Built(GrammarNode start, Set<GrammarNode> nodes) {}

  /** Says what can be heard from the next utterance on. */
  void hear(WordGraph wanted) {
    graph = wanted;
    if (dictionary instanceof KeptDictionary kept && kept.isLoaded()) {
      build();
    }
  }

  @Override
  public void allocate() throws IOException {
    dictionary.allocate();
    build();
  }

  @Override
  public GrammarNode getInitialNode() {
    return initialNode;
  }

  @Override
  public Set<GrammarNode> getGrammarNodes() {
    return nodes;
  }

  @Override
  protected GrammarNode createGrammar() {
    build();
    return initialNode;
  }

  private void build() {
    Built network = built.get(graph);
    if (network == null) {
      refuseUnknownWords();
      network = network();
      built.put(graph, network);
    }
    initialNode = network.start();
    nodes = network.nodes();
  }

  private Built network() {
    newGrammar();
    GrammarNode start = createGrammarNode(Dictionary.SILENCE_SPELLING);
    GrammarNode end = createGrammarNode(Dictionary.SILENCE_SPELLING);
    end.setFinalNode(true);
    List<GrammarNode> places = new ArrayList<>();
    for (int i = 0; i < graph.next().size(); i++) {
      places.add(createGrammarNode(false));
    }
    start.add(places.get(0), SURE);
    Map<String, GrammarNode> words = new HashMap<>();
    for (int i = 0; i < places.size(); i++) {
      GrammarNode place = places.get(i);
      GrammarNode pause = createGrammarNode(Dictionary.SILENCE_SPELLING);
      place.add(pause, SURE);
      pause.add(place, SURE);
      // All words that may follow share what is likely: where many may, each is less so.
      float share = LogMath.getLogMath().linearToLog(1.0 / graph.next().get(i).size());
      if (graph.mayEnd().get(i)) {
        place.add(end, SURE);
      }
      for (Map.Entry<String, Integer> way : graph.next().get(i).entrySet()) {
        GrammarNode word = words.get(way.getKey() + ' ' + way.getValue());
        if (word == null) {
          word = createGrammarNode(way.getKey());
          word.add(places.get(way.getValue()), SURE);
          words.put(way.getKey() + ' ' + way.getValue(), word);
        }
        place.add(word, share);
      }
    }
    return new Built(start, super.getGrammarNodes());
  }

  private void refuseUnknownWords() {
    Set<String> unknown = new TreeSet<>();
    for (String word : graph.words()) {
      if (dictionary.getWord(word) == null) {
        unknown.add(word);
      }
    }
    if (!unknown.isEmpty()) {
      throw new HearingFault(
          "No dictionary says how to pronounce "
              + String.join(", ", unknown)
              + "; add a line for it to rigspeak.dict or take it out of the grammar.");
    }
  }
}
