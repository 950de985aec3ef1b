package rigspeak.hearing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Sentences;

/** What the ear can pronounce, looked up without opening it. */
public final class KnownWords {
  private static final String GENERAL = "/edu/cmu/sphinx/models/en-us/cmudict-en-us.dict";
  private static final String OWN = "/rigspeak/grammars/rigspeak.dict";

  private KnownWords() {}

  /**
   * Holds a grammar that somebody supplies against the dictionaries.
   *
   * @throws rigspeak.grammar.GrammarFault for a word that none of them has
   */
  public static void refuseOthers(Grammar grammar) {
    Set<String> unknown = new LinkedHashSet<>(new Sentences(grammar).words());
    remove(unknown, GENERAL);
    remove(unknown, OWN);
    unknown.stream()
        .findFirst()
        .ifPresent(
            word -> {
              throw grammar.fault(
                  word, "has \"" + word + "\", which no dictionary says how to pronounce");
            });
  }

  private static void remove(Set<String> words, String dictionary) {
    URL file = KnownWords.class.getResource(dictionary);
    if (file == null) {
      throw new HearingFault("The program lacks its dictionary " + dictionary + ".");
    }
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(file.openStream(), StandardCharsets.UTF_8))) {
      lines.lines().forEach(line -> words.remove(line.split("\\s", 2)[0]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
