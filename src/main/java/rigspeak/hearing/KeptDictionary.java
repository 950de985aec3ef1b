package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.dictionary.TextDictionary;
import edu.cmu.sphinx.util.props.ConfigurationManagerUtils;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4String;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Sphinx4's dictionary, read once, of which only the words of the grammar are kept: the general
 * dictionary has 134,000 entries.
 */
public final class KeptDictionary extends TextDictionary {
  /** Where the words are that the general dictionary lacks. */
  @S4String public static final String PROP_OWN_WORDS = "ownWords";

  private Set<String> wanted = Set.of();

  /** For Sphinx4's configuration. */
  public KeptDictionary() {}

  @Override
  public void newProperties(PropertySheet sheet) throws PropertyException {
    super.newProperties(sheet);
    // Sphinx4's own setting for this takes no files that lie inside the program's jar.
    addendaUrlList = List.of(ConfigurationManagerUtils.getResource(PROP_OWN_WORDS, sheet));
  }

  /** Keeps these words only; before it is loaded. */
  void keep(Set<String> words) {
    wanted = Set.copyOf(words);
  }

  /** The ways to say a word, each a row of phones. */
  List<List<String>> phones(String word) {
    return Arrays.stream(getWord(word).getPronunciations())
        .map(way -> Arrays.stream(way.getUnits()).map(Unit::getName).toList())
        .toList();
  }

  boolean isLoaded() {
    return allocated;
  }

  @Override
  public void allocate() throws IOException {
    if (allocated) {
      return;
    }
    super.allocate();
    Set<String> kept = new HashSet<>();
    for (String entry : dictionary.keySet()) {
      int variant = entry.indexOf('(');
      String word = variant > 0 ? entry.substring(0, variant) : entry;
      if (wanted.contains(word) || fillerWords.contains(entry)) {
        kept.add(entry);
      }
    }
    dictionary.keySet().retainAll(kept);
    dictionary = new HashMap<>(dictionary);
    allocated = true;
  }
}
