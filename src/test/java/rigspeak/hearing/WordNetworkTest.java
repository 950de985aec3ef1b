package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import edu.cmu.sphinx.linguist.HMMSearchState;
import edu.cmu.sphinx.linguist.SearchState;
import edu.cmu.sphinx.linguist.SearchStateArc;
import edu.cmu.sphinx.linguist.WordSearchState;
import edu.cmu.sphinx.linguist.acoustic.AcousticModel;
import edu.cmu.sphinx.linguist.dictionary.Dictionary;
import edu.cmu.sphinx.linguist.flat.FlatLinguist;
import edu.cmu.sphinx.linguist.language.grammar.GrammarNode;
import edu.cmu.sphinx.util.LogMath;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/** Second opinion: Sphinx4's own flat network of the same words. */
class WordNetworkTest {
  private static final double WORD = 1e-12;
  private static final double PAUSE = 0.1;
  private static final float LANGUAGE_WEIGHT = 2;
  private static final double OTHER_SPEECH = 1e-10;
  private static final double PHONE = 4e-10;

  private static final Grammar GRAMMAR = Grammar.bundled();

  private static ConfigurationManager parts;

  @BeforeAll
  static void load() throws Exception {
    parts = new ConfigurationManager(Ear.resource("ear.xml"));
    KeptDictionary dictionary = parts.lookup("dictionary");
    dictionary.keep(Ear.allWords(GRAMMAR));
    parts.<KeptLinguist>lookup("linguist").allocate();
  }

  @ParameterizedTest(name = "<{0}>")
  @ValueSource(strings = {"wraps_value", "drill_wraps", "wood_value", "species_value"})
  void aRuleOfTheGrammarIsSearchedAlike(String rule) throws Exception {
    assertSearchedAlike(WordGraph.of(GRAMMAR, new Expected(List.of(rule))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void rowsOfWordsAreSearchedAlike(List<List<String>> rows) throws Exception {
    assertSearchedAlike(WordGraph.ofRows(rows));
  }

  /**
   * One word that is one phone, words of two, the same word in several places, many ways to say.
   */
  static List<List<List<String>>> rows() {
    return List.of(
        List.of(List.of("a")),
        List.of(List.of("out", "a", "out"), List.of("out")),
        List.of(List.of("up", "two"), List.of("two", "up"), List.of("up", "a", "up")),
        List.of(List.of("affirm", "anchor"), List.of("anchor", "affirm", "up")));
  }

  private static void assertSearchedAlike(WordGraph graph) throws Exception {
    KeptLinguist ours = parts.lookup("linguist");
    ours.hear(graph);
    FlatLinguist theirs = flat(graph);
    theirs.allocate();

    List<SearchState> starts =
        List.of(ours.getSearchGraph().getInitialState(), theirs.getSearchGraph().getInitialState());
    IdentityHashMap<SearchState, Integer> kinds = kinds(starts);

    assertEquals(kinds.get(starts.get(0)), kinds.get(starts.get(1)));
    assertTrue(kinds.size() > 100, "it is no empty network");
  }

  private static FlatLinguist flat(WordGraph graph) {
    AcousticModel model = parts.lookup("acousticModel");
    return new FlatLinguist(
        model,
        new Nodes(graph, parts.lookup("dictionary")),
        parts.lookup("unitManager"),
        WORD,
        PAUSE,
        1e-2,
        1,
        LANGUAGE_WEIGHT,
        false,
        false,
        false,
        true,
        OTHER_SPEECH,
        PHONE,
        model);
  }

  /**
   * Sorts all states by what can follow from them: two are of one kind if they make the same sound
   * and their ways lead at the same costs to states of the same kinds (partition refinement).
   */
  private static IdentityHashMap<SearchState, Integer> kinds(List<SearchState> starts) {
    IdentityHashMap<SearchState, Integer> kinds = new IdentityHashMap<>();
    for (SearchState state : reached(starts)) {
      kinds.put(state, 0);
    }
    int before = 0;
    int now = 1;
    while (now > before) {
      Map<List<Object>, Integer> known = new HashMap<>();
      IdentityHashMap<SearchState, Integer> finer = new IdentityHashMap<>();
      for (SearchState state : kinds.keySet()) {
        List<String> ways = new ArrayList<>();
        for (SearchStateArc way : state.getSuccessors()) {
          ways.add(
              way.getLanguageProbability()
                  + " "
                  + way.getInsertionProbability()
                  + " "
                  + way.getProbability()
                  + " "
                  + kinds.get(way.getState()));
        }
        ways.sort(null);
        List<Object> description = List.of(kinds.get(state), own(state), ways);
        finer.put(state, known.computeIfAbsent(description, d -> known.size()));
      }
      kinds = finer;
      before = now;
      now = known.size();
    }
    return kinds;
  }

  private static String own(SearchState state) {
    String own = state.isEmitting() + " " + state.isFinal();
    if (state instanceof WordSearchState word) {
      own += " " + word.getPronunciation().getWord() + " " + word.getPronunciation();
    }
    if (state instanceof HMMSearchState sound && state.isEmitting()) {
      own += " " + sound.getHMMState().getMixtureId();
    }
    return own;
  }

  private static List<SearchState> reached(List<SearchState> starts) {
    IdentityHashMap<SearchState, Boolean> known = new IdentityHashMap<>();
    List<SearchState> all = new ArrayList<>();
    Deque<SearchState> waiting = new ArrayDeque<>(starts);
    while (!waiting.isEmpty()) {
      SearchState state = waiting.remove();
      if (known.put(state, true) == null) {
        all.add(state);
        for (SearchStateArc way : state.getSuccessors()) {
          waiting.add(way.getState());
        }
      }
    }
    return all;
  }

  /** The same words as nodes of Sphinx4's. */
  private static final class Nodes extends edu.cmu.sphinx.linguist.language.grammar.Grammar {
    private final WordGraph graph;

    Nodes(WordGraph graph, Dictionary dictionary) {
      super(false, false, false, false, dictionary);
      this.graph = graph;
    }

    @Override
    protected GrammarNode createGrammar() {
      GrammarNode start = createGrammarNode(Dictionary.SILENCE_SPELLING);
      GrammarNode end = createGrammarNode(Dictionary.SILENCE_SPELLING);
      end.setFinalNode(true);
      List<GrammarNode> places = new ArrayList<>();
      graph.next().forEach(ways -> places.add(createGrammarNode(false)));
      start.add(places.get(0), LogMath.LOG_ONE);
      Map<String, GrammarNode> words = new HashMap<>();
      for (int i = 0; i < places.size(); i++) {
        GrammarNode place = places.get(i);
        GrammarNode pause = createGrammarNode(Dictionary.SILENCE_SPELLING);
        place.add(pause, LogMath.LOG_ONE);
        pause.add(place, LogMath.LOG_ONE);
        if (graph.mayEnd().get(i)) {
          place.add(end, LogMath.LOG_ONE);
        }
        float share = LogMath.getLogMath().linearToLog(1.0 / graph.next().get(i).size());
        graph
            .next()
            .get(i)
            .forEach(
                (word, there) -> {
                  GrammarNode node = words.get(word + ' ' + there);
                  if (node == null) {
                    node = createGrammarNode(word);
                    node.add(places.get(there), LogMath.LOG_ONE);
                    words.put(word + ' ' + there, node);
                  }
                  place.add(node, share);
                });
      }
      return start;
    }
  }
}
