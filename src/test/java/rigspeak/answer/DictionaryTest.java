package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;

/** Words that no dictionary can pronounce have to be taught to the voice, so each is known here. */
class DictionaryTest {
  private static final String GENERAL = "/edu/cmu/sphinx/models/en-us/cmudict-en-us.dict";
  private static final String OWN = "/rigspeak/grammars/rigspeak.dict";

  @Test
  void wordsWithoutAPronunciationAreListed() throws IOException {
    Set<String> known = new HashSet<>(firstWords(GENERAL));
    known.addAll(firstWords(OWN));
    Set<String> unknown = new TreeSet<>();
    for (Detail detail : Detail.values()) {
      for (Reply reply : Situations.replies()) {
        for (Utterance utterance : Answers.say(java.util.List.of(reply), detail)) {
          for (String word :
              utterance.text().toLowerCase(Locale.ROOT).replaceAll("[.,]", "").split(" ", -1)) {
            if (!known.contains(word)) {
              unknown.add(word);
            }
          }
        }
      }
    }
    assertEquals(new TreeSet<>(firstWords("words-to-pronounce.txt")), unknown);
  }

  /** The first word of each line; lines of remarks begin with a number sign. */
  private static Set<String> firstWords(String resource) throws IOException {
    Set<String> words = new HashSet<>();
    try (InputStream in = DictionaryTest.class.getResourceAsStream(resource);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          words.add(line.split("\\s", -1)[0]);
        }
      }
    }
    return words;
  }
}
