package rigspeak.hearing;

import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.dictionary.TextDictionary;
import edu.cmu.sphinx.util.props.ConfigurationManagerUtils;
import edu.cmu.sphinx.util.props.PropertyException;
import edu.cmu.sphinx.util.props.PropertySheet;
import edu.cmu.sphinx.util.props.S4String;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
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

  @Override
  public void allocate() throws IOException {
    super.allocate();
    allocated = true;
  }

  /** Hands on the lines of the words that are kept. */
  @Override
  protected void loadDictionary(InputStream file, boolean fillers) throws IOException {
    StringBuilder kept = new StringBuilder();
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (fillers || wanted.contains(word(line))) {
          kept.append(line).append('\n');
        }
      }
    }
    super.loadDictionary(
        new ByteArrayInputStream(kept.toString().getBytes(StandardCharsets.UTF_8)), fillers);
  }

  /** The word of a line, without the number of one of several ways to say it. */
  private static String word(String line) {
    int end = 0;
    while (end < line.length() && line.charAt(end) > ' ' && (end == 0 || line.charAt(end) != '(')) {
      end++;
    }
    return line.substring(0, end);
  }
}
