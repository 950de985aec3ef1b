package rigspeak.hearing;

import edu.cmu.sphinx.linguist.Linguist;
import edu.cmu.sphinx.linguist.SearchGraph;
import edu.cmu.sphinx.linguist.SearchStateArc;
import edu.cmu.sphinx.linguist.acoustic.AcousticModel;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;
import edu.cmu.sphinx.linguist.flat.CIPhoneLoop;
import edu.cmu.sphinx.util.LogMath;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4Boolean;
import edu.cmu.sphinx.util.props.S4Component;
import edu.cmu.sphinx.util.props.S4Double;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What Sphinx4 searches, of which the last few are kept when the open words change. */
public final class KeptLinguist implements Linguist {
  /** How the words are pronounced. */
  @S4Component(type = KeptDictionary.class)
  public static final String PROP_DICTIONARY = "dictionary";

  /** How their phones sound. */
  @S4Component(type = AcousticModel.class)
  public static final String PROP_ACOUSTIC_MODEL = "acousticModel";

  /** Names the phones. */
  @S4Component(type = UnitManager.class)
  public static final String PROP_UNIT_MANAGER = "unitManager";

  /** Whether a loop of all phones runs beside the words. */
  @S4Boolean(defaultValue = false)
  public static final String PROP_OTHER_SPEECH = "otherSpeech";

  /** The price of entering it. */
  @S4Double(defaultValue = 1)
  public static final String PROP_OTHER_SPEECH_PROBABILITY = "otherSpeechProbability";

  /** The price of each phone in it. */
  @S4Double(defaultValue = 1)
  public static final String PROP_PHONE_INSERTION_PROBABILITY = "phoneInsertionProbability";

  private static final int MOST_KEPT = 3;

  private final Map<WordGraph, WordNetwork> kept = lastFew();
  private KeptDictionary dictionary;
  private AcousticModel model;
  private Triphones triphones;
  private WordNetwork.Costs costs;
  private boolean otherSpeech;
  private float otherSpeechCost;
  private float phoneCost;
  private WordNetwork now;

  /** For Sphinx4's configuration. */
  public KeptLinguist() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    dictionary = (KeptDictionary) sheet.getComponent(PROP_DICTIONARY);
    model = (AcousticModel) sheet.getComponent(PROP_ACOUSTIC_MODEL);
    triphones = new Triphones(model, (UnitManager) sheet.getComponent(PROP_UNIT_MANAGER));
    costs =
        new WordNetwork.Costs(
            cost(sheet, PROP_WORD_INSERTION_PROBABILITY),
            cost(sheet, PROP_SILENCE_INSERTION_PROBABILITY),
            sheet.getFloat(PROP_LANGUAGE_WEIGHT));
    otherSpeech = sheet.getBoolean(PROP_OTHER_SPEECH);
    otherSpeechCost = cost(sheet, PROP_OTHER_SPEECH_PROBABILITY);
    phoneCost = cost(sheet, PROP_PHONE_INSERTION_PROBABILITY);
  }

  private static float cost(PropertySheet sheet, String probability) {
    return LogMath.getLogMath().linearToLog(sheet.getDouble(probability));
  }

  @Override
  public void allocate() throws IOException {
    model.allocate();
    dictionary.allocate();
  }

  /**
   * Says what can be heard from the next utterance on.
   *
   * @throws HearingFault if no dictionary has one of its words
   */
  void hear(WordGraph graph) {
    now = kept.get(graph);
    if (now == null) {
      refuseUnknownWords(graph);
      now = new WordNetwork(graph, dictionary, triphones, costs, wayToOtherSpeech());
      kept.put(graph, now);
    }
  }

  private Optional<SearchStateArc> wayToOtherSpeech() {
    if (!otherSpeech) {
      return Optional.empty();
    }
    SearchGraph phones = new CIPhoneLoop(model, phoneCost).getSearchGraph();
    return Optional.of(
        new NetworkState.Way(phones.getInitialState(), LogMath.LOG_ONE, otherSpeechCost));
  }

  private void refuseUnknownWords(WordGraph graph) {
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

  @Override
  public SearchGraph getSearchGraph() {
    return now;
  }

  @Override
  public void startRecognition() {
    // What can be heard has been said before.
  }

  @Override
  public void stopRecognition() {
    // It is kept.
  }

  @Override
  public void deallocate() {
    // It lives as long as the program.
  }

  /** A map that forgets what has not been asked for for the longest time. */
  private static <K, V> Map<K, V> lastFew() {
    return new LinkedHashMap<>(8, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > MOST_KEPT;
      }
    };
  }
}
